package learning

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestStatesOfAnAgeAreSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var age Age
		if rapid.Bool().Draw(t, "used") {
			age.History = []Use{{rapid.Float64Range(0.01, 1.5).Draw(t, "fed"), sprayer}}
		}
		if rapid.Bool().Draw(t, "read") {
			age.Reading = &Evidence{rapid.Float64Range(0, 300).Draw(t, "ppm"), tap, sprayer}
		}
		states := States(Prior(), age)
		total := 0.0
		for _, s := range states {
			total += s.Weight
		}
		assert.InDelta(t, 1, total, 1e-6)
		assert.LessOrEqual(t, len(states), mostStates)
		j := Job{Main: Use{1.0 / 300, sprayer}, Limit: 10 / tap, LoadSpread: LoadSpread, Uses: []Use{{0.1, sprayer}}}
		out := j.Outlook(states)
		assert.True(t, slices.IsSorted(out.Remaining[:]) && slices.IsSorted(out.AtEnd[:]) && out.Remaining[0] >= 0)
		j.Uses[0].Capacities *= 2
		assert.LessOrEqual(t, j.Outlook(states).ChanceLasts, out.ChanceLasts, "a longer wash is no safer")
	})
}

// A log of one use without a reading says what the rig's own statement says.
func TestALogAndAStatementAgree(t *testing.T) {
	use := Use{0.5, sprayer}
	j := Job{Main: Use{1.0 / 300, sprayer}, Limit: 10 / tap}
	stated := j.Outlook(States(Prior(), Age{History: []Use{use}})).Remaining
	logged := j.Outlook(Start().Learn(Fill{Uses: []Use{use}}).States).Remaining
	assert.InEpsilon(t, stated[1], logged[1], 0.05)
	assert.InEpsilon(t, stated[2], logged[2], 0.05)
}

// Only a reading: a bed at the limit has nothing left.
func TestAReadingAloneTellsTheAge(t *testing.T) {
	age := Age{Reading: &Evidence{Read: 60, Feed: tap, Units: sprayer}}
	states := States(Prior(), age)
	j := Job{Main: Use{1.0 / 300, sprayer}, Limit: 10 / tap}
	assert.Zero(t, j.Outlook(states).Remaining[1])
	middle := Middle(states, age)
	assert.InEpsilon(t, 60/tap, middle.Column.Outlet(middle.Efficiency*sprayer), 0.01)
}
