package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
)

// Half a minute of soap over a whole coach is no pace.
func TestAPaceFarFromThePlanDoesNotCount(t *testing.T) {
	const planned = 60 * quantity.SquareFootPerMinute
	for times, counts := range map[float64]bool{24: false, 4: false, 1.5: true, 1: true, 0.5: true, 0.25: false} {
		assert.Equal(t, counts, Pace{Done: planned * quantity.Coverage(times), Planned: planned}.Counts(), times)
	}
}
