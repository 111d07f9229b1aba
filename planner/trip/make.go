package trip

import (
	"cmp"
	"slices"
	"sort"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
)

// Make plans a trip. Errors are those of [planner.Make]: what of the rig or the
// places is lacking. A trip without washes has a plan that says little.
func Make(in Input) (Plan, error) { return new(Memory).Make(in) }

// Make is [Make] with the memory; it has the same answer.
func (m *Memory) Make(in Input) (Plan, error) {
	base := model.Wash{Bed: in.Trip.Bed, Softener: in.Trip.Softener, Feed: in.Trip.Feed, Limit: in.Trip.Limit}
	if err := m.begin(&in, base); err != nil {
		return Plan{}, err
	}
	stops := stopsByDate(&in.Trip)
	t := &tripping{in: &in, season: &m.season, loads: m.loads, stops: stops, legs: in.legs(stops)}
	if err := m.ask(&in, t.legs, stops); err != nil {
		return Plan{}, err
	}
	t.begin()
	t.changes()
	t.chances()
	t.advise()
	if in.Ordered && !t.plan.Over {
		t.orders()
	}
	t.softener()
	t.cost()
	t.carry()
	t.tell()
	t.coming(m)
	return t.plan, nil
}

// tripping is a plan on its way.
type tripping struct {
	in     *Input
	season *planner.Season
	stops  []int // of the trip's list, by date
	legs   []leg

	loads   loadTable
	walker  *walker
	planned []bool // a change is planned before the leg
	begins  []bool // the leg is the first of its day
	fills   []int  // of each leg, with the planned changes
	left    []float64
	plan    Plan
}

// begin fills in what is stated.
func (t *tripping) begin() {
	p, trip := &t.plan, &t.in.Trip
	p.season = *t.season
	p.Scale = t.season.Scale
	p.Name, p.Bed, p.FirstAtRisk = trip.Name, t.season.Bed.Name, -1
	p.First, p.Last, _ = trip.Days()
	p.Over = t.in.Today != model.Date{} && p.Last != model.Date{} && p.Last.Compare(t.in.Today) < 0
	past := t.in.Past.Bed(p.Bed)
	p.ToFill = trip.Fill == model.Yes && (past == nil || !past.Present().Began.Given())
	p.Lead = trip.Lead.Or(planner.LeadTime)
	for _, i := range t.stops {
		s := &trip.Stops[i]
		stop := StopPlan{Index: i, Name: s.Called(), From: s.Date.Or(model.Date{}), Unknown: s.Unknown(), Limits: s.Limits}
		if s.Hookup == model.TankOnly {
			stop.OnHand = s.OnHand
		}
		stop.TDS = t.waterAt(s)
		p.Stops = append(p.Stops, stop)
	}
	for k := range t.legs {
		w := &trip.Washes[t.legs[k].index]
		p.Washes = append(p.Washes, t.legs[k].shown(w))
		p.Washes[k].Assumed = trip.Assumed(w)
		t.count(k)
	}
}

// waterAt is what a pen may show at a stop, with or without a wash there; nothing where
// its place is not known.
func (t *tripping) waterAt(s *model.Stop) Band[float64] {
	places := t.in.placesAt(s)
	low, known := t.season.Raw(places[0])
	middle, _ := t.season.Raw(places[len(places)/2])
	high, _ := t.season.Raw(places[len(places)-1])
	if !known {
		return Band[float64]{}
	}
	return Band[float64]{P10: low, P50: middle, P90: high}
}

// count adds a wash to its stop.
func (t *tripping) count(k int) {
	l := &t.legs[k]
	s := &t.plan.Stops[l.stop]
	low, middle, high := &l.demands[0], l.at(), l.worst()
	s.TDS = Band[float64]{P10: low.Raw, P50: middle.Raw, P90: high.Raw}
	t.plan.Scale = middle.Scale
	if l.barred {
		return
	}
	s.Washes++
	s.Needs += high.DI.Volume + high.Soft.Volume + high.Untreated.Volume + high.Flush.Volume
}

// shown is the wash as far as it is settled before any chance.
func (l *leg) shown(w *model.TripWash) WashPlan {
	out := WashPlan{
		Index: l.index, Name: w.Called(), Date: l.day, Stop: l.stop, Other: l.other, Barred: l.barred, Rinse: l.rinse,
	}
	if l.barred {
		return out
	}
	band := func(of func(*planner.Demand) quantity.Volume) Band[quantity.Volume] {
		return Band[quantity.Volume]{P10: of(&l.demands[0]), P50: of(l.at()), P90: of(l.worst())}
	}
	out.DI = band(func(d *planner.Demand) quantity.Volume { return d.DI.Volume })
	out.Soft = band(func(d *planner.Demand) quantity.Volume { return d.Soft.Volume })
	out.Untreated = band(func(d *planner.Demand) quantity.Volume { return d.Untreated.Volume })
	d := l.at()
	out.Flush = d.Flush.Volume
	out.Time = d.DI.Duration + d.Soft.Duration + d.Untreated.Duration + d.Flush.Duration
	return out
}

