package learning

import (
	"math"
	"slices"

	"washeve/planner/bed"
)

// Age is what is known of how far a fill has gone. Nothing known is a fresh
// fill.
type Age struct {
	History []Use
	Reading *Evidence // a flushed outlet reading taken now
}

// Equal tells whether the same is known.
func (a Age) Equal(b Age) bool {
	if (a.Reading == nil) != (b.Reading == nil) || a.Reading != nil && *a.Reading != *b.Reading {
		return false
	}
	return slices.Equal(a.History, b.History)
}

// State is a bed as it may stand now.
type State struct {
	Hypothesis
	Column bed.Column
	luck   float64 // with the load of the water to come: standard normal
}

// ByReading is how a bed may stand of which only a reading is known: before it every age
// from fresh to past spent is thought equally likely, and the reading decides.
func ByReading(b Belief, e Evidence) []State {
	return thin(e.weigh(everyAge(b, e.Units)), mostStates)
}

func (h Hypothesis) after(history []Use) State {
	var c bed.Column
	for _, u := range history {
		c = h.under(c, u, 1)
	}
	return State{Hypothesis: h, Column: c}
}

// everyAge spreads a belief over ages from fresh to a little past spent.
func everyAge(b Belief, units float64) []State {
	const ages, oldest = 24, 1.25
	states := make([]State, 0, len(b)*ages)
	for _, h := range b {
		h.Weight /= ages
		for i := range ages {
			c := bed.Column{}.Feed(h.Efficiency*units, oldest*(float64(i)+0.5)/ages)
			states = append(states, State{Hypothesis: h, Column: c})
		}
	}
	return states
}

// weigh multiplies each possibility by how well it explains the reading. One
// that nothing explains is taken for an odd one and leaves the weights as they are.
func (e Evidence) weigh(states []State) []State {
	r := Reading{Evidence: e}.sight(0, 0)
	total := 0.0
	weighed := make([]State, len(states))
	for i, s := range states {
		s.Weight *= r.weight(shown(e.Feed * s.Column.Outlet(s.Efficiency*e.Units)))
		total += s.Weight
		weighed[i] = s
	}
	kept := weighed[:0]
	for _, s := range weighed {
		if s.Weight /= total; s.Weight > 1e-9 {
			kept = append(kept, s)
		}
	}
	return kept
}

// MiddleByReading is one way such a bed may stand that is in the middle of them all: the
// median capacity and contact, at the age at which it gives the reading.
func MiddleByReading(states []State, e Evidence) State {
	belief := make(Belief, len(states))
	for i, s := range states {
		belief[i] = s.Hypothesis
	}
	h := belief.Middle()
	n := h.Efficiency * e.Units
	fraction := math.Max(e.Read, leastRead) / e.Feed
	if fraction >= 1 {
		return State{Hypothesis: h, Column: bed.Column{}.Feed(n, 2+1/n)}
	}
	return State{Hypothesis: h, Column: bed.Column{}.Feed(n, bed.Column{}.Until(n, fraction))}
}

// leastRead is the lowest ppm that a pen tells from nothing. PRACTICE.
const leastRead = 1
