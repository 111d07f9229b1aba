package learning

import (
	"math"

	"washeve/planner/bed"
)

// Along is the outlet over the feed that a fill would have shown after each of so
// many of its uses, read at units. After must rise; the quantiles are in its
// order. It costs a column's step for each use and state: for when the log
// changes, not for every key.
func (p Posterior) Along(units float64, after []int) []Quantiles {
	uses, cuts := p.fill.soundUpTo(after)
	at := make([][]weighted, len(after))
	for _, d := range p.draws {
		var column bed.Column
		done := 0
		for i, cut := range cuts {
			for ; done < cut; done++ {
				column = column.Feed(d.e*uses[done].Units, uses[done].Capacities/d.r)
			}
			at[i] = append(at[i], weighted{column.Outlet(d.e * units), 1})
		}
	}
	return allQuantiles(at)
}

// soundUpTo is the uses that feed something, at few different flows, and how many
// of them come before each place.
func (f Fill) soundUpTo(after []int) (uses []Use, cuts []int) {
	before := make([]int, len(f.Uses)+1)
	for i, u := range f.Uses {
		if u.sound() {
			uses = append(uses, u)
		}
		before[i+1] = len(uses)
	}
	for _, n := range after {
		cuts = append(cuts, before[min(max(n, 0), len(f.Uses))])
	}
	return levels(uses), cuts
}

// Beyond is the outlet over the feed at units after each further amount, in
// capacities fed at that flow. Fed must rise.
func (p Posterior) Beyond(units float64, fed []float64) []Quantiles {
	at := make([][]weighted, len(fed))
	for _, s := range p.States {
		n := s.Efficiency * units
		column, done := s.Column, 0.0
		for i, amount := range fed {
			column = column.Feed(n, (amount-done)/s.Factor)
			done = math.Max(amount, done)
			at[i] = append(at[i], weighted{column.Outlet(n), s.Weight})
		}
	}
	return allQuantiles(at)
}

func allQuantiles(at [][]weighted) []Quantiles {
	out := make([]Quantiles, len(at))
	for i := range at {
		out[i] = quantiles(at[i])
	}
	return out
}
