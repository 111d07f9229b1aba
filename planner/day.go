package planner

import (
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
	"washeve/planner/drying/sun"
)

// DayPlan is the day of the wash, told ahead, and the start that the plan's
// numbers are for.
type DayPlan struct {
	drying.Forecast
	Heading quantity.Opt[model.Heading]
	Chosen  quantity.Opt[drying.Start] // the start that the wash states
	// Start is the chosen start, else the recommended one, else the first full
	// hour with light. Without light all day, and none chosen, it has no turns.
	Start drying.Start

	faces []face // that the forecast is for, in the order of [model.Sides]
}

// forecaster tells a day ahead; see [drying.Day].
type forecaster func(drying.Input) (drying.Forecast, error)

// WindHeight is the height above the ground that forecasts state the wind for.
// MEMORY: WMO-No. 8, Guide to Instruments and Methods of Observation.
const WindHeight = 10 * quantity.Metre

// foretell tells the day ahead, where the plan knows which day and where. The
// note says why there is none.
func foretell(l *ledger, c chosen, stages []model.Stage, faces []face, chain plumbing, day forecaster) (*DayPlan, Note) {
	if lacks := lacksForDay(c); len(lacks) > 0 {
		return nil, Note{Code: "day-unknown", Format: "Not known for the day: " + strings.Join(lacks, ", ") + ". State them, and the plan says when to start and which side first."}
	}
	in := dayInput(c, stages, faces, chain)
	f, err := day(in)
	if err != nil {
		l.warnWords("day-contradicts", "The day cannot be told ahead: "+err.Error()+".")
		return nil, Note{Code: "day-unknown", Format: "The day cannot be told ahead, as the warning says."}
	}
	assumeDay(l, c)
	d := &DayPlan{Forecast: f, Heading: c.wash.Heading, faces: slices.Clone(faces)}
	d.choose(l, c.wash.Start)
	return d, Note{}
}

// lacksForDay names what a day cannot be told ahead without.
func lacksForDay(c chosen) []string {
	var lacks []string
	for _, l := range []struct {
		what  string
		given bool
	}{
		{"the wash's date", c.wash.Date.Given()},
		{"the place's latitude", c.place.Latitude.Given()},
		{"the place's longitude", c.place.Longitude.Given()},
		{"the place's time zone", c.place.Zone.Given()},
	} {
		if !l.given {
			lacks = append(lacks, l.what)
		}
	}
	return lacks
}

// dayInput gathers what is known of the day.
func dayInput(c chosen, stages []model.Stage, faces []face, chain plumbing) drying.Input {
	w := c.wash
	in := drying.Input{
		Date: w.Date.Or(model.Date{}), Zone: c.place.Zone.Or(nil),
		Place:     sun.Place{Latitude: c.place.Latitude.Or(0), Longitude: c.place.Longitude.Or(0)},
		Elevation: c.place.Elevation, Heading: w.Heading, Shades: w.Shades,
		Weather: drying.Weather{
			Low: w.Low, High: w.High, DewPoint: w.DewPoint, Humidity: w.Humidity, HumidityAt: w.HumidityAt,
			Wind: w.Wind, WindHeight: quantity.Some(WindHeight), Sky: w.Sky,
		},
		TankLimit: c.bed.MaxTemperature,
	}
	for _, f := range faces {
		if work, touched := workOn(f, stages, chain); touched {
			in.Faces = append(in.Faces, work)
		}
	}
	return in
}

// workOn is a face as the day sees it: how long its stages take, once over at
// the hand's rate. The section is held to all stages before the final rinse; the
// whole face to the last of these, the drip, and the final rinse.
func workOn(f face, stages []model.Stage, chain plumbing) (drying.Face, bool) {
	var before, last, final, all float64 // seconds a square metre
	for _, s := range stages {
		if !slices.Contains(s.Faces, f.side) {
			continue
		}
		rate, _ := chain.toolOf(s).rate(s)
		pace := s.Passes.Or(1) / float64(rate)
		all += pace
		if s.Final {
			final += pace
			continue
		}
		before, last = before+pace, pace
	}
	if before == 0 {
		before = final
	}
	drip := quantity.Duration(0)
	if final > 0 {
		drip = f.pause
	}
	out := drying.Face{
		Side: f.side, Area: quantity.Some(f.area), Film: quantity.Some(f.film), Colour: f.colour,
		Rinse: quantity.Some(quantity.Duration((last+final)*float64(f.area)) + drip),
		Work:  quantity.Some(quantity.Duration(all*float64(f.area)) + drip),
	}
	if before > 0 {
		out.Pace = quantity.Some(quantity.Coverage(1 / before))
	}
	return out, all > 0
}

// choose finds the start that the plan's numbers are for.
func (d *DayPlan) choose(l *ledger, wanted quantity.Opt[model.TimeOfDay]) {
	if t, given := wanted.Get(); given {
		s, notes, err := d.Starting(t)
		if err == nil {
			d.Chosen, d.Start = quantity.Some(s), s
			d.Notes = append(d.Notes[:len(d.Notes):len(d.Notes)], notes...)
			return
		}
		l.warnWords("start-skipped", "The start is left out: "+err.Error()+".")
	}
	if s, given := d.Recommended.Get(); given {
		d.Start = s
		return
	}
	for _, s := range d.Starts {
		if d.Start.At.IsZero() || s.FullHour && !d.Start.FullHour {
			d.Start = s
		}
	}
}

// settle puts the faces of the stages into the day's order, where a heading
// gives one, and cuts the drips to what the day allows.
func (d *DayPlan) settle(stages []model.Stage, faces []face) []drip {
	if d != nil && d.Heading.Given() {
		for i := range stages {
			stages[i].Faces = d.order(stages[i].Faces)
		}
	}
	return d.bound(stages, faces)
}

// Begins tells whether it is known when to begin: without, the start is only the one that the
// order of the faces is for.
func (d *DayPlan) Begins() bool { return d.Chosen.Given() || d.Recommended.Given() }

// dries is how long the film of a face lasts while its turn comes.
func (d *DayPlan) dries(side model.Side) quantity.Opt[quantity.Duration] {
	if d == nil {
		return quantity.Opt[quantity.Duration]{}
	}
	turn, _ := d.Start.Turn(side)
	return turn.Dries
}

// order is the day's order of some faces.
func (d *DayPlan) order(sides []model.Side) []model.Side {
	out := make([]model.Side, 0, len(sides))
	for _, t := range d.Start.Turns {
		if slices.Contains(sides, t.Side) {
			out = append(out, t.Side)
		}
	}
	for _, s := range sides {
		if !slices.Contains(out, s) {
			out = append(out, s)
		}
	}
	return out
}
