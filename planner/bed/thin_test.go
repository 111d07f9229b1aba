package bed

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// Four exponentials stand for many: the outlet after more use is off by less
// than a tenth, well inside what a pen can tell.
func TestAThinnedColumnGoesOnAlike(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var c Column
		for range rapid.IntRange(1, 12).Draw(t, "uses") {
			c = c.Feed(rapid.Float64Range(6, 40).Draw(t, "n"), rapid.Float64Range(0.01, 0.08).Draw(t, "t"))
		}
		thin := c.Thin(4)
		assert.LessOrEqual(t, len(thin.tails), 4)
		assert.InDelta(t, c.Loading(c.Spent()), thin.Loading(c.Spent()), 1e-9)
		n, more := rapid.Float64Range(6, 40).Draw(t, "next"), rapid.Float64Range(0.01, 0.3).Draw(t, "more")
		assert.InDelta(t, 0, math.Log(thin.Feed(n, more).Outlet(n)/c.Feed(n, more).Outlet(n)), 0.1)
	})
}
