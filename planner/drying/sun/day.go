package sun

import (
	"math"
	"time"

	"washeve/model/quantity"
)

// Kind says whether the sun rises and sets on a day.
type Kind string

// The kinds of day.
const (
	RisesAndSets Kind = "rises and sets"
	PolarDay     Kind = "polar day"   // up all day
	PolarNight   Kind = "polar night" // down all day
)

// Day is the sun's course through one day. On the edge of a polar season the
// sun may only rise or only set.
type Day struct {
	Kind    Kind
	Rise    quantity.Opt[time.Time]
	Transit time.Time // highest
	Set     quantity.Opt[time.Time]
	Noon    quantity.Angle // altitude at transit, without air
}

// horizon is the altitude of the sun's centre when its upper limb touches a
// flat horizon: 34' of refraction and 16' of half a sun. PUBLISHED: the usual
// convention of the almanacs (header of testdata/reference/sun-position.csv).
const horizon = -50.0 / 60 * quantity.Degree

// Twilight is the altitude of the sun at which there is light enough to work
// outside: the end of civil twilight. MEMORY: Astronomical Almanac.
const Twilight = -6 * quantity.Degree

// Day finds rise, transit and set around the transit nearest to the middle of
// the day that runs from one instant to another, so that a day's sunset is the
// one that follows its noon even where that is past midnight. The times are in
// the zone of from. Good to a few seconds over a flat horizon; hills, trees
// and unusual air move rise and set by minutes.
func (p Place) Day(from, to time.Time) Day {
	transit := p.transit(from.Add(to.Sub(from) / 2))
	day := Day{Kind: RisesAndSets, Transit: transit, Noon: p.At(transit).Altitude}
	const half = 12 * time.Hour
	if day.Noon < horizon {
		day.Kind = PolarNight
		return day
	}
	if before := transit.Add(-half); p.At(before).Altitude < horizon {
		day.Rise = quantity.Some(p.crossing(before, transit))
	}
	if after := transit.Add(half); p.At(after).Altitude < horizon {
		day.Set = quantity.Some(p.crossing(after, transit))
	}
	if !day.Rise.Given() && !day.Set.Given() {
		day.Kind = PolarDay
	}
	return day
}

// Up tells whether the sun is up at an instant of this day.
func (d Day) Up(t time.Time) bool {
	rise, rises := d.Rise.Get()
	set, sets := d.Set.Get()
	switch {
	case d.Kind == PolarNight:
		return false
	case rises && t.Before(rise):
		return false
	case sets && !t.Before(set):
		return false
	}
	return true
}

// transit is the passage of the meridian nearest to t. Three steps leave less
// than a millisecond, since the sun's clock and ours run together to 30 s a day.
func (p Place) transit(t time.Time) time.Time {
	for range 3 {
		day := p.hourAngle(t) / (2 * math.Pi)
		t = t.Add(-time.Duration(day * float64(24*time.Hour)))
	}
	return t.Round(time.Second)
}

// crossing halves the time between a dark and a bright instant.
func (p Place) crossing(dark, bright time.Time) time.Time {
	for bright.Sub(dark).Abs() > time.Second {
		middle := dark.Add(bright.Sub(dark) / 2)
		if p.At(middle).Altitude < horizon {
			dark = middle
		} else {
			bright = middle
		}
	}
	return bright.Round(time.Second)
}
