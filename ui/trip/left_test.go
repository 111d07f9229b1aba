package trip

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What was edited before the screen was left is undone and done again when one comes back,
// on the trip that was shown.
func TestUndoSurvivesLeaving(t *testing.T) {
	o, k := ours()
	first := k.trips[0].Washes[0].Date
	play(t, o, "down down . . esc")
	moved := k.trips[0].Washes[0].Date
	p := play(t, o, "u")
	assert.NotEqual(t, moved, k.trips[0].Washes[0].Date)
	p.Keys("u")
	assert.Equal(t, first, k.trips[0].Washes[0].Date)
	assert.Contains(t, p.Keys("u").Seen(), "there is nothing to undo")
	p.Keys("r esc")
	play(t, o, "r b esc")
	require.Len(t, k.trips, 2)
	assert.Equal(t, moved, k.trips[0].Washes[0].Date)
	p = play(t, o, "")
	assert.Contains(t, p.Seen(), "(2 of 2)", "it opens on the trip that was shown")
	p.Keys("u")
	assert.Len(t, k.trips, 1)
}

// A trip that could not be saved before the screen was left is not forgotten.
func TestWhatIsLeftUnsavedIsKept(t *testing.T) {
	o, k := ours()
	require.NoError(t, KeepLeft(k, false), "the screen was not there yet")
	p := play(t, o, "down down")
	k.fails = errors.New("no space left on the disk")
	p.Keys(". esc")
	require.EqualError(t, KeepLeft(k, false), "no space left on the disk")
	require.Error(t, play(t, o, "").M.unsaved, "it can be tried again")
	k.fails = nil
	kept := k.kept
	require.NoError(t, KeepLeft(k, false))
	assert.Greater(t, k.kept, kept)
	require.NoError(t, KeepLeft(k, false))
}
