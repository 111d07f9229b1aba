package learning

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestAPosteriorIsSoundWhateverIsRead(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFill(t, 4)
		p := Start().Learn(f)
		assert.LessOrEqual(t, len(p.States), 500)
		assert.Len(t, p.Expected, len(f.Readings))
		assert.LessOrEqual(t, p.Used, len(f.Readings))
		total := 0.0
		for _, s := range p.States {
			total += s.Weight
			assert.True(t, s.Factor > 0 && s.Efficiency >= LeastEfficiency && s.Efficiency <= 1)
		}
		assert.InDelta(t, 1, total, 1e-9)
		assert.True(t, slices.IsSorted(p.Factor[:]) && slices.IsSorted(p.Contact[:]))
		for _, e := range p.Expected {
			assert.True(t, slices.IsSorted(e[:]) && e[0] >= 0 && e[2] <= 290.001)
		}
		middle := p.Middle()
		assert.True(t, middle.Factor > 0 && middle.Column.Used() <= 1)
	})
}

// Nothing that a file may hold makes it fall over or gives a figure that is none.
func TestNonsenseIsPassedOver(t *testing.T) {
	odd := rapid.SampledFrom([]float64{math.NaN(), math.Inf(1), math.Inf(-1), -1, 0, 1e-300, 1e300, 20, 0.1})
	rapid.Check(t, func(t *rapid.T) {
		var f Fill
		for range rapid.IntRange(0, 6).Draw(t, "uses") {
			f.Uses = append(f.Uses, Use{odd.Draw(t, "fed"), odd.Draw(t, "units")})
		}
		for range rapid.IntRange(0, 6).Draw(t, "readings") {
			f.Readings = append(f.Readings, Reading{
				Evidence: Evidence{odd.Draw(t, "read"), odd.Draw(t, "feed"), odd.Draw(t, "at")},
				After:    rapid.IntRange(-2, 9).Draw(t, "after"), Sense: Sense(rapid.IntRange(0, 2).Draw(t, "sense")),
			})
		}
		p := Start().Learn(f)
		out := Job{Main: Use{0.003, 20}, Limit: 0.04}.Outlook(p.States)
		assert.False(t, math.IsNaN(p.Factor[1]) || math.IsNaN(out.Remaining[1]) || math.IsNaN(out.AtEnd[1]))
		assert.True(t, out.ChanceLasts >= 0 && out.ChanceLasts <= 1)
		o := After([]Lesson{Recall(f)})
		median, spread := o.Factor()
		assert.True(t, median > 0 && spread > 0 && !math.IsInf(median, 0))
	})
}

func TestWithoutReadingsThePriorStands(t *testing.T) {
	p := Start().Learn(Fill{})
	assert.InDelta(t, 1, p.Factor[1], 0.02)
	assert.InEpsilon(t, math.Exp(-1.2816*CapacitySpread), p.Factor[0], 0.04)
	assert.InEpsilon(t, math.Exp(1.2816*CapacitySpread), p.Factor[2], 0.04)
	// The beta distribution (4, 1) has the quantiles u^(1/4).
	for i, u := range []float64{0.1, 0.5, 0.9} {
		assert.InDelta(t, LeastEfficiency+(1-LeastEfficiency)*math.Pow(u, 0.25), p.Contact[i], 0.01)
	}
	middle, plain := p.Middle(), Prior().Middle()
	assert.InDelta(t, plain.Factor, middle.Factor, 1e-9)
	assert.InDelta(t, plain.Efficiency, middle.Efficiency, 1e-9)
}

// The same readings in another order of the list teach the same.
func TestTheOrderOfTheListDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFill(t, 3)
		g := f
		g.Readings = slices.Clone(f.Readings)
		slices.Reverse(g.Readings)
		assert.InEpsilon(t, Start().learn(f, nil).Factor[1], Start().learn(g, nil).Factor[1], 1e-6)
	})
}

// Readings that a bed of factor f and good contact gives, over its life, find it.
func TestReadingsFindTheCapacity(t *testing.T) {
	for _, factor := range []float64{0.6, 1, 1.6} {
		var f Fill
		for i := range 14 {
			f.Uses = append(f.Uses, Use{Capacities: 0.08 * factor, Units: sprayer})
			shows := tap * columnAt(f, i+1, factor, 0.9).Outlet(0.9*sprayer)
			f.Readings = append(f.Readings, Reading{Evidence: Evidence{shows, tap, sprayer}, After: i + 1})
		}
		p := Start().Learn(f)
		assert.True(t, p.Factor[0] < factor && factor < p.Factor[2], "%g in %v", factor, p.Factor)
		assert.Less(t, math.Log(p.Factor[2]/p.Factor[0]), 0.4)
	}
}

// How a fill ended says something even without a reading.
func TestTheEndOfAFillCounts(t *testing.T) {
	limit := Evidence{Read: 10, Feed: tap, Units: sprayer}
	half := season(-1, -1, -1, -1, -1)
	long := season(-1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1)
	assert.Less(t, Start().Learn(half.Ended(limit, true)).Factor[1], 0.8)
	assert.InDelta(t, 1, Start().Learn(half.Ended(limit, false)).Factor[1], 0.12)
	assert.Greater(t, Start().Learn(long.Ended(limit, false)).Factor[1], 1.3)
	assert.Greater(t, Start().Learn(long.Ended(limit, true)).Factor[1], 0.9)
	assert.Empty(t, half.Readings, "the fill itself stays as it was")
}

func TestLessonsAddUp(t *testing.T) {
	median, spread := After(nil).Factor()
	assert.Equal(t, 1.0, median)
	assert.InDelta(t, CapacitySpread, spread, 1e-12)
	_, none := After([]Lesson{Recall(Fill{}), Recall(season(0, 0))}).Factor()
	assert.InDelta(t, CapacitySpread, none, 0.005, "a young fill teaches nothing of its capacity")
	low := Recall(season(0, 0, 0, 0, 8, 110, 285))
	one, wide := After([]Lesson{low}).Factor()
	many, narrow := After([]Lesson{low, low, low, low}).Factor()
	assert.Less(t, many, one)
	assert.Less(t, one, 0.85)
	assert.Less(t, narrow, wide)
	assert.Greater(t, narrow, FillSpread)
}
