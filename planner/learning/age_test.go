package learning

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// after is how a bed may stand after its uses, where nothing was read.
func after(uses ...Use) []State { return Start().Learn(Fill{Uses: uses}).States }

func TestStatesOfAnAgeAreSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := Evidence{rapid.Float64Range(0, 300).Draw(t, "ppm"), tap, sprayer}
		states := ByReading(Prior(), e)
		if rapid.Bool().Draw(t, "used") {
			states = after(Use{rapid.Float64Range(0.01, 1.5).Draw(t, "fed"), sprayer})
		}
		total := 0.0
		for _, s := range states {
			total += s.Weight
		}
		assert.InDelta(t, 1, total, 1e-6)
		assert.LessOrEqual(t, len(states), mostStates)
		j := Job{Main: Use{1.0 / 300, sprayer}, Limit: 10 / tap, LoadSpread: LoadSpread, Uses: []Use{{0.1, sprayer}}}
		out := j.Outlook(states)
		assert.True(t, slices.IsSorted(out.Remaining[:]) && slices.IsSorted(out.AtEnd[:]) && out.Remaining[0] >= 0)
		j.Uses[0].Capacities *= 2
		assert.LessOrEqual(t, j.Outlook(states).ChanceLasts, out.ChanceLasts, "a longer wash is no safer")
	})
}

// A few hundred states say what a direct simulation of what is believed says: capacity,
// contact and gallons drawn at random, each bed fed in full.
func TestStatesSayWhatSimulationSays(t *testing.T) {
	const draws = 100_000
	random := rand.New(rand.NewPCG(1, 2))
	for _, fed := range []float64{0, 0.3, 0.5} {
		j := Job{Main: Use{1.0 / 300, sprayer}, Limit: 10 / tap, LoadSpread: LoadSpread}
		var uses []Use
		if fed > 0 {
			uses = []Use{{fed, sprayer}}
		}
		left := make([]float64, 0, draws)
		for len(left) < draws {
			z := random.NormFloat64()
			if math.Abs(z) > Reach {
				continue
			}
			h := Hypothesis{Factor: math.Exp(CapacitySpread * z), Efficiency: LeastEfficiency + (1-LeastEfficiency)*math.Pow(random.Float64(), 0.25)}
			s := h.after([]Use{{fed * math.Exp(ThroughputSpread*random.NormFloat64()), sprayer}})
			load := math.Exp(LoadSpread * random.NormFloat64())
			left = append(left, s.Column.Until(h.Efficiency*sprayer, j.Limit)*h.Factor/j.Main.Capacities/load)
		}
		slices.Sort(left)
		told := j.Outlook(after(uses...)).Remaining
		for i, q := range []int{draws / 10, draws / 2, draws * 9 / 10} {
			assert.InDelta(t, left[q], told[i], 0.02*300, "%g fed", fed)
		}
	}
}

// Only a reading: a bed at the limit has nothing left.
func TestAReadingAloneTellsTheAge(t *testing.T) {
	e := Evidence{Read: 60, Feed: tap, Units: sprayer}
	states := ByReading(Prior(), e)
	j := Job{Main: Use{1.0 / 300, sprayer}, Limit: 10 / tap}
	assert.Zero(t, j.Outlook(states).Remaining[1])
	middle := MiddleByReading(states, e)
	assert.InEpsilon(t, 60/tap, middle.Column.Outlet(middle.Efficiency*sprayer), 0.01)
}
