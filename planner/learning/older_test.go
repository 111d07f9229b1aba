package learning

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A fill of an age that nobody said stands for every age by how likely that is, in the few
// states of a plan as in the many of a season.
func TestAFillOfUnknownAgeStandsForEveryAge(t *testing.T) {
	const units = 30
	for _, ppm := range []float64{2, 4, 8, 40} {
		f := Fill{Readings: []Reading{{Evidence: Evidence{Read: ppm, Feed: 320, Units: units}}}}
		_, p, found := Start().Older(f, units)
		require.True(t, found, "%g ppm", ppm)
		many := p.Many()
		assert.Len(t, p.States, mostStates)
		assert.Len(t, many, EvenStates)
		for name, of := range map[string]func(State) float64{
			"fresh": func(s State) float64 { return truth(s.Column.Used() == 0) },
			"left":  State.left,
		} {
			assert.InDelta(t, meanOf(p.States, of), meanOf(many, of), 0.02, "%s at %g ppm", name, ppm)
		}
		fresh, below := 0.0, 0.0
		for _, a := range p.ages {
			if len(a.fill.Uses) == 0 {
				fresh = a.upTo
			}
			assert.GreaterOrEqual(t, a.upTo, below)
			below = a.upTo
		}
		assert.InDelta(t, 1, below, 1e-9)
		assert.InDelta(t, fresh, meanOf(p.States, func(s State) float64 { return truth(s.Column.Used() == 0) }), 0.5/mostStates+1e-9, "%g ppm", ppm)
	}
}

func truth(is bool) float64 {
	if is {
		return 1
	}
	return 0
}

func meanOf(states []State, of func(State) float64) float64 {
	sum := 0.0
	for _, s := range states {
		sum += s.Weight * of(s)
	}
	return sum
}
