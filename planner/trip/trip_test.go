package trip

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/bed"
)

func mustMake(t require.TestingT, in Input) Plan {
	p, err := Make(in)
	require.NoError(t, err)
	return p
}

// A trip of one wash at home has the chance that the plan of that wash has, as far
// as the plan's fewer states tell it.
func TestOneWashIsThePlansOwn(t *testing.T) {
	for _, gallons := range []float64{0, 60, 120, 200, 260} {
		in := example()
		in.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(gallons) * quantity.Gallon)
		in.Trip.Washes = in.Trip.Washes[:1]
		like, _ := in.Like("Saturday wash")
		like.Date = quantity.Opt[model.Date]{}
		plan, err := planner.Make(in.Rig, in.Places, like)
		require.NoError(t, err)
		p := mustMake(t, in)
		require.Len(t, p.Washes, 1)
		assert.InDelta(t, float64(plan.Bed.ChanceLasts), float64(p.Washes[0].Chance), 0.03, "%v gal", gallons)
		assert.InEpsilon(t, plan.DI.Volume.Gallons(), p.Washes[0].DI.P50.Gallons(), 1e-9)
		assert.InEpsilon(t, plan.Soft.Volume.Gallons(), p.Washes[0].Soft.P50.Gallons(), 1e-9)
		assert.InDelta(t, plan.Bed.OutletAtEnd.P50, p.Washes[0].Outlet.P50, 0.3+0.2*plan.Bed.OutletAtEnd.P50)
		if len(p.Changes) == 0 { // behind a change it is the next fill that is used up
			assert.InEpsilon(t, plan.Cost.Wash, p.Used.Parts[0].Amount(), 0.002)
		}
	}
}

// The order of the lines means nothing where the dates give it.
func TestPermutedLinesChangeNothing(t *testing.T) {
	in := example()
	in.Trip.Changes = []model.ResinChange{{Date: day(12)}, {Date: day(20)}}
	want := mustMake(t, in)
	r := rand.New(rand.NewPCG(1, 2))
	for range 5 {
		mixed := in
		mixed.Trip = in.Trip.Clone()
		r.Shuffle(len(mixed.Trip.Stops), func(a, b int) { mixed.Trip.Stops[a], mixed.Trip.Stops[b] = mixed.Trip.Stops[b], mixed.Trip.Stops[a] })
		r.Shuffle(len(mixed.Trip.Washes), func(a, b int) {
			mixed.Trip.Washes[a], mixed.Trip.Washes[b] = mixed.Trip.Washes[b], mixed.Trip.Washes[a]
		})
		r.Shuffle(len(mixed.Places), func(a, b int) { mixed.Places[a], mixed.Places[b] = mixed.Places[b], mixed.Places[a] })
		slices.Reverse(mixed.Trip.Changes)
		got := mustMake(t, mixed)
		for k := range want.Washes {
			got.Washes[k].Index = want.Washes[k].Index
		}
		for k := range want.Stops {
			got.Stops[k].Index = want.Stops[k].Index
		}
		for k := range want.Changes {
			got.Changes[k].Index = want.Changes[k].Index
		}
		assert.Equal(t, want, got)
	}
}

// A stop without a wash, and what comes later, change no chance of what is before.
func TestWhatIsIndependentChangesNothing(t *testing.T) {
	in := example()
	want := mustMake(t, in)
	in.Trip = in.Trip.Clone()
	in.Trip.Stops = append([]model.Stop{{Date: day(7), Name: "nowhere"}}, in.Trip.Stops...)
	in.Trip.Stops[0].Date = day(10) // two nights on the way, without a wash, at Saltbush Wells' turn
	in.Trip.Stops = append(in.Trip.Stops, model.Stop{Date: day(11), Place: "Saltbush Wells"}, model.Stop{Date: day(40), Name: "after"})
	in.Trip.Washes = append(in.Trip.Washes, model.TripWash{Date: day(41), Like: "Saturday wash"})
	got := mustMake(t, in)
	for k := range want.Washes {
		assert.InDelta(t, float64(want.Washes[k].Chance), float64(got.Washes[k].Chance), 1e-12, "wash %d", k)
	}
}

