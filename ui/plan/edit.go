package plan

import (
	"cmp"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/ui/form"
	"washeve/ui/keys"
)

// startEdit lets the field under the hand be typed.
func (m Model) startEdit(text string) Model {
	r, f, ok := m.target()
	if !ok {
		return m
	}
	e := form.Of(f, text).Telling(func(text string) string { return m.calendar().Taken(f, text) })
	e = e.OnScales(f, form.ScalesOf(f, m.ground().stock())).Unknown(f, m.assumedHelp(r, f))
	e = e.InCurrency(cmp.Or(m.ground().rig.Currency(), m.currency))
	e.Good = f.Text()
	m.edit, m.editAt, m.draft = &e, r, *m.ground()
	return m
}

// try sets a text on a copy of the work.
func (m Model) try(text string) (work, error) {
	return m.with(m.editAt, text)
}

func (m Model) check(text string) error {
	_, err := m.try(text)
	return err
}

// typed takes a key into the text, and the answer follows.
func (m Model) typed(msg tea.KeyMsg) Model {
	if m.edit == nil {
		return m
	}
	m = m.withEdit(m.edit.Type(msg, m.check))
	return m.say(m.edit.Heard())
}

// withEdit shows what the text says; where it is refused, what stays in its place.
func (m Model) withEdit(e form.Edit) Model {
	was := m.edit.Replaced
	m.edit = &e
	switch w, err := m.try(e.Good); {
	case err == nil && e.Replaced:
		m.draft = w
		m = m.replan(w)
	case was: // what stays, after a text that was right
		m.draft = *m.ground()
		m = m.replan(m.draft)
	}
	return m.say("")
}

// typing does what a key means while a value is typed.
func (m Model) typing(does keys.Action) Model {
	if e, held := m.edit.Held(does); held {
		m.edit = &e
		return m.warn(e.NotTaken(m.label()))
	}
	switch does {
	case form.Accept:
		return m.offered().accepted()
	case form.AddUnit:
		if m.edit.Offer != "" {
			return m.offered()
		}
		return m.finishedOnto(1)
	case form.AcceptDown:
		return m.offered().finishedOnto(1)
	case form.AcceptUp:
		return m.offered().finishedOnto(-1)
	case form.Abandon:
		m.edit = nil
		return m.leftOut().replan(m.now)
	}
	return m
}

// offered puts the example's unit behind a bare number.
func (m Model) offered() Model {
	if m.edit.Offer == "" {
		return m
	}
	return m.withEdit(m.edit.Offered(m.check))
}

// finishEdit takes what was typed. A text that is wrong is dropped, the
// value before it stays, and that is said.
func (m Model) finishEdit() Model {
	if m.edit == nil {
		return m
	}
	e := *m.edit
	m.edit = nil
	if e.Replaced || m.adding != nil {
		m = m.take(e.Good)
	} else {
		m = m.replan(m.now)
	}
	if e.Problem != nil {
		return m.warn(e.NotTaken(m.label()))
	}
	if taken := e.Told(); taken != "" {
		return m.done(strings.TrimSpace(taken + ". " + m.status))
	}
	return m
}

// label is what the line that is typed is called.
func (m *Model) label() string {
	f, _ := m.ground().field(m.editAt)
	return f.Label
}

// calendar is what days are typed by.
func (m *Model) calendar() form.Calendar {
	if m.book.Clock == nil {
		return form.Calendar{}
	}
	return form.From(model.MomentOf(m.book.Clock()).Date())
}

// take puts a text that is right in force, and with it what is new.
func (m Model) take(text string) Model {
	w, err := m.with(m.editAt, text)
	isWash := m.adding != nil && m.adding.wash
	switch m.adding = nil; {
	case err != nil:
		return m
	case isWash:
		return m.begin(w.wash)
	}
	return m.stated(w)
}

// stated puts a work with something stated in force, and says what came with it.
func (m Model) stated(w work) Model {
	was := m.now.wash
	if m = m.commit(w); m.weatherTold(&was) != "" {
		m = m.done(strings.TrimSpace(m.status + " " + m.weatherTold(&was)))
	}
	return m
}

// with is the work with one field stated.
func (m Model) with(r ref, text string) (work, error) {
	w := m.ground().clone()
	f, _ := w.field(r)
	err := m.calendar().Set(f, text, func(key, text string) error { return w.set(ref{r.section, r.index, key}, text) })
	switch {
	case err == nil && m.adding != nil && m.adding.wash:
		err = m.now.freeWash(w.wash.Name)
	case err == nil && r.section == "wash" && (r.key == "date" || r.key == "place"):
		w = w.inWeather()
	}
	return w, err
}

// state sets a field at once.
func (m Model) state(r ref, text string) Model {
	w, err := m.with(r, text)
	if m.adding = nil; err != nil {
		return m.warn(err.Error())
	}
	return m.stated(w)
}

// openPicker lists what a field can hold.
func (m Model) openPicker(r ref) Model {
	f, ok := m.ground().field(r)
	if !ok {
		return m
	}
	var options []form.Option
	for _, c := range f.Choices {
		options = append(options, form.Option{Text: c, Pick: c})
	}
	if f.Refers != "" {
		options = append(options, m.referred(f.Refers)...)
	}
	if !f.Required && f.Refers == "" {
		options = append(options, form.Option{Text: "not stated", Note: "it is assumed"})
	}
	now := f.Text()
	if i := m.now.chosen(f.Refers); now == "" && i >= 0 {
		now = m.now.names(f.Refers)[i]
	}
	p := form.Open(f.Label, options, now)
	m.picker, m.editAt = &p, r
	return m
}

// pick does what a key means while a list is open.
func (m Model) pick(does keys.Action, msg tea.KeyMsg) Model {
	next, picked, problem := m.picker.Press(does, msg.String())
	switch m.picker = next; {
	case problem != "":
		return m.warn(problem)
	case picked == nil && next == nil:
		return m.leftOut()
	case picked == nil:
		return m
	case m.editAt.section == aWash:
		return m.pickWash(*picked)
	case picked.New:
		f, _ := m.now.field(m.editAt)
		return m.makeNew(f.Refers)
	}
	if f, _ := m.ground().field(m.editAt); m.adding == nil && f.Text() == picked.Pick {
		return m.say(form.AsItWas)
	}
	if own, taken := m.takesUsual(picked.Pick); taken {
		return own
	}
	return m.state(m.editAt, picked.Pick)
}
