package plan

import (
	"slices"

	"washeve/model/stock"
)

// accepted takes what was typed. A line that stated nothing is left for what is stated next;
// on one whose value was changed the hand stays.
func (m Model) accepted() Model {
	at, next := m.editAt, func(m Model) Model { return m }
	_, f, _ := m.target()
	switch {
	case m.adding != nil && m.adding.wash:
		next = Model.toLacking
	case m.adding != nil:
		return m.finishEdit().toTelling(at)
	case m.edit.Fills():
		next = onward(f.Required, m.now.empties(m.step()))
	}
	return m.finishedAnd(next)
}

// onward goes from a line that was filled to the next one of the form; from one that was
// needed to the next that is needed, wherever it stands.
func onward(needed bool, empties []ref) func(Model) Model {
	return func(m Model) Model {
		if needed && len(m.lacks) > 0 {
			return m.toLacking()
		}
		return m.toNext(empties)
	}
}

// empties are the lines of a step that state nothing.
func (w *work) empties(s step) []ref {
	var empties []ref
	for _, r := range w.rows(s) {
		if r.isField() && !r.field.Given() {
			empties = append(empties, r.at)
		}
	}
	return empties
}

// toNext puts the hand on the next line, but for those that were empty and that the same
// text has filled, as a position does two.
func (m Model) toNext(empties []ref) Model {
	rows := m.rows()
	for i := m.hand + 1; i < len(rows); i++ {
		if r := rows[i]; r.isField() && !(r.field.Given() && slices.Contains(empties, r.at)) {
			m.hand = i
			return m
		}
	}
	return m
}

// toFirst puts the hand on the first row that the plan lacks, else on the first
// of the open step.
func (m Model) toFirst() Model {
	if len(m.now.lacking()) > 0 {
		return m.toLacking()
	}
	return m.onto(0, 1)
}

// toLacking puts the hand on the first row that the plan lacks, if any.
func (m Model) toLacking() Model {
	for _, r := range m.now.lacking() {
		if i, j, ok := m.now.stepOf(r); ok {
			m.open, m.hand = i, j
			return m
		}
	}
	return m
}

// toTelling puts the hand, which is on the name of an item, on what the item needs, else on
// what tells it from others, else on the next field: what is typed next is no other name.
func (m Model) toTelling(name ref) Model {
	telling := -1
	for i, r := range m.rows() {
		if !r.isField() || r.at.section != name.section || r.at.index != name.index {
			continue
		}
		if r.field.Required && !r.field.Given() {
			m.hand = i
			return m
		}
		if r.at.key == stock.Telling(name.section) {
			telling = i
		}
	}
	if telling >= 0 {
		m.hand = telling
		return m
	}
	return m.onto(m.hand+1, 1)
}
