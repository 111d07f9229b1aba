package learning

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func jobOf(gallons float64) Job {
	use := Use{Capacities: gallons / 200, Units: 20}
	return Job{Uses: []Use{use}, Main: Use{Capacities: 1.0 / 200, Units: 20}, Limit: 0.04, LoadSpread: LoadSpread}
}

func usedBed(t *rapid.T) []State {
	used := rapid.Float64Range(0, 1.4).Draw(t, "used")
	return after(Use{Capacities: used, Units: 20})
}

// The gallons given with a confidence are those of a job that lasts with it.
func TestGivesIsTheJobThatLasts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		states := usedBed(t)
		confidence := rapid.Float64Range(0.5, 0.99).Draw(t, "confidence")
		r := jobOf(1).Reserve(states)
		gives := r.Gives(confidence)
		if gives <= 0 {
			assert.Less(t, r.Chance(1e-6), confidence+1e-6)
			return
		}
		assert.GreaterOrEqual(t, jobOf(gives).Outlook(states).ChanceLasts, confidence)
		assert.InDelta(t, jobOf(gives).Outlook(states).ChanceLasts, r.Chance(gives), 1e-9)
		assert.Less(t, r.Chance(gives*1.2+1), 1.0)
	})
}

func TestMoreGallonsAreNeverLikelier(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := jobOf(1).Reserve(usedBed(t))
		a := rapid.Float64Range(0, 300).Draw(t, "gallons")
		b := rapid.Float64Range(0, 100).Draw(t, "more")
		assert.GreaterOrEqual(t, r.Chance(a), r.Chance(a+b))
		assert.GreaterOrEqual(t, r.Gives(0.5), r.Gives(0.9))
	})
}

// Two fills by trying every pair of ways in which they may be.
func TestTwoFillsByEveryPair(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first, next := jobOf(1).Reserve(usedBed(t)), jobOf(1).Reserve(after())
		gallons, flush := rapid.Float64Range(1, 400).Draw(t, "gallons"), rapid.Float64Range(0, 10).Draw(t, "flush")
		want := 0.0
		for _, a := range first {
			given := max(a.value-flush, 0)
			for _, b := range next {
				if given >= gallons || b.value >= gallons-given+flush {
					want += a.weight * b.weight
				}
			}
		}
		got := first.OverTwoFills(next, gallons, flush)
		assert.InDelta(t, want, got, 1e-9)
		assert.GreaterOrEqual(t, got+1e-9, first.Chance(gallons+flush), "a second fill never makes it worse")
	})
}
