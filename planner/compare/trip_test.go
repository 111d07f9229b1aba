package compare

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner/trip"
)

var today = model.Date{Year: 2026, Month: 5, Day: 1}

// june is the built-in trip.
func june() Case {
	lib := store.Example()
	t := lib.Trips[0].Trip.Clone()
	return Case{Rig: lib.Rig, Places: lib.Places, Trip: &t}
}

var library = store.Example()

func like(name string) (model.Wash, bool) { return library.WashLike(name) }

func journeys(t testing.TB, base Case, o Options) Table {
	table, err := Compare(base, NewOneTrip(like, nil, today), o)
	require.NoError(t, err)
	return table
}

// reckoned is a trip planned directly.
func reckoned(t testing.TB, c Case, like func(string) (model.Wash, bool)) trip.Plan {
	p, err := trip.Make(trip.Input{Rig: c.Rig, Places: c.Places, Trip: *c.Trip, Like: like, Today: today})
	require.NoError(t, err)
	return p
}

// agrees holds what a way shows to a trip that was planned otherwise.
func agrees(t testing.TB, want trip.Plan, w Way) {
	got := *w.Figures.Trip
	require.Len(t, got.Washes, len(want.Washes), w.Key)
	for k := range want.Washes {
		assert.InDelta(t, float64(want.Washes[k].Chance), float64(got.Washes[k].Chance), 1e-9, "%s, wash %d", w.Key, k)
		assert.Equal(t, want.Washes[k].DI, got.Washes[k].DI, "%s, wash %d", w.Key, k)
		assert.Equal(t, want.Washes[k].Soft, got.Washes[k].Soft, "%s, wash %d", w.Key, k)
		assert.Equal(t, want.Washes[k].Untreated, got.Washes[k].Untreated, "%s, wash %d", w.Key, k)
		assert.Equal(t, want.Washes[k].Time, got.Washes[k].Time, "%s, wash %d", w.Key, k)
	}
	assert.Equal(t, want.Used, got.Used, w.Key)
	assert.Equal(t, want.OrderBy, got.OrderBy, w.Key)
	assert.Equal(t, want.Carry, got.Carry, w.Key)
	assert.Equal(t, want.Buy, got.Buy, w.Key)
}

func TestAllWaysOfATripAreThereAndTheBaseStays(t *testing.T) {
	base := june()
	before := base.clone()
	table := journeys(t, base, Options{})
	assert.Equal(t, before, base)
	var keys []string
	for _, w := range table.Ways {
		keys = append(keys, w.Key)
		assert.NotEmpty(t, w.Changes, w.Key)
		if w.Only != "" {
			assert.NotEmpty(t, w.Instead, "%s: what to do in its place", w.Key)
		}
	}
	assert.Equal(t, []string{
		"plan", "di-all", "sprayer-garden-nozzle", "open-hose", "new-resin", "double-tank", "series", "change-once", "along",
		"salted", "no-softener", "purified", "drip", "target",
	}, keys)
	assert.Equal(t, []string{"di-last", "change-advised"}, skippedIn(table))
	for _, r := range table.Rows {
		assert.Len(t, r.Cells, len(table.Ways), r.Key)
		for i, c := range r.Cells {
			assert.True(t, c.Known || c.Why != "", "%s of %s", r.Key, table.Ways[i].Key)
		}
	}
	agrees(t, reckoned(t, base, like), table.Ways[0])
}

// Each way that is stated in the trip and the rig is the trip planned with these,
// though not from what the base left: the plan that the key makes is the one shown.
func TestAWayIsTheTripPlannedWithItsNouns(t *testing.T) {
	table := journeys(t, june(), Options{})
	for _, w := range table.Ways {
		switch {
		case w.Only != "" || w.Key == "no-softener": // a bed has run on softened water before
			continue
		case w.Key == "double-tank":
			assert.True(t, w.Figures.Trip.ToFill)
		}
		agrees(t, reckoned(t, w.Case, like), w)
	}
}