// changes places the changes that are planned before the legs.
func (t *tripping) changes() {
	n := len(t.legs)
	t.planned, t.begins, t.fills = make([]bool, n), make([]bool, n), make([]int, n)
	for k := range t.legs {
		t.begins[k] = k == 0 || t.legs[k].day != t.legs[k-1].day
	}
	for i := range t.in.Trip.Changes {
		c := &t.in.Trip.Changes[i]
		day, given := c.Date.Get()
		if !given {
			continue
		}
		before, _ := slices.BinarySearchFunc(t.legs, day, func(l leg, d model.Date) int { return cmp.Or(l.day.Compare(d), 1) })
		price := c.Price
		if !price.Given() {
			price = t.season.Bed.Price
		}
		t.plan.Changes = append(t.plan.Changes, ChangePlan{Index: i, Date: day, Before: before, Price: price})
	}
	t.sortChanges()
	fill := 0
	for k := range t.legs {
		for _, c := range t.plan.Changes {
			if c.Before == k {
				t.planned[k] = true
			}
		}
		if t.planned[k] {
			fill++
		}
		t.fills[k] = fill
		t.plan.Washes[k].Fill = fill
	}
}

// better are the legs before which to change the resin beside the changes that are
// planned, with two tanks to swap them; and the one where a single change brings most,
// below zero where there is none. risk is that of each leg.
func (t *tripping) better(risk []float64) (all []int, once int) {
	if t.walker.pairs == nil {
		return newAdviser(t.walker, risk, t.left).advise(t.planned, t.begins)
	}
	all, once = t.walker.swaps(t.planned, t.begins), -1
	if len(all) > 0 {
		once = all[0]
	}
	return all, once
}

func (t *tripping) sortChanges() {
	all := t.plan.Changes
	sort.SliceStable(all, func(i, j int) bool { return all[i].Date.Compare(all[j].Date) < 0 })
}

// chances walks the trip with the changes that are planned.
func (t *tripping) chances() {
	t.walker = newWalker(t.season, t.legs, t.waterOf, t.loads)
	if t.in.Setting.Behind {
		t.walker.pairs = newPairs(len(t.season.States))
	}
	t.walker.start()
	t.left = make([]float64, len(t.legs)+1)
	p := &t.plan
	p.Start, t.left[0] = t.walker.lifeNow()
	p.AllOnSpec = 1
	t.walker.walk(t.fills, false, func(k int, s seen) {
		w := &p.Washes[k]
		w.Chance, w.SoFar, w.Advised = s.chance, s.soFar, s.chance
		w.Verdict, w.Outlet, w.Life = planner.VerdictOf(s.chance), s.outlet, s.life
		t.left[k+1] = s.meanLife
		p.AllOnSpec = s.soFar
		if w.Verdict != planner.Lasts && p.FirstAtRisk < 0 {
			p.FirstAtRisk = k
		}
	})
	for k := range t.legs {
		if t.legs[k].barred {
			t.left[k+1] = t.left[k]
		}
	}
	p.AllAdvised = p.AllOnSpec
}

// waterOf is what two stops with one water have in common.
func (t *tripping) waterOf(stop int) string {
	s := &t.in.Trip.Stops[t.stops[stop]]
	if s.Unknown() {
		return "\x00" + s.Called()
	}
	return strings.ToLower(s.Place)
}

// advise finds where a change has least waste, and walks the trip again with it. A trip
// that is over is advised nothing.
func (t *tripping) advise() {
	p := &t.plan
	n := len(t.legs)
	risk := make([]float64, n)
	for k := range p.Washes {
		if !p.Washes[k].Barred {
			risk[k] = 1 - float64(p.Washes[k].Chance)
		}
	}
	for i := range p.Changes {
		p.Changes[i].Wasted = quantity.Fraction(t.left[min(p.Changes[i].Before, n)])
	}
	if p.FirstAtRisk < 0 || p.Over {
		return
	}
	advised, once := t.better(risk)
	if once >= 0 {
		p.Once = quantity.Some(t.legs[once].day)
	}
	if len(advised) == 0 {
		return
	}
	fills, fill := make([]int, n), 0
	for k := range fills {
		if t.planned[k] || slices.Contains(advised, k) {
			fill++
		}
		fills[k] = fill
	}
	left := slices.Clone(t.left)
	t.walker.walk(fills, true, func(k int, s seen) {
		p.Washes[k].Advised, p.AllAdvised, left[k+1] = s.chance, s.soFar, s.meanLife
	})
	for _, k := range advised {
		p.Changes = append(p.Changes, ChangePlan{
			Index: -1, Date: t.legs[k].day, Before: k, Advised: true, Wasted: quantity.Fraction(left[k]), Price: t.season.Bed.Price,
		})
	}
	t.sortChanges()
}

// assumptions lists what was stated of the trip or taken instead.
func (t *tripping) assumptions() []tag.Assumption {
	source := tag.Source{Tag: tag.Yours, Text: "you stated it"}
	if !t.in.Trip.Lead.Given() {
		source = tag.FromPractice("how long resin takes to come")
	}
	all := []tag.Assumption{
		tag.Quantity("lead time", t.plan.Lead, source),
		{Name: "bed at the start", Words: "as it stands today; a wash before the trip counts once it is logged, or as a line of the trip", Source: tag.FromPractice("only what is written down is counted")},
	}
	if target, given := t.in.Trip.Target.Get(); given {
		words := target.String()
		if t.idleTarget() {
			words += ", which sets no gallons: covering each face once takes more than reaching it"
		}
		all = append(all, tag.Assumption{Name: "target in the film", Words: words, Source: tag.Source{Tag: tag.Yours, Text: "you stated it"}})
	}
	return append(all, Constants()...)
}
