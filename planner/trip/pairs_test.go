package trip

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/bed"
)

// behind is a trip with a second tank behind the first.
func behind(in Input) Input {
	in.Setting.Behind = true
	return in
}

// A trip of one wash has the chance that the wash by itself has with two tanks.
func TestOneWashBehindTwoTanks(t *testing.T) {
	in := example()
	in.Trip.Washes = []model.TripWash{{Date: date(t, "2026-06-06"), Like: "Saturday wash"}}
	in.Rig.Beds[0].SoFar = quantity.Some(240 * quantity.Gallon)
	alone, err := Make(in)
	require.NoError(t, err)
	both, err := Make(behind(in))
	require.NoError(t, err)
	wash, _ := in.Like("Saturday wash")
	wash.Place = "Juniper Flats"
	var m planner.Memory
	for _, c := range []struct {
		set  planner.Setting
		trip Plan
	}{{planner.Setting{}, alone}, {planner.Setting{Behind: true}, both}} {
		p, err := m.MakeIn(c.set, in.Rig, in.Places, wash)
		require.NoError(t, err)
		assert.InDelta(t, float64(p.Bed.ChanceLasts), float64(c.trip.Washes[0].Chance), 0.02)
		assert.InEpsilon(t, float64(p.DI.Volume), float64(c.trip.Washes[0].DI.P50), 1e-9)
	}
	assert.Less(t, float64(alone.AllOnSpec), 0.6)
	assert.Greater(t, float64(both.AllOnSpec), 0.9)
}

// Two tanks over a whole trip, with the first swapped out on the way, agree with trips
// that are simulated directly: each draws its fills, its loads and its waters, and
// marches two columns that nothing thins.
func TestPairsAgreeWithSimulation(t *testing.T) {
	n, most := 40000, 0.015
	if testing.Short() {
		n, most = 4000, 0.04
	}
	in := behind(long(24))
	in.Trip.Changes = []model.ResinChange{{Date: day(40)}}
	p, err := Make(in)
	require.NoError(t, err)
	stops := stopsByDate(&in.Trip)
	legs := in.legs(stops)
	var m Memory
	require.NoError(t, m.begin(&in, model.Wash{Bed: in.Trip.Bed, Softener: in.Trip.Softener, Feed: in.Trip.Feed}))
	require.NoError(t, m.ask(&in, legs, stops))
	each := make([]float64, len(legs))
	s := &truth{rand: rand.New(rand.NewPCG(5, 9))}
	past := pastOf(t, in)
	for range n {
		s.draw()
		_, lead := s.before(past)
		leadF, leadE := s.f, s.e
		s.fill()
		two := bed.Series{Lead: lead, Ratio: s.f / leadF}
		for k := range legs {
			if legs[k].day == day(40).Or(model.Date{}) || k > 0 && legs[k-1].day.Compare(day(40).Or(model.Date{})) < 0 && legs[k].day.Compare(day(40).Or(model.Date{})) >= 0 {
				leadF, leadE = s.f, s.e
				s.fill()
				two = two.Swap(s.f / leadF)
			}
			d := legs[k].at()
			load, held := math.Exp(d.LoadSpread*s.rand.NormFloat64()), true
			for _, u := range d.Uses {
				two = two.Feed(leadE*u.Units, s.e*u.Units, load*u.Capacities/leadF)
				held = held && d.Feed*two.Outlet(leadE*u.Units, s.e*u.Units) <= d.Limit
			}
			if held {
				each[k] += 1 / float64(n)
			}
		}
	}
	worst := 0.0
	for k := range p.Washes {
		worst = math.Max(worst, math.Abs(each[k]-float64(p.Washes[k].Chance)))
	}
	t.Logf("%d washes, worst %.4f, chances %.3f to %.3f", len(each), worst, each[0], each[len(each)-1])
	assert.Less(t, each[len(each)-1], 0.9, "the trip is hard enough to tell")
	assert.Less(t, worst, most)
}

// Two tanks, swapped when they are due, leave next to nothing in the first, and take
// fewer fills than one tank that is changed in time.
func TestSwapsWasteLittle(t *testing.T) {
	one, err := Make(long(40))
	require.NoError(t, err)
	two, err := Make(behind(long(40)))
	require.NoError(t, err)
	require.NotEmpty(t, two.Changes)
	assert.LessOrEqual(t, len(two.Changes), len(one.Changes))
	most := quantity.Fraction(0)
	for _, c := range two.Changes {
		most = max(most, c.Wasted)
	}
	waste := quantity.Fraction(0)
	for _, c := range one.Changes {
		waste += c.Wasted
	}
	t.Logf("two tanks: %d swaps, at most %v left; one: %d changes, %v in all", len(two.Changes), most, len(one.Changes), waste)
	assert.Less(t, float64(most), float64(waste)/float64(len(one.Changes)))
	assert.Greater(t, float64(two.AllAdvised), 0.5)
	for _, w := range two.Washes {
		assert.GreaterOrEqual(t, float64(w.Advised), 0.9, "%s", w.Date)
	}
}

// A tank that is too small for its flow keeps no limit however fresh it is: no fill is
// thrown out for nothing.
func TestNoSwapThatBringsNothing(t *testing.T) {
	in := behind(long(24))
	in.Rig.Beds[0].Resin = quantity.Some(0.02 * quantity.CubicFoot)
	p, err := Make(in)
	require.NoError(t, err)
	require.Less(t, float64(p.AllAdvised), 0.01, "it is hopeless")
	assert.Empty(t, p.Changes)
	assert.False(t, p.Once.Given())
}

// BenchmarkSixtyStopsBehindTwoTanks marches each state, and finds where to swap.
func BenchmarkSixtyStopsBehindTwoTanks(b *testing.B) {
	in := behind(long(60))
	for b.Loop() {
		if _, err := Make(in); err != nil {
			b.Fatal(err)
		}
	}
}
