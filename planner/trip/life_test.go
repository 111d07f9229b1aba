package trip

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/planner/bed"
)

// The life that is left falls with each gallon alike, and ends where the closed form
// for a constant pattern (Wicke; Perry's Chemical Engineers' Handbook, MEMORY) has
// the limit, which is found here by halving.
func TestLifeLeftEndsWithTheClosedForm(t *testing.T) {
	for _, contact := range []float64{0.5, 1, 1.7} {
		for _, units := range []float64{6, 15, 80} {
			for _, limit := range []float64{0.01, 0.1} {
				n := contact * units
				low, high := 0.0, 2.0
				for range 60 {
					if mid := (low + high) / 2; bed.ClosedForm(n, mid) < limit {
						low = mid
					} else {
						high = mid
					}
				}
				if low < 1e-6 {
					continue // over the limit from the first gallon
				}
				at := end{math.Log(limit) / units, 1 / units}
				for _, part := range []float64{0, 0.02, 0.1, 0.5, 0.9, 1, 1.2} {
					fed := part * low
					column := bed.Column{}.Feed(n, fed)
					assert.InDelta(t, max(1-part, 0), at.left(contact, contact*fed, contact*column.Spent()), 2e-3,
						"contact %v, units %v, limit %v, fed %v of its life", contact, units, limit, part)
				}
			}
		}
	}
}

// Washes that are alike take alike of a fresh fill, the first ones too, with one tank
// and with two.
func TestLikeWashesTakeAlike(t *testing.T) {
	for _, in := range []Input{long(6), behind(long(6))} {
		in.Trip.Changes = []model.ResinChange{{Date: day(0)}}
		for k := range in.Trip.Washes { // at one stop
			in.Trip.Washes[k].Date = day(0)
		}
		p, err := Make(in)
		require.NoError(t, err)
		first := float64(p.Washes[0].Life.P50 - p.Washes[1].Life.P50)
		require.Positive(t, first)
		for k := 2; k < 4; k++ {
			assert.InEpsilon(t, first, float64(p.Washes[k-1].Life.P50-p.Washes[k].Life.P50), 0.15, "wash %d", k)
		}
	}
}
