package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A summary sets no gallons that were counted as planned against the time of other steps
// without saying so.
func TestTheSummaryTellsWhatWasNotTimed(t *testing.T) {
	p := fresh(t, "enter space 59s enter enter enter x y")
	seen := oneLine(p.seen())
	assert.Contains(t, seen, "0:59 timed")
	assert.Contains(t, seen, "Not timed: 2 of the steps done, 7.5 gal of the water, counted as planned.")
	assert.Contains(t, seen, "the log has no minutes for the whole wash")

	all := oneLine(fresh(t, "enter space 59s enter s s x y").seen())
	assert.NotContains(t, all, "Not timed")
	assert.NotContains(t, all, "0:59 timed")
}
