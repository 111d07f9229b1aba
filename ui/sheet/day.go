package sheet

import (
	"fmt"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/drying"
	"washeve/ui/cells"
	"washeve/ui/report"
)

// dayOf is the order of the day: with times where the start is known; without them in the
// order of the day where sun and shade are, otherwise as the program lists the faces.
func dayOf(p planner.Plan, sys quantity.System) Day {
	d := Day{How: "One face after the other through all its steps."}
	switch {
	case p.Day != nil && len(p.Day.Start.Turns) > 0 && !p.Day.Begins():
		d.Start = report.DayStart(p.Day)
		for i, t := range p.Day.Start.Turns {
			d.Turns = append(d.Turns, turnOf(i, p, t.Side, sys))
		}
	case p.Day == nil || len(p.Day.Start.Turns) == 0:
		d.Start = "When to begin is not known"
		if p.DayNote.Code != "" {
			d.Notes = append(d.Notes, clean(p.DayNote.Text(sys)))
		}
		for i, f := range p.Faces {
			d.Turns = append(d.Turns, turnOf(i, p, f.Name, sys))
		}
	default:
		d.Start, d.Timed = report.DayStart(p.Day), true
		d.How = "One face after the other, each through all its steps."
		for i, t := range p.Day.Start.Turns {
			d.Turns = append(d.Turns, timedTurn(turnOf(i, p, t.Side, sys), t, sys))
		}
	}
	if p.Day == nil {
		return d
	}
	if rise, given := p.Day.Sun.Rise.Get(); given && p.Day.Sun.Set.Given() {
		d.Start += ". Sun from " + report.Clock(rise) + " to " + report.Clock(p.Day.Sun.Set.Or(rise))
	}
	d.Notes = append(d.Notes, notes(p.Day.Notes, sys)...)
	for _, u := range p.Day.Unknown {
		d.Notes = append(d.Notes, "Not known: "+cells.Safe(u))
	}
	if len(p.Day.Assumed) > 0 {
		d.Notes = append(d.Notes, "Assumed: "+strings.Join(p.Day.Assumed, ", "))
	}
	return d
}

// turnOf is a face without its times.
func turnOf(i int, p planner.Plan, side model.Side, sys quantity.System) Turn {
	t := Turn{ID: fmt.Sprintf("face-%d", i+1), Face: cells.Safe(string(side)), DI: "none"}
	for _, f := range p.Faces {
		if f.Name != side {
			continue
		}
		t.Outlook = report.SpotWords(f.Spots)
		if f.DI > 0 {
			t.DI = quantity.Show(f.DI, sys) + ", " + report.Time(p.Sprayer.Flow.Time(f.DI))
		}
	}
	return t
}

func timedTurn(t Turn, turn drying.Turn, sys quantity.System) Turn {
	t.From, t.To = report.Clock(turn.From), report.Clock(turn.To)
	t.Why, t.WhyShort = cells.Safe(turn.Why), cells.Safe(report.TurnReason(turn, 21))
	t.Section, t.Dries = "not known", "not known"
	if a, given := turn.Section.Get(); given {
		t.Section = quantity.Show(a, sys)
	}
	if lasts, given := turn.Dries.Get(); given {
		t.Dries = report.Dries(lasts)
	}
	return t
}