// Chances of a whole trip are no products: one bed, one capacity.
func TestTheWholeIsNotTheProduct(t *testing.T) {
	in := example()
	in.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
	in.Trip.Washes = nil
	for i := range 12 {
		in.Trip.Washes = append(in.Trip.Washes, model.TripWash{Date: day(i), Like: "Saturday wash"})
	}
	p := mustMake(t, in)
	product, last := 1.0, 1.0
	for _, w := range p.Washes {
		product *= float64(w.Chance)
		assert.LessOrEqual(t, float64(w.SoFar), float64(w.Chance)+1e-9)
		assert.LessOrEqual(t, float64(w.SoFar), last+1e-9)
		last = float64(w.SoFar)
	}
	assert.InDelta(t, float64(p.Washes[11].Chance), float64(p.AllOnSpec), 0.02, "the last wash is the hardest")
	assert.Less(t, product, 0.8*float64(p.AllOnSpec))
}

// Columns marched one by one stand where the few columns say.
func TestFrontsStandForEveryColumn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(low, high float64, name string) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		past, units0 := draw(0, 0.6, "past"), draw(12, 30, "units")
		f, e := draw(0.5, 2, "factor"), draw(0.4, 1, "contact")
		c := bed.Column{}.Feed(e*units0, past/f)
		k := math.Log(e / f)
		fronts := newFronts(k-0.3, k+0.3, past*1.1, units0)
		fed := alike(c, f, e, units0)
		if c.Spent() < 1 { // one that has run out tells no more than that
			assert.InDelta(t, past, fed, 1e-6+past*1e-6)
		}
		places := []float64{math.Exp(0.05 * draw(-2, 2, "a")), math.Exp(0.05 * draw(-2, 2, "b")), draw(0.5, 2, "band")}
		for range rapid.IntRange(1, 10).Draw(t, "washes") {
			units, capacities := units0*draw(0.9, 1.1, "water"), draw(0.01, 0.1, "amount")
			load := places[rapid.IntRange(0, 2).Draw(t, "place")]
			c = c.Feed(e*units, load*capacities/f)
			fed += load * capacities
			fronts.feed(units, capacities)
			y := fronts.at(e / f * fed / fronts.fed)
			if c.Spent() < 1 && c.Spent() > 0.02 {
				require.InDelta(t, c.Spent(), y/e, 0.012)
			}
		}
	})
}

func TestStatesAreSpreadEvenly(t *testing.T) {
	in := example()
	in.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
	var m Memory
	require.NoError(t, m.begin(&in, model.Wash{}))
	mean, square, contact := 0.0, 0.0, 0.0
	for _, s := range m.season.States {
		ln := math.Log(s.Factor)
		mean, square, contact = mean+ln, square+ln*ln, contact+s.Efficiency
	}
	n := float64(len(m.season.States))
	assert.InDelta(t, 0, mean/n, 0.003)
	assert.InDelta(t, 0.35, math.Sqrt(square/n), 0.007)
	assert.InDelta(t, 0.3+0.7*0.8, contact/n, 0.003)
}

func TestStopsThatForbidAndStopsThatRunDry(t *testing.T) {
	in := example()
	in.Trip = in.Trip.Clone()
	in.Trip.Stops[1].Limits = model.NotAllowed
	in.Trip.Stops[3].OnHand = quantity.Some(5 * quantity.Gallon)
	in.Trip.Washes = append(in.Trip.Washes, model.TripWash{Name: "no day"}, model.TripWash{Date: day(-9)})
	p := mustMake(t, in)
	var codes []string
	for _, n := range p.Notes {
		codes = append(codes, n.Code)
	}
	assert.Equal(t, []string{"tank-runs-dry", "not-allowed", "rinse-only", "not-placed"}, codes)
	assert.Len(t, p.Washes, 5)
	assert.True(t, p.Washes[2].Barred)
	assert.False(t, p.Washes[1].Barred, "another user of the bed is no wash")
	assert.True(t, p.Washes[3].Rinse)
	allowed := mustMake(t, example())
	assert.Greater(t, float64(p.Washes[4].Chance), float64(allowed.Washes[4].Chance))
}

