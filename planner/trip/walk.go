package trip

import (
	"math"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/learning"
)

// walker takes all the ways in which the bed may be through the washes of a trip
// together. Each state keeps its capacity and its contact for the whole of a fill,
// the error of each place's load for all washes there, and its place in the band of
// each unknown water.
type walker struct {
	season *planner.Season
	legs   []leg
	loads  map[int][]float64 // by stop: load over what is thought, by state
	bands  map[int][]float64 // by stop of unknown water: where in the band, by state

	// By state, of the fill on its way:
	factors, contacts []float64
	fed               []float64 // stated capacities
	sums              []float64 // of ln of the factors of the fills before
	fronts            *fronts   // of one tank
	pairs             *pairs    // of two in series; nil for one tank
	hardest           end       // of a bed, on the hardest water

	// By state, of the last wash:
	margins, outlets, lives []float64
}

// seen is what a wash shows of all states.
type seen struct {
	chance, soFar quantity.Fraction
	outlet        Band[float64]
	life          Band[quantity.Fraction]
	meanLife      float64 // after it
}

// Axes of the lattice: two for each of the first fills, and the rest for the bands,
// in the order in which they are met.
const (
	fillAxis   = learning.StateAxes // and the next
	fillsApart = 3
	bandAxis   = fillAxis + 2*fillsApart
)

func newWalker(s *planner.Season, legs []leg, placeOf func(stop int) string, loads loadTable) *walker {
	n := len(s.States)
	w := &walker{season: s, legs: legs, loads: map[int][]float64{}, bands: map[int][]float64{}}
	for _, at := range []*[]float64{&w.factors, &w.contacts, &w.fed, &w.sums, &w.margins, &w.outlets, &w.lives} {
		*at = make([]float64, n)
	}
	w.hardest = hardestEnd(legs)
	places, bands := map[string][]float64{}, 0
	for k := range legs {
		l := &legs[k]
		if w.loads[l.stop] != nil || l.barred {
			continue
		}
		name := placeOf(l.stop)
		if places[name] == nil {
			places[name] = loads.of(l.at().LoadSpread, len(places))
		}
		w.loads[l.stop] = places[name]
		if len(l.demands) > 1 {
			w.bands[l.stop] = band(bands)
			bands++
		}
	}
	return w
}

// loadTable keeps the loads of places from one plan to the next, by the number of the
// place and how far its load may be off.
type loadTable map[loadKey][]float64

type loadKey struct {
	place  int
	spread float64
}

// of is the load of a place over what is thought, by state.
func (t loadTable) of(spread float64, place int) []float64 {
	if known := t[loadKey{place, spread}]; known != nil {
		return known
	}
	out := learning.Loosely(2 * place)
	for i, u := range out {
		out[i] = math.Exp(spread * normal(middling(u)))
	}
	t[loadKey{place, spread}] = out
	return out
}

// band is where in the band of an unknown water each state is.
func band(number int) []float64 {
	if axis := bandAxis + number; axis < learning.StrongAxes {
		return learning.Evenly(axis)
	}
	return learning.Loosely(2*number + 1)
}

// start puts the fill that is in the tank into all states.
func (w *walker) start() {
	middle := 0.0
	for i, s := range w.season.States {
		w.factors[i], w.contacts[i], w.sums[i] = s.Factor, s.Efficiency, 0
		w.fed[i] = alike(s.Column, s.Factor, s.Efficiency, w.season.Units)
		middle += w.fed[i] / float64(len(w.fed))
	}
	if w.pairs != nil {
		w.startPairs()
		return
	}
	w.begin(middle)
}

// begin starts the columns of a fill.
func (w *walker) begin(fed float64) {
	low, high := math.Inf(1), 0.0
	for i, e := range w.contacts {
		k := e / w.factors[i]
		low, high = math.Min(low, k), math.Max(high, k)
	}
	w.fronts = newFronts(math.Log(low), math.Log(high), fed, w.season.Units)
}

// refill puts a new fill into all states, the first, second, ... of the trip; with
// two tanks, it swaps them.
func (w *walker) refill(number int) {
	if w.pairs != nil {
		w.swap(number + 1)
		return
	}
	w.fill(number, w.factors, func(i int, h learning.Hypothesis) {
		w.factors[i], w.contacts[i], w.fed[i] = h.Factor, h.Efficiency, 0
	})
	w.begin(0)
}