// The same said in the washes themselves, and not in the trip, comes to the same.
func TestAWayIsTheTripOfChangedWashes(t *testing.T) {
	base := june()
	base.Trip.Stops[2].Limits = model.NoLimits
	base.Trip.Washes = slices.DeleteFunc(base.Trip.Washes, func(w model.TripWash) bool { return w.Like == "" || w.Dirt != "" && w.Dirt != model.UsualDirt })
	require.Len(t, base.Trip.Washes, 2)
	table := journeys(t, base, Options{})
	changed := map[string]func(*model.Wash){
		"di-all": func(w *model.Wash) {
			for i := range w.Stages {
				if w.Stages[i].Sprayer != model.ByHand {
					w.Stages[i].Water = model.DI
				}
			}
		},
		"sprayer-garden-nozzle": func(w *model.Wash) { w.Stages[len(w.Stages)-1].Sprayer = "garden nozzle" },
		"drip":                  func(w *model.Wash) { w.Pause = quantity.Some(2 * quantity.Minute) },
		"target":                func(w *model.Wash) { w.Target = quantity.Some(quantity.PPM(25, quantity.ScaleNaCl)) },
	}
	for key, change := range changed {
		direct := reckoned(t, base, func(name string) (model.Wash, bool) {
			w, found := like(name)
			w.Stages = slices.Clone(w.Stages)
			change(&w)
			return w, found
		})
		agrees(t, direct, table.way(key))
	}
	dry := base.clone()
	dry.Trip.Softener = model.NoSoftener
	none, direct := table.way("no-softener").Figures, reckoned(t, dry, like)
	assert.InDelta(t, float64(direct.AllOnSpec), float64(none.Chance), 0.02, "sodium and calcium get to the beads at other speeds")
	assert.Zero(t, none.Softened)
	assert.InEpsilon(t, float64(none.Raw), float64(table.Ways[0].Figures.Softened+table.Ways[0].Figures.Raw), 1e-9)
}

// A trip of one wash has the figures that the wash has under the same way.
func TestATripOfOneWashIsTheWash(t *testing.T) {
	base := june()
	price := quantity.Some(quantity.Money{Hundredths: 550, Currency: "$"})
	base.Rig.Softeners[0].Price = price
	base.Trip.Stops, base.Trip.Washes = base.Trip.Stops[:1], base.Trip.Washes[:1]
	wash, found := like("Saturday wash")
	require.True(t, found)
	wash.Date = quantity.Opt[model.Date]{}
	alone := compared(t, Case{Rig: base.Rig, Places: base.Places, Wash: wash}, Options{})
	table := journeys(t, base, Options{})
	for _, key := range []string{"plan", "di-all", "sprayer-garden-nozzle", "open-hose", "double-tank", "series", "salted", "no-softener", "purified", "drip", "target"} {
		want, got := alone.way(key).Figures, table.way(key).Figures
		assert.InEpsilon(t, float64(want.DI), float64(got.DI), 1e-9, key)
		assert.InEpsilon(t, float64(want.Through), float64(got.Through), 1e-9, key)
		assert.InEpsilon(t, float64(want.Water), float64(got.Water), 1e-9, key)
		assert.InEpsilon(t, float64(want.Time), float64(got.Time), 1e-9, key)
		assert.InDelta(t, float64(want.Chance), float64(got.Chance), 0.03, key)
		if resin, _ := want.Resin.Total(); len(got.Trip.Changes) == 0 { // behind a change it is the next fill that is used up
			assert.InDelta(t, float64(resin.Hundredths), float64(got.Trip.Used.Parts[0].Hundredths), 1, key)
		}
		if salt, _ := want.Salt.Total(); salt.Hundredths > 0 {
			assert.InDelta(t, float64(salt.Hundredths), float64(got.Trip.Salt.Parts[0].Hundredths), 1, key)
		}
		if weight, known := want.Weight.Get(); known {
			here, _ := got.Weight.Get()
			spare := quantity.Mass(44*got.Trip.Carry.Resin.CubicFeet()) * quantity.Pound
			assert.InDelta(t, (weight + spare).Pounds(), here.Pounds(), 0.01, key)
		}
		assert.Equal(t, want.Plan.DI, got.Plan.DI, key)
	}
}

