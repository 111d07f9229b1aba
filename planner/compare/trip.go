package compare

import (
	"errors"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/bed"
	"washeve/planner/trip"
)

// OneTrip answers for a whole trip, with what the log teaches: one bed through all of
// its washes. It is not for two goroutines at once.
type OneTrip struct {
	like  func(string) (model.Wash, bool)
	past  *planner.Past
	today model.Date
	wash  planner.Memory
	base  *trip.Plan // of the base that was answered for last
	size  int        // of its rig: a way only adds to it

	// Of the base, of ways that leave the rig and what stands around the bed as it is,
	// and of the others: so that the first two keep what each wash asks.
	first, same, other trip.Memory
}

// NewOneTrip makes it. Like finds the washes that those of a trip are like, past is nil
// where there is no log, today not known where zero.
func NewOneTrip(like func(string) (model.Wash, bool), past *planner.Past, today model.Date) *OneTrip {
	return &OneTrip{like: like, past: past, today: today, wash: planner.Memory{Past: past}}
}

// errNothing is why a trip cannot be compared.
var errNothing = errors.New("no wash of this trip has a day and a stop yet")

// Answer plans the trip, and its first wash by itself, and takes the figures from
// both. A case that is no base ([planner.Setting.As]) is taken as one of the trip that
// was answered for last without that.
func (t *OneTrip) Answer(c Case) (Figures, error) {
	in := trip.Input{Rig: c.Rig, Places: c.Places, Trip: *c.Trip, Like: t.like, Past: t.past, Today: t.today, Setting: c.Setting}
	in.Setting.As = nil
	memory := &t.first
	if c.Setting.As != nil {
		in.As = t.base
		if memory = &t.same; in.Setting != (planner.Setting{}) || len(c.Rig.Beds)+len(c.Rig.Sprayers) != t.size {
			memory = &t.other
		}
	}
	p, err := memory.Make(in)
	if err != nil {
		return Figures{}, err
	}
	if c.Setting.As == nil {
		t.base, t.size = &p, len(c.Rig.Beds)+len(c.Rig.Sprayers)
	}
	first, places, found := in.FirstWash()
	if !found {
		return Figures{}, errNothing
	}
	f := Figures{Trip: &p}
	if f.Plan, err = t.wash.MakeIn(c.Setting, c.Rig, places, first); err != nil {
		return Figures{}, err
	}
	f.total()
	f.pack(c)
	return f, nil
}

// total sums up what the washes of the trip take.
func (f *Figures) total() {
	for i := range f.Trip.Washes {
		w := &f.Trip.Washes[i]
		f.DI += w.DI.P50
		f.Through += w.DI.P50 + w.Flush
		f.Softened += w.Soft.P50
		f.Raw += w.Untreated.P50
		f.Time += w.Time
	}
	f.Water = f.Through + f.Softened + f.Raw
	f.Chance = f.Trip.AllOnSpec
}

// pack adds up what goes along: what a wash has ([Figures.carry]), and the fills that
// are carried from the start and the salt of all regenerations but the first.
func (f *Figures) pack(c Case) {
	f.carry(c)
	weight, known := f.Weight.Get()
	if !known {
		return
	}
	p := f.Trip
	if c.Trip.Carry != model.No {
		weight += quantity.Mass((bed.ShippedLow + bed.ShippedHigh) / 2 * quantity.Density(p.Carry.Resin))
	}
	if n := p.Carry.Regens; n > 1 {
		weight += p.Carry.Salt * quantity.Mass(float64(n-1)/float64(n))
	}
	f.Weight = quantity.Some(weight)
}

// firstDay is the day of the first wash of the trip that counts.
func (f *Figures) firstDay() (model.Date, bool) {
	for i := range f.Trip.Washes {
		if w := &f.Trip.Washes[i]; !w.Barred {
			return w.Date, true
		}
	}
	return model.Date{}, false
}

// sameWork tells that two ways take the same waters in the same time.
func sameWork(a, b Figures) bool {
	return a.Trip != nil && a.DI == b.DI && a.Softened == b.Softened && a.Raw == b.Raw && a.Time == b.Time
}
