// Package learning says how sure the planner is of a bed: what it believes of
// the bed's capacity and contact before any reading, what the readings of a fill
// teach ([Outset.Learn]), what past fills say of the next ([After]), and what
// follows for the gallons left ([Job.Outlook]).
package learning

import (
	"math"

	"washeve/planner/bed"
)

// What is believed of a bed before any reading.
const (
	// CapacitySpread is the standard deviation of ln f, f being the true
	// capacity over the stated one. PRACTICE.
	CapacitySpread = 0.35
	// LeastEfficiency is the poorest contact considered. PRACTICE.
	LeastEfficiency = 0.3
	// ThroughputSpread is how far the gallons of the past may be off, as the
	// standard deviation of ln(gallons): one factor for all of a fill, since a
	// person who guesses short guesses short every time. PRACTICE.
	ThroughputSpread = 0.10
	// PenFloor is under what a pen tells little, in ppm: ln(reading + floor) is
	// normal about the truth. PRACTICE: pens are sold as good to 2 ppm or 2 %.
	// With the spread of a quarter a floor of 5 makes the error near zero 1.25
	// ppm, so that nine readings in ten lie within 2; a floor of 2 would condemn
	// a sound bed for a pen that shows 2.
	PenFloor = 5.0
	// PenError is how far a pen may be off near zero, in ppm. PRACTICE: as pens are
	// sold.
	PenError = 2.0
	// PenSpread is the spread of that logarithm. PRACTICE.
	PenSpread = 0.25
	// Reach is how many standard deviations a bed may be from the middle. What
	// lies beyond is taken for a fault, not for a bed. PRACTICE.
	Reach = 3.0
)

// UsualContact is the median of the contact efficiency before any reading: where
// a stated capacity is thought to have been measured.
const UsualContact = LeastEfficiency + (1-LeastEfficiency)*0.8408964152537145 // 0.5^(1/4)

// Hypothesis is one thing that may be true of a fill of resin.
type Hypothesis struct {
	Factor     float64 // true capacity over the stated one
	Efficiency float64 // contact: transfer units over those of a perfect bed
	Weight     float64 // adds up to one over a belief
}

// Belief is a set of hypotheses with their weights.
type Belief []Hypothesis

// Prior is what is believed of a bed that nobody has measured:
// [Start], as a belief.
func Prior() Belief { return Start().Belief() }

// Middle is the hypothesis of median factor and median efficiency.
func (b Belief) Middle() Hypothesis {
	factors, efficiencies := make([]weighted, len(b)), make([]weighted, len(b))
	for i, h := range b {
		factors[i] = weighted{h.Factor, h.Weight}
		efficiencies[i] = weighted{h.Efficiency, h.Weight}
	}
	return Hypothesis{Factor: quantiles(factors)[1], Efficiency: quantiles(efficiencies)[1], Weight: 1}
}

// Use is a stretch of use at one flow and one water.
type Use struct {
	Capacities float64 // fed, over the stated whole capacity
	Units      float64 // transfer units of a perfect bed at that flow
}

// sound tells a use that feeds something from one that cannot be.
func (u Use) sound() bool {
	return u.Capacities > 0 && u.Units > 0 && !math.IsInf(u.Capacities, 0) && !math.IsInf(u.Units, 0)
}

// under is the column that a use leaves if h is true.
func (h Hypothesis) under(c bed.Column, u Use, scale float64) bed.Column {
	return c.Feed(h.Efficiency*u.Units, scale*u.Capacities/h.Factor)
}

// shown is how a pen shows a water of so many ppm, in the measure in which its
// error is the same everywhere.
func shown(ppm float64) float64 { return math.Log(ppm + PenFloor) }
