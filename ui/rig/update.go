package rig

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/form"
	"washeve/ui/history"
	"washeve/ui/keeping"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/mouse"
	"washeve/ui/screen"
)

// Update takes a message.
func (m Model) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.size = layout.SizeOf(msg)
		return m, nil
	case tea.MouseMsg:
		return m.mouse(msg), nil
	case tea.KeyMsg:
		return m.key(msg)
	case screen.Unsaved:
		m.ask = keeping.AnewQuestion[Model](msg.Why, m.th)
		return m, nil
	case screen.Said, screen.Changed:
		m.status, m.alarm = keeping.Told(msg, m.status, m.alarm, m.th)
		return m, nil
	}
	return m, nil
}

func (m Model) key(msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	b, bound := keys.Find(m.Keys(), msg)
	_, f, ok := m.target()
	switch {
	case m.typing != nil && (!bound || b.Does == form.Spell):
		return m.typed(msg), nil
	case !bound && (m.picker != nil || m.ask != nil || m.refused || !ok):
		return m, nil
	case !bound && msg.Paste && len(f.Choices) == 0 && f.Refers == "":
		return m.overtyped(msg), nil
	case !bound && form.IsLetter(msg) && m.awaitsWord():
		return m.overtyped(msg), nil
	case !bound && form.IsLetter(msg):
		return m.say(form.NoKey(f, msg)), nil
	case !bound:
		return m, nil
	case b.Blocked != "":
		return m.refuse(b), nil
	}
	m = m.say("")
	switch {
	case m.refused:
		if m.refused = false; b.Does == form.OpenLine {
			return m.enters(), nil
		}
		return m, nil
	case m.ask != nil:
		return m.answer(b.Does)
	case m.picker != nil:
		return m.pick(b.Does, msg), nil
	case m.typing != nil:
		return m.types(b.Does), nil
	}
	return m.act(b.Does, msg)
}

// refuse says why a key does nothing. Of a digit the letters behind it are let go by, too.
func (m Model) refuse(b keys.Binding) Model {
	m.refused = b.Does == overtype
	return m.warn(b.NotNow())
}

// act does what a key means while the hand walks.
func (m Model) act(does keys.Action, msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	switch does {
	case enter:
		return m.enters(), nil
	case overtype, form.Spell:
		return m.overtyped(msg), nil
	case nextChoice:
		return m.turnChoice(1), nil
	case prevChoice:
		return m.turnChoice(-1), nil
	case takeAway:
		r, _, _ := m.target()
		return m.state(r, ""), nil
	case newItem:
		return m.adds(), nil
	case copyItem:
		return m.copies(), nil
	case rename:
		return m.renames(), nil
	case dropItem:
		return m.drops(), nil
	case newFace:
		return m.asksFace(), nil
	case useIt:
		return m.uses(), nil
	case history.Undo:
		return m.undone(), nil
	case history.Redo:
		return m.redone(), nil
	case saveAgain:
		return m.kept(), nil
	case keeping.Anew:
		return m, keeping.AskAnew
	case adopt:
		return m.leaves(true)
	}
	return m.walk(does)
}

// walk moves the hand.
func (m Model) walk(does keys.Action) (screen.Screen, tea.Cmd) {
	switch does {
	case otherSide:
		m.inForm = !m.inForm
		return m.onto(m.hand, 1), nil
	case up:
		return m.line(-1), nil
	case down:
		return m.line(1), nil
	case first:
		return m.toEnd(-1), nil
	case last:
		return m.toEnd(1), nil
	case nextKind:
		return m.toKind(1), nil
	case prevKind:
		return m.toKind(-1), nil
	case keys.Units:
		return m.otherUnits(), nil
	case back:
		if m.inForm {
			m.inForm = false
			return m, nil
		}
		return m.leaves(false)
	case toPlan:
		return m.leaves(false)
	}
	return m, nil
}

// line goes up or down by one line on the side of the hand.
func (m Model) line(by int) Model {
	if m.inForm {
		return m.onto(m.hand+by, by)
	}
	return m.moved(by)
}

func (m Model) toEnd(by int) Model {
	switch {
	case !m.inForm:
		return m.moved(by * len(m.spots()))
	case by < 0:
		return m.onto(0, 1)
	}
	return m.onto(len(m.looks.rows)-1, -1)
}

// leaves goes back to the screen below, which takes over what was changed.
func (m Model) leaves(adopt bool) (screen.Screen, tea.Cmd) {
	var news tea.Msg
	switch {
	case m.changed || adopt:
		news = Done{Version: m.version(), History: m.history, Units: m.sys, Adopt: adopt, At: m.at}
	case m.sys != m.opened:
		news = screen.InUnits{Units: m.sys}
	}
	return m, func() tea.Msg { return screen.Back{With: news} }
}

func (m Model) answer(does keys.Action) (screen.Screen, tea.Cmd) {
	q := m.ask
	m.ask = nil
	return q.Answered(m, does, Model.warn)
}

// mouse puts the hand where it clicks, and scrolls.
func (m Model) mouse(msg tea.MouseMsg) Model {
	m.refused = false
	if m.ask != nil || m.typing != nil || m.picker != nil {
		return m
	}
	r := m.rects()
	switch does := mouse.Of(msg); {
	case does == mouse.Up:
		return m.line(-1)
	case does == mouse.Down:
		return m.line(1)
	case does != mouse.Click:
		return m
	case r.List.Holds(msg.X, msg.Y):
		return m.clickedList(msg.Y-r.List.Y, r.List.H)
	case r.Form.Holds(msg.X, msg.Y):
		return m.clickedForm(msg.Y-r.Form.Y, r.Form.H)
	}
	return m
}

func (m Model) clickedList(y, height int) Model {
	lines := m.lines()
	if i := m.listFrom(height) + y; i < len(lines) && lines[i].head == "" {
		m.at, m.hand, m.inForm = lines[i].spot, 0, false
	}
	return m.looked()
}

func (m Model) clickedForm(y, height int) Model {
	i, rows := m.formFrom(height)+y, m.looks.rows
	switch {
	case i >= len(rows) || rows[i].heading != "":
		return m
	case m.inForm && i == m.hand:
		return m.enters()
	}
	m.hand, m.inForm = i, true
	return m
}
