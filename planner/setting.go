package planner

import (
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/learning"
	"washeve/planner/water"
)

// Setting is what stands around the bed of a wash, or was done before it, beyond
// what the rig and the log tell: for asking what it would bring. The zero value
// is the rig as it is.
type Setting struct {
	// As is a plan before which the bed stood as it does before this one: a rig
	// tells gallons, and takes them to have run as the planned wash will. Of another
	// bed, or with new resin, it says nothing.
	As       *Plan
	Behind   bool              // a second tank like the wash's, freshly filled, stands behind it
	Fresh    bool              // the wash's tank has just got new resin of the same kind
	Salted   bool              // the softener has just been regenerated
	Rejected quantity.Fraction // of the ions in the bed's feed, held back ahead of it; see [water.Purify]
}

// MakeIn is [Memory.Make] in a setting. With a second tank behind, what the plan
// says of the outlet, of what is left and of the caps is of both together, its
// layers are those of the first, and there is no curve.
func (m *Memory) MakeIn(s Setting, rig model.Rig, places model.Places, wash model.Wash) (Plan, error) {
	return makePlan(rig, places, wash, m.sources(s))
}

// purified is the feed behind whatever holds ions back ahead of the bed.
func (s Setting) purified(feed water.Analysis) water.Analysis {
	if s.Rejected <= 0 {
		return feed
	}
	return water.Purify(feed, s.Rejected)
}

// stood is how the bed stood before the plan of the setting, where that is about
// it.
func (s Setting) stood(bed string) (stand, bool) {
	if s.As == nil || s.Fresh || !strings.EqualFold(s.As.BedName, bed) {
		return stand{}, false
	}
	return s.As.stood, true
}

// renewed is a bed that has just got new resin: nothing of its age stands.
func renewed(b model.Bed) model.Bed {
	b.SoFar, b.LastReading, b.LastFlow = quantity.Some(quantity.Volume(0)), quantity.Opt[quantity.Reading]{}, quantity.Opt[quantity.Flow]{}
	return b
}

// outletAfter is outlet over feed of the stand in the middle of what is
// believed, after so much more at a flow; with a usual fresh tank behind it where
// there is one.
func (r *resin) outletAfter(s stand, v quantity.Volume, f quantity.Flow) float64 {
	use, units := r.use(v, f), r.units(f)
	lead, fed := s.middle.Efficiency*units, use.Capacities/s.middle.Factor
	if !r.behind {
		return s.middle.Column.Feed(lead, fed).Outlet(lead)
	}
	lag := learning.UsualContact * units
	pair := bed.Series{Lead: s.middle.Column, Ratio: 1 / s.middle.Factor}
	return pair.Feed(lead, lag, fed).Outlet(lead, lag)
}

// fill is what a whole fill like the one of the stand gives of this feed at a flow until
// the limit: what it has taken, and what half of the fills that may be in the tank have left,
// or more, which is what every screen tells as left.
// With a second tank it is what the first gives until it is taken out, tank after tank, of
// such a capacity. It is all that the resin takes where the feed itself keeps the limit, and
// nothing where a fresh bed does not.
func (r *resin) fill(s stand, a asked, left quantity.Volume) quantity.Volume {
	if r.behind {
		return quantity.Volume(s.middle.Factor) * r.statedFill(a)
	}
	took := r.load.Supply(r.whole * quantity.Capacity(s.used()))
	switch units := s.middle.Efficiency * r.units(a.main); {
	case a.needless():
		return r.load.Supply(r.whole * quantity.Capacity(s.middle.Factor))
	case (bed.Column{}).Until(units, a.fraction()) <= 0:
		return 0
	}
	return took + left
}

// fillOf is [resin.fill] where nobody has worked out what is left.
func (r *resin) fillOf(s stand, a asked) quantity.Volume {
	if r.behind || a.needless() {
		return r.fill(s, a, 0)
	}
	return r.fill(s, a, gallons(r.job(a).Left(s.states)[1]))
}

// statedFill is [resin.fill] of fresh resin that is as stated.
func (r *resin) statedFill(a asked) quantity.Volume {
	units := learning.UsualContact * r.units(a.main)
	used := float64(bed.UsedFraction(units, quantity.Fraction(a.fraction())))
	if r.behind {
		used = bed.Rounds(units, a.fraction()).Fed
	}
	return r.load.Supply(r.whole * quantity.Capacity(used))
}

// beds is how many tanks the water goes through.
func (r *resin) beds() float64 {
	if r.behind {
		return 2
	}
	return 1
}