func TestWhatTheWaysOfATripBring(t *testing.T) {
	table := journeys(t, june(), Options{})
	plan := table.Ways[0].Figures
	for _, key := range []string{"new-resin", "double-tank", "series", "change-once", "purified"} {
		assert.Greater(t, table.way(key).Figures.Chance, plan.Chance, key)
	}
	for _, key := range []string{"di-all", "open-hose"} {
		assert.Less(t, table.way(key).Figures.Chance, plan.Chance, key)
		assert.Greater(t, len(table.way(key).Figures.Trip.Changes), len(plan.Trip.Changes), key)
	}
	once := table.way("change-once").Figures
	assert.InDelta(t, float64(plan.Trip.AllAdvised), float64(once.Chance), 1e-9, "it is the change that was advised")
	along, order := table.way("along").Figures.Trip, func(p *trip.Plan) string { d, _ := p.OrderBy.Get(); return d.String() }
	assert.Greater(t, order(along), order(plan.Trip), "resin that is sent may be ordered later")
	a, _ := plan.Weight.Get()
	b, _ := table.way("along").Figures.Weight.Get()
	assert.InDelta(t, 22, (a - b).Pounds(), 0.01, "a fill less to carry")
	_, known := table.way("purified").Figures.Weight.Get()
	assert.False(t, known)
	two := table.way("series").Figures
	c, _ := two.Weight.Get()
	assert.GreaterOrEqual(t, c, b+quantity.Mass(21*quantity.Pound))
	assert.Equal(t, "$185.00", two.Trip.Buy.String(), "the second tank's fill")
	assert.Equal(t, "$370.00", table.way("double-tank").Figures.Trip.Buy.String())
	assert.Equal(t, order(plan.Trip), order(two.Trip), "it must be there when you leave")
	fresh := table.way("new-resin").Case.Trip.Changes
	require.Len(t, fresh, 1)
	assert.Equal(t, "2026-06-06", fresh[0].Date.Words())
}

// Waters that nobody knows, places that have no wash, other users, and what is planned
// already.
func TestOddTripsCompare(t *testing.T) {
	base := june()
	base.Trip.Changes = []model.ResinChange{{Date: quantity.Some(model.Date{Year: 2026, Month: 6, Day: 6})}}
	base.Trip.Carry, base.Trip.DIFor, base.Trip.Softener = model.No, model.DIForAll, model.NoSoftener
	table := journeys(t, base, Options{})
	assert.Subset(t, skippedIn(table), []string{"di-all", "new-resin", "salted", "no-softener"})
	assert.Less(t, table.way("di-last").Figures.DI, table.Ways[0].Figures.DI)
	assert.NotPanics(t, func() { table.way("carried") })

	others := june()
	others.Trip.Washes = []model.TripWash{{Date: others.Trip.Washes[1].Date, DI: quantity.Some(6 * quantity.Gallon)}}
	assert.InEpsilon(t, 6, journeys(t, others, Options{}).Ways[0].Figures.DI.Gallons(), 1e-9)

	empty := june()
	empty.Trip.Washes = nil
	_, err := Compare(empty, NewOneTrip(like, nil, today), Options{})
	require.ErrorIs(t, err, errNothing)
	_, err = Compare(Case{Trip: &model.Trip{}}, NewOneTrip(like, nil, today), Options{})
	require.Error(t, err)
}

func TestTheKnobsOfATrip(t *testing.T) {
	table := journeys(t, june(), Options{})
	o := Options{}.Turned(table.way("purified"), 5)
	o = o.Turned(table.way("drip"), 2)
	o = o.Turned(table.way("target"), -1)
	turned := journeys(t, june(), o)
	assert.Equal(t, "95% purified", turned.way("purified").Name)
	assert.Equal(t, quantity.Some(3*quantity.Minute), turned.way("drip").Case.Trip.Pause)
	assert.Equal(t, "target 20 ppm", turned.way("target").Name)
}

func TestReasonsAreThereForEveryRowOfATrip(t *testing.T) {
	explained(t, journeys(t, june(), Options{}))
}

// With a log, the bed is as it taught in every way that keeps it.
func TestATripWithALog(t *testing.T) {
	base, past := season(t)
	lib := store.Example()
	base.Trip = &lib.Trips[0].Trip
	table, err := Compare(base, NewOneTrip(like, past, today), Options{})
	require.NoError(t, err)
	direct, err := trip.Make(trip.Input{Rig: base.Rig, Places: base.Places, Trip: *base.Trip, Like: like, Past: past, Today: today})
	require.NoError(t, err)
	agrees(t, direct, table.Ways[0])
	for _, w := range table.Ways {
		switch w.Key {
		case "double-tank", "series", "purified": // another bed, a second one, and a life on another feed
		default:
			assert.Equal(t, direct.Start, w.Figures.Trip.Start, w.Key)
		}
	}
}
