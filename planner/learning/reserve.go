package learning

import (
	"math"
	"slices"
)

// Reserve is what a bed still gives before the limit, in gallons of a job's main
// use, in each of the ways in which it may stand; the most first. It is exact for
// these states, and goes by steps of their weights.
type Reserve []weighted

// Reserve works out what each state still gives.
func (j Job) Reserve(states []State) Reserve {
	r := make(Reserve, len(states))
	for i, s := range states {
		load := math.Exp(j.LoadSpread * s.luck)
		r[i] = weighted{s.Column.Until(s.Efficiency*j.Main.Units, j.Limit) * s.Factor / (load * j.Main.Capacities), s.Weight}
	}
	slices.SortFunc(r, func(a, b weighted) int { return ascending(b.value, a.value) })
	return r
}

// Gives is the most that the bed gives with a confidence from 0 to 1: a job of
// just so many gallons lasts with that chance or a greater one.
func (r Reserve) Gives(confidence float64) float64 {
	const rounding = 1e-9 // of sums of weights, and of the way there and back
	held := 0.0
	for _, v := range r {
		held += v.weight
		if held >= confidence+rounding || held >= 1-rounding {
			return math.Max(v.value*(1-rounding), 0)
		}
	}
	return 0
}

// Chance is that the bed gives so many gallons.
func (r Reserve) Chance(gallons float64) float64 {
	chance := 0.0
	for _, v := range r {
		if v.value < gallons || v.value <= 0 {
			break
		}
		chance += v.weight
	}
	return math.Min(chance, 1)
}

// OverTwoFills is the chance that so many gallons are given under the limit where
// one fill is used up to it, whenever that comes, and the next goes on. The first
// flush gallons of either do not count.
func (r Reserve) OverTwoFills(next Reserve, gallons, flush float64) float64 {
	chance := 0.0
	for _, v := range r {
		rest := gallons - math.Max(v.value-flush, 0)
		if rest <= 0 {
			chance += v.weight
			continue
		}
		chance += v.weight * next.Chance(rest+flush)
	}
	return math.Min(chance, 1)
}
