package trip

import (
	"fmt"
	"slices"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/ui/form"
	"washeve/ui/keys"
)

// sheet is what can be stated of one line, field by field.
type sheet struct {
	of   line
	keys []string
	hand int
}

func (s *sheet) key() string { return s.keys[s.hand] }

// openSheet opens what can be stated of the line under the hand.
func (m Model) openSheet() Model {
	l, ok := m.here()
	item := itemOf(&m.now, l)
	if !ok || item == nil {
		return m
	}
	m.sheet = &sheet{of: l, keys: keysOf(&m.now, l)}
	return m
}

// keysOf are the keys of what can be stated of a line. The stop of a wash is asked for
// only where there is more than one that day, or where one is named.
func keysOf(t *model.Trip, l line) []string {
	var keys []string
	for _, f := range itemOf(t, l).Fields() {
		if l.kind == washLine && f.Key == "place" && !f.Given() && len(stopsOf(t, l)) < 2 {
			continue
		}
		keys = append(keys, f.Key)
	}
	return keys
}

// field is the field under the hand of a trip.
func (s *sheet) field(t *model.Trip, key string) (model.Field, bool) {
	item := itemOf(t, s.of)
	if item == nil {
		return model.Field{}, false
	}
	for _, f := range item.Fields() {
		if f.Key == key {
			return f, true
		}
	}
	return model.Field{}, false
}

// with is the trip with one field of the sheet stated.
func (m Model) with(key, text string) (model.Trip, error) {
	t := m.now.Clone()
	f, ok := m.sheet.field(&t, key)
	if !ok {
		return t, fmt.Errorf("there is no %s here any more", key)
	}
	if err := m.calendar().Set(f, text, func(_, text string) error { return f.Set(text) }); err != nil {
		return t, err
	}
	if f.Required && !f.Given() {
		return t, fmt.Errorf("%s cannot be left out; write it like %s", f.Label, f.Example)
	}
	return t, m.agree(&t, f)
}

// calendar is what days are typed by: one without its year is not before the trip's start,
// or not before today on the line that is its start.
func (m *Model) calendar() form.Calendar {
	c := form.From(m.today)
	if from, _, known := m.now.Days(); known && m.sheet.of.date.Or(from) != from {
		c.Since = from
	}
	return c
}

// agree makes the other values of a line fit one that was stated: a stop has the
// water of a place or a band, a use of the bed is like a wash or so many gallons, another
// tank is not the one that is still to be filled. What contradicts still is an error.
func (m *Model) agree(t *model.Trip, f model.Field) error {
	l := m.sheet.of
	given := f.Given()
	switch l.kind {
	case theTrip:
		if f.Key == "bed" && !strings.EqualFold(t.Bed, m.now.Bed) {
			t.Fill = "" // it was said of the other tank
		}
	case stopLine:
		s := &t.Stops[l.index]
		if f.Key == "place" && given {
			s.LowTDS, s.HighTDS = quantity.Opt[quantity.Reading]{}, quantity.Opt[quantity.Reading]{}
			s.LowHardness, s.HighHardness = quantity.Opt[quantity.Hardness]{}, quantity.Opt[quantity.Hardness]{}
		} else if given && (strings.HasPrefix(f.Key, "tds_") || strings.HasPrefix(f.Key, "hardness_")) {
			s.Place = ""
		}
		calledAnew(&m.now, t, l.index)
	case washLine:
		w := &t.Washes[l.index]
		if f.Key == "di" && given {
			w.Like = ""
		} else if f.Key == "like" && given {
			w.DI, w.Flow = quantity.Opt[quantity.Volume]{}, quantity.Opt[quantity.Flow]{}
		}
	}
	if c, ok := itemOf(t, l).(model.Checker); ok {
		for _, fault := range c.Contradictions() {
			if !fault.Lacks {
				return fmt.Errorf("%s: %s", fault.Key, fault.Problem)
			}
		}
	}
	return nil
}

// problem is the first thing that is wrong in the trip, or lacking; "" where nothing
// is.
func (m *Model) problem() string {
	t := m.shown()
	if faults := t.Faults(&m.rig, m.places, m.names("wash")); len(faults) > 0 {
		f := faults[0]
		where := ""
		if of := itemOf(&t, line{kind: map[string]kind{"stop": stopLine, "wash": washLine, "change": changeLine}[f.Section], index: f.Index}); f.Section != "" && of != nil {
			where = f.Section + " " + of.Fields()[0].Text() + ", "
		}
		return where + f.Key + ": " + f.Problem
	}
	return ""
}

