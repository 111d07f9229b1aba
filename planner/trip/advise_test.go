package trip

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// The best places for changes are the best of all sets of places.
func TestAdviceIsTheBestOfAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 9).Draw(t, "legs")
		a := &adviser{summed: make([]float64, n+1), spread: 0.3, left: make([]float64, n+1)}
		planned, begins := make([]bool, n), make([]bool, n)
		life := 1.0
		for k := range n {
			need := rapid.Float64Range(0.02, 0.5).Draw(t, "need")
			a.need, a.summed[k+1] = append(a.need, need), a.summed[k]+need
			a.reach = append(a.reach, []float64{0.9, 0.8, 0.85, 0.7, 0.95})
			a.left[k] = life
			life = math.Max(life-need, 0)
			a.risk = append(a.risk, 1-life)
			planned[k], begins[k] = rapid.IntRange(0, 5).Draw(t, "planned") == 0, rapid.IntRange(0, 3).Draw(t, "begins") > 0
		}
		begins[0] = true
		got := a.cost(planned, a.best(planned, begins))
		least := math.Inf(1)
		for set := range 1 << n {
			var at []int
			for k := range n {
				if set>>k&1 == 1 && begins[k] && !planned[k] {
					at = append(at, k)
				}
			}
			least = math.Min(least, a.cost(planned, at))
		}
		require.InDelta(t, least, got, 1e-9)
	})
}

// cost is that of changes before some legs, beside the planned ones.
func (a *adviser) cost(planned []bool, advised []int) float64 {
	change := append([]bool(nil), planned...)
	for _, k := range advised {
		change[k] = true
	}
	sum, begun, fresh := 0.0, 0, false
	for k := range a.need {
		if change[k] {
			switch {
			case !fresh:
				sum += a.left[k]
			case k > begun:
				sum += a.leftAfter(a.summed[k]-a.summed[begun], k-1)
			}
			begun, fresh = k, true
		}
		if fresh {
			sum += a.off(a.summed[k+1]-a.summed[begun], k)
		} else {
			sum += a.risk[k]
		}
	}
	return sum
}

// What is thrown out on average agrees with a sum over many beds.
func TestLifeLeftOnAverage(t *testing.T) {
	a := &adviser{reach: [][]float64{{0.8, 0.8, 0.8, 0.8, 0.8}}, middle: -0.1, spread: 0.4}
	for _, fed := range []float64{0.1, 0.5, 0.9, 2} {
		sum, weight := 0.0, 0.0
		for z := -6.0; z <= 6; z += 0.001 {
			w := math.Exp(-z * z / 2)
			sum += w * math.Max(1-fed/0.8/math.Exp(-0.1+0.4*z), 0)
			weight += w
		}
		assert.InDelta(t, sum/weight, a.leftAfter(fed, 0), 1e-5)
	}
}

func TestWornBedIsToBeChangedAndOrderedFor(t *testing.T) {
	in := example()
	in.Rig.Beds[0].SoFar = quantity.Some(190 * quantity.Gallon)
	p := mustMake(t, in)
	require.GreaterOrEqual(t, p.FirstAtRisk, 0)
	require.NotEmpty(t, p.Changes)
	assert.True(t, p.Changes[0].Advised)
	assert.Greater(t, float64(p.AllAdvised), float64(p.AllOnSpec)+0.2)
	order, given := p.OrderBy.Get()
	require.True(t, given)
	assert.Equal(t, "2026-05-22", order.String(), "ten days before the trip, since the resin is carried")
	assert.False(t, p.Late)
	assert.Equal(t, 1, p.Carry.Fills)
	assert.InDelta(t, 0.5*44, p.Carry.Low.Pounds()/2+p.Carry.High.Pounds()/2, 0.01)

	in.Trip.Carry = model.No
	in.Today = model.Date{Year: 2026, Month: 6, Day: 20}
	p = mustMake(t, in)
	order, _ = p.OrderBy.Get()
	assert.Equal(t, planner.OrderBy(p.Changes[0].Date, planner.LeadTime), order)
	assert.True(t, p.Late)
	in.Today = model.Date{Year: 2026, Month: 6, Day: 30}
	p = mustMake(t, in)
	assert.True(t, p.Over)
	assert.False(t, p.Late, "nobody orders for a trip that is over")
	assert.False(t, p.OrderBy.Given())
	assert.False(t, p.NeededBy.Given())
	for _, c := range p.Changes {
		assert.False(t, c.Advised, "nobody changes its resin either")
	}
	assert.Equal(t, Carry{Regens: p.Carry.Regens, Salt: p.Carry.Salt}, p.Carry)
	in.Trip.Changes = []model.ResinChange{{Date: day(12)}}
	p = mustMake(t, in)
	assert.Equal(t, 1, p.Carry.Fills, "what was planned is what it took")
	assert.False(t, p.OrderBy.Given())
}

func TestSoundBedNeedsNothing(t *testing.T) {
	in := example()
	in.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
	in.Trip.Washes = in.Trip.Washes[:2]
	p := mustMake(t, in)
	assert.Equal(t, -1, p.FirstAtRisk)
	assert.Empty(t, p.Changes)
	assert.False(t, p.OrderBy.Given())
	assert.True(t, p.Buy.Nothing())
	assert.Equal(t, Carry{}, Carry{Fills: p.Carry.Fills})
}

func TestPlannedChangeIsAFreshBed(t *testing.T) {
	in := example()
	in.Trip.Changes = []model.ResinChange{{Date: day(12), Price: quantity.Some(quantity.Money{Hundredths: 20050, Currency: "$"})}}
	p := mustMake(t, in)
	assert.Equal(t, 1, p.Washes[2].Fill)
	assert.Greater(t, float64(p.Washes[2].Chance), 0.99)
	assert.Greater(t, float64(p.Washes[2].Life.P50), float64(p.Washes[1].Life.P50))
	assert.Equal(t, "$200.50", p.Buy.String())
	assert.Greater(t, float64(p.Changes[0].Wasted), 0.1)
}

func TestSoftenerIsRegeneratedInTime(t *testing.T) {
	in := example()
	in.Rig.Softeners[0].SoFar = quantity.Some(500 * quantity.Gallon)
	p := mustMake(t, in)
	regens, salt := 0, 0.0
	for _, w := range p.Washes {
		if w.Softener == nil {
			continue
		}
		assert.GreaterOrEqual(t, float64(w.Softener.Left), 0.0)
		if w.Softener.Regenerate {
			regens++
			salt += w.Softener.Salt.Pounds()
		}
	}
	assert.Positive(t, regens)
	assert.Equal(t, regens, p.Carry.Regens)
	assert.InDelta(t, 4*float64(regens), p.Carry.Salt.Pounds(), 1e-6, "8 lb/ft3 on half a cubic foot")
	assert.InDelta(t, salt, p.Carry.Salt.Pounds(), 1e-9)
}
