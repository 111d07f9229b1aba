// Package drying says how long a washed face stays wet through a day, and so
// when, in which order and in how big sections to wash.
//
// Its parts: sun (where the sun stands), clock (the hours of a day), heading
// (the faces), sky (the light), air (humidity and the day's warmth), panel
// (the heat balance). [Day] puts them together.
package drying

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying/air"
	"washeve/planner/drying/sun"
)

// Input is what is known of the day. Date, zone and place are needed; all else
// may be left out, and the forecast then lists what it does not know and what it
// took instead.
type Input struct {
	Date      model.Date
	Zone      *time.Location
	Place     sun.Place
	Elevation quantity.Opt[quantity.Length] // sea level where not given

	Heading quantity.Opt[model.Heading]
	Faces   []Face // those to be washed; a side stated twice is an error
	Shades  []model.Shade
	Weather Weather

	// TankLimit is the most temperature of the resin tank's label.
	TankLimit quantity.Opt[quantity.Temperature]
}

// Face is one side of the vehicle and the work on it.
type Face struct {
	Side   model.Side
	Area   quantity.Opt[quantity.Area]
	Film   quantity.Opt[quantity.Film] // after dripping
	Colour model.Colour                // mid where ""

	// Pace is the area a minute that is soaped, washed and rinsed, one after the
	// other: what a section must keep to.
	Pace quantity.Opt[quantity.Coverage]
	// Rinse is the time from the first drop of the face's rinse to the last of
	// its last water, the drip between them included: what a whole face must keep
	// to.
	Rinse quantity.Opt[quantity.Duration]
	// Work is the time that all of the face takes.
	Work quantity.Opt[quantity.Duration]
}

// Weather is the forecast for the day.
type Weather struct {
	Low        quantity.Opt[quantity.Temperature]
	High       quantity.Opt[quantity.Temperature]
	DewPoint   quantity.Opt[quantity.Temperature] // taken before a relative humidity
	Humidity   quantity.Opt[quantity.Fraction]    // relative, at the hour of HumidityAt
	HumidityAt quantity.Opt[model.TimeOfDay]      // the mean of the day where not given
	Wind       quantity.Opt[quantity.Speed]
	WindHeight quantity.Opt[quantity.Length] // where the wind is stated for; at the vehicle where not given
	Sky        model.Sky                     // clear where "": the quickest drying by day
}

// check finds what cannot be; the messages say what to do.
func (in Input) check() error {
	if err := in.Place.Check(); err != nil {
		return err
	}
	seen := map[model.Side]bool{}
	for _, f := range in.Faces {
		if !known(f.Side) {
			return fmt.Errorf("%q is no face; take roof, left, right, front or rear", f.Side)
		}
		if seen[f.Side] {
			return fmt.Errorf("the %s is stated twice; keep one", f.Side)
		}
		seen[f.Side] = true
	}
	for _, s := range in.Shades {
		if !known(s.Side) {
			return fmt.Errorf("%q is no face to shade; take roof, left, right, front or rear", s.Side)
		}
	}
	for _, err := range in.measures() {
		if err != nil {
			return err
		}
	}
	return in.Weather.contradiction()
}

// longest is a time that no work on a face takes.
const longest = 1000 * quantity.Hour

func (in Input) measures() []error {
	w := in.Weather
	errs := []error{
		within("elevation", in.Elevation, -500, 6000),
		within("low of the day", w.Low, quantity.Celsius(-60), quantity.Celsius(60)),
		within("high of the day", w.High, quantity.Celsius(-60), quantity.Celsius(60)),
		within("dew point", w.DewPoint, quantity.Celsius(-60), quantity.Celsius(40)),
		within("relative humidity", w.Humidity, 0.01, 1),
		within("wind", w.Wind, 0, 60),
		within("height of the wind", w.WindHeight, 0.5, 100),
		within("heading", opt(in.Heading, model.Heading.Angle), 0, 360*quantity.Degree),
	}
	for _, f := range in.Faces {
		errs = append(errs,
			within(string(f.Side)+" area", f.Area, 0, 1e4),
			within(string(f.Side)+" film", f.Film, 0, 1e-2),
			within(string(f.Side)+" pace", f.Pace, quantity.SquareFootPerMinute/100, 1e5*quantity.SquareFootPerMinute),
			within(string(f.Side)+" rinse", f.Rinse, 0, longest),
			within(string(f.Side)+" work", f.Work, 0, longest))
	}
	return errs
}

