package planner

import (
	"slices"

	"washeve/model/quantity"
	"washeve/planner/learning"
)

// judgeAge looks for the age of the present fill in its readings, where nobody said it and
// they are higher than a pen's error makes of one that was fresh when the log began. Where
// readings fit a fresh fill it counts as one, as the plan tells.
func (r *replay) judgeAge(f *FillPast, from learning.Outset) {
	if f.ageSaid(r.bed.SoFar) || !f.tooHigh() {
		return
	}
	under := r.with(r.feed)
	fed, p, found := from.Older(f.fill, under.units(r.flow))
	if !found {
		return
	}
	volume := func(fed float64) quantity.Volume {
		return quantity.Volume(fed/under.capacities(quantity.Gallon)) * quantity.Gallon
	}
	f.aged = quantity.Some(Band[quantity.Volume]{volume(fed[0]), volume(fed[1]), volume(fed[2])})
	f.posterior = p
	if fed[1] > 0 {
		f.before(learning.Use{Capacities: fed[1], Units: under.units(r.flow)}, volume(fed[1]))
	}
}

// before puts a use ahead of all that the log tells of the fill.
func (f *FillPast) before(u learning.Use, volume quantity.Volume) {
	f.fill.Uses = slices.Concat([]learning.Use{u}, f.fill.Uses)
	f.given = slices.Concat([]quantity.Volume{0}, f.given)
	for i := range f.given {
		f.given[i] += volume
	}
	f.Gallons += volume
	for i := range f.fill.Readings {
		f.fill.Readings[i].After++
		f.Readings[i].Gallons += volume
	}
}

// ageSaid tells that somebody said how old the fill is: by a change of resin, by the gallons
// that a reading states, or by those of the rig.
func (f *FillPast) ageSaid(stated quantity.Opt[quantity.Volume]) bool {
	return f.Began.Given() || f.metered > 0 || stated.Given()
}

// tooHigh tells that a reading of the fill is over what it may show: that it fits no such
// bed, or that it is high for it; see [PastReading.high].
func (f *FillPast) tooHigh() bool {
	for _, s := range f.posterior.Unexplained {
		if s.ReadingIndex < len(f.Readings) && f.Readings[s.ReadingIndex].PPM > s.Expected {
			return true
		}
	}
	for i, expected := range f.posterior.Expected {
		if i < len(f.Readings) && f.Readings[i].high(expected[1]) {
			return true
		}
	}
	return false
}

// Aged is what the present fill had given when the log began, as its readings show it;
// false where somebody said it, or where they fit a fresh fill.
func (b *BedPast) Aged() (Band[quantity.Volume], bool) {
	if b == nil {
		return Band[quantity.Volume]{}, false
	}
	return b.Present().aged.Get()
}
