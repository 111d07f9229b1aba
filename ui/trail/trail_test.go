package trail

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// A trail does what two plain lists do, whatever is done in whatever order.
func TestATrailIsTwoLists(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var trail Trail[int]
		var behind, ahead []int
		now := 0
		for _, deed := range rapid.SliceOfN(rapid.SampledFrom([]string{"leave", "leave", "undo", "redo"}), 1, 60).Draw(t, "deeds") {
			switch {
			case deed == "leave":
				trail = trail.Leaving(now)
				behind, ahead = append(behind, now), nil
				now++
			case deed == "undo" && trail.CanUndo():
				ahead = append(ahead, now)
				now, trail = trail.Undo(now)
				require.Equal(t, behind[len(behind)-1], now)
				behind = behind[:len(behind)-1]
			case deed == "redo" && trail.CanRedo():
				behind = append(behind, now)
				now, trail = trail.Redo(now)
				require.Equal(t, ahead[len(ahead)-1], now)
				ahead = ahead[:len(ahead)-1]
			}
			require.Equal(t, len(behind) > 0, trail.CanUndo())
			require.Equal(t, len(ahead) > 0, trail.CanRedo())
		}
	})
}

func TestAnOlderTrailStaysAsItWas(t *testing.T) {
	older := Trail[string]{}.Leaving("first")
	_ = older.Leaving("another")
	_, newer := older.Undo("second")
	require.False(t, newer.CanUndo())
	was, _ := older.Undo("second")
	require.Equal(t, "first", was)
}

func TestTheNewestStepsAreKept(t *testing.T) {
	var trail Trail[int]
	const last = 12 * deepest
	for i := range last {
		trail = trail.Leaving(i)
	}
	kept, now := 0, last
	for ; trail.CanUndo(); kept++ {
		var was int
		was, trail = trail.Undo(now)
		require.Equal(t, now-1, was)
		now = was
	}
	require.GreaterOrEqual(t, kept, deepest)
	require.LessOrEqual(t, kept, 2*deepest)
}
