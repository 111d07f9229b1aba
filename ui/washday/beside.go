package washday

import (
	"fmt"

	"washeve/ui/keys"
	"washeve/ui/screen"
)

// learned takes up what the log teaches: a wash that is not begun is planned anew. What is
// said, typed and listed stays where the hand was.
func (m Model) learned() Model {
	if len(m.u.Deeds) > 0 || m.offered || m.broken != nil {
		return m
	}
	again := New(m.o)
	again.ticks, again.size, again.status, again.alarm = m.ticks, m.size, m.status, m.alarm
	again.edit, again.asks, again.slip, again.stood, again.ending = m.edit, m.asks, m.slip, m.stood, m.ending
	again.refused, again.behind = m.refused, m.behind
	if m.picker == nil || again.err != nil {
		return again
	}
	return again.listWays().handOn(m.picker.At, m.ways)
}

// handOn puts the hand on the way that it was on in another list.
func (m Model) handOn(at int, was []wayOut) Model {
	if m.picker == nil {
		return m
	}
	m.picker.At = min(at, max(len(m.ways)-1, 0))
	for i := range m.ways {
		if at < len(was) && m.ways[i].code == was[at].code {
			m.picker.At = i
		}
	}
	return m
}

// UnseenWords say where the wash is and whether its time runs.
func (m Model) UnseenWords() string {
	s := m.step()
	if s == nil || m.state.Over || m.err != nil || m.broken != nil || m.offered || m.early != "" {
		return ""
	}
	runs := "the time stands"
	if m.state.Running {
		runs = "the time runs"
	}
	words := fmt.Sprintf("Wash day, step %d of %d: %s", m.state.At+1, len(m.state.Steps), stepName(s))
	if clock := m.clock(); clock != "" {
		words += ", " + clock
	}
	return words + "; " + runs + "."
}

// UnseenKeys stop the water, and start it again.
func (m Model) UnseenKeys() []keys.Binding {
	if m.UnseenWords() == "" || m.noTime() != "" {
		return nil
	}
	help := "start"
	if m.state.Running {
		help = "stop"
	}
	return []keys.Binding{keys.New("Step", run, "space", help, " ")}
}

// blindly does what a key means while the step cannot be seen. What is typed or listed
// stays as it is.
func (m Model) blindly(does keys.Action) Model {
	if does != run || len(m.UnseenKeys()) == 0 {
		return m
	}
	return m.say("").turn()
}

var _ screen.Unseen = Model{}
