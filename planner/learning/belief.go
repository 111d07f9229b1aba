// Package learning says how sure the planner is of a bed: what it believes of
// the bed's capacity and contact, and what follows for the gallons left.
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
	// ThroughputSpread is how far the gallons of the past may be off. PRACTICE.
	ThroughputSpread = 0.10
	// PenFloor (ppm) and PenSpread are how a pen errs: ln(reading + floor) is
	// normal about the truth. PRACTICE: pens are sold as good to 2 ppm or 2 %.
	PenFloor, PenSpread = 2.0, 0.25
)

// Hypothesis is one thing that may be true of a fill of resin.
type Hypothesis struct {
	Factor     float64 // true capacity over the stated one
	Efficiency float64 // contact: transfer units over those of a perfect bed
	Weight     float64 // adds up to one over a belief
}

// Belief is a set of hypotheses with their weights.
type Belief []Hypothesis

// Prior is what is believed of a bed that nobody has measured. The factor is
// lognormal about 1. The efficiency leans to 1 and reaches down to
// [LeastEfficiency]: e = 0.3 + 0.7 B, B of the beta distribution (4, 1), whose
// quantile is u^(1/4).
func Prior() Belief {
	const factors, efficiencies, reach = 31, 5, 3.0
	belief := make(Belief, 0, factors*efficiencies)
	total := 0.0
	for i := range factors {
		z := reach * (2*float64(i)/(factors-1) - 1)
		for j := range efficiencies {
			u := (float64(j) + 0.5) / efficiencies
			h := Hypothesis{
				Factor:     math.Exp(CapacitySpread * z),
				Efficiency: LeastEfficiency + (1-LeastEfficiency)*math.Pow(u, 0.25),
				Weight:     math.Exp(-z * z / 2),
			}
			total += h.Weight
			belief = append(belief, h)
		}
	}
	for i := range belief {
		belief[i].Weight /= total
	}
	return belief
}

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

// under is the column that a history leaves if h is true.
func (h Hypothesis) under(c bed.Column, u Use, scale float64) bed.Column {
	return c.Feed(h.Efficiency*u.Units, scale*u.Capacities/h.Factor)
}

// likelihood of reading one value where another would be true, in ppm.
func likelihood(read, truth float64) float64 {
	miss := (math.Log(read+PenFloor) - math.Log(truth+PenFloor)) / PenSpread
	return math.Exp(-miss * miss / 2)
}
