package flow

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// What a sprayer is taken to be where its data were not stated. PRACTICE.
const (
	UsualWasherFlow     = 1.4 * quantity.GPM // small ones take 1.2 to 1.4 gpm
	usualNozzleFlow     = 2.5 * quantity.GPM
	usualNozzlePressure = 40 * quantity.PSI
)

// SprayerNeed is the pressure that must be left at a sprayer. PRACTICE: 20 psi, at
// the inlet of a pressure washer, so that its pump does not starve, and at a
// nozzle, so that it still throws a fan.
const SprayerNeed = 20 * quantity.PSI

// washerMargin is what the supply must be able to give beyond a pressure
// washer's rated flow. PRACTICE.
const washerMargin quantity.Fraction = 0.10

// Sprayer is the end of the chain. A pressure washer draws its own flow; a
// nozzle and an open hose take what the pressure pushes.
type Sprayer struct {
	Name    string
	Tool    model.Tool
	Rated   quantity.Flow     // of a pressure washer
	Number  float64           // of a nozzle: gpm at 4000 psi
	Need    quantity.Pressure // to be left at the sprayer
	Assumed []tag.Assumption
}

// Washer is a pressure washer that draws a flow.
func Washer(name string, rated quantity.Flow) Sprayer {
	return Sprayer{Name: name, Tool: model.PressureWasher, Rated: rated, Need: SprayerNeed}
}

// Nozzle is a nozzle of a number, gpm at 4000 psi.
func Nozzle(name string, number float64) Sprayer {
	return Sprayer{Name: name, Tool: model.Nozzle, Number: number, Need: SprayerNeed}
}

// OpenEnd is a hose without anything at its end.
func OpenEnd(name string) Sprayer { return Sprayer{Name: name, Tool: model.OpenHose} }

// SprayerOf is a sprayer of the rig. One whose kind was not said is a pressure
// washer.
func SprayerOf(m *model.Sprayer) Sprayer {
	switch m.Tool {
	case model.OpenHose:
		return OpenEnd(m.Name)
	case model.Nozzle:
		return nozzleOf(m)
	}
	flow, okFlow := m.Flow.Get()
	number, okNumber := m.Number.Get()
	pressure, okPressure := m.Pressure.Get()
	switch {
	case okFlow:
		return Washer(m.Name, flow)
	case okNumber && okPressure:
		return Washer(m.Name, NozzleFlow(number, pressure))
	}
	s := Washer(m.Name, UsualWasherFlow)
	s.Assumed = append(s.Assumed, tag.Quantity("flow of the pressure washer", UsualWasherFlow, tag.FromPractice("not stated; a usual small one")))
	return s
}

func nozzleOf(m *model.Sprayer) Sprayer {
	if number, given := m.Number.Get(); given && number > 0 {
		return Nozzle(m.Name, number)
	}
	flow, pressure := m.Flow.Or(usualNozzleFlow), m.Pressure.Or(usualNozzlePressure)
	s := Nozzle(m.Name, NozzleNumber(flow, pressure))
	if !m.Flow.Given() {
		s.Assumed = append(s.Assumed, tag.Quantity("flow of the nozzle", flow, tag.FromPractice("not stated; a usual garden nozzle")))
	}
	if !m.Pressure.Given() {
		s.Assumed = append(s.Assumed, tag.Quantity("pressure of that flow", pressure, tag.FromPractice("not stated; a usual garden nozzle")))
	}
	return s
}
