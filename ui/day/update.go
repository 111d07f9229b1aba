package day

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/history"
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
	case screen.InUnits:
		m.sys = msg.Units
		return m, nil
	case tea.MouseMsg:
		return m.mouse(msg), nil
	case entry.Learned:
		return m.replan(m.washShown()), nil
	case tea.KeyMsg:
		return m.key(msg)
	}
	return m, nil
}

func (m Model) key(msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	b, bound := keys.Find(m.Keys(), msg)
	switch {
	case m.edit != nil && (!bound || b.Does == form.Spell):
		return m.typed(msg), nil
	case !bound:
		return m, nil
	case b.Blocked != "":
		return m.warn(b.NotNow()), nil
	case b.Does == back:
		return m, m.back()
	case b.Does == keys.Units:
		m.sys = m.sys.Other()
		return m.say("Shown in " + m.sys.Words() + "."), screen.ShowIn(m.sys)
	}
	return m.say("").act(b.Does), nil
}

// act does what a key means.
func (m Model) act(does keys.Action) Model {
	switch does {
	case earlier:
		return m.moved(-1)
	case later:
		return m.moved(1)
	case hourBefore:
		return m.moved(-4)
	case hourAfter:
		return m.moved(4)
	case recommend:
		return m.recommended()
	case open:
		return m.state(keyStart, "")
	case turnLeft:
		return m.turned(-1)
	case turnRight:
		return m.turned(1)
	case typeStart:
		return m.startEdit(keyStart)
	case typeNose:
		return m.startEdit(keyHeading)
	}
	return m.keep(does)
}

// keep does what a key means that is about what was done before.
func (m Model) keep(does keys.Action) Model {
	switch does {
	case history.Undo:
		return m.undone()
	case history.Redo:
		return m.redone()
	case accept:
		if e, held := m.edit.Held(does); held {
			m.edit = &e
			return m.warn(e.NotTaken(""))
		}
		return m.finishEdit()
	case abandon:
		m.edit = nil
		return m.replan(m.now)
	}
	return m
}

// back returns to the screen before, with the wash where it is another now.
func (m Model) back() tea.Cmd {
	var done tea.Msg
	if m.changed() {
		done = Done{m.now}
	}
	return func() tea.Msg { return screen.Back{With: done} }
}

// mouse moves the start to where it clicks, and by the wheel.
func (m Model) mouse(msg tea.MouseMsg) Model {
	d := m.day()
	if m.edit != nil || d == nil {
		return m
	}
	early, late := m.ends()
	r := m.rects()
	switch does := mouse.Of(msg); {
	case does == mouse.Up && early == "":
		return m.moved(-1)
	case does == mouse.Down && late == "":
		return m.moved(1)
	case does != mouse.Click || !r.Strip.Holds(msg.X, msg.Y):
		return m
	}
	if at, ok := m.strip().At(msg.X-r.Strip.X, r.Strip.W); ok {
		return m.say("").begin(at)
	}
	return m
}

// washShown is the wash with what is being typed.
func (m Model) washShown() model.Wash {
	w := m.now
	if m.edit != nil && m.edit.Replaced {
		_ = set(&w, m.editAt, m.edit.Good) // on error the wash is as it was
	}
	return w
}

// startEdit lets a field be typed, from nothing.
func (m Model) startEdit(key string) Model {
	f := fieldOf(&m.now, key)
	e := form.Start("", f.Example).Telling(func(text string) string { return form.Calendar{}.Taken(f, text) })
	e.Good = f.Text()
	m.edit, m.editAt = &e, key
	return m
}

// typed takes a key into the text, and the answer follows; where the text is refused, it is
// that of what stays in its place.
func (m Model) typed(msg tea.KeyMsg) Model {
	was := m.edit.Replaced
	e := m.edit.Type(msg, m.check)
	if m.edit = &e; was || e.Replaced {
		m = m.replan(m.washShown())
	}
	return m.say(e.Heard())
}

func (m Model) check(text string) error {
	w := m.now
	return set(&w, m.editAt, text)
}

// finishEdit takes what was typed. A text that is wrong is dropped, the
// value before it stays, and that is said.
func (m Model) finishEdit() Model {
	if m.edit == nil {
		return m
	}
	e := *m.edit
	m.edit = nil
	if e.Replaced {
		m = m.state(m.editAt, e.Good)
	}
	if e.Problem != nil {
		return m.warn(e.NotTaken(fieldOf(&m.now, m.editAt).Label))
	}
	return m
}
