package report

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/planner"
)

// What a fill holds is said in words where it is what is stated, and always how sure that is.
func TestWhatAFillHoldsBesideWhatIsStated(t *testing.T) {
	for middle, want := range map[float64]string{
		1:     "as much as its rating (8 in 10: 63 % to 158 %)",
		1.004: "as much as its rating (8 in 10: 63 % to 158 %)",
		0.94:  "94 % of its rating (8 in 10: 63 % to 158 %)",
		1.2:   "120 % of its rating (8 in 10: 63 % to 158 %)",
	} {
		assert.Equal(t, want, OfRating(planner.Band[float64]{P10: 0.63, P50: middle, P90: 1.58}))
	}
}
