package trip

import (
	"cmp"
	"slices"
	"sort"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/rinse"
	"washeve/planner/water"
)

// The band of a water that nobody knows, where none is stated. PRACTICE: most tap
// water lies in it.
const (
	unknownLow  = 100 // ppm NaCl
	unknownHigh = 600
	softest     = 3 * quantity.Hardness(quantity.Grain/quantity.Capacity(quantity.Gallon))
	hardest     = 25 * quantity.Hardness(quantity.Grain/quantity.Capacity(quantity.Gallon))
)

// leg is one wash of the trip with all that is decided about it.
type leg struct {
	index   int // in the trip's list
	day     model.Date
	stop    int // in the stops by date
	wash    model.Wash
	barred  bool
	rinse   bool
	other   bool
	demands []planner.Demand // one; low, middle and high where the water is a band
}

// at is the demand in the middle of what the water may be.
func (l *leg) at() *planner.Demand { return &l.demands[len(l.demands)/2] }

// worst is the demand with the most of what the water may be.
func (l *leg) worst() *planner.Demand { return &l.demands[len(l.demands)-1] }

// stopsByDate gives the order of the stops that have a day.
func stopsByDate(t *model.Trip) []int {
	var order []int
	for i := range t.Stops {
		if t.Stops[i].Date.Given() {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return t.Stops[a].Date.Or(model.Date{}).Compare(t.Stops[b].Date.Or(model.Date{}))
	})
	return order
}

// legs lists the washes by date, those of one day by stop and then in the trip's order. A wash
// without a day, or before the first stop, cannot be placed, and is left out.
func (in *Input) legs(stops []int) []leg {
	t := &in.Trip
	var legs []leg
	for i := range t.Washes {
		day, given := t.Washes[i].Date.Get()
		if !given {
			continue
		}
		at, _ := t.StopOf(&t.Washes[i])
		stop := slices.Index(stops, at)
		if stop < 0 {
			continue
		}
		l := leg{index: i, day: day, stop: stop, other: t.Washes[i].DI.Given()}
		limits := t.Stops[stops[stop]].Limits
		l.barred = limits == model.NotAllowed && !l.other
		l.rinse = limits == model.RinseOnly && !l.other
		l.wash = in.washOf(&t.Washes[i], &t.Stops[stops[stop]], l.rinse)
		legs = append(legs, l)
	}
	sort.SliceStable(legs, func(i, j int) bool {
		a, b := &legs[i], &legs[j]
		return cmp.Or(a.day.Compare(b.day), cmp.Compare(a.stop, b.stop)) < 0
	})
	return legs
}

// FirstWash is the first wash of the trip that counts, as one that could be planned by
// itself, with its place; of an unknown water, in the middle of the band. Another use
// of the bed counts where there is no wash, as the usual one. It is false where
// nothing can be placed.
func (in *Input) FirstWash() (wash model.Wash, at model.Places, found bool) {
	stops := stopsByDate(&in.Trip)
	legs := in.legs(stops)
	for _, others := range []bool{false, true} {
		for i := range legs {
			if l := &legs[i]; !l.barred && l.other == others {
				places := in.placesAt(&in.Trip.Stops[stops[l.stop]])
				place := places[len(places)/2]
				l.wash.Place = place.Name
				return l.wash, model.Places{place}, true
			}
		}
	}
	return model.Wash{}, nil, false
}

// washOf is the wash as one that could be planned by itself.
func (in *Input) washOf(w *model.TripWash, s *model.Stop, rinseOnly bool) model.Wash {
	t := &in.Trip
	var wash model.Wash
	if w.Like != "" && in.Like != nil {
		if like, found := in.Like(w.Like); found {
			wash = like
		}
	}
	if len(w.Stages) > 0 {
		wash.Stages = w.Stages
	}
	wash.Name, wash.Place, wash.Date = w.Name, s.Place, quantity.Opt[model.Date]{}
	wash.Heading, wash.Start, wash.Shades = quantity.Opt[model.Heading]{}, quantity.Opt[model.TimeOfDay]{}, nil
	wash.Vehicle, wash.Bed = cmp.Or(w.Vehicle, wash.Vehicle), cmp.Or(t.Bed, wash.Bed)
	wash.Softener, wash.Feed = cmp.Or(t.Softener, wash.Softener), cmp.Or(t.Feed, wash.Feed)
	if t.Limit.Given() {
		wash.Limit = t.Limit
	}
	if t.Pause.Given() {
		wash.Pause = t.Pause
	}
	if t.Target.Given() {
		wash.Target = t.Target
	}
	wash.Stages = in.stages(wash, w.Dirt, rinseOnly)
	return wash
}

