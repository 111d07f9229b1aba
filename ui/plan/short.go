package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/refill"
	"washeve/ui/screen"
	"washeve/ui/short"
)

// Sharing prepares a short bed to be shared out; see [planner.Memory.Sharing].
type Sharing func(model.Rig, model.Places, model.Wash) (*planner.Sharing, error)

// openShort shows what to do with a bed that is short. It comes back with
// [short.Done] or [short.ChangeResin].
func (m Model) openShort() tea.Cmd {
	page := short.New(short.Options{
		Rig: m.now.rig, Places: m.now.places, Wash: m.now.wash, Sharing: m.sharing, Save: m.keepWash,
		Theme: m.th, Units: m.sys, Size: m.size,
	})
	return func() tea.Msg { return screen.Go{To: page} }
}

// tookShare puts the wash of the Short screen in force, as one edit.
func (m Model) tookShare(d short.Done) Model {
	w := m.now.clone()
	w.wash = d.Wash
	m = m.commit(w)
	if d.Taken == "" {
		return m
	}
	return m.done("Taken: " + d.Taken + ". " + m.th.Key("u", "undo") + " takes it back.")
}

// toChangeResin keeps the pins and opens the guided change of resin.
func (m Model) toChangeResin(c short.ChangeResin) (screen.Screen, tea.Cmd) {
	if c.Changed {
		m = m.tookShare(short.Done{Wash: c.Wash})
	}
	if m.book.Logger == nil {
		return m.warn("Change the resin, then state the bed's gallons so far as " + quantity.Show(quantity.Volume(0), m.sys) + "."), nil
	}
	page := refill.Open(m.desk())
	return m, func() tea.Msg { return screen.Go{To: page} }
}

// pointer names the key to the ways out, where they are called for and there is
// room.
func (m *Model) pointer(width int) string {
	const gap, key, words = "  ", "S", " ways out"
	if m.plan.Verdict == planner.Lasts || m.sharing == nil || cells.Width(gap+key+words) > width {
		return ""
	}
	return gap + m.th.Strong.On(key) + m.th.Text.On(words)
}
