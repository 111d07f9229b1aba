package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model/stock"
	"washeve/planner"
	"washeve/ui/history"
	"washeve/ui/rig"
	"washeve/ui/screen"
)

// keep saves the work: rig, places and the wash in hand, then the other washes.
func (m Model) keep(s stock.Stock) error {
	err := m.keeper.Save(*s.Rig, *s.Places, *s.Wash)
	switch {
	case m.shelf == nil:
	case err != nil:
		m.shelf.NotSaved(*s.Others)
	default:
		err = m.shelf.SaveOthers(*s.Others)
	}
	return err
}

// openRig shows everything that is owned. It comes back with [rig.Done].
func (m Model) openRig(at rig.Spot) tea.Cmd {
	memory := new(planner.Memory)
	if m.book.Past != nil {
		memory.Past = m.book.Past(m.now.rig, m.now.places)
	}
	o := rig.Options{
		Stock: m.now.stock(), Example: m.now.example, Changed: m.changed, Save: m.keep, History: history.Map(m.history, work.version),
		Make: memory.Make, Past: memory.Past, Theme: m.th, Units: m.sys, Unsaid: m.unsaid, Size: m.size, At: at, Currency: m.currency,
	}
	if m.book.Logger != nil {
		o.Log = m.book.Logger.Log
	}
	page := rig.New(o)
	return func() tea.Msg { return screen.Go{To: page} }
}

// version is the work as the Rig screen has it.
func (w work) version() rig.Version { return rig.Version{Stock: w.stock(), Example: w.example} }

// workOf is what a version of the Rig screen is here.
func workOf(v rig.Version) work {
	s := v.Stock
	return work{rig: *s.Rig, places: *s.Places, wash: *s.Wash, others: *s.Others, example: v.Example}
}

// tookRig puts what the Rig screen made of the stock in force, each edit by itself. Where
// it asks for that, the example becomes the person's own, and the Rig screen
// opens again.
func (m Model) tookRig(d rig.Done) (screen.Screen, tea.Cmd) {
	m.history = history.Map(d.History, workOf)
	m = m.settle(workOf(d.Version))
	m.sys = d.Units
	if !d.Adopt {
		return m, nil
	}
	if m = m.adopt(); m.now.example || m.unsaved != nil {
		return m, nil
	}
	return m, m.openRig(d.At)
}