// thorough is how much more water the stages before the final rinse take. PRACTICE.
func thorough(d model.Dirt) float64 {
	switch d {
	case model.LightDirt:
		return 0.75
	case model.HeavyDirt:
		return 1.5
	}
	return 1
}

// stages are those of the wash, by its dirt, only the rinses where a stop allows no
// more, with the waters and the sprayer that the trip gives to all of its washes.
func (in *Input) stages(wash model.Wash, dirt model.Dirt, rinseOnly bool) []model.Stage {
	softener := len(in.Rig.Softeners) > 0 && !strings.EqualFold(wash.Softener, model.NoSoftener)
	stages := wash.Stages
	if len(stages) == 0 {
		stages = planner.UsualStages(in.Rig, wash)
	}
	var out []model.Stage
	for _, s := range stages {
		if rinseOnly && !s.Final && s.Water != model.DI && !strings.Contains(strings.ToLower(s.Name), "rinse") {
			continue
		}
		out = append(out, s)
	}
	switch in.Trip.DIFor {
	case model.DIForAll:
		rinse.DIForAll(out)
	case model.DIForLast:
		rinse.DIForLast(out, softener)
	}
	soil(out, dirt)
	if !softener {
		rinse.Unsoftened(out)
	}
	if in.Trip.Sprayer != "" {
		rinse.SprayedBy(out, in.Trip.Sprayer)
	}
	return out
}

// soil takes the stages before the final rinse as often as the dirt asks, by the
// waters that they have in this trip: a rinse with DI water follows no dirt.
func soil(stages []model.Stage, dirt model.Dirt) {
	more := thorough(dirt)
	for i := range stages {
		if s := &stages[i]; more != 1 && s.Water != model.DI && !s.Final {
			s.Passes = quantity.Some(s.Passes.Or(1) * more)
		}
	}
}

// placesAt are the waters that a stop may have, as places: one where it is known,
// else the low end of its band, the middle and the high end.
func (in *Input) placesAt(s *model.Stop) []model.Place {
	if !s.Unknown() {
		i := model.Find(in.Places.Names(), s.Place)
		if i < 0 {
			return []model.Place{{Name: s.Place}}
		}
		p := in.Places[i]
		if s.Hookup == model.TankOnly {
			p.Supply = model.Pump
		}
		return []model.Place{p}
	}
	low, high := tdsBand(s)
	soft, hard := hardnessBand(s)
	out := make([]model.Place, 3)
	for k := range out {
		u := float64(k) / 2
		reading := low
		reading.Number += u * (high.Number - low.Number)
		out[k] = model.Place{
			Name: s.Called(), TDS: quantity.Some(reading),
			Hardness: quantity.Some(soft + quantity.Hardness(u)*(hard-soft)),
		}
		if s.Hookup == model.TankOnly {
			out[k].Supply = model.Pump
		}
	}
	return out
}

// tdsBand is what the pen may show at a stop, both ends on one scale. An end that is
// not stated is the usual one, and never on the wrong side of the one that is.
func tdsBand(s *model.Stop) (low, high quantity.Reading) {
	usual := func(ppm float64, scale quantity.Scale) quantity.Reading {
		ec := water.Conductivity(quantity.PPM(ppm, quantity.ScaleNaCl), quantity.ScaleNaCl)
		return quantity.Reading{Number: water.PPM(ec, scale).Number, Scale: scale}
	}
	scale := s.HighTDS.Or(quantity.PPM(0, quantity.ScaleNaCl)).Scale
	scale = s.LowTDS.Or(quantity.PPM(0, scale)).Scale
	low, high = s.LowTDS.Or(usual(unknownLow, scale)), s.HighTDS.Or(usual(unknownHigh, scale))
	if !s.LowTDS.Given() {
		low.Number = min(low.Number, high.Number)
	}
	if !s.HighTDS.Given() {
		high.Number = max(high.Number, low.Number)
	}
	return low, high
}

// hardnessBand is the same for the hardness.
func hardnessBand(s *model.Stop) (soft, hard quantity.Hardness) {
	soft, hard = s.LowHardness.Or(softest), s.HighHardness.Or(hardest)
	if !s.LowHardness.Given() {
		soft = min(soft, hard)
	}
	if !s.HighHardness.Given() {
		hard = max(hard, soft)
	}
	return soft, hard
}
