package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model/stock"
	"washeve/planner"
	"washeve/ui/rig"
	"washeve/ui/screen"
)

// keep saves the work: rig, places and the wash in hand, then the other washes.
func (m Model) keep(s stock.Stock) error {
	err := m.keeper.Save(*s.Rig, *s.Places, *s.Wash)
	if err != nil || m.shelf == nil {
		return err
	}
	return m.shelf.SaveOthers(*s.Others)
}

// openRig shows everything that is owned. It comes back with [rig.Done].
func (m Model) openRig(at rig.Spot) tea.Cmd {
	o := rig.Options{
		Stock: m.now.stock(), Example: m.now.example, Changed: m.changed, Save: m.keep,
		Make: new(planner.Memory).Make, Theme: m.th, Units: m.sys, Size: m.size, At: at,
	}
	if m.book.Logger != nil {
		o.Log = m.book.Logger.Log
	}
	page := rig.New(o)
	return func() tea.Msg { return screen.Go{To: page} }
}

// tookRig puts what the Rig screen made of the stock in force, as one edit. Where
// it asks for that, the example becomes the person's own, and the Rig screen
// opens again.
func (m Model) tookRig(d rig.Done) (screen.Screen, tea.Cmd) {
	w := work{rig: *d.Stock.Rig, places: *d.Stock.Places, wash: *d.Stock.Wash, others: *d.Stock.Others, example: m.now.example}
	m = m.commit(w)
	if !d.Adopt {
		return m, nil
	}
	if m = m.adopt(); m.now.example || m.unsaved != nil {
		return m, nil
	}
	return m, m.openRig(d.At)
}
