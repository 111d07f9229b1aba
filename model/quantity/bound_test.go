package quantity

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// A limit is never shown looser than it is; the jug at 90 s of contact in half a cubic foot
// takes 24 s, as the trade has it.
func TestLimitsAreRoundedToTheSafeSide(t *testing.T) {
	for _, c := range []struct {
		v    Value
		sys  System
		want string
	}{
		{AtLeast(24.0642 * Second), US, "24 s"},
		{AtLeast(36.5 * Second), US, "37 s"},
		{AtLeast(36.15 * Second), US, "37 s"},
		{AtLeast(37 * Second), US, "37 s"},
		{AtLeast(7.01 * Second), US, "7.1 s"},
		{AtLeast(316.8 * Second), US, "317 s"},
		{AtLeast(1201 * Second), US, "20.1 min"},
		{AtMost(2.4999 * GPM), US, "2.49 gpm"},
		{AtMost(1.5 * GPM), US, "1.5 gpm"},
		{AtMost(2.4935 * GPM), Metric, "9.43 L/min"},
		{AtMost(Flow(0)), US, "0 gpm"},
	} {
		assert.Equal(t, c.want, c.v.Show(c.sys))
	}
}

func TestNoStatedLimitIsLoosenedOrLost(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		hundredths := rapid.IntRange(1, 900).Draw(t, "hundredths of a gpm")
		stated := Flow(float64(hundredths)/100) * GPM
		assert.Equal(t, Show(stated, US), AtMost(stated).Show(US), "what is stated in its own digits stays")
		f := Flow(rapid.Float64Range(0.02, 90).Draw(t, "gpm")) * GPM
		shown := Must[Flow](AtMost(f).Show(US))
		assert.LessOrEqual(t, float64(shown), float64(f)*(1+1e-8))
	})
}
