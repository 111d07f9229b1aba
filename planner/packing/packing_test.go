package packing_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/planner/packing"
)

// listed plans the built-in example after a change, and gives its list.
func listed(t *testing.T, change func(*model.Rig, model.Places, *model.Wash)) []packing.Item {
	t.Helper()
	lib := store.Example()
	wash := lib.Washes[0].Wash
	change(&lib.Rig, lib.Places, &wash)
	plan, err := planner.Make(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	return packing.List(lib.Rig, lib.Places, wash, plan)
}

func nothing(*model.Rig, model.Places, *model.Wash) {}

func words(items []packing.Item, sys quantity.System) []string {
	out := make([]string, len(items))
	for i, item := range items {
		out[i] = item.What.Text(sys) + ": " + item.Why.Text(sys)
	}
	return out
}

func find(items []packing.Item, code packing.Code) (packing.Item, bool) {
	i := slices.IndexFunc(items, func(item packing.Item) bool { return item.Code == code })
	if i < 0 {
		return packing.Item{}, false
	}
	return items[i], true
}

func TestTheExamplesEvening(t *testing.T) {
	assert.Equal(t, []string{
		"Ask whether washing and run-off are allowed at Juniper Flats: local rules come first",
		"Drain portable softener and half-foot tank before lifting: a wet tank of resin is heavy: release the pressure first, lift with two",
		"Vacuum breaker for the tap: the local plumbing code decides",
		"supply hose, 25 ft: tap to the first tank",
		"portable softener: 141 gal of the wash go through it",
		"half-foot tank: 30.3 gal of DI, with the flush",
		"spray hose, 50 ft: last tank to the sprayer",
		"small pressure washer: 1.3 gpm",
		"GFCI outlet or adapter: where the washer is electric",
		"Quick couplings for 5 joints: tap to spray, and spare washers for them",
		"A jug and a watch: 24 s or longer to a gallon keeps the flow under the cap",
		"yellow pen (TDS): the limit is 10 ppm NaCl; the pen in the stream decides",
		"Soap, mitt, two buckets: contact wash is done by hand",
		"Towels: 2: drips from the roof and the mirrors",
		"This sheet and a pencil: what you write down teaches the next plan",
	}, words(listed(t, nothing), quantity.US))
}

// Half a cubic foot at 8 lb/ft3 takes 4 lb of salt, whatever the hardness.
func TestTheSoftenerIsRegeneratedOnlyWhereItWillNotLast(t *testing.T) {
	_, there := find(listed(t, nothing), packing.Regenerate)
	assert.False(t, there)
	items := listed(t, func(r *model.Rig, _ model.Places, _ *model.Wash) {
		r.Softeners[0].SoFar = quantity.Some(700 * quantity.Gallon)
	})
	item, there := find(items, packing.Regenerate)
	require.True(t, there)
	assert.Equal(t, "Regenerate the portable softener with 4 lb of salt, and rinse the brine out", item.What.Text(quantity.US))
	assert.Equal(t, "Regenerate the portable softener with 1.81 kg of salt, and rinse the brine out", item.What.Text(quantity.Metric))
	assert.Equal(t, "it has 50 gal left, and the wash sends 141 gal through it", item.Why.Text(quantity.US))
}

// Without the volume of its resin nobody can say how much salt it takes.
func TestTheSaltOfASoftenerByItsGrainsIsNotKnown(t *testing.T) {
	items := listed(t, func(r *model.Rig, _ model.Places, _ *model.Wash) {
		s := &r.Softeners[0]
		s.Resin, s.Capacity, s.SoFar = quantity.Opt[quantity.Volume]{}, quantity.Some(12000*quantity.Grain), quantity.Some(700*quantity.Gallon)
	})
	item, there := find(items, packing.Regenerate)
	require.True(t, there)
	assert.Equal(t, "Regenerate the portable softener with salt (how much is unknown: needs the volume), and rinse the brine out", item.What.Text(quantity.US))
}

func TestASoftenerTooSmallForTheWashSaysSo(t *testing.T) {
	items := listed(t, func(r *model.Rig, _ model.Places, _ *model.Wash) {
		r.Softeners[0].Resin = quantity.Some(0.05 * quantity.CubicFoot)
		r.Softeners[0].Salt = quantity.Opt[quantity.Dose]{}
	})
	item, there := find(items, packing.Regenerate)
	require.True(t, there)
	assert.Contains(t, item.What.Text(quantity.US), "0.4 lb of salt (the usual dose)")
	assert.Contains(t, item.Why.Text(quantity.US), "fresh it gives 75 gal, so pre-rinse with raw water")
}

func TestResinIsPackedAsTheBedIsTrusted(t *testing.T) {
	for gallons, want := range map[float64]packing.Code{190: packing.Spare, 2000: packing.Change} {
		items := listed(t, func(r *model.Rig, _ model.Places, _ *model.Wash) {
			r.Beds[0].SoFar = quantity.Some(quantity.Volume(gallons) * quantity.Gallon)
		})
		item, there := find(items, want)
		require.True(t, there, gallons)
		assert.Contains(t, item.What.Text(quantity.US), "0.5 ft3")
	}
}

// 1113 ft2 of upright faces, rinsed with raw water and not with DI, at 60 ft2 a
// towel.
func TestTowelsGoByTheAreaThatNeedsThem(t *testing.T) {
	items := listed(t, func(_ *model.Rig, _ model.Places, w *model.Wash) {
		w.Stages = []model.Stage{{Name: "rinse", Water: model.Raw}}
	})
	item, there := find(items, packing.Towels)
	require.True(t, there)
	assert.Equal(t, "Towels: 19 or more", item.What.Text(quantity.US))
	assert.Contains(t, item.Why.Text(quantity.US), "1113 ft2 to dry by hand: left, right, front, rear")
	for _, unused := range []packing.Code{packing.Bed, packing.Softener, packing.Pen, packing.Jug, packing.Mitt, packing.Drain} {
		_, there := find(items, unused)
		assert.False(t, there, unused)
	}
}

func TestWhatThePlaceAsksFor(t *testing.T) {
	items := listed(t, func(_ *model.Rig, p model.Places, w *model.Wash) {
		w.Place, w.Low = "Fernwater", quantity.Some(quantity.Fahrenheit(31))
		p[2].OnHand = quantity.Some(90 * quantity.Gallon)
		p[2].Temperature, p[2].Hardness = quantity.Opt[quantity.Temperature]{}, quantity.Opt[quantity.Hardness]{}
	})
	for _, code := range []packing.Code{packing.Fill, packing.Frost, packing.Stick, packing.Strip} {
		_, there := find(items, code)
		assert.True(t, there, code)
	}
	_, there := find(items, packing.Breaker)
	assert.False(t, there, "a pump and its tank need no vacuum breaker at a tap")
	item, _ := find(items, packing.Fill)
	assert.Contains(t, item.Why.Text(quantity.US), "not enough")
}

func TestOverPressureAsksForAReducer(t *testing.T) {
	items := listed(t, func(r *model.Rig, _ model.Places, _ *model.Wash) {
		r.Beds[0].MaxPressure = quantity.Some(40 * quantity.PSI)
	})
	item, there := find(items, packing.Reducer)
	require.True(t, there)
	assert.Contains(t, item.Why.Text(quantity.US), "40 psi")
}

// Whatever the rig: the order is that of the evening, every item has words and
// a reason, and a name is shown as it was written.
func TestAnyRigHasAList(t *testing.T) {
	order := []packing.Code{
		packing.Ask, packing.Regenerate, packing.Change, packing.Fill, packing.Drain, packing.Frost, packing.Breaker, packing.Reducer,
		packing.Hose, packing.Softener, packing.Hose, packing.Bed, packing.Hose, packing.Sprayer, packing.Outlet, packing.Joints,
		packing.Jug, packing.Pen, packing.Stick, packing.Strip, packing.Mitt, packing.Towels, packing.Spare, packing.Paper,
	}
	rapid.Check(t, func(t *rapid.T) {
		lib := store.Example()
		rig, wash := lib.Rig, lib.Washes[0].Wash
		called := rapid.SampledFrom([]string{"", "100% soft", "%s", "<b>", "水箱"}).Draw(t, "name")
		rig.Hoses = rig.Hoses[:rapid.IntRange(0, 2).Draw(t, "hoses")]
		rig.Beds[0].SoFar = quantity.Some(quantity.Volume(rapid.Float64Range(0, 500).Draw(t, "so far")) * quantity.Gallon)
		rig.Softeners[0].SoFar = quantity.Some(quantity.Volume(rapid.Float64Range(0, 2000).Draw(t, "softener")) * quantity.Gallon)
		wash.Place = rapid.SampledFrom(lib.Places.Names()).Draw(t, "place")
		wash.Low = quantity.Some(quantity.Celsius(rapid.Float64Range(-20, 25).Draw(t, "low")))
		wash.High = quantity.Some(wash.Low.Or(0) + 5)
		wash.DewPoint = quantity.Some(wash.Low.Or(0))
		plan, err := planner.Make(rig, lib.Places, wash)
		if err != nil {
			t.Fatal(err)
		}
		rig.Softeners[0].Name, rig.Beds[0].Name = called, called
		plan.BedName, plan.Softener.Name = called, called
		at := 0
		for _, item := range packing.List(rig, lib.Places, wash, plan) {
			for at < len(order) && order[at] != item.Code {
				at++
			}
			if at == len(order) {
				t.Fatalf("%s is out of order", item.Code)
			}
			if line := item.What.Text(quantity.US) + item.Why.Text(quantity.US); strings.Contains(line, "%!") || item.What.Text(quantity.US) == "" || item.Why.Text(quantity.US) == "" {
				t.Fatalf("%s: %q", item.Code, line)
			}
		}
	})
}

// Two hoses of which nothing is stated are told apart by what they join.
func TestUnstatedHosesAreToldApart(t *testing.T) {
	lib := store.Example()
	lib.Rig.Hoses = nil
	plan, err := planner.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	var hoses []string
	for _, item := range packing.List(lib.Rig, lib.Places, lib.Washes[0].Wash, plan) {
		if item.Code == packing.Hose {
			hoses = append(hoses, item.What.Text(quantity.US))
		}
	}
	assert.Equal(t, []string{"Hose, tap to the first tank", "Hose, last tank to the sprayer"}, hoses)
}

// An empty plan of nothing is listed without a fall.
func TestNothingAtAllIsListed(t *testing.T) {
	items := packing.List(model.Rig{}, nil, model.Wash{}, planner.Plan{})
	assert.NotEmpty(t, items)
}
