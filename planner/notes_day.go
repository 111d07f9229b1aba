package planner

import (
	"fmt"
	"strings"
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
)

// assumeDay writes down what was stated of the day, and what was taken where nothing was;
// what is needed and not known is in the forecast's list of unknowns.
func assumeDay(l *ledger, c chosen) {
	w, p := c.wash, c.place
	statedAngle(l, "latitude", p.Latitude, model.LatitudeWords)
	statedAngle(l, "longitude", p.Longitude, model.LongitudeWords)
	statedWords(l, "time zone", p.Zone)
	take(l, "elevation", p.Elevation, 0, practice("the level of the sea"))
	stated(l, "low of the day", w.Low)
	stated(l, "high of the day", w.High)
	stated(l, "dew point", w.DewPoint)
	if !w.DewPoint.Given() {
		stated(l, "humidity", w.Humidity)
		if w.Humidity.Given() {
			takeWords(l, "hour of humidity", hourWords(w.HumidityAt), "day's mean", practice("forecasts give it for the day"))
		}
	}
	stated(l, "wind", w.Wind)
	if w.Wind.Given() {
		l.assume(Assumption{Name: "height of the wind", Value: quantity.ValueOf(WindHeight), Source: memory("WMO-No. 8: forecasts are for 10 m; at the vehicle it is taken for 2 m, FAO-56 eq. 47")})
	}
	if h, given := w.Heading.Get(); given {
		l.assume(Assumption{Name: "heading", Words: h.Word() + ", " + quantity.Show(h.Angle(), quantity.US), Source: yours})
	}
	takeWords(l, "sky", string(w.Sky), string(model.ClearSky), practice("dries soonest by day"))
	takeWords(l, "vehicle colour", string(c.vehicle.Colour), string(model.MidColour), practice("midway; in the sun a darker one dries sooner, a lighter one later"))
	for _, s := range w.Shades {
		l.assume(Assumption{Name: "shade on the " + string(s.Side), Words: shadeWords(s), Source: yours})
	}
}

func stated[Q quantity.Quantity](l *ledger, name string, given quantity.Opt[Q]) {
	if given.Given() {
		take(l, name, given, 0, yours)
	}
}

// statedAngle writes down an angle with its letter, since a sign is overlooked.
func statedAngle(l *ledger, name string, given quantity.Opt[quantity.Angle], words func(quantity.Angle) string) {
	if v, ok := given.Get(); ok {
		l.assume(Assumption{Name: name, Words: words(v), Source: yours})
	}
}

func statedWords[T fmt.Stringer](l *ledger, name string, given quantity.Opt[T]) {
	if v, ok := given.Get(); ok {
		l.assume(Assumption{Name: name, Words: v.String(), Source: yours})
	}
}

func shadeWords(s model.Shade) string {
	from, to := s.From.Or(model.TimeOfDay{}), s.To.Or(model.TimeOfDay{})
	words := "all day"
	if from != to {
		words = from.String() + " to " + to.String()
	}
	if s.By != "" {
		words += ", by " + s.By
	}
	return words
}

// tellDay warns of what the day does to this wash.
func (p *Plan) tellDay(l *ledger, cut []drip) {
	if p.Day == nil {
		return
	}
	tellDrips(l, cut)
	p.Day.tellStart(l)
	p.Day.tellDusk(l)
	p.Day.tellLimits(l)
}

func (d *DayPlan) tellStart(l *ledger) {
	best, recommended := d.Recommended.Get()
	chosen, isChosen := d.Chosen.Get()
	switch {
	case !d.foreseen():
	case isChosen && !chosen.Easy && recommended && best.Easy:
		l.warnWords("start-hurries", fmt.Sprintf("A start at %s is not good: %s. Easy starts are from %s to %s.", chosen.Label, chosen.Why, clockTime(d.NotBefore), clockTime(d.NotAfter)))
	case isChosen && !chosen.Easy && recommended && best.Better(chosen):
		l.warnWords("start-hurries", fmt.Sprintf("A start at %s is not good: %s. On this day %s; %s is the best: %s. Do no more at a time than the largest section.", chosen.Label, chosen.Why, d.NoneEasy(), best.Label, hurryWords(best)))
	case isChosen && !chosen.Easy && recommended:
		l.warnWords("no-easy-start", d.noEasyStart(chosen))
	case isChosen && !chosen.Easy:
		l.warnWords("start-hurries", fmt.Sprintf("A start at %s is not good: %s. Do no more at a time than the largest section.", chosen.Label, chosen.Why))
	case isChosen:
	case !recommended:
		l.warnWords(NoStart, "This is no day to wash: "+d.spoilt()+".")
	case !best.Easy:
		l.warnWords("no-easy-start", d.noEasyStart(best))
	}
}

