package planner

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
)

const (
	// LeadTime is how long before it is needed resin is ordered. PRACTICE.
	LeadTime = 10 * quantity.Day
	// paceWindow is how far back the present pace looks. PRACTICE: a season's
	// half, long enough for several washes.
	paceWindow = 90 * quantity.Day
	// leastDraws is how many washes the pace is taken from where the window has
	// fewer. PRACTICE.
	leastDraws = 4
	// leastSpan is the least time that a pace is taken from: what two washes of one week
	// took says nothing of a month. PRACTICE.
	leastSpan = 14 * quantity.Day
	// furthest is how far ahead a date is worth telling. PRACTICE: resin does not
	// keep for ever.
	furthest = 5 * 365 * quantity.Day
)

// Pace is how fast DI water is used: so much in so long. The zero value is not
// known.
type Pace struct {
	Volume quantity.Volume
	Over   quantity.Duration
	Washes int
}

// Known tells whether there is a pace: two washes, and two weeks that they stand for.
func (p Pace) Known() bool { return p.Volume > 0 && p.Over > 0 }

// In is the water of a stretch of time.
func (p Pace) In(d quantity.Duration) quantity.Volume {
	if !p.Known() {
		return 0
	}
	return p.Volume * quantity.Volume(d/p.Over)
}

// PaceOf is the present pace: the water of the washes of the last 90 days (or of
// the last four washes, where these are fewer) over the time that they stand
// for. n washes from the first to the last are n - 1 gaps, so the time is the
// gaps' times n/(n-1); but never less than from the first of them until today, so
// that a pause slows the pace. PRACTICE.
func PaceOf(draws []Draw, today model.Moment) Pace {
	from := len(draws)
	for from > 0 && (len(draws)-from < leastDraws || between(draws[from-1].At, today) <= paceWindow) {
		from--
	}
	recent := draws[from:]
	n := len(recent)
	if n < 2 {
		return Pace{Washes: n}
	}
	p := Pace{Washes: n}
	for _, d := range recent {
		p.Volume += d.Volume
	}
	first := recent[0].At
	gaps := between(first, recent[n-1].At) * quantity.Duration(n) / quantity.Duration(n-1)
	p.Over = max(gaps, between(first, today))
	if p.Over < leastSpan {
		return Pace{Washes: n}
	}
	return p
}

func between(from, to model.Moment) quantity.Duration {
	return quantity.Duration(to.Time().Sub(from.Time()).Seconds())
}

// Until is the day on which a volume will have been used, counted from a day at
// this pace; false where that is not known or too far off to tell.
func (p Pace) Until(left quantity.Volume, from model.Date) (model.Date, bool) {
	if !p.Known() || !(left >= 0) {
		return model.Date{}, false
	}
	takes := p.Over * quantity.Duration(left/p.Volume)
	if !(takes <= furthest) {
		return model.Date{}, false
	}
	return dayAfter(from, takes), true
}

// OrderBy is the last day to order resin that is needed on a day.
func OrderBy(needed model.Date, lead quantity.Duration) model.Date { return dayAfter(needed, -lead) }

func dayAfter(from model.Date, d quantity.Duration) model.Date {
	return from.Plus(int(math.Floor(float64(d / quantity.Day))))
}

// monthOfDays is the stretch that a pace is told for.
const monthOfDays = 30 * quantity.Day

// Month is the water of 30 days.
func (p Pace) Month() quantity.Volume { return p.In(monthOfDays) }
