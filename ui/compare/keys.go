package compare

import (
	"washeve/ui/keys"
)

const (
	before   keys.Action = "way before"
	next     keys.Action = "next way"
	home     keys.Action = "first"
	end      keys.Action = "last"
	up       keys.Action = "words up"
	down     keys.Action = "words down"
	adopt    keys.Action = "make it the plan"
	more     keys.Action = "more"
	less     keys.Action = "less"
	why      keys.Action = "why"
	back     keys.Action = "back"
	take     keys.Action = "take it"
	leaveOut keys.Action = "leave it"
)

// Keys lists the keys as the screen now stands.
func (m Model) Keys() []keys.Binding {
	if m.ask {
		yes := "make it the plan"
		if m.way().Buys != "" {
			yes = "put it into the rig and plan with it"
		}
		return []keys.Binding{
			keys.New("Answer", take, "y", yes, "y", "Y"),
			keys.New("Answer", leaveOut, "n", "leave the plan as it is", "n", "N", "esc"),
		}
	}
	if m.err != nil {
		return []keys.Binding{keys.New("Compare", back, "esc", "back", "esc", "backspace").Explained("back to the plan or the trip, which stays as it is")}
	}
	return append(m.walkKeys(), m.wayKeys()...)
}

func (m Model) walkKeys() []keys.Binding {
	atFirst, atLast, atTop, atFoot := "", "", "", ""
	if m.hand == 0 {
		atFirst = "this is the first way"
	}
	if m.hand == len(m.table.Ways)-1 {
		atLast = "this is the last way"
	}
	if m.top == 0 {
		atTop = "this is the start of the words"
	}
	if m.top >= m.lastTop() {
		atFoot = "there are no more words"
	}
	return []keys.Binding{
		keys.New("Walk", before, "left", "way before", "left", "h").Unless(atFirst),
		keys.New("Walk", next, "right", "next way", "right", "l").Unless(atLast),
		keys.New("Walk", home, "home", "to the plan's own", "home", "g").Unless(atFirst),
		keys.New("Walk", end, "end", "to the last way", "end", "G").Unless(atLast),
		keys.New("Walk", up, "up", "words up", "up", "k").Explained("the words about the way, a line up").Unless(atTop),
		keys.New("Walk", down, "down", "words down", "down", "j").Explained("the words about the way, a line down").Unless(atFoot),
	}
}

func (m Model) wayKeys() []keys.Binding {
	w := m.way()
	notPlan, noKnob, atMost, atLeast := w.Only, "", "", ""
	if m.hand == 0 {
		notPlan = "this is the plan as it is; " + m.th.Key("right", "way 2") + " goes to another way"
	}
	if w.Knob() == "" {
		noKnob = "only a purified feed, a drip and a target can be turned"
	} else {
		atMost, atLeast = m.end(1), m.end(-1)
	}
	return []keys.Binding{
		keys.New("Way", adopt, "enter", "make it the plan", "enter").Explained("make the way under the hand the plan of the wash, or of the trip; there " + m.th.Key("u", "undo") + " takes it back").Unless(notPlan),
		keys.New("Way", why, "y", "where from", "y").Explained("where each number of the way under the hand comes from"),
		keys.New("Way", more, "+", "more", "+", "=").Explained("more of what the way hangs on: ions held back, drip, target").Unless(noKnob + atMost),
		keys.New("Way", less, "-", "less", "-", "_").Explained("less of what the way hangs on").Unless(noKnob + atLeast),
		keys.UnitsKey(),
		keys.New("See", back, "esc", "back", "esc", "backspace").Explained("back to the plan or the trip, which stays as it is"),
	}
}

// end tells that a way cannot be turned further.
func (m Model) end(by int) string {
	if m.turned.Turned(m.way(), by) == m.turned {
		return "it cannot be turned further"
	}
	return ""
}
