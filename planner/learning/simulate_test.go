package learning

import (
	"math"
	"math/rand/v2"

	"washeve/planner/bed"
)

// simulated is a fill whose truth is known.
type simulated struct {
	fill               Fill
	factor, gallons, e float64 // gallons: true ones over those logged
	column             bed.Column
	job                Job
	load               float64 // of the water to come, over what is thought
	remaining          float64
}

// drawTruth draws a bed and the gallons' factor from an outset.
func (s *simulated) drawTruth(r *rand.Rand, o Outset) {
	for {
		s.factor = math.Exp(o.median + o.spread*r.NormFloat64())
		s.gallons = math.Exp(ThroughputSpread * r.NormFloat64())
		z := (math.Log(s.factor/s.gallons) - o.median) / math.Hypot(o.spread, ThroughputSpread)
		if math.Abs(z) <= Reach {
			break
		}
	}
	s.e = efficiencyAt(math.Sqrt(r.Float64())) // the density of t is 2t
}

// use feeds so much of what would be logged.
func (s *simulated) use(u Use) {
	s.fill.Uses = append(s.fill.Uses, u)
	s.column = s.column.Feed(s.e*u.Units, s.gallons*u.Capacities/s.factor)
}

// read takes a reading with a pen that errs, and once in a hundred shows
// something else.
func (s *simulated) read(r *rand.Rand, feed, units float64, odd bool) {
	z := shown(feed*s.column.Outlet(s.e*units)) + PenSpread*r.NormFloat64()
	if odd && r.Float64() < OddShare {
		low := shown(0) - oddBelow
		z = low + r.Float64()*(shown(2*feed)-low)
	}
	read := math.Max(math.Exp(z)-PenFloor, 0)
	s.fill.Readings = append(s.fill.Readings, Reading{Evidence: Evidence{read, feed, units}, After: len(s.fill.Uses)})
}

// simulate makes a fill of some washes with varied flows and waters, readings at
// most of them, and a job after.
func simulate(r *rand.Rand, o Outset) simulated {
	var s simulated
	s.drawTruth(r, o)
	washes := 1 + r.IntN(12)
	total := 0.1 + 1.1*r.Float64()
	places := []float64{120, 250, 420}
	for range washes {
		feed := places[r.IntN(len(places))]
		sprayer := 10 + 25*r.Float64()
		if r.Float64() < 0.3 {
			s.use(Use{Capacities: 0.1 * total / float64(washes), Units: 5 + 5*r.Float64()})
		}
		s.use(Use{Capacities: total / float64(washes) * (0.4 + 1.2*r.Float64()), Units: sprayer})
		if r.Float64() < 0.8 {
			s.read(r, feed, sprayer, true)
		}
		if r.Float64() < 0.1 {
			cup := Reading{Evidence: Evidence{1, feed, sprayer}, After: len(s.fill.Uses), Standing: true}
			s.fill.Readings = append(s.fill.Readings, cup)
		}
	}
	s.lookAhead(Use{Capacities: 0.002 + 0.003*r.Float64(), Units: 10 + 25*r.Float64()}, 10/places[r.IntN(3)], math.Exp(LoadSpread*r.NormFloat64()))
	return s
}

// lookAhead works out what is truly left.
func (s *simulated) lookAhead(gallon Use, limit, load float64) {
	s.load = load
	s.job = Job{Main: gallon, Limit: limit, LoadSpread: LoadSpread, Uses: []Use{{gallon.Capacities * 30, gallon.Units}}}
	s.remaining = s.column.Until(s.e*gallon.Units, limit) * s.factor / (load * gallon.Capacities)
}

// remainingOf is what a state has left.
func (j Job) remainingOf(s State) float64 {
	return s.Column.Until(s.Efficiency*j.Main.Units, j.Limit) * s.Factor / (math.Exp(j.LoadSpread*s.luck) * j.Main.Capacities)
}

// rank of the truth among the states, 0 to 1; among equals at random.
func rank(r *rand.Rand, states []State, truth float64, value func(State) float64) float64 {
	below, same, all := 0.0, 0.0, 0.0
	for _, s := range states {
		all += s.Weight
		switch v := value(s); {
		case v == truth:
			same += s.Weight
		case v < truth:
			below += s.Weight
		}
	}
	if same == 0 {
		return below / all
	}
	return (below + same*r.Float64()) / all
}

// chiSquare of ranks in even bins.
func chiSquare(ranks []float64, bins int) float64 {
	count := make([]float64, bins)
	for _, u := range ranks {
		count[min(int(u*float64(bins)), bins-1)]++
	}
	want, sum := float64(len(ranks))/float64(bins), 0.0
	for _, c := range count {
		sum += (c - want) * (c - want) / want
	}
	return sum
}

func within(ranks []float64, low, high float64) float64 {
	n := 0
	for _, u := range ranks {
		if u >= low && u <= high {
			n++
		}
	}
	return float64(n) / float64(len(ranks))
}

// twoThirds is a fill of ten washes with a reading at each, that has used two
// thirds of what it truly gives at the job's flow and limit. One reading in so
// many is taken at the flow of a bucket fill.
func twoThirds(r *rand.Rand, bucketEvery int) simulated {
	var s simulated
	s.drawTruth(r, Start())
	feeds := []float64{120, 250, 420}
	gallon, limit := Use{Capacities: 0.003, Units: unitsAt(r, 1.4+1.1*r.Float64())}, 10.0/250
	life := bed.Column{}.Until(s.e*gallon.Units, limit) * s.factor / s.gallons
	for i := range 10 {
		units, feed := unitsAt(r, 1.4+1.1*r.Float64()), feeds[r.IntN(len(feeds))]
		s.use(Use{Capacities: life * 2 / 3 / 10, Units: units})
		if i%bucketEvery == bucketEvery-1 {
			units = unitsAt(r, 5)
		}
		s.read(r, feed, units, false)
	}
	s.lookAhead(gallon, limit, 1)
	s.job.LoadSpread = 0
	return s
}

// unitsAt are the transfer units of half a cubic foot in 8 in at a flow in gpm,
// 27.1 at 1.4 gpm on softened water of 25 C; fewer on hard water, whose slowest
// ion is calcium, and on cold water.
func unitsAt(r *rand.Rand, gpm float64) float64 {
	hard := []float64{0.71, 1}[r.IntN(2)]
	cold := 0.67 + 0.33*r.Float64()
	return 27.1 * math.Pow(1.4/gpm, 2.0/3) * hard * cold
}
