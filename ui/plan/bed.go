package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/bed"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/refill"
	"washeve/ui/screen"
)

// openBed shows the bed and the log. It comes back with [entry.Written] where the
// log has grown.
func (m Model) openBed() tea.Cmd {
	page := bed.New(bed.Options{Desk: m.desk(), Refill: refill.Open})
	return func() tea.Msg { return screen.Go{To: page} }
}

// soFarTold is [form.SoFarTold] of a line; "" while it is typed.
func (m *Model) soFarTold(at ref, f model.Field) string {
	if m.edit != nil || m.book.Past == nil {
		return ""
	}
	var name string
	switch at.section {
	case "bed":
		name = m.now.rig.Beds[at.index].Name
	case "softener":
		name = m.now.rig.Softeners[at.index].Name
	default:
		return ""
	}
	return form.SoFarTold(f, at.section, name, m.book.Past(m.now.rig, m.now.places), m.sys)
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
