package plan

import (
	"strings"

	"washeve/model/quantity"
	"washeve/ui/entry"
	"washeve/ui/keeping"
)

// finishedAnd takes what was typed, and goes on with what is to be stated next. Where that
// makes the first plan there is, and it takes the bed as freshly filled since nobody said
// otherwise, the hand goes on the bed's age instead.
func (m Model) finishedAnd(next func(Model) Model) Model {
	began := m.begins
	m = m.finishEdit()
	if began && !m.begins && m.plan.TakenAsNew() && m.lag == entry.UpToDate {
		return m.toAge()
	}
	return next(m)
}

// finishedOnto takes what was typed, and goes to the next field in a direction.
func (m Model) finishedOnto(by int) Model {
	return m.finishedAnd(func(m Model) Model { return m.onto(m.hand+by, by) })
}

// toAge offers to state what the bed has given: the answer stands without.
func (m Model) toAge() Model {
	step, hand, ok := m.now.stepOf(ref{"bed", m.now.chosen("bed"), "gallons_so_far"})
	if !ok {
		return m
	}
	m.open, m.hand = step, hand
	none := quantity.Show(quantity.Volume(0), m.sys)
	said := keeping.Saved
	if strings.HasSuffix(m.status, said) {
		said = m.status // with what was read of the text that was taken last
	}
	return m.done(said + " The answer stands. Bed just filled? " + m.th.Key(
		"Type "+none+", else what it has given.",
		"Say: change bed gallons so far "+none+"; else what it has given."))
}
