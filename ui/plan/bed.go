package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/planner"
	"washeve/ui/bed"
	"washeve/ui/entry"
	"washeve/ui/refill"
	"washeve/ui/screen"
)

// openBed shows the bed and the log. It comes back with [entry.Written] where the
// log has grown.
func (m Model) openBed() tea.Cmd {
	page := bed.New(bed.Options{Desk: m.desk(), Refill: refill.Open})
	return func() tea.Msg { return screen.Go{To: page} }
}

// desk is what entries of the log are written at.
func (m Model) desk() entry.Desk {
	w := m.now
	return entry.Desk{
		Rig: w.rig, Places: w.places, Wash: w.wash, Logger: m.book.Logger, Clock: m.book.Clock, NewID: m.book.NewID, Deeds: m.book.Deeds, Lag: m.book.Lags,
		Theme: m.th, Units: m.sys, Size: m.size,
		Answer: func() (planner.Plan, *planner.Past, error) {
			p, err := m.make(w.rig, w.places, w.wash)
			return p, m.book.Past(w.rig, w.places), err
		},
	}
}
