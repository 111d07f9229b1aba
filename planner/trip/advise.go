package trip

import (
	"math"

	"washeve/model/quantity"
	"washeve/planner"
)

// spoiled is how many fills of resin a wash that ends off spec is as dear as.
// PRACTICE: the day, the water, and the towels.
const spoiled = 1

// adviser finds where to change the resin with least waste: it tries a change
// before each day of washes, and counts what is thrown away with the resin, in
// fills, and the chance that a wash ends off spec.
//
// A fill that an advised one follows is not kept past a wash at risk where a change on
// that wash's day would mend it ([adviser.mends]): the advice is for the first wash at
// risk, not for one behind it. The last fill, and one that ends with a change that is
// planned, are weighed against the risk alone.
//
// For the fills to come it takes the closed form of a fresh bed
// ([bed.ClosedForm]) with the water summed up, which leaves out what the changes of
// flow do to the working layer; the chances of what it advises are then worked out
// in full.
type adviser struct {
	need   []float64   // stated capacities that each leg takes, in the middle
	summed []float64   // of all legs before
	reach  [][]float64 // by leg and contact: capacities that a fresh bed gives until the limit
	middle float64     // ln of the next fill's factor
	spread float64

	risk []float64 // of each leg, with the resin that is in the tank
	left []float64 // life left in it before each leg, on average

	days []int // first leg of each leg's day; nil where risk and waste alone are weighed
}

// contactsTried is how many contacts of equal chance stand for all.
const contactsTried = 5

func newAdviser(w *walker, risk, left []float64) *adviser {
	a := &adviser{risk: risk, left: left, summed: make([]float64, len(w.legs)+1)}
	contacts := make([]float64, contactsTried)
	for i := range contacts {
		contacts[i] = w.season.Refills.Contact((float64(i) + 0.5) / contactsTried)
	}
	for k := range w.legs {
		need, reach := 0.0, make([]float64, contactsTried)
		if l := &w.legs[k]; !l.barred {
			d := l.at()
			for _, u := range d.Uses {
				need += u.Capacities
			}
			for i, e := range contacts {
				n := e * d.Main.Units
				reach[i] = math.Inf(1)
				if d.Limit < d.Feed {
					reach[i] = math.Max(1+(1+math.Log(d.Limit/d.Feed))/n, 1e-6)
				}
			}
		}
		a.need, a.reach = append(a.need, need), append(a.reach, reach)
		a.summed[k+1] = a.summed[k] + need
	}
	a.middle, a.spread = nextFill(w.season)
	return a
}

// nextFill is the middle of ln of the next fill's factor and its spread, whatever
// the fill in the tank is.
func nextFill(s *planner.Season) (middle, spread float64) {
	square := 0.0
	for _, state := range s.States {
		at, _ := s.Refills.Factor(1, math.Log(state.Factor))
		middle += at / float64(len(s.States))
		square += at * at / float64(len(s.States))
	}
	_, own := s.Refills.Factor(1, 0)
	return middle, math.Sqrt(math.Max(square-middle*middle, 0) + own*own)
}

// off is the chance that a fresh fill that is fed so much is over the limit at the
// end of a leg.
func (a *adviser) off(fed float64, leg int) float64 {
	sum := 0.0
	for _, reach := range a.reach[leg] {
		if !math.IsInf(reach, 0) {
			sum += below((math.Log(fed/reach) - a.middle) / a.spread)
		}
	}
	return sum / contactsTried
}

// leftAfter is the life left on average: the mean of (1 - fed/(f reach)) where it
// is over nothing, f being lognormal.
func (a *adviser) leftAfter(fed float64, leg int) float64 {
	sum := 0.0
	for _, reach := range a.reach[leg] {
		if math.IsInf(reach, 0) || reach == 0 {
			sum++
			continue
		}
		share := fed / reach
		z := (math.Log(share) - a.middle) / a.spread
		mean := share * math.Exp(-a.middle+a.spread*a.spread/2)
		sum += (1 - below(z)) - mean*(1-below(z+a.spread))
	}
	return sum / contactsTried
}

// advise gives the legs before which to change, as [adviser.best] does, and the one where
// a single change costs least, below zero where none can be. Where no change is worth its
// waste, none is advised; where one is, though none for the first wash at risk after a
// planned change, it is advised all the same.
func (a *adviser) advise(planned, begins []bool) (all []int, once int) {
	if all = a.best(planned, begins); len(all) == 0 {
		return nil, a.once(planned, begins)
	}
	a.days = daysOf(begins)
	if first := a.best(planned, begins); len(first) > 0 {
		all = first
	}
	return all, a.once(planned, begins)
}

