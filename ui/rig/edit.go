package rig

import (
	"cmp"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/ui/form"
	"washeve/ui/keys"
)

// target is the field under the hand; none while the hand is in the list.
func (m *Model) target() (stock.Ref, model.Field, bool) {
	rows := m.looks.rows
	if !m.inForm || m.hand >= len(rows) || rows[m.hand].heading != "" {
		return stock.Ref{}, model.Field{}, false
	}
	return rows[m.hand].ref, suited(m.shown(), rows[m.hand].ref, rows[m.hand].field, m.sys), true
}

// suited is a field of a stock with its example in the units in which it is to be stated.
func suited(s stock.Stock, r stock.Ref, f model.Field, sys quantity.System) model.Field {
	return form.Suited(f, s.Item(r.Section, r.Index), sys)
}

// enters goes from the list to the fields, or changes the field under the hand.
func (m Model) enters() Model {
	if !m.inForm {
		m.inForm = true
		return m.onto(m.hand, 1)
	}
	r, f, ok := m.target()
	switch {
	case !ok:
		return m
	case len(f.Choices) > 0 || f.Refers != "":
		return m.openPicker(r, f)
	}
	return m.startTyping(m.now, r, f.Text())
}

// startTyping lets a field be typed on a stock, beginning with a text.
func (m Model) startTyping(base stock.Stock, r stock.Ref, text string) Model {
	f, ok := base.Field(r)
	if !ok {
		return m
	}
	f = suited(base, r, f, m.sys)
	e := form.Of(f, text).Telling(func(text string) string { return form.Calendar{}.Taken(f, text) })
	e = e.OnScales(f, form.ScalesOf(f, base)).Unknown(f, m.assumedHelp(r, f))
	e = e.InCurrency(cmp.Or(base.Rig.Currency(), m.currency))
	t := typing{Edit: e, ref: r, base: base, draft: base, was: f.Text(), from: place{m.at, m.inForm, m.hand}}
	t.Good = f.Text()
	m.typing = &t
	return m
}

func (m Model) overtyped(msg tea.KeyMsg) Model {
	r, _, ok := m.target()
	if !ok {
		return m
	}
	return m.startTyping(m.now, r, "").typed(msg)
}

// with is a stock with one field stated.
func with(s stock.Stock, r stock.Ref, text string) (stock.Stock, error) {
	c := s.Clone()
	f, _ := c.Field(r)
	set := func(key, text string) error {
		return c.Set(stock.Ref{Section: r.Section, Index: r.Index, Key: key}, text)
	}
	return c, form.Calendar{}.Set(f, text, set) // what is owned has no day
}

func (t typing) check(text string) error {
	_, err := with(t.base, t.ref, text)
	return err
}

// typed takes a key into the text; what is shown follows whenever the text is
// right.
func (m Model) typed(msg tea.KeyMsg) Model {
	m = m.withEdit(m.typing.Type(msg, m.typing.check))
	return m.say(m.typing.Heard())
}

// withEdit shows what the text says; where it is refused, what stays in its place.
func (m Model) withEdit(e form.Edit) Model {
	t := *m.typing
	t.Edit = e
	switch s, err := with(t.base, t.ref, e.Good); {
	case e.Refused():
		t.draft = t.base
	case err == nil && e.Replaced:
		t.draft = s
	}
	m.typing = &t
	return m.looked()
}

// types does what a key means while a value is typed.
func (m Model) types(does keys.Action) Model {
	if e, held := m.typing.Held(does); held {
		return m.withEdit(e).warn(e.NotTaken(m.typing.label()))
	}
	switch does {
	case form.Accept:
		return m.offered().accepted()
	case form.AddUnit:
		if m.typing.Offer != "" {
			return m.offered()
		}
		m = m.finishTyping()
		return m.onto(m.hand+1, 1)
	case form.AcceptDown:
		m = m.offered().finishTyping()
		return m.onto(m.hand+1, 1)
	case form.AcceptUp:
		m = m.offered().finishTyping()
		return m.onto(m.hand-1, -1)
	case form.Abandon:
		return m.abandoned()
	}
	return m
}

// abandoned is the screen as it was before the typing.
func (m Model) abandoned() Model {
	from := m.typing.from
	m.at, m.inForm, m.hand, m.typing = from.at, from.inForm, from.hand, nil
	return m.looked()
}

// offered puts the example's unit behind a bare number.
func (m Model) offered() Model {
	if m.typing.Offer == "" {
		return m
	}
	return m.withEdit(m.typing.Offered(m.typing.check))
}

// finishTyping takes what was typed. A text that is wrong is dropped, the
// value before it stays, and that is said.
func (m Model) finishTyping() Model {
	if m.typing == nil {
		return m
	}
	t := *m.typing
	m.typing = nil
	was := t.nameBefore()
	if t.Replaced || t.fresh {
		m = m.commit(t.draft)
		if text := m.follows(t, was); text != "" && !m.alarm && m.ask == nil {
			m = m.say(text)
		}
	} else {
		m = m.looked()
	}
	if t.Problem != nil {
		return m.warn(t.NotTaken(t.label()))
	}
	if taken := t.Told(); taken != "" && !m.alarm && m.ask == nil {
		return m.say(strings.TrimSpace(taken + ". " + m.status))
	}
	return m
}

// label is what the line that is typed is called.
func (t typing) label() string {
	f, _ := t.base.Field(t.ref)
	return f.Label
}

// nameBefore is the name of an item that is typed, "" where another field is.
func (t typing) nameBefore() string {
	if t.ref.Key != "name" || t.fresh {
		return ""
	}
	return t.was
}

// state sets a field at once.
func (m Model) state(r stock.Ref, text string) Model {
	s, err := with(m.now, r, text)
	if err != nil {
		return m.warn(err.Error())
	}
	return m.commit(s)
}

func (m Model) turnChoice(by int) Model {
	r, f, _ := m.target()
	return m.state(r, form.TurnedChoice(f, by))
}

// openPicker lists what a field can hold.
func (m Model) openPicker(r stock.Ref, f model.Field) Model {
	var options []form.Option
	for _, c := range f.Choices {
		options = append(options, form.Option{Text: c, Pick: c})
	}
	for i, name := range m.now.Names(f.Refers) {
		options = append(options, form.Option{Text: name, Pick: name, Note: m.noteOf(Spot{f.Refers, i})})
	}
	if !f.Required {
		options = append(options, form.Option{Text: "not stated", Note: "it is assumed"})
	}
	return m.opens(form.Open(f.Label, options, f.Text()), func(m Model, o form.Option) Model {
		if o.Pick == f.Text() {
			return m.say(form.AsItWas)
		}
		return m.state(r, o.Pick)
	})
}

func (m Model) opens(p form.Picker, picks func(Model, form.Option) Model) Model {
	m.picker, m.picks = &p, picks
	return m
}

// pick does what a key means while a list is open.
func (m Model) pick(does keys.Action, msg tea.KeyMsg) Model {
	next, picked, problem := m.picker.Press(does, msg.String())
	switch m.picker = next; {
	case problem != "":
		return m.warn(problem)
	case picked != nil:
		return m.picks(m, *picked)
	}
	return m
}
