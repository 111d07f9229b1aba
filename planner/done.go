package planner

import (
	"strings"

	"washeve/model"
)

// Done is the code of the warning that the log has the plan's wash already.
const Done = "done-already"

// doneAhead is how many days before its day a planned wash may have been done. PRACTICE: the
// weather moves a wash by a day or two.
const doneAhead = 2

// washed is a wash of the log that names what was planned.
type washed struct {
	plan string
	day  model.Date
}

// recallWashes keeps which planned washes were done, and when.
func (p *Past) recallWashes(events []event) {
	for _, e := range events {
		if e.wash != nil && e.wash.Wash.Plan != "" {
			p.washed = append(p.washed, washed{e.wash.Wash.Plan, e.at.Date()})
		}
	}
}

// Did gives the day on which a wash of that name, planned for day, was done by the log: on
// that day, or at most two days before. It is false where it was not.
func (p *Past) Did(name string, day model.Date) (model.Date, bool) {
	if p == nil || name == "" {
		return model.Date{}, false
	}
	from := day.Plus(-doneAhead)
	for i := len(p.washed) - 1; i >= 0; i-- {
		w := p.washed[i]
		if strings.EqualFold(w.plan, name) && w.day.Compare(from) >= 0 && w.day.Compare(day) <= 0 {
			return w.day, true
		}
	}
	return model.Date{}, false
}

// WarnOfDone warns that the log has the wash of the plan already: what the plan says then is
// for doing it once more. A wash without a day is always to come.
func (p *Plan) WarnOfDone(wash model.Wash, past *Past) {
	day, given := wash.Date.Get()
	if !given {
		return
	}
	if on, did := past.Did(wash.Name, day); did {
		p.Warn(Note{Code: Done, Format: "Done already: the log has " + strings.ReplaceAll(wash.Name, "%", "%%") + " of " + on.String() + ". This plan is for washing once more: state its next day, or start a new wash."})
	}
}
