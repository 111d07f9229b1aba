package learning

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/planner/bed"
)

func drawFill(t *rapid.T, flows int) Fill {
	var f Fill
	units := rapid.SliceOfN(rapid.Float64Range(5, 40), flows, flows).Draw(t, "units")
	for range rapid.IntRange(1, 15).Draw(t, "uses") {
		f.Uses = append(f.Uses, Use{Capacities: rapid.Float64Range(0.005, 0.12).Draw(t, "fed"), Units: rapid.SampledFrom(units).Draw(t, "flow")})
		if rapid.Bool().Draw(t, "read") {
			read := rapid.Float64Range(0, 300).Draw(t, "ppm")
			f.Readings = append(f.Readings, Reading{Evidence: Evidence{read, 290, rapid.SampledFrom(units).Draw(t, "at")}, After: len(f.Uses)})
		}
	}
	return f
}

// One replay of a bed of perfect contact gives the outlet at every contact: the
// column itself, replayed for each, gives the same.
func TestOneReplayServesEveryContact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFill(t, 5)
		r := rapid.Float64Range(0.4, 2.5).Draw(t, "r")
		e := rapid.Float64Range(LeastEfficiency, 1).Draw(t, "e")
		c := f.course()
		front := make([]float64, len(c.cuts))
		c.walk(e/r, front)
		interpolated := make([]float64, len(c.cuts))
		c.fronts(math.Log(0.1), math.Log(3), fineFronts).read(math.Log(e/r), interpolated)
		for _, s := range f.sights(c) {
			want := shown(290 * columnAt(f, f.Readings[s.index].After, r, e).Outlet(e*s.units))
			assert.InDelta(t, want, s.truth(e, front[s.cut]), 5e-4)
			assert.InDelta(t, want, s.truth(e, interpolated[s.cut]), 0.04)
		}
	})
}

func columnAt(f Fill, uses int, r, e float64) bed.Column {
	var column bed.Column
	for _, u := range f.Uses[:uses] {
		column = column.Feed(e*u.Units, u.Capacities/r)
	}
	return column
}

// Rounding many flows to a few moves what a pen shows by far less than its
// error.
func TestManyFlowsAreNearEnoughRounded(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFill(t, 15)
		e := rapid.Float64Range(0.6, 1).Draw(t, "e")
		c := f.course()
		exact := columnAt(f, len(f.Uses), 1, e)
		assert.InDelta(t, shown(290*exact.Outlet(25*e)), shown(290*c.column(1, e).Outlet(25*e)), 0.2)
	})
}

func TestUsesAtOneFlowAreJoinedWhereNothingIsRead(t *testing.T) {
	f := Fill{Uses: []Use{{0.1, 20}, {math.NaN(), 20}, {0.1, 20}, {0.1, 20}, {0.1, 10}}}
	assert.Equal(t, []Use{{0.30000000000000004, 20}, {0.1, 10}}, f.course().uses)
	f.Readings = []Reading{{Evidence: Evidence{1, 290, 20}, After: 1}, {Evidence: Evidence{1, 290, 20}, After: 2}, {Evidence: Evidence{1, 290, 20}, After: 99}}
	c := f.course()
	assert.Equal(t, []Use{{0.1, 20}, {0.2, 20}, {0.1, 10}}, c.uses)
	assert.Equal(t, []int{1, 1, 3}, c.cuts)
	assert.Equal(t, 2, f.sights(c)[2].cut)
}
