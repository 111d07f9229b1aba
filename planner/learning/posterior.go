package learning

import (
	"math"
	"slices"
)

// Posterior is what is believed of a fill after its uses and readings.
type Posterior struct {
	States      []State     // where the bed may stand now, all of one weight
	Factor      Quantiles   // of the capacity factor
	Contact     Quantiles   // of the contact efficiency
	Used        int         // readings that taught something: none that fits no bed
	Unexplained []Suspect   // readings that fit no bed, by index
	Expected    []Quantiles // ppm that each reading should have shown; NaN for one that cannot be

	outset  Outset
	weighed int // readings, those that fit no bed and were not set aside with them
	fill    Fill
	draws   draws
	mass    float64 // ln of how well the outset foresaw the readings
	search  *search // that the draws are from
	ages    []age   // that the fill may be of, where nobody said it and its readings tell; see [Outset.Older]
}

// moments are the mean and the variance.
type moments struct{ mean, variance float64 }

const (
	// mostStates bounds the work of an outlook.
	mostStates = 240
	// The contacts that a search walks.
	coarseContacts, fineContacts = 10, 24
	// The steps of ln k at which the front is replayed; between, it is near
	// enough a straight line: at N = 30 and the fine step the outlet is off by
	// less than 1 %.
	fineFronts, coarseFronts = 0.04, 0.08
)

// Learn replays a fill and weighs its readings.
//
// Every reading is ln(reading + 5 ppm), normal about the model with spread 0.25
// (PRACTICE), or with [OddShare] something else
// altogether: then it says next to nothing. What is more likely odd than not is
// listed in Unexplained, with what may be behind it, and so are readings that leak
// the same share of the feed as two such. What is odd all but certainly is set aside, so
// that the answer is what it is without it. A pen that is on another
// scale altogether is found from all readings together, and then none of its
// readings count.
//
// Bad uses and readings (no flow, no feed, not a number) are passed over. The
// work grows with uses times readings.
func (o Outset) Learn(f Fill) Posterior {
	p := o.learn(f, nil)
	if scaled, found := o.otherScale(f, p); found {
		plain := p.Unexplained
		p = o.learn(f, scaled.readings)
		p.Unexplained = scaled.suspects(f, plain)
	} else if aside := append(p.certain(), p.companions()...); len(aside) > 0 {
		p = o.learn(f, aside)
	}
	p.States = p.draws.states(f.course())
	return p
}

// learn weighs the readings of a fill but for those set aside, short of the
// states.
func (o Outset) learn(f Fill, aside []int) Posterior {
	told := f.without(aside)
	c := told.course()
	s := newSearch(o, c, told.sights(c), fineFronts)
	s.run(coarseContacts, fineContacts)
	d := s.draw(mostStates)
	p := Posterior{outset: o, fill: f, weighed: len(s.sights), mass: lnSum(s.cells), draws: d, search: s}
	p.Factor, p.Contact = d.quantilesOf(func(x drawn) float64 { return x.factor }), d.quantilesOf(func(x drawn) float64 { return x.e })
	p.foresee(s, f.foreseeable(c), d, aside)
	p.Used = p.weighed
	for _, odd := range p.Unexplained {
		if !slices.Contains(aside, odd.ReadingIndex) {
			p.Used--
		}
	}
	return p
}

// without leaves some readings out: as if not flushed, so that indices stay.
func (f Fill) without(indices []int) Fill {
	f.Readings = slices.Clone(f.Readings)
	for _, i := range indices {
		f.Readings[i].Standing, f.Readings[i].Insisted = true, false
	}
	return f
}

// part is how much of what is learned of ln r goes to ln f, r being f over the
// gallons' factor: both are normal, so it is their share of the variance.
func (s *search) part() (share, rest float64) {
	share = s.outset.spread * s.outset.spread / (s.spread * s.spread)
	return share, math.Sqrt(share) * ThroughputSpread
}

// momentsOfFactor are those of ln f.
func (s *search) momentsOfFactor() moments {
	all := lnSum(s.cells)
	var m moments
	square := 0.0
	for _, c := range s.cells {
		w := math.Exp(c.ln - all)
		r := math.Log(c.e) - (c.low+c.high)/2 - s.outset.median
		m.mean += w * r
		square += w * (r*r + (c.high-c.low)*(c.high-c.low)/12)
	}
	share, rest := s.part()
	m.variance = share*share*(square-m.mean*m.mean) + rest*rest
	m.mean = s.outset.median + share*m.mean
	return m
}

// contactLesson is how much more likely the readings made each contact.
func (s *search) contactLesson() contactLesson {
	var after, before contactLesson
	all := lnSum(s.cells)
	for _, c := range s.cells {
		after.share(c.t-c.width/2, c.t+c.width/2, math.Exp(c.ln-all))
	}
	total := 0.0
	for i := range before {
		before[i] = math.Exp(s.outset.lnContact((float64(i) + 0.5) / contactSteps))
		total += before[i]
	}
	const least = 1e-4 // keeps an unlikely contact from being ruled out
	for i := range after {
		after[i] = math.Log((after[i] + least) / (before[i]/total + least))
	}
	return after
}

// share lays a mass evenly over a stretch of t.
func (l *contactLesson) share(low, high, mass float64) {
	for i := range l {
		from, to := float64(i)/contactSteps, float64(i+1)/contactSteps
		if over := math.Min(high, to) - math.Max(low, from); over > 0 {
			l[i] += mass * over / (high - low)
		}
	}
}

// Belief is the posterior of capacity and contact, for [Curve].
func (p Posterior) Belief() Belief {
	belief := make(Belief, len(p.States))
	for i, s := range p.States {
		belief[i] = s.Hypothesis
	}
	return belief
}

// Middle is one way the bed may stand that is in the middle of them all. Before
// any reading that is the median capacity and contact with the gallons as told;
// after, a state that has the median capacity left, and of those near it the
// one with the most usual contact.
func (p Posterior) Middle() State {
	if p.weighed == 0 || len(p.States) == 0 {
		h := p.outset.Belief().Middle()
		return h.after(p.fill.Uses)
	}
	states := slices.Clone(p.States)
	slices.SortFunc(states, func(a, b State) int { return ascending(a.left(), b.left()) })
	near := states[len(states)*9/20 : len(states)*11/20+1]
	best := near[0]
	for _, s := range near {
		if math.Abs(s.Efficiency-p.Contact[1]) < math.Abs(best.Efficiency-p.Contact[1]) {
			best = s
		}
	}
	best.Weight = 1
	return best
}

// left is the capacity that is not taken, in stated capacities.
func (s State) left() float64 { return s.Factor * (1 - s.Column.Used()) }
