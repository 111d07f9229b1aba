package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/planner"
	ways "washeve/planner/compare"
	"washeve/ui/compare"
	"washeve/ui/screen"
)

// openCompare sets ways of the wash side by side. It comes back with
// [compare.Done] where one is to be the plan.
func (m Model) openCompare() tea.Cmd {
	w := m.now.clone()
	means := func() (ways.Answerer, ways.Yearly) {
		var past *planner.Past
		today := model.Moment{}
		if m.book.Logger != nil {
			past, today = m.book.Past(w.rig, w.places), model.MomentOf(m.book.Clock())
		}
		washes := ways.YearOf(w.rig, ways.BedOf(w.rig, w.wash), past, today)
		return ways.NewOneWash(past, washes), washes
	}
	page := compare.New(compare.Options{
		Base: ways.Case{Rig: w.rig, Places: w.places, Wash: w.wash}, Means: means,
		Theme: m.th, Units: m.sys, Size: m.size,
	})
	return func() tea.Msg { return screen.Go{To: page} }
}

// tookWay makes a way the plan, as one edit.
func (m Model) tookWay(way ways.Way) Model {
	w, filled := m.now.clone(), ""
	if len(way.Case.Rig.Beds) > len(w.rig.Beds) {
		filled = " The tank counts as freshly filled: put its resin in, and write that down (" + m.th.Key("B, c", "bed, resin") + ")."
	}
	w.rig, w.places, w.wash = way.Case.Rig, way.Case.Places, way.Case.Wash
	w.rig.Defaults.Units = m.now.rig.Defaults.Units // which may have been turned meanwhile
	return m.commit(w.clone()).done("The plan is now: " + way.Name + ". " + m.th.Key("u", "undo") + " takes it back." + filled)
}