// tellDusk tells of a start that was chosen or is recommended that it ends without the sun.
func (d *DayPlan) tellDusk(l *ledger) {
	how, isChosen := "The wash as recommended", d.Chosen.Given()
	if isChosen {
		how = "The wash begun at " + d.Start.Label
	}
	if late := d.EndsWithoutSun(d.Start); late != "" && (isChosen || d.Recommended.Given()) {
		l.warnWords("ends-without-sun", fmt.Sprintf("%s ends at %s, %s. Have a lamp that shows spots, or another start.", how, d.Start.End.Format("15:04"), late))
	}
}

// noEasyStart tells of a day on which some face hurries at any start, of the best one.
func (d *DayPlan) noEasyStart(best drying.Start) string {
	return fmt.Sprintf("On this day %s: at %s, the best, %s. Do no more at a time than the largest section.", d.NoneEasy(), best.Label, hurryWords(best))
}

// hurryWords tell which faces hurry after a start.
func hurryWords(s drying.Start) string {
	sides := s.Hurried()
	if len(sides) == 1 {
		return "the " + sidesWords(sides) + " dries before it can be rinsed whole"
	}
	return "the " + sidesWords(sides) + " dry before they can be rinsed whole"
}

// sidesWords names some faces: "left", "left and rear", "left, right and rear".
func sidesWords(sides []model.Side) string {
	words := make([]string, len(sides))
	for i, s := range sides {
		words[i] = string(s)
	}
	if n := len(words); n > 1 {
		return strings.Join(words[:n-1], ", ") + " and " + words[n-1]
	}
	return strings.Join(words, "")
}

// hourWords is a time of day, "" where it is not given.
func hourWords(hour quantity.Opt[model.TimeOfDay]) string {
	at, given := hour.Get()
	if !given {
		return ""
	}
	return at.String()
}

// foreseen tells whether the weather is known well enough to speak of starts.
func (d *DayPlan) foreseen() bool {
	if !d.Heading.Given() || len(d.Steps) == 0 {
		return false
	}
	for _, f := range d.Steps[0].Faces {
		if !f.Section.Given() {
			return false
		}
	}
	return true
}

// spoilt lists what spoils the starts of a day, each once.
func (d *DayPlan) spoilt() string {
	if len(d.Starts) == 0 {
		return "it is dark all day"
	}
	var words []string
	seen := map[string]bool{}
	for _, s := range d.Starts {
		if !seen[s.Why] {
			words = append(words, s.Why)
		}
		seen[s.Why] = true
	}
	return strings.Join(words, ", ")
}

// tellLimits warns of the limits that fall into the wash.
func (d *DayPlan) tellLimits(l *ledger) {
	for _, limit := range d.Limits {
		from, to := d.Start.At, d.Start.End
		if limit.Side != "" {
			turn, _ := d.Start.Turn(limit.Side)
			from, to = turn.From, turn.To
		}
		if len(d.Start.Turns) == 0 || limit.To.Before(from) || limit.From.After(to) {
			continue
		}
		n := limit.Note
		n.Format = "From " + clockTime(quantity.Some(limit.From)) + " to " + clockTime(quantity.Some(limit.To)) + " " + n.Format + "."
		l.warnings = append(l.warnings, n)
	}
}

// clockTime is an instant as the day's clock shows it.
func clockTime(at quantity.Opt[time.Time]) string {
	return model.TimeOfDayAt(at.Or(time.Time{})).String()
}
