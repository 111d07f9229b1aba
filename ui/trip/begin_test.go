package trip

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A trip that was begun is taken away again by undo, and what was done before it can be
// undone after that; redo brings all of it back.
func TestATripThatWasBegunIsUndone(t *testing.T) {
	o, k := ours()
	p := play(t, o, "down down .")
	moved := k.trips[0].Washes[0].Date
	p.Keys("b")
	require.Len(t, k.trips, 2)
	begun := k.trips[1]
	p.Keys("down .")
	require.NotEqual(t, begun, k.trips[1])
	changed := k.trips[1]
	p.Keys("u")
	assert.Equal(t, begun, k.trips[1])
	p.Keys("u")
	assert.Len(t, k.trips, 1)
	assert.Contains(t, p.Seen(), "Undone: the trip "+begun.Name+" is gone.")
	assert.Contains(t, p.Seen(), "June loop")
	assert.NotContains(t, p.Seen(), "of 2)")
	assert.Equal(t, moved, k.trips[0].Washes[0].Date, "it is as it was when the other was begun")
	p.Keys("u")
	assert.NotEqual(t, moved, k.trips[0].Washes[0].Date)
	p.Keys("r r r")
	require.Len(t, k.trips, 2)
	assert.Equal(t, moved, k.trips[0].Washes[0].Date)
	assert.Equal(t, changed, k.trips[1])
	p.Keys("tab")
	assert.Equal(t, moved, p.M.now.Washes[0].Date, "the trip before is shown as it stands")
}

func TestTheFirstTripIsUndone(t *testing.T) {
	o, k := ours()
	k.trips = nil
	p := play(t, o, "enter u")
	assert.Empty(t, k.trips)
	assert.Contains(t, p.Seen(), "There is no trip yet")
	assert.Contains(t, p.Seen(), "Undone: ")
	require.NoError(t, p.M.Leave())
	p.Keys("r")
	assert.Len(t, k.trips, 1)
	assert.Contains(t, p.Seen(), "Order resin")
}

// A trip whose file cannot be taken away stays, and so does the way to undo it.
func TestATripThatCannotBeTakenAwayStays(t *testing.T) {
	o, k := ours()
	p := play(t, o, "b")
	k.fails = errors.New("the file was changed")
	p.Keys("u")
	assert.Contains(t, p.Seen(), "The trip stays: the file was changed")
	assert.Contains(t, p.Seen(), "(2 of 2)")
	assert.Len(t, k.trips, 2)
	k.fails = nil
	p.Keys("u")
	assert.Len(t, k.trips, 1)
}

// Trips that are begun on one day have names of their own, which hold when they are moved.
func TestATripThatIsBegunIsNamedPlainly(t *testing.T) {
	o, _ := ours()
	p := play(t, o, "b b")
	assert.Equal(t, "trip 2", p.M.trips[1].Name)
	assert.Equal(t, "trip 3", p.M.trips[2].Name)
}

// What is typed on a trip's line and cannot be taken is not lost unasked.
func TestLeavingLosesNoTextUnasked(t *testing.T) {
	o, k := ours()
	before := k.trips[0]
	p := play(t, o, "down enter enter 'someday'")
	require.NotNil(t, p.M.edit)
	require.Error(t, p.M.edit.Problem)
	assert.ErrorContains(t, p.M.Leave(), `what is typed: `+p.M.label()+` "someday"`)
	assert.Equal(t, before, k.trips[0])
	p.Keys("esc")
	assert.NoError(t, p.M.Leave(), "let go of on purpose")
}