// within is an error where a given value is outside two bounds, or no number.
func within[Q quantity.Quantity](name string, v quantity.Opt[Q], low, high Q) error {
	q, given := v.Get()
	if !given || (q >= low && q <= high) {
		return nil
	}
	return fmt.Errorf("%s of %s is outside %s to %s", name,
		quantity.Show(q, quantity.US), quantity.Show(low, quantity.US), quantity.Show(high, quantity.US))
}

func opt[A, B any](a quantity.Opt[A], f func(A) B) quantity.Opt[B] {
	v, given := a.Get()
	if !given {
		return quantity.Opt[B]{}
	}
	return quantity.Some(f(v))
}

func (w Weather) contradiction() error {
	low, okLow := w.Low.Get()
	high, okHigh := w.High.Get()
	if okLow && okHigh && low > high {
		return fmt.Errorf("the low of the day, %s, is above the high, %s; one of the two was misread",
			quantity.Show(low, quantity.US), quantity.Show(high, quantity.US))
	}
	dew, okDew := w.DewPoint.Get()
	if okDew && okHigh && dew > high {
		return fmt.Errorf("the dew point, %s, is above the high of the day, %s; one of the two was misread",
			quantity.Show(dew, quantity.US), quantity.Show(high, quantity.US))
	}
	return nil
}

func known(side model.Side) bool {
	for _, s := range model.Sides() {
		if s == side {
			return true
		}
	}
	return false
}

// atVehicle is the wind along the panels.
func (w Weather) atVehicle() (quantity.Speed, bool) {
	wind, given := w.Wind.Get()
	if height, stated := w.WindHeight.Get(); stated {
		wind = air.At2m(wind, height)
	}
	return wind, given
}

// unknown lists what the forecast needs and had to do without, in words.
func (in Input) unknown() []string {
	var words []string
	miss := func(missing bool, word string) {
		if missing {
			words = append(words, word)
		}
	}
	w := in.Weather
	miss(!in.Heading.Given(), "heading: which sides stand in the sun")
	miss(!w.Low.Given() || !w.High.Given(), "low and high of the day: how warm the air and the panels are")
	miss(!w.DewPoint.Given() && !w.Humidity.Given(), "humidity: how fast water dries")
	miss(!w.Wind.Given(), "wind: how fast water dries")
	miss(len(in.Faces) == 0, "faces: what is to be washed")
	return append(words, in.unknownFaces()...)
}

// assumed lists what the forecast took for what was not stated, each with what was
// taken in brackets.
func (in Input) assumed() []string {
	var words []string
	take := func(missing bool, word string) {
		if missing {
			words = append(words, word)
		}
	}
	w := in.Weather
	take(slices.ContainsFunc(in.Faces, func(f Face) bool { return f.Colour == "" }), "colour (mid)")
	take(w.Sky == "", "sky (clear)")
	take(!in.Elevation.Given(), "elevation (sea level)")
	take(!w.DewPoint.Given() && w.Humidity.Given() && !w.HumidityAt.Given(), "hour of humidity (day's mean)")
	return words
}

func (in Input) unknownFaces() []string {
	var words []string
	each := func(what, why string, given func(Face) bool) {
		var sides []string
		for _, f := range in.Faces {
			if !given(f) {
				sides = append(sides, string(f.Side))
			}
		}
		switch {
		case len(sides) == 0:
		case len(sides) == len(in.Faces):
			words = append(words, what+": "+why)
		default:
			words = append(words, what+" of the "+strings.Join(sides, ", ")+": "+why)
		}
	}
	each("area", "how long it takes", func(f Face) bool { return f.Area.Given() })
	each("film", "how much water is to dry", func(f Face) bool { return f.Film.Given() })
	each("coverage rate", "how big a section may be", func(f Face) bool { return f.Pace.Given() })
	each("time for a face", "when its turn is over", func(f Face) bool { return f.Rinse.Given() && f.Work.Given() })
	return words
}
