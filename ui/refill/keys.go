package refill

import (
	"washeve/ui/form"
	"washeve/ui/keys"
)

const (
	next     keys.Action = "next"
	before   keys.Action = "before"
	back     keys.Action = "back"
	up       keys.Action = "up"
	down     keys.Action = "down"
	change   keys.Action = "change"
	overtype keys.Action = "overtype"
	read     keys.Action = "reading"
	why      keys.Action = "why"
	accept   keys.Action = "accept"
	abandon  keys.Action = "abandon"
)

// Keys lists the keys as the page now stands.
func (m Model) Keys() []keys.Binding {
	switch {
	case m.edit != nil && m.edit.IsHeld():
		return m.edit.HeldKeys("as it was", true)
	case m.edit != nil:
		return []keys.Binding{
			keys.New("Type", accept, "enter", "done", "enter", "tab").Explained("done; a bare number takes the unit that is offered"),
			keys.New("Type", abandon, "esc", "as it was", "esc"),
		}
	case m.reading != nil:
		return m.reading.Keys()
	case m.inForm():
		return append(m.stepKeys("right", "pgdown"), m.fill.Keys()...)
	}
	bindings := append(m.stepKeys("right", " ", "pgdown", "l"),
		keys.New("Steps", back, "esc", "back to the bed", "esc"))
	return append(bindings, m.pageKeys()...)
}

// stepKeys go from step to step. While the form of the fill is typed they are
// text or belong to it.
func (m Model) stepKeys(forward ...string) []keys.Binding {
	if m.inForm() && m.fill.Busy() {
		return nil
	}
	first, last := "", ""
	if m.step == 0 {
		first = "this is the first step"
	}
	if m.step == len(steps())-1 {
		last = "this is the last step"
	}
	if !m.now().amounts && !m.inForm() {
		forward = append(forward, "enter")
	}
	return []keys.Binding{
		keys.New("Steps", next, "right", "next step", forward...).Unless(last),
		keys.New("Steps", before, "left", "step before", "left", "pgup").Unless(first),
	}
}

func (m Model) pageKeys() []keys.Binding {
	notHere, notRead := "", ""
	if !m.now().amounts {
		notHere = "amounts are stated on step 2"
	}
	switch {
	case !m.now().reads:
		notRead = "the readings come when the tank is full"
	case !m.written:
		notRead = "write the fill in the log first"
	}
	bindings := []keys.Binding{
		keys.New("Readings", read, "r", "reading", "r").Explained("add a reading: the flush is told first").Unless(notRead),
	}
	if m.now().amounts {
		bindings = append(bindings,
			keys.New("Amounts", change, "enter", "change", "enter").Unless(notHere),
			keys.New("Amounts", overtype, "0-9", "type a new number", form.NumberKeys()...).Unless(notHere))
	}
	noUp, noDown := m.cannotMove()
	return append(bindings,
		keys.New("Steps", down, "down", "down", "down", "j").Unless(noDown),
		keys.New("Steps", up, "up", "up", "up", "k").Unless(noUp),
		keys.New("See", why, "y", "where from", "y").Explained("where each number comes from"),
		keys.UnitsKey())
}

// cannotMove says why the hand cannot go up or down.
func (m Model) cannotMove() (noUp, noDown string) {
	if m.now().amounts {
		return "", ""
	}
	if m.top == 0 {
		noUp = "this is the start of the step"
	}
	if m.top >= m.lowest() {
		noDown = "this is the end of the step"
	}
	return noUp, noDown
}