// state sets a field of the sheet at once.
func (m Model) state(key, text string) Model {
	t, err := m.with(key, text)
	if err != nil {
		return m.warn(err.Error())
	}
	of := m.sheet.of
	m = m.commit(t).onto(of.kind, of.index)
	m.sheet = m.sheet.listing(keysOf(&m.now, of))
	if key == "target" && !m.alarm && m.question == nil {
		m = m.saidOfTarget()
	}
	return m
}

func (m Model) target() (model.Field, bool) {
	if m.sheet == nil {
		return model.Field{}, false
	}
	return m.suited(m.sheet.key())
}

// suited is a field of the sheet, its example in the units in which it is to be stated.
func (m Model) suited(key string) (model.Field, bool) {
	f, ok := m.sheet.field(&m.now, key)
	if !ok {
		return f, false
	}
	return f.Suited(itemOf(&m.now, m.sheet.of).Fields(), m.sys), true
}

// change lets the field under the hand be changed: by a list where it holds a word,
// by typing otherwise.
func (m Model) change() Model {
	f, ok := m.target()
	switch {
	case !ok:
		return m
	case len(f.Choices) > 0 || f.Refers != "":
		return m.openPicker(f)
	}
	return m.startEdit(f.Text())
}

// listing is the sheet with other keys, the hand on the one where it was.
func (s *sheet) listing(keys []string) *sheet {
	next := &sheet{of: s.of, keys: keys, hand: min(s.hand, len(keys)-1)}
	if at := slices.Index(keys, s.key()); at >= 0 {
		next.hand = at
	}
	return next
}

func (m Model) startEdit(text string) Model {
	f, ok := m.target()
	if !ok {
		return m
	}
	e := form.Of(f, text).Telling(func(text string) string { return m.calendar().Taken(f, text) })
	e = e.OnScales(f, form.ScalesOf(f, stock.Stock{Rig: &m.rig, Places: &m.places, Wash: &m.wash}, m.now.Limit)).Unknown(f, "").InCurrency(m.rig.Currency())
	e.Good = f.Text()
	m.edit = &e
	return m
}

// typed takes a key into the text; the answer follows whenever the text is right.
func (m Model) typed(msg tea.KeyMsg) Model {
	m = m.withEdit(m.edit.Type(msg, m.check))
	return m.say(m.edit.Heard())
}

func (m Model) withEdit(e form.Edit) Model {
	was := m.edit.Replaced
	m.edit = &e
	switch t, err := m.with(m.sheet.key(), e.Good); {
	case err == nil && e.Replaced:
		m = m.replan(t)
	case was: // what stays, after a text that was right
		m = m.replan(m.now)
	}
	return m.say("")
}

func (m Model) check(text string) error {
	_, err := m.with(m.sheet.key(), text)
	return err
}

// typing does what a key means while a value is typed.
func (m Model) typing(does keys.Action) Model {
	if e, held := m.edit.Held(does); held {
		m.edit = &e
		return m.warn(e.NotTaken(m.label()))
	}
	switch does {
	case form.Abandon:
		m.edit = nil
		return m.replan(m.now)
	case form.AcceptUp:
		return m.finishEdit().along(-1)
	}
	return m.finishEdit().along(1)
}

// label is what the line under the hand is called.
func (m Model) label() string {
	f, _ := m.target()
	return f.Label
}

// finishEdit takes what was typed; a bare number takes the unit that is offered. A
// text that is wrong is dropped, the value before it stays, and that is said.
func (m Model) finishEdit() Model {
	if m.edit == nil {
		return m
	}
	e := m.edit.Offered(m.check)
	m.edit = nil
	if e.Replaced {
		m = m.state(m.sheet.key(), e.Good)
	}
	if taken := e.Told(); taken != "" {
		m = m.done(strings.TrimSpace(taken + ". " + m.status))
	}
	if e.Problem != nil {
		return m.replan(m.now).warn(e.NotTaken(m.label()))
	}
	return m
}

// along moves the hand on the sheet.
func (m Model) along(by int) Model {
	s := *m.sheet
	s.hand = min(max(s.hand+by, 0), len(s.keys)-1)
	m.sheet = &s
	return m
}
