package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
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

// soFarTold is what the stated gallons of the bed are where the log has counted on, and what
// the fill has given by now; "" on any other line, and while it is typed.
func (m *Model) soFarTold(at ref, f model.Field) string {
	if at.section != "bed" || at.key != "gallons_so_far" || !f.Given() || m.edit != nil || m.book.Past == nil {
		return ""
	}
	past := m.book.Past(m.now.rig, m.now.places).Bed(m.now.rig.Beds[at.index].Name)
	if past == nil {
		return ""
	}
	fill := past.Present()
	given := quantity.Show(fill.Gallons, m.sys)
	if fill.Began.Given() {
		return "of the fill before " + fill.Began.Date().String() + ", counts no more; this one has given " + given
	}
	return "what the fill had given before the log began; by now it has given " + given
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
