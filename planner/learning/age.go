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

// States works out how the bed may stand, with the weight of each possibility.
//
// Gallons of the past are uncertain by [ThroughputSpread]. Where only a reading
// is known, every age from fresh to past spent is thought equally likely before
// it, and the reading decides.
func States(b Belief, age Age) []State {
	scales := []weighted{{1, 1}}
	if len(age.History) > 0 {
		scales = threePoints(ThroughputSpread)
	}
	var states []State
	if age.Reading != nil && len(age.History) == 0 {
		states = everyAge(b, age.Reading.Units)
	} else {
		states = make([]State, 0, len(b)*len(scales))
		for _, h := range b {
			for _, scale := range scales {
				states = append(states, h.after(age.History, scale))
			}
		}
	}
	if age.Reading != nil {
		states = age.Reading.weigh(states)
	}
	return thin(states, mostStates)
}

func (h Hypothesis) after(history []Use, scale weighted) State {
	var c bed.Column
	for _, u := range history {
		c = h.under(c, u, scale.value)
	}
	h.Weight *= scale.weight
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

// Middle is one way the bed may stand that is in the middle of them all: the
// median capacity and contact, with the gallons as told, or the age at which
// such a bed gives the reading.
func Middle(states []State, age Age) State {
	belief := make(Belief, len(states))
	for i, s := range states {
		belief[i] = s.Hypothesis
	}
	h := belief.Middle()
	if len(age.History) > 0 || age.Reading == nil {
		return h.after(age.History, weighted{1, 1})
	}
	n := h.Efficiency * age.Reading.Units
	fraction := math.Max(age.Reading.Read, leastRead) / age.Reading.Feed
	if fraction >= 1 {
		return State{Hypothesis: h, Column: bed.Column{}.Feed(n, 2+1/n)}
	}
	return State{Hypothesis: h, Column: bed.Column{}.Feed(n, bed.Column{}.Until(n, fraction))}
}

// leastRead is the lowest ppm that a pen tells from nothing. PRACTICE.
const leastRead = 1
