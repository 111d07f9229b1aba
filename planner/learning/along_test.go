package learning

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// Walked again to its end, a fill stands where the outlook says it does; beyond,
// it goes on from there.
func TestAlongMeetsTheOutlookAndBeyondGoesOn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var f Fill
		for range rapid.IntRange(1, 8).Draw(t, "uses") {
			f.Uses = append(f.Uses, Use{Capacities: rapid.Float64Range(0.02, 0.12).Draw(t, "fed"), Units: rapid.Float64Range(12, 30).Draw(t, "n")})
		}
		units := rapid.Float64Range(12, 30).Draw(t, "units")
		p := Start().Learn(f)
		along := p.Along(units, []int{0, len(f.Uses) / 2, len(f.Uses)})
		now := Job{Main: Use{Capacities: 0.002, Units: units}, Limit: 0.05}.Outlook(p.States).Now
		beyond := p.Beyond(units, []float64{0, 0.1, 0.3})
		for k := range now {
			assert.InDelta(t, shown(250*now[k]), shown(250*along[2][k]), 0.5)
			assert.InDelta(t, shown(250*now[k]), shown(250*beyond[0][k]), 0.5)
			assert.LessOrEqual(t, along[0][k], along[1][k]*(1+1e-9))
			assert.LessOrEqual(t, along[1][k], along[2][k]*(1+1e-9))
			assert.LessOrEqual(t, beyond[0][k], beyond[1][k]*(1+1e-9))
			assert.LessOrEqual(t, beyond[1][k], beyond[2][k]*(1+1e-9))
		}
	})
}