// fill draws a new fill for each state, the first, second, ... of the trip, given the
// factors of the last one.
func (w *walker) fill(number int, last []float64, put func(state int, h learning.Hypothesis)) {
	round := float64((number - 1) / fillsApart)
	axis := fillAxis + 2*((number-1)%fillsApart)
	first, second := learning.Evenly(axis), learning.Evenly(axis+1)
	for i := range w.factors {
		_, u := math.Modf(first[i] + round*math.Phi)
		_, v := math.Modf(second[i] + round*math.Phi)
		w.sums[i] += math.Log(last[i])
		put(i, w.season.Refills.Fill(number, w.sums[i], middling(u), middling(v)))
	}
}

// middling keeps a part from its very ends.
func middling(u float64) float64 { return math.Min(math.Max(u, 1e-4), 1-1e-4) }

// walk goes through the legs, with a change of resin wherever the number of the fill
// rises, and tells what each shows; briefly: no bands.
func (w *walker) walk(fills []int, brief bool, tell func(leg int, s seen)) {
	w.start()
	worst := make([]float64, len(w.factors))
	for i := range worst {
		worst[i] = math.Inf(1)
	}
	fill := 0
	for k := range w.legs {
		for ; fill < fills[k]; fill++ {
			w.refill(fill + 1)
		}
		if !w.legs[k].barred {
			w.feed(k)
			tell(k, w.look(worst, brief))
		}
	}
}

// feed takes one wash from all states. One that takes no DI water is at no risk, and
// has no outlet: not a number.
func (w *walker) feed(k int) {
	l := &w.legs[k]
	for i := range w.margins {
		w.margins[i], w.outlets[i] = math.Inf(1), math.NaN()
	}
	var ask demanded
	for use := range l.at().Uses {
		if ask.of(l, use, 0.5); w.pairs == nil {
			w.fronts.feed(ask.units, ask.capacities)
		}
		w.feedAll(l, use)
	}
}

// feedAll moves all states to the end of one use of a wash.
func (w *walker) feedAll(l *leg, use int) {
	load, band := w.loads[l.stop], w.bands[l.stop]
	var ask demanded
	ask.of(l, use, 0.5)
	for i := range w.contacts {
		if band != nil {
			ask.of(l, use, band[i])
		}
		w.pass(i, ask.units, load[i]*ask.capacities)
		e, fed, y := w.at(i)
		reach := e + ask.lnLimit/ask.units // the depth at which the outlet is at the limit
		margin := reach - y
		if ask.lnLimit >= 0 { // the water keeps the limit by itself
			margin = math.Inf(1)
		}
		w.margins[i] = min(margin, w.margins[i])
		w.outlets[i] = ask.lnFeed + min(-ask.units*(e-y), 0)
		w.lives[i] = w.hardest.left(e, fed, y)
	}
}

// pass lets a state pass so many stated capacities at so many units.
func (w *walker) pass(i int, units, capacities float64) {
	w.fed[i] += capacities
	if w.pairs != nil {
		w.pairs.feed(i, w.contacts[i], w.factors[i], units, capacities)
	}
}

// at is the contact of a state, what it has been fed and where its front stands, all as
// depths; of two tanks, those of both together.
func (w *walker) at(i int) (contact, fed, front float64) {
	if w.pairs != nil {
		return w.pairs.at(i, w.contacts[i])
	}
	k := w.contacts[i] / w.factors[i]
	return w.contacts[i], k * w.fed[i], w.fronts.at(k * w.fed[i] / math.Max(w.fronts.fed, 1e-12))
}

// demanded is what one use of a wash asks at one place in the band of its water.
type demanded struct {
	units, capacities, lnFeed, lnLimit float64
}

// of reads it off between the waters that were worked out, in straight lines.
func (d *demanded) of(l *leg, use int, u float64) {
	x := u * float64(len(l.demands)-1)
	i := min(int(x), max(len(l.demands)-2, 0))
	a := &l.demands[i]
	b := &l.demands[min(i+1, len(l.demands)-1)]
	part := x - float64(i)
	mix := func(p, q float64) float64 { return p + part*(q-p) }
	from, to := a.Uses[min(use, len(a.Uses)-1)], b.Uses[min(use, len(b.Uses)-1)]
	d.units, d.capacities = mix(from.Units, to.Units), mix(from.Capacities, to.Capacities)
	d.lnFeed = math.Log(mix(a.Feed, b.Feed))
	d.lnLimit = math.Log(mix(a.Limit, b.Limit)) - d.lnFeed
}
