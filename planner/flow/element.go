package flow

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/water"
)

// Loss coefficients of fittings, on the velocity head in their bore. PRACTICE:
// within the wide ranges of handbooks.
const (
	CouplingK = 0.5 // one hose coupling
	TankHeadK = 10  // in, distributors and out of a tank, on a bore of TankHeadBore
	ValveK    = 0.2 // one valve, fully open, on the same bore
	ExitK     = 1   // the jet of an open end
)

// TankHeadBore is the bore that TankHeadK and ValveK go with. PRACTICE: 3/4 in.
const TankHeadBore = 0.75 * quantity.Inch

// losses are the terms of a pressure drop over flow, in Pa and m3/s:
// linear q + square q2 + hose q^1.852.
type losses struct{ linear, square, hose float64 }

func (l losses) and(m losses) losses {
	return losses{l.linear + m.linear, l.square + m.square, l.hose + m.hose}
}

func (l losses) at(q float64) float64 {
	return l.linear*q + l.square*q*q + l.hose*math.Pow(q, hoseExponent)
}

// slope is how [losses.at] rises with q, which must be above zero.
func (l losses) slope(q float64) float64 {
	return l.linear + 2*l.square*q + hoseExponent*l.hose*math.Pow(q, hoseExponent-1)
}

// Element is one part of the chain that takes pressure.
type Element struct {
	Name   string
	Bore   quantity.Length // 0 where it has none, as a bed
	losses losses
}

// Drop is the pressure that the element takes at a flow.
func (e Element) Drop(flow quantity.Flow) quantity.Pressure {
	return quantity.Pressure(e.losses.at(float64(flow)))
}

// Hose is a length of hose with the coupling at each end.
func Hose(name string, bore, length quantity.Length) Element {
	return Element{Name: name, Bore: bore, losses: losses{
		hose:   hoseLoss(bore, length, HoseRoughness),
		square: fittingLoss(bore, 2*CouplingK),
	}}
}

// HosesIn lists the hoses of one run of the chain, in their order. A hose whose
// run was not said is counted to the supply run.
func HosesIn(run model.Run, all []model.Hose) []Element {
	var elements []Element
	for _, h := range all {
		bore, okBore := h.Bore.Get()
		length, okLength := h.Length.Get()
		if okBore && okLength && (h.Run == run || h.Run == "" && run == model.SupplyRun) {
			elements = append(elements, Hose(h.Name, bore, length))
		}
	}
	return elements
}

// Packing is how the resin of a tank lies.
type Packing struct {
	Resin    quantity.Volume
	Diameter quantity.Length // inside the tank
	Bead     quantity.Length
	Voids    quantity.Fraction
}

// Area of the empty cross-section.
func (p Packing) Area() quantity.Area {
	return quantity.Area(math.Pi / 4 * float64(p.Diameter) * float64(p.Diameter))
}

// Depth of the resin.
func (p Packing) Depth() quantity.Length {
	return quantity.Length(float64(p.Resin) / float64(p.Area()))
}

// Tank is a bed of resin with its head, and with the valve before and the one after
// it, the water at a temperature.
func Tank(name string, p Packing, t quantity.Temperature) Element {
	terms := p.losses(t)
	terms.square += fittingLoss(TankHeadBore, TankHeadK+2*ValveK)
	return Element{Name: name, losses: terms}
}

// Drop over the resin alone, by [Ergun].
func (p Packing) Drop(flow quantity.Flow, t quantity.Temperature) quantity.Pressure {
	return quantity.Pressure(p.losses(t).at(float64(flow)))
}

// FlowAt is the flow at which the resin alone takes a pressure.
func (p Packing) FlowAt(drop quantity.Pressure, t quantity.Temperature) quantity.Flow {
	return balance(float64(drop), p.losses(t))
}

func (p Packing) losses(t quantity.Temperature) losses {
	viscous, inertial := ergun(p.Depth(), p.Bead, p.Voids, float64(water.Density(t)), float64(water.Viscosity(t)))
	area := float64(p.Area())
	return losses{linear: viscous / area, square: inertial / (area * area)}
}
