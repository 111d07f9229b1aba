package washday

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/keys"
	"washeve/ui/screen"
)

// askDay asks about a wash that was planned for another day, or on whose day it freezes or no
// start is fit, whether it is begun today. The days of the built-in example are invented.
func (m Model) askDay(p *planner.Plan) Model {
	today := m.now.Moment().Date()
	day, given := m.o.Wash.Date.Get()
	if !given || m.err != nil || m.o.Rehearsal {
		return m
	}
	if day == today {
		if why, against := p.NoDay(); against {
			m.early = why.Text(m.sys) + " Begin all the same?"
		}
		return m
	}
	m.early = "This wash is planned for " + day.String() + near(day, today) + ". Begin it now?"
	return m
}

// near is a day as it is called beside today; "" where it is further away.
func near(day, today model.Date) string {
	switch day {
	case today.Plus(1):
		return ", tomorrow"
	case today.Plus(-1):
		return ", yesterday"
	}
	return ""
}

func earlyKeys() []keys.Binding {
	return []keys.Binding{
		keys.New("Answer", sayYes, "y", "begin it now", "y", "Y").Explained("do the wash today, although it is planned for another day or its weather speaks against it"),
		keys.New("Answer", sayNo, "n", "back to the plan", "n", "N", "esc"),
	}
}

// answerDay begins the wash, or goes back to the plan.
func (m Model) answerDay(does keys.Action) (screen.Screen, tea.Cmd) {
	if does != sayYes {
		return m, leave
	}
	m.early = ""
	if day, given := m.o.Wash.Date.Get(); given && day == m.now.Moment().Date() {
		return m.say("Begun, though the plan speaks against this day."), nil
	}
	return m.say("Begun on another day than the plan's: its weather may be another."), nil
}
