package history

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestUndoAndRedo(t *testing.T) {
	var h Of[int]
	assert.Equal(t, "there is nothing to undo", h.NoUndo())
	h = h.Edited(1).Edited(2) // and now it is 3
	now, h := h.Undone(3)
	assert.Equal(t, 2, now)
	now, h = h.Undone(now)
	assert.Equal(t, 1, now)
	assert.Equal(t, "there is nothing to undo", h.NoUndo())
	now, h = h.Redone(now)
	assert.Equal(t, 2, now)
	h = h.Edited(now)
	assert.Equal(t, "there is nothing to redo", h.NoRedo(), "an edit ends what could be done again")
	assert.Empty(t, h.NoUndo())
}

func TestTheOldestEditsAreForgotten(t *testing.T) {
	var h Of[int]
	const edits = 12 * deepest
	for i := range edits {
		h = h.Edited(i)
	}
	now, undone := edits, 0
	for ; h.NoUndo() == ""; undone++ {
		was := now
		now, h = h.Undone(now)
		assert.Equal(t, was-1, now)
	}
	assert.GreaterOrEqual(t, undone, deepest)
	assert.LessOrEqual(t, undone, 2*deepest)
}

func TestMapReachesBothSides(t *testing.T) {
	h := Of[int]{}.Edited(1).Edited(2)
	now, h := h.Undone(3)
	h = Map(h, func(v int) int { return 10 * v })
	before, _ := h.Undone(now)
	after, _ := h.Redone(now)
	assert.Equal(t, []int{10, 30}, []int{before, after})
}

// A history that was kept is not changed by those that come of it.
func TestAnOlderHistoryStays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var h Of[int]
		now, next := 0, 1
		for range rapid.IntRange(0, 20).Draw(t, "before") {
			h, now, next = h.Edited(now), next, next+1
		}
		past, future := h.past.list(), h.future.list()
		g := h
		for _, what := range rapid.SliceOfN(rapid.SampledFrom([]string{"edit", "undo", "redo"}), 0, 30).Draw(t, "what") {
			switch {
			case what == "edit":
				g, now, next = g.Edited(now), next, next+1
			case what == "undo" && g.NoUndo() == "":
				now, g = g.Undone(now)
			case what == "redo" && g.NoRedo() == "":
				now, g = g.Redone(now)
			}
		}
		assert.Equal(t, past, h.past.list())
		assert.Equal(t, future, h.future.list())
	})
}

func (s *step[T]) list() []T {
	var all []T
	for ; s != nil; s = s.before {
		all = append(all, s.value)
	}
	return all
}

func TestItsKeysActWhereThereIsSomething(t *testing.T) {
	h := Of[int]{}
	assert.Equal(t, "there is nothing to undo", h.UndoKey("Keep").Blocked)
	assert.Equal(t, "there is nothing to redo", h.RedoKey("Keep").Blocked)
	h = h.Edited(1)
	assert.Empty(t, h.UndoKey("Keep").Blocked)
	_, h = h.Undone(2)
	assert.Empty(t, h.RedoKey("Keep").Blocked)
}
