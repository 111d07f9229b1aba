package planner

import "washeve/model/quantity"

// byJug is a note of how long a flow takes to fill a vessel, which is ten litres in metric
// units: its words before the vessel and behind it, and the time by what the vessel holds,
// which is its last value.
func byJug(code, before, jug, behind string, time func(holds quantity.Volume) quantity.Value, values ...quantity.Value) Note {
	of := func(vessel string, holds quantity.Volume) Note {
		return Note{Code: code, Format: before + vessel + behind, Values: append(values[:len(values):len(values)], time(holds))}
	}
	n, litres := of(jug, quantity.Gallon), of("10 L", 10*quantity.Litre)
	n.Metric = &litres
	return n
}
