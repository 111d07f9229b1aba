package trip

import (
	"slices"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/bed"
	"washeve/planner/learning"
)

// pairs is two tanks in series in all states: the worn one first, the fresh one last.
// They are marched one by one, as exact as [bed.Series] is but for the few
// exponentials in which a column is told: what reaches the second tank differs from
// state to state in more than a factor, so that no few columns stand for all.
//
// The outlet is the product of what both let through, exp(-n e (1 - s)) each, so that
// contacts and depths add up: a pair has its front where one tank of the contact of
// both would have it.
type pairs struct {
	series            []bed.Series
	factors, contacts []float64 // of the second tank
}

// pairTails is how many exponentials tell the loading of a column: more of them move
// no chance that the simulation of the test could see.
const pairTails = 2

func newPairs(states int) *pairs {
	return &pairs{series: make([]bed.Series, states), factors: make([]float64, states), contacts: make([]float64, states)}
}

// feed passes so many stated capacities at so many units through state i, whose first
// tank is such.
func (p *pairs) feed(i int, contact, factor, units, capacities float64) {
	s := p.series[i].Feed(contact*units, p.contacts[i]*units, capacities/factor)
	s.Lead, s.Lag = s.Lead.Thin(pairTails), s.Lag.Thin(pairTails)
	p.series[i] = s
}

// at is the contact of both tanks of a state, what they hold and how deep they are
// spent, as depths.
func (p *pairs) at(i int, contact float64) (both, held, spent float64) {
	lead, lag, second := p.series[i].Lead, p.series[i].Lag, p.contacts[i]
	return contact + second, contact*lead.Used() + second*lag.Used(), contact*lead.Spent() + second*lag.Spent()
}

// unused is what is not taken of the first tank's capacity, on average.
func (p *pairs) unused() float64 {
	sum := 0.0
	for i := range p.series {
		sum += 1 - p.series[i].Lead.Used()
	}
	return sum / float64(len(p.series))
}

// startPairs puts the fill that is in the tank first, and a fresh one behind it.
func (w *walker) startPairs() {
	for i, s := range w.season.States {
		w.pairs.series[i].Lead = s.Column.Thin(pairTails)
	}
	w.behind(1, w.factors)
}

// behind puts a fresh tank last, which is the first, second, ... fill of the trip.
func (w *walker) behind(number int, last []float64) {
	p := w.pairs
	w.fill(number, last, func(i int, h learning.Hypothesis) {
		p.factors[i], p.contacts[i] = h.Factor, h.Efficiency
		p.series[i].Lag, p.series[i].Ratio = bed.Column{}, h.Factor/w.factors[i]
	})
}

// swap takes the first tank out, moves the second to its place, and puts a fresh one
// last.
func (w *walker) swap(number int) {
	p := w.pairs
	copy(w.factors, p.factors)
	copy(w.contacts, p.contacts)
	for i := range p.series {
		p.series[i].Lead = p.series[i].Lag
	}
	w.behind(number, w.factors)
}

// swaps are the legs before which to swap the tanks, beside those at which that is
// planned: before the first day on which a wash is at risk, and so on from there. That
// is the rule for tanks in series, and leaves little in the one that is taken out. Where
// a fresh tank does not halve the risk of that day, it is spared.
func (w *walker) swaps(planned, begins []bool) []int {
	var out []int
	w.start()
	fill := 0
	swap := func() {
		fill++
		w.refill(fill)
	}
	for from := 0; from < len(w.legs); {
		to := from + 1
		for to < len(w.legs) && !begins[to] {
			to++
		}
		if planned[from] {
			swap()
		}
		before := w.kept()
		if least := w.least(from, to); planner.VerdictOf(least) != planner.Lasts && !planned[from] {
			without := w.kept()
			w.put(before)
			swap()
			if 1-w.least(from, to) < (1-least)/2 {
				out = append(out, from)
			} else {
				fill--
				w.put(without)
			}
		}
		from = to
	}
	return out
}

// least goes through some legs, and gives the least chance among them; 1 where none
// counts.
func (w *walker) least(from, to int) quantity.Fraction {
	least := quantity.Fraction(1)
	for k := from; k < to; k++ {
		if !w.legs[k].barred {
			w.feed(k)
			least = min(least, w.chance())
		}
	}
	return least
}

// state is all that walking moves, for two tanks.
type state struct {
	factors, contacts, sums []float64
	pairs                   pairs
}

func (w *walker) kept() state {
	p := w.pairs
	return state{
		slices.Clone(w.factors), slices.Clone(w.contacts), slices.Clone(w.sums),
		pairs{slices.Clone(p.series), slices.Clone(p.factors), slices.Clone(p.contacts)},
	}
}

func (w *walker) put(s state) {
	w.factors, w.contacts, w.sums = s.factors, s.contacts, s.sums
	*w.pairs = s.pairs
}
