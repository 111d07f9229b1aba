package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/refill"
	"washeve/ui/screen"
	"washeve/ui/washday"
)

// openWashDay begins the wash of the plan, or goes on with one that is under way.
// It comes back with [entry.Written], since the log has grown.
func (m Model) openWashDay() (screen.Screen, tea.Cmd) {
	page, err := m.WashDay()
	if err != nil {
		return m.warn(err.Error()), nil
	}
	return m, func() tea.Msg { return screen.Go{To: page} }
}

// WashDay is the wash day of the plan as a screen: one that is under way is
// offered to be gone on with.
func (m Model) WashDay() (screen.Screen, error) {
	o := washday.Options{Desk: m.desk(), Means: m.washDay, Rehearsal: m.now.example, Refill: refill.Open}
	if !o.Rehearsal {
		u, there, err := m.washDay.Under()
		if err != nil {
			return nil, err
		}
		if there {
			return washday.GoOn(o, u), nil
		}
	}
	return washday.New(o), nil
}
