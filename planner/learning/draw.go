package learning

import (
	"math"
	"slices"
)

// drawn is one way a fill may be: its capacity factor f, what the replay sees of
// it (r: capacity over the gallons' own factor), contact, and luck with the load
// of the water to come.
type drawn struct {
	factor, r, e, luck float64
}

type draws []drawn

// draw takes n ways of one weight from the cells, evenly along their mass. What
// the readings cannot tell apart, the gallons and the capacity, is shared out by
// sequences that fill evenly.
func (s *search) draw(n int) draws {
	order := slices.Clone(s.cells)
	slices.SortStableFunc(order, func(a, b cell) int {
		if a.e != b.e {
			return ascending(a.e, b.e)
		}
		return ascending(a.low, b.low)
	})
	share, rest := s.part()
	all, below, i := lnSum(order), 0.0, 0
	out := make(draws, 0, n)
	for j := range n {
		want := (float64(j) + 0.5) / float64(n)
		mass := math.Exp(order[i].ln - all)
		for below+mass < want && i < len(order)-1 {
			below += mass
			i++
			mass = math.Exp(order[i].ln - all)
		}
		along := math.Min((want-below)/mass, 1)
		r := math.Log(order[i].e) - order[i].low - along*(order[i].high-order[i].low)
		f := s.outset.median + share*(r-s.outset.median) + rest*evenNormal(j, 0)
		e := efficiencyAt(order[i].t + (even(j, 2)-0.5)*order[i].width)
		out = append(out, drawn{factor: math.Exp(f), r: math.Exp(r), e: e, luck: evenNormal(j, 1)})
	}
	return out
}

// even is number j of a sequence that fills 0 to 1 evenly, one sequence for each
// axis, evenly among each other as well: multiples of the powers of 1/1.2207, the
// root of x^4 = x + 1 (MEMORY: M. Roberts, 2018, on quasirandom sequences).
func even(j, axis int) float64 {
	steps := [...]float64{0.8191725133961645, 0.6710436067037893, 0.5497004779019703}
	_, u := math.Modf(0.5 + float64(j)*steps[axis])
	return u
}

// evenNormal fills the normal distribution evenly.
func evenNormal(j, axis int) float64 { return math.Sqrt2 * math.Erfinv(2*even(j, axis)-1) }

func ascending(a, b float64) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

// fewTails is how many exponentials tell the loading of a state: an outlook is
// worked out at every key.
const fewTails = 4

// states replays each way to where the bed stands.
func (d draws) states(c course) []State {
	out := make([]State, len(d))
	for i, x := range d {
		out[i] = State{
			Hypothesis: Hypothesis{Factor: x.factor, Efficiency: x.e, Weight: 1 / float64(len(d))},
			Column:     c.column(x.r, x.e).Thin(fewTails), luck: x.luck,
		}
	}
	return out
}

func (d draws) quantilesOf(value func(drawn) float64) Quantiles {
	values := make([]weighted, len(d))
	for i, x := range d {
		values[i] = weighted{value(x), 1}
	}
	return quantiles(values)
}

// thin takes n states of one weight from many of different weights.
func thin(states []State, n int) []State {
	if len(states) <= n {
		return shareLuck(states)
	}
	total := 0.0
	for _, s := range states {
		total += s.Weight
	}
	out := make([]State, 0, n)
	below, i := 0.0, 0
	for j := range n {
		want := (float64(j) + 0.5) / float64(n) * total
		for below+states[i].Weight < want && i < len(states)-1 {
			below += states[i].Weight
			i++
		}
		s := states[i]
		s.Weight = 1 / float64(n)
		out = append(out, s)
	}
	return shareLuck(out)
}

func shareLuck(states []State) []State {
	for i := range states {
		states[i].luck = evenNormal(i, 1)
	}
	return states
}
