package flow

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// MostResinDrop is the pressure that the resin of a bed may take. PUBLISHED:
// AWWA/ASCE, Water Treatment Plant Design, 4th edition: 20 psi.
const MostResinDrop = 20 * quantity.PSI

// Chain is everything from the tap to the sprayer.
type Chain struct {
	Supply   Supply
	Elements []Element // in the order the water goes
	Sprayer  Sprayer
}

// Drop is the pressure that one element takes.
type Drop struct {
	Name     string
	Pressure quantity.Pressure
}

// Operating is the point at which push and losses balance.
type Operating struct {
	Flow      quantity.Flow
	Pressure  quantity.Pressure // left at the sprayer
	Need      quantity.Pressure // to be left there
	Available quantity.Flow     // what would flow with just the need left
	Drops     []Drop
	Enough    bool     // the sprayer gets its flow and its pressure
	Why       tag.Note // in words
}

// Operate finds the operating point of the chain.
//
// A pressure washer draws its rated flow, or what runs in at no pressure where
// that is less; it has enough where at least 20 psi is left at its inlet at
// 110 % of the rated flow. A nozzle has enough where 20 psi is left. An open
// hose needs nothing but some flow.
func Operate(c Chain) Operating {
	o := Operating{Need: c.Sprayer.Need, Available: c.FlowAt(c.Sprayer.Need)}
	switch c.Sprayer.Tool {
	case model.OpenHose:
		o.Flow = OpenHose(c)
		o.Enough = o.Flow > 0
	case model.Nozzle:
		o.Flow = balance(float64(c.Supply.Static), c.losses().and(losses{square: nozzleLoss(c.Sprayer.Number)}))
		o.Enough = o.Available >= o.Flow && o.Flow > 0
	default:
		o.Flow = min(c.Sprayer.Rated, c.FlowAt(0))
		o.Enough = o.Available >= c.Sprayer.Rated*quantity.Flow(1+washerMargin)
	}
	o.Pressure = c.Left(o.Flow)
	o.Drops = c.drops(o.Flow)
	o.Why = c.why(o)
	return o
}

// OpenHose is the flow when the sprayer is taken off and the last hose runs
// open.
func OpenHose(c Chain) quantity.Flow {
	terms := c.losses()
	for i := len(c.Elements) - 1; i >= 0; i-- {
		if bore := c.Elements[i].Bore; bore > 0 {
			terms.square += fittingLoss(bore, ExitK)
			break
		}
	}
	return balance(float64(c.Supply.Static), terms)
}

// FlowAt is the flow at which a pressure is left at the sprayer: the most that
// can run with at least that left.
func (c Chain) FlowAt(left quantity.Pressure) quantity.Flow {
	return balance(float64(c.Supply.Static-left), c.losses())
}

// Left is the pressure left at the sprayer at a flow.
func (c Chain) Left(flow quantity.Flow) quantity.Pressure {
	return c.Supply.Static - quantity.Pressure(c.losses().at(float64(flow)))
}

// PressureLimit is the most flow that pressure allows.
type PressureLimit struct {
	Resin   quantity.Flow // at which the resin takes [MostResinDrop]
	Sprayer quantity.Flow // at which the sprayer is left with its need
}

// Flow is the smaller of the two.
func (l PressureLimit) Flow() quantity.Flow { return min(l.Resin, l.Sprayer) }

// LimitOf is the most flow that pressure allows through a bed in a chain, the
// water at a temperature.
func LimitOf(c Chain, bed Packing, t quantity.Temperature) PressureLimit {
	return PressureLimit{Resin: bed.FlowAt(MostResinDrop, t), Sprayer: c.FlowAt(c.Sprayer.Need)}
}

// losses of the supply and of all elements, without the sprayer.
func (c Chain) losses() losses {
	sum := c.Supply.losses
	for _, e := range c.Elements {
		sum = sum.and(e.losses)
	}
	return sum
}

func (c Chain) drops(flow quantity.Flow) []Drop {
	drops := make([]Drop, len(c.Elements))
	for i, e := range c.Elements {
		drops[i] = Drop{Name: e.Name, Pressure: e.Drop(flow)}
	}
	return drops
}

func (c Chain) why(o Operating) tag.Note {
	left, need := quantity.ValueOf(o.Pressure), quantity.ValueOf(o.Need)
	flow, available := quantity.ValueOf(o.Flow), quantity.ValueOf(o.Available)
	switch {
	case c.Sprayer.Tool == model.OpenHose:
		return tag.Note{Code: "open-hose", Format: "an open hose takes all that the pressure pushes: %s", Values: []quantity.Value{flow}}
	case o.Enough:
		return tag.Note{Code: "sprayer-fed", Format: "the sprayer gets %s and is left with %s; it needs %s", Values: []quantity.Value{flow, left, need}}
	case c.Sprayer.Tool == model.Nozzle:
		return tag.Note{Code: "sprayer-starved", Format: "only %s is left at the nozzle, which needs %s", Values: []quantity.Value{left, need}}
	}
	return tag.Note{
		Code:   "sprayer-starved",
		Format: "the chain gives %s with %s left at the pressure washer, which draws %s and needs 10 %% more to be sure of it",
		Values: []quantity.Value{available, need, quantity.ValueOf(c.Sprayer.Rated)},
	}
}

// balance is the flow at which the losses eat up a push, in Pa. No push, no flow;
// where nothing resists the flow has no end. The losses rise ever steeper with
// flow, so Newton's steps from above, where the harshest single loss alone takes
// the push, come down to the one root and never pass it.
func balance(push float64, l losses) quantity.Flow {
	if !(push > 0) {
		return 0
	}
	at := min(push/l.linear, math.Sqrt(push/l.square), math.Pow(push/l.hose, 1/hoseExponent))
	if math.IsInf(at, 1) {
		return quantity.Flow(at)
	}
	if !(at > 0) {
		return 0 // a loss without end lets nothing through
	}
	for range 54 {
		next := at - (l.at(at)-push)/l.slope(at)
		if !(next < at && next > 0) {
			break
		}
		at = next
	}
	return quantity.Flow(at)
}