// daysOf is the first leg of each leg's day.
func daysOf(begins []bool) []int {
	days := make([]int, len(begins))
	for k := range begins {
		if days[k] = k; k > 0 && !begins[k] {
			days[k] = days[k-1]
		}
	}
	return days
}

// mends tells that a leg is at risk with a fill that began before an earlier day, or is
// in the tank (-1), and that a change on its own day would at least halve that.
func (a *adviser) mends(from, leg int, risk float64) bool {
	if a.days == nil || a.need[leg] == 0 || planner.VerdictOf(quantity.Fraction(1-risk)) == planner.Lasts {
		return false
	}
	day := a.days[leg]
	return day > from && a.off(a.summed[leg+1]-a.summed[day], leg) < risk/2
}

// atMost is how many legs the resin in the tank may serve, where no change is planned
// before.
func (a *adviser) atMost(planned []bool) int {
	for k, risk := range a.risk {
		if planned[k] {
			break
		}
		if a.mends(-1, k, risk) {
			return a.days[k]
		}
	}
	return len(a.risk)
}

// best gives the legs before which to change, beside the changes that are planned.
// Only a leg that begins a day may have one.
func (a *adviser) best(planned, begins []bool) []int {
	n := len(a.need)
	cost, from, most := make([]float64, n+1), make([]int, n+1), a.atMost(planned)
	for j := range cost { // the resin in the tank serves the legs before j
		cost[j], from[j] = math.Inf(1), -1
		if (j <= most || j < n && planned[j]) && within(planned, 0, j) {
			cost[j] = a.present(j)
		}
	}
	for i := range n { // a new fill serves those from i on
		if (begins[i] || planned[i]) && !math.IsInf(cost[i], 0) {
			a.extend(i, planned, cost, from)
		}
	}
	var out []int
	for j := n; j > 0 && from[j] >= 0; j = from[j] {
		if !planned[from[j]] {
			out = append([]int{from[j]}, out...)
		}
	}
	return out
}

// extend tries a fill that begins before a leg to each end that it may have.
func (a *adviser) extend(from int, planned []bool, cost []float64, begun []int) {
	risk, n, past := 0.0, len(a.need), false
	for j := from + 1; j <= n && within(planned, from+1, j); j++ {
		fed := a.summed[j] - a.summed[from]
		if a.need[j-1] > 0 {
			off := a.off(fed, j-1)
			risk += off
			past = past || a.mends(from, j-1, off)
		}
		if past && j < n && !planned[j] {
			continue
		}
		c := cost[from] + spoiled*risk
		if j < n {
			c += a.leftAfter(fed, j-1)
		}
		if c < cost[j]-1e-9 {
			cost[j], begun[j] = c, from
		}
	}
}

// once gives the leg before which a single change, beside those that are planned, costs
// least; below zero where none can be.
func (a *adviser) once(planned, begins []bool) int {
	best, least, most := -1, math.Inf(1), a.atMost(planned)
	for from, n := 0, len(planned); from < n; {
		to := from + 1
		for to < n && !planned[to] {
			to++
		}
		without := a.serve(from, to, planned)
		for k := from; k < to; k++ {
			if begins[k] && !planned[k] && k <= most {
				if c := a.serve(from, k, planned) + a.fresh(k, to) - without; c < least-1e-9 {
					best, least = k, c
				}
			}
		}
		from = to
	}
	return best
}

// serve is what it costs to serve the legs from one to before another with the resin
// that is in the tank by then.
func (a *adviser) serve(from, to int, planned []bool) float64 {
	if from == 0 && !planned[0] {
		return a.present(to)
	}
	return a.fresh(from, to)
}

// fresh is the same with a new fill; where it is not the end, it is thrown out then.
func (a *adviser) fresh(from, to int) float64 {
	cost := 0.0
	for j := from + 1; j <= to; j++ {
		if a.need[j-1] > 0 {
			cost += spoiled * a.off(a.summed[j]-a.summed[from], j-1)
		}
	}
	if to > from && to < len(a.need) {
		cost += a.leftAfter(a.summed[to]-a.summed[from], to-1)
	}
	return cost
}

// present is what it costs to serve the legs before one with the resin that is in
// the tank and, where it is not the end, to throw it out then.
func (a *adviser) present(to int) float64 {
	cost := 0.0
	for k := range to {
		cost += spoiled * a.risk[k]
	}
	if to < len(a.need) {
		cost += a.left[to]
	}
	return cost
}

// within tells that no change is planned before the legs from one to before
// another.
func within(planned []bool, from, to int) bool {
	for k := from; k < to; k++ {
		if planned[k] {
			return false
		}
	}
	return true
}
