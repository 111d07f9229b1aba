package trip

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// drawn is a trip for the adviser.
func drawn(t *rapid.T) (a *adviser, planned, begins []bool) {
	n := rapid.IntRange(1, 9).Draw(t, "legs")
	a = &adviser{summed: make([]float64, n+1), spread: 0.3, left: make([]float64, n+1)}
	planned, begins = make([]bool, n), make([]bool, n)
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
	return a, planned, begins
}

// leastOf is the least cost of all sets of places that may be.
func (a *adviser) leastOf(planned, begins []bool, may func(at []int) bool) float64 {
	least := math.Inf(1)
	for set := range 1 << len(planned) {
		var at []int
		for k := range planned {
			if set>>k&1 == 1 && begins[k] && !planned[k] {
				at = append(at, k)
			}
		}
		if may(at) {
			least = math.Min(least, a.cost(planned, at))
		}
	}
	return least
}

// The best places for changes are the best of all sets of places.
func TestAdviceIsTheBestOfAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, planned, begins := drawn(t)
		least := a.leastOf(planned, begins, func([]int) bool { return true })
		require.InDelta(t, least, a.cost(planned, a.best(planned, begins)), 1e-9)
	})
}

// Where a change is worth its waste, the best places are the best of those that keep no
// fill past a wash at risk that a change would mend, but for the last and those that end
// with a planned change.
func TestAdviceReachesTheFirstAtRisk(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, planned, begins := drawn(t)
		for k := range planned { // as a change that is planned always is
			begins[k] = begins[k] || planned[k]
		}
		free := a.best(planned, begins)
		got, _ := a.advise(planned, begins)
		if len(free) == 0 {
			require.Empty(t, got)
			return
		}
		first := a.best(planned, begins)
		require.True(t, a.reaches(planned, first))
		least := a.leastOf(planned, begins, func(at []int) bool { return a.reaches(planned, at) })
		require.InDelta(t, least, a.cost(planned, first), 1e-9)
		if len(first) == 0 {
			require.Contains(t, planned, true)
			first = free
		}
		require.Equal(t, first, got)
	})
}

// reaches tells that no fill that ends with a change of these is kept past a wash that a change
// would mend.
func (a *adviser) reaches(planned []bool, at []int) bool {
	begun, kept := -1, false
	for k := range planned {
		if planned[k] || slices.Contains(at, k) {
			if kept && !planned[k] {
				return false
			}
			begun, kept = k, false
		}
		risk := a.risk[k]
		if begun >= 0 {
			risk = a.off(a.summed[k+1]-a.summed[begun], k)
		}
		kept = kept || a.mends(begun, k, risk)
	}
	return begun >= 0 || !kept
}

// Two washes of one day with unlike waters, the second at risk: the change comes before
// that day, not after it.
func TestTheSecondWashOfADayIsAdvised(t *testing.T) {
	in := example()
	in.Trip.Stops = []model.Stop{
		{Date: date(t, "2026-06-12"), Place: "Juniper Flats"}, {Date: date(t, "2026-06-19"), Place: "Juniper Flats"},
		{Date: date(t, "2026-06-19"), Place: "Saltbush Wells"},
	}
	wash := func(day, place string) model.TripWash {
		return model.TripWash{Date: date(t, day), Place: place, DI: quantity.Some(34 * quantity.Gallon)}
	}
	in.Trip.Washes = []model.TripWash{
		wash("2026-06-15", ""), wash("2026-06-19", "Juniper Flats"), wash("2026-06-19", "Saltbush Wells"), wash("2026-06-22", ""),
	}
	in.Rig.Beds[0].SoFar = quantity.Some(60 * quantity.Gallon)
	p := mustMake(t, in)
	require.Equal(t, 2, p.FirstAtRisk, "%v", p.Washes)
	require.NotEmpty(t, p.Changes)
	assert.Equal(t, "2026-06-19", p.Changes[0].Date.String())
	assert.Greater(t, float64(p.Washes[2].Advised), 0.9)
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
