package rig

import (
	"slices"

	"washeve/model/stock"
)

// accepted takes what was typed. A line that stated nothing is left for what is stated next:
// one that was needed for the next that is needed; on one whose value was changed the hand
// stays. Of a new item what it needs comes next, else what tells it from others.
func (m Model) accepted() Model {
	t, empties := *m.typing, m.empties()
	f, _ := t.base.Field(t.ref)
	m = m.finishTyping()
	switch {
	case t.fresh:
		return m.toTelling().toLacking()
	case !t.Fills():
		return m
	case f.Required && m.lacksAny():
		return m.toLacking()
	}
	return m.toNext(empties)
}

// empties are the lines of the form that stated nothing before what is typed.
func (m *Model) empties() []stock.Ref {
	var empties []stock.Ref
	for i := range m.looks.rows {
		r := m.looks.rows[i].ref
		if f, ok := m.typing.base.Field(r); ok && !f.Given() {
			empties = append(empties, r)
		}
	}
	return empties
}

// toNext puts the hand on the next line, but for those that were empty and that the same
// text has filled, as a position does two.
func (m Model) toNext(empties []stock.Ref) Model {
	for i := m.hand + 1; i < len(m.looks.rows); i++ {
		if r := &m.looks.rows[i]; r.heading == "" && !(r.field.Given() && slices.Contains(empties, r.ref)) {
			m.hand = i
			return m
		}
	}
	return m
}

// lacksAny tells that a line is needed and not stated.
func (m *Model) lacksAny() bool {
	return slices.ContainsFunc(m.looks.rows, func(r row) bool { return r.lacks() })
}

// toLacking puts the hand on the first row that is needed and not stated.
func (m Model) toLacking() Model {
	for i := range m.looks.rows {
		if m.looks.rows[i].lacks() {
			m.hand, m.inForm = i, true
			return m
		}
	}
	return m
}

// toTelling puts the hand, which is on the name of an item, on what tells the item from
// others, else on the next field: what is typed next is no other name.
func (m Model) toTelling() Model {
	for i := range m.looks.rows {
		if m.looks.rows[i].ref.Key == stock.Telling(m.at.Section) {
			m.hand = i
			return m
		}
	}
	return m.onto(m.hand+1, 1)
}
