package plan

import (
	"errors"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/day"
	"washeve/ui/report"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// openDay shows the day hour by hour. It comes back with [day.Done].
func (m Model) openDay() tea.Cmd {
	page := day.New(day.Options{
		Rig: m.now.rig, Places: m.now.places, Wash: m.now.wash,
		Make: m.make, Save: m.keepWash, Theme: m.th, Units: m.sys, Size: m.size,
	})
	return func() tea.Msg { return screen.Go{To: page} }
}

// tookDay puts the start and the heading of the day's screen in force, as one
// edit.
func (m Model) tookDay(wash model.Wash) Model {
	w := m.now.clone()
	w.wash.Start, w.wash.Heading = wash.Start, wash.Heading
	return m.commit(w)
}

// keepWash saves a wash where the program ends on the day's screen.
func (m Model) keepWash(wash model.Wash) error {
	if m.now.example {
		return m.notKept()
	}
	return m.keeper.Save(m.now.rig, m.now.places, wash)
}

// notKept is why leaving the program loses a changed example.
func (m Model) notKept() error {
	return errors.New("you changed the example, and it is kept nowhere until " + m.th.Key("a", "adopt") + " makes it yours")
}

// daySummary is when the wash begins, in a few words.
func (m *Model) daySummary() (string, theme.Ink) {
	d := m.plan.Day
	switch {
	case m.planned && d == nil && m.dayLacks() != "":
		return "needs " + m.dayLacks(), m.th.Text
	case !m.planned || d == nil:
		return "not known", m.th.Text
	case d.Chosen.Given():
		return "begin " + d.Start.Label, m.th.Text
	case d.Recommended.Given():
		return "best from " + d.Start.Label, m.th.Text
	}
	return "no start yet", m.th.Text
}

// dayLacks names the first thing without which no day is told ahead; "" where all is there.
func (m *Model) dayLacks() string {
	w := m.shown()
	i := w.chosen("place")
	switch {
	case !w.wash.Date.Given():
		return "the date"
	case i < 0:
		return "the place"
	case !w.places[i].Latitude.Given() || !w.places[i].Longitude.Given():
		return "the position"
	case !w.places[i].Zone.Given():
		return "the time zone"
	}
	return ""
}

// needs names the first thing that the day is not known without, and the key to it.
func needs(d *planner.DayPlan) string {
	what, _, _ := strings.Cut(d.Unknown[0], ":")
	return "needs " + strings.TrimSuffix(what, " of the day") + ": d"
}

// dayRow is the day in one line of the answer: when to begin, and with what where there is
// room for it beside that some face hurries.
func (m *Model) dayRow(room int) report.Row {
	row := report.Row{Label: "begin", Value: "?", Note: "day not known: see d"}
	d := m.plan.Day
	if d == nil {
		if lacks := m.dayLacks(); lacks != "" {
			row.Note = "needs " + lacks + ": d"
		}
		return row
	}
	switch {
	case d.Chosen.Given() || d.Recommended.Given():
		row.Value = d.Start.Label
	case len(d.Unknown) > 0:
		row.Note = needs(d)
	default:
		row.Note = "no fit start: see " + m.th.Key("D", "day")
	}
	if len(d.Start.Turns) == 0 || row.Value == "?" {
		return row
	}
	row.Note = string(d.Start.Turns[0].Side) + " first, done " + report.Clock(d.Start.End)
	switch {
	case len(d.Unknown) > 0: // nobody can tell whether a face hurries
		if row.Note = "drying " + needs(d); cells.Width(row.Note) > room {
			row.Note = needs(d)
		}
	case !d.Start.Easy:
		hurry := "some hurry: see " + m.th.Key("D", "day")
		row.Note = string(d.Start.Turns[0].Side) + " first, " + hurry
		if cells.Width(row.Note) > room {
			row.Note = hurry
		}
	}
	return row
}
