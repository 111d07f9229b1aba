package planner

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
)

// Hours are from when to when a wash is at work, since its day began: those past midnight
// are not looked at beside the next day's. The zero value is of one of which no start is
// known: it overlaps with none.
type Hours struct {
	From, To quantity.Duration
	Advised  bool // nobody stated the start: the day's best is taken
}

func hoursFrom(start quantity.Opt[model.TimeOfDay], takes quantity.Duration) Hours {
	t, given := start.Get()
	if !given {
		return Hours{}
	}
	from := quantity.Duration(t.Minutes()) * quantity.Minute
	return Hours{From: from, To: from + takes}
}

// hoursAs are those of a start as the day tells it.
func hoursAs(s drying.Start) Hours {
	takes := quantity.Duration(s.End.Sub(s.At).Seconds()) * quantity.Second
	return hoursFrom(quantity.Some(model.TimeOfDayAt(s.At)), takes)
}

// Hours of the plan's wash end when the day says that it is done, else when its water is. The
// wash begins as it states, else as the plan recommends.
func (p *Plan) Hours(wash model.Wash) Hours {
	if p.Day != nil && p.Day.Begins() {
		h := hoursAs(p.Day.Start)
		h.Advised = !p.Day.Chosen.Given()
		return h
	}
	return hoursFrom(wash.Start, p.DI.Duration+p.Soft.Duration+p.Untreated.Duration)
}

// HoursOf are when a wash is at work on its day, as [Plan.Hours] are, without the whole plan
// of it; none where that is not known.
func HoursOf(rig model.Rig, places model.Places, wash model.Wash, past *Past) Hours {
	c, err := choose(rig, places, wash)
	if err != nil {
		return Hours{}
	}
	c.past = past
	return undated(c).hoursOn(wash)
}

// hoursOn are those of a wash on its way, which was decided without its day: face by face from
// the start that is stated, else from the best of the day.
func (m *making) hoursOn(wash model.Wash) Hours {
	c := m.chosen
	c.wash.Date = wash.Date
	if !wash.Start.Given() {
		if len(lacksForDay(c)) > 0 {
			return Hours{}
		}
		f, err := drying.Day(dayInput(c, m.stages, m.faces, m.chain))
		best, known := f.Recommended.Get()
		if err != nil || !known {
			return Hours{}
		}
		h := hoursAs(best)
		h.Advised = true
		return h
	}
	var takes quantity.Duration
	for _, f := range m.faces {
		work, _ := workOn(f, m.stages, m.chain)
		takes += work.Work.Or(0)
	}
	return hoursFrom(wash.Start, takes)
}

// Overlap tells that two are at work at one time of a day.
func (h Hours) Overlap(other Hours) bool { return h.From < other.To && other.From < h.To }

// String is like "08:30 to 10:05", with a word where nobody stated the start; "" where no
// start is known.
func (h Hours) String() string {
	if h == (Hours{}) {
		return ""
	}
	words := clockOf(h.From) + " to " + clockOf(h.To)
	if h.Advised {
		words += " as recommended"
	}
	return words
}

// clockOf is a time of the day, as a clock without seconds shows it; past midnight it is the next day's.
func clockOf(d quantity.Duration) string {
	minutes := int(d/quantity.Minute) % (24 * 60)
	return model.TimeOfDay{Hour: minutes / 60, Minute: minutes % 60}.String()
}