func TestDirtSetsTheWaterBeforeTheFinalRinse(t *testing.T) {
	p := mustMake(t, example())
	assert.InEpsilon(t, 1.5*p.Washes[0].Soft.P50.Gallons(), p.Washes[2].Soft.P50.Gallons(), 1e-9)
	assert.InEpsilon(t, p.Washes[0].DI.P50.Gallons(), p.Washes[2].DI.P50.Gallons(), 0.1)
}

// A pre-rinse that the trip turns to softened water follows the dirt as one that is
// stated softened does.
func TestDirtFollowsTheWatersOfTheTrip(t *testing.T) {
	soft := func(water model.Water) float64 {
		in := example()
		in.Trip.DIFor = model.DIForLast
		in.Trip.Washes[2].Stages = []model.Stage{{Name: "pre-rinse", Water: water}, {Name: "final rinse", Water: model.DI, Final: true}}
		return mustMake(t, in).Washes[2].Soft.P50.Gallons()
	}
	require.Positive(t, soft(model.Softened))
	assert.InEpsilon(t, soft(model.Softened), soft(model.DI), 1e-9)
}

func TestAnUnknownWaterIsABand(t *testing.T) {
	p := mustMake(t, example())
	assert.InDelta(t, 100, p.Stops[2].TDS.P10, 1e-6)
	assert.InDelta(t, 450, p.Stops[2].TDS.P90, 1e-6)
	assert.True(t, p.Stops[2].Unknown)
	in := example()
	in.Trip.Stops[2] = model.Stop{Date: in.Trip.Stops[2].Date}
	p = mustMake(t, in)
	assert.Equal(t, "stop of 2026-06-15", p.Stops[2].Name)
	assert.Equal(t, "water-unknown", p.Notes[0].Code)
}

func TestWithoutARigOrWashes(t *testing.T) {
	_, err := Make(Input{})
	var missing *planner.Missing
	assert.ErrorAs(t, err, &missing)
	in := example()
	in.Trip = model.Trip{}
	p := mustMake(t, in)
	assert.Empty(t, p.Washes)
	assert.False(t, p.OrderBy.Given())
	in.Places = nil
	in.Trip = model.Trip{Stops: []model.Stop{{Date: day(0)}}, Washes: []model.TripWash{{Date: day(1)}}}
	in.Rig.Defaults.Place = ""
	p = mustMake(t, in)
	assert.Len(t, p.Washes, 1)
}

// The answer with a memory is the answer without one, whatever was asked before.
func TestTheMemoryChangesNothing(t *testing.T) {
	var m Memory
	rapid.Check(t, func(t *rapid.T) {
		in := example()
		in.Trip = in.Trip.Clone()
		in.Trip.Washes[1].DI = quantity.Some(quantity.Volume(rapid.IntRange(1, 3).Draw(t, "gallons")) * quantity.Gallon)
		in.Trip.Stops[0].Place = in.Places[rapid.IntRange(0, 2).Draw(t, "place")].Name
		in.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(rapid.IntRange(0, 1).Draw(t, "age")*90) * quantity.Gallon)
		if rapid.Bool().Draw(t, "softener") {
			in.Trip.Softener = model.NoSoftener
		}
		got, err := m.Make(in)
		require.NoError(t, err)
		require.Equal(t, mustMake(t, in), got)
	})
}

// A wash that takes no DI water is at no risk, wherever it stands in the trip.
func TestAWashWithoutDIWaterIsAtNoRisk(t *testing.T) {
	for _, k := range []int{0, 3} {
		in := example()
		in.Trip.Washes[k].Stages = []model.Stage{{Name: "rinse", Water: model.Raw}}
		p, err := Make(in)
		require.NoError(t, err)
		at := slices.IndexFunc(p.Washes, func(w WashPlan) bool { return w.Index == k })
		require.Zero(t, p.Washes[at].DI.P50)
		assert.InDelta(t, 1, float64(p.Washes[at].Chance), 1e-9)
		assert.True(t, math.IsNaN(p.Washes[at].Outlet.P50), "no DI water, no outlet")
		if at > 0 {
			assert.Equal(t, p.Washes[at-1].SoFar, p.Washes[at].SoFar)
		}
	}
}
