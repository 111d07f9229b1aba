package compare

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

func example() Case {
	lib := store.Example()
	return Case{Rig: lib.Rig, Places: lib.Places, Wash: lib.Washes[0].Wash}
}

func compared(t require.TestingT, base Case, o Options) Table {
	table, err := Compare(base, NewOneWash(nil, YearOf(base.Rig, BedOf(base.Rig, base.Wash), nil, model.Moment{})), o)
	require.NoError(t, err)
	return table
}

func (t Table) way(key string) Way {
	for _, w := range t.Ways {
		if w.Key == key {
			return w
		}
	}
	panic("no way " + key)
}

func (t Table) row(key string) Row {
	for _, r := range t.Rows {
		if r.Key == key {
			return r
		}
	}
	panic("no row " + key)
}

func TestTheBaseIsThePlanItself(t *testing.T) {
	base := example()
	table := compared(t, base, Options{})
	plan, err := planner.Make(base.Rig, base.Places, base.Wash)
	require.NoError(t, err)
	assert.Equal(t, plan, table.Ways[0].Figures.Plan)
	assert.Equal(t, plan.DI.Volume, table.Ways[0].Figures.DI)
	assert.Equal(t, plan.Bed.ChanceLasts, table.Ways[0].Figures.Chance)
	total, known := table.Ways[0].Figures.Resin.Total()
	assert.True(t, known)
	assert.InDelta(t, plan.Cost.Wash, total.Amount(), 0.006)
}

// The ways that the method names are all there, and a base is never changed by
// looking at them.
func TestAllWaysAreThereAndTheBaseStays(t *testing.T) {
	base := example()
	before := base.clone()
	table := compared(t, base, Options{})
	var keys []string
	for _, w := range table.Ways {
		keys = append(keys, w.Key)
		assert.NotEmpty(t, w.Changes, w.Key)
	}
	for _, key := range []string{"plan", "di-all", "open-hose", "sprayer-garden-nozzle", "new-resin", "double-tank", "series", "salted", "no-softener", "purified", "drip", "target"} {
		assert.Contains(t, keys, key)
	}
	assert.Equal(t, before, base)
	require.Len(t, table.Skipped, 1)
	assert.Equal(t, "di-last", table.Skipped[0].Key)
	for _, r := range table.Rows {
		assert.Len(t, r.Cells, len(table.Ways), r.Key)
	}
}

func TestDIForAllTakesMoreAndGoesBackToLastOnly(t *testing.T) {
	base := example()
	all := compared(t, base, Options{}).way("di-all")
	assert.Greater(t, all.Figures.DI, 3*compared(t, base, Options{}).Ways[0].Figures.DI)
	table := compared(t, all.Case, Options{})
	assert.Equal(t, "di-all", table.Skipped[0].Key)
	last := table.way("di-last").Figures
	assert.InEpsilon(t, float64(compared(t, base, Options{}).Ways[0].Figures.DI), float64(last.DI), 1e-9)
}

func TestAnOpenHoseWastesBed(t *testing.T) {
	table := compared(t, example(), Options{})
	hose, plan := table.way("open-hose").Figures, table.Ways[0].Figures
	assert.Greater(t, hose.DI, plan.DI)
	assert.Less(t, hose.Fill, plan.Fill, "a fill gives less at full bore")
	assert.False(t, hose.Plan.Sprayer.WithinCap)
	at := slices.IndexFunc(table.Ways, func(w Way) bool { return w.Key == "open-hose" })
	assert.Contains(t, strings.Join(table.Warns(at, quantity.US), " "), "the cap is")
	assert.Empty(t, table.Warns(0, quantity.US))
}

func TestTwiceTheTankAndTwoInSeries(t *testing.T) {
	table := compared(t, example(), Options{})
	plan, big, series := table.Ways[0].Figures, table.way("double-tank").Figures, table.way("series").Figures
	assert.InEpsilon(t, 2, float64(big.Fill/plan.Fill), 0.05)
	assert.Greater(t, series.Fill, plan.Fill)
	assert.Greater(t, 2*series.Fill, big.Fill, "two tanks of resin give more in series than in one large tank")
	assert.Greater(t, series.Chance, plan.Chance)
	a, _ := plan.Weight.Get()
	b, _ := big.Weight.Get()
	c, _ := series.Weight.Get()
	assert.InDelta(t, 22, (b - a).Pounds(), 0.01, "half a cubic foot more of resin")
	assert.Equal(t, b, c)
	assert.Equal(t, "a tank of 1 ft3", table.way("double-tank").Buys)
	assert.NotEmpty(t, table.way("series").Only)
	doubled := table.way("double-tank").Case
	assert.Equal(t, "twice half-foot tank", doubled.Wash.Bed)
	assert.Empty(t, doubled.Rig.Faults(nil))
	assert.Equal(t, "1 ft3", doubled.Rig.Beds[1].Resin.Words())
	assert.Equal(t, "10.079 in", doubled.Rig.Beds[1].Diameter.Words())
	price, _ := doubled.Rig.Beds[1].Price.Get()
	assert.Equal(t, "$370.00", price.String())
}

// Softening spares the bed nothing: the load is the same to the last bit, and
// the way says so.
func TestSofteningSparesTheBedNothing(t *testing.T) {
	table := compared(t, example(), Options{})
	plan := table.Ways[0].Figures
	for _, key := range []string{"salted", "no-softener"} {
		w := table.way(key)
		assert.Equal(t, plan.Plan.Raw.Load, w.Figures.Plan.Raw.Load)
		assert.Equal(t, plan.DI, w.Figures.DI)
		assert.InEpsilon(t, float64(plan.Fill), float64(w.Figures.Fill), 0.06, "sodium gets to the beads a little quicker")
		assert.Contains(t, w.Tells[0], "The load on the DI bed is the same")
		assert.Contains(t, w.Tells[1], "What it does change")
	}
	assert.Equal(t, plan.Fill, table.way("salted").Figures.Fill)
	assert.False(t, table.row("soft").Cells[slices.IndexFunc(table.Ways, func(w Way) bool { return w.Key == "no-softener" })].Known)
}

func TestPurifiedFeedDripAndTargetTurn(t *testing.T) {
	base := example()
	table := compared(t, base, Options{})
	pure := table.way("purified")
	assert.InEpsilon(t, 10, float64(pure.Figures.Fill/table.Ways[0].Figures.Fill), 0.15)
	assert.Equal(t, "90% purified", pure.Name)
	_, known := pure.Figures.Weight.Get()
	assert.False(t, known, "nobody stated what the membrane weighs")
	assert.Equal(t, "drip 2 min", table.way("drip").Name)
	assert.Equal(t, "target 25 ppm", table.way("target").Name)
	o := Options{}.Turned(pure, 5)
	o = o.Turned(table.way("drip"), 2)
	o = o.Turned(table.way("target"), -1)
	turned := compared(t, base, o)
	assert.Equal(t, "95% purified", turned.way("purified").Name)
	assert.Equal(t, "drip 3 min", turned.way("drip").Name)
	assert.Equal(t, "target 20 ppm", turned.way("target").Name)
	for range 60 {
		o = o.Turned(turned.way("purified"), 1)
	}
	assert.Equal(t, "99% purified", compared(t, base, o).way("purified").Name)
}

func TestMoneyIsUnknownWithoutAPriceAndExactWithOne(t *testing.T) {
	base := example()
	cost := compared(t, base, Options{}).row("cost").Cells[0]
	assert.False(t, cost.Known)
	assert.Equal(t, "the price of a regeneration's salt is not stated", cost.Why)
	base.Rig.Softeners = slices.Clone(base.Rig.Softeners)
	base.Rig.Softeners[0].Price = quantity.Some(quantity.Money{Hundredths: 600, Currency: "$"})
	table := compared(t, base, Options{})
	assert.True(t, table.row("cost").Cells[0].Known)
	resin, _ := table.Ways[0].Figures.Resin.Total()
	salt, _ := table.Ways[0].Figures.Salt.Total()
	both, _ := table.Ways[0].Figures.Together().Total()
	assert.InDelta(t, float64(resin.Hundredths+salt.Hundredths), float64(both.Hundredths), 1, "rounded once, not twice")
	base.Rig.Softeners[0].Price = quantity.Some(quantity.Money{Hundredths: 600, Currency: "EUR"})
	assert.Equal(t, "prices in $ and in EUR do not add up", compared(t, base, Options{}).row("cost").Cells[0].Why)
}

func TestFillsAYearOnlyWhereThePaceIsKnown(t *testing.T) {
	base := example()
	assert.False(t, compared(t, base, Options{}).row("year").Cells[0].Known)
	base.Rig.Defaults.Washes = quantity.Some(20.0)
	table := compared(t, base, Options{})
	f := table.Ways[0].Figures
	year, known := f.Year.Get()
	require.True(t, known)
	assert.InEpsilon(t, 20*float64(f.Through/f.Fill), year, 1e-12)
}

func TestAnEmptyRigIsAnErrorAndASmallOneIsNot(t *testing.T) {
	_, err := Compare(Case{}, NewOneWash(nil, Yearly{}), Options{})
	require.Error(t, err)
	small := Case{
		Rig: model.Rig{
			Vehicles: []model.Vehicle{{Name: "coach", Length: quantity.Some(40 * quantity.Foot), Height: quantity.Some(12.5 * quantity.Foot)}},
			Beds:     []model.Bed{{Name: "tank", Resin: quantity.Some(0.5 * quantity.CubicFoot)}},
		},
		Places: model.Places{{Name: "home", TDS: quantity.Some(quantity.PPM(250, quantity.ScaleNaCl))}},
	}
	table := compared(t, small, Options{})
	hose := table.way("open-hose")
	require.Len(t, hose.Case.Rig.Sprayers, 2)
	assert.Equal(t, "small pressure washer", hose.Case.Rig.Sprayers[0].Name, "the usual one stays for the other stages")
	assert.Greater(t, hose.Figures.DI, table.Ways[0].Figures.DI)
	assert.Equal(t, []string{"di-last", "new-resin", "salted", "no-softener"}, skippedIn(table))
}

func TestReasonsAreThereForEveryRow(t *testing.T) {
	explained(t, compared(t, example(), Options{}))
}

// explained checks that every number of a table says where it comes from.
func explained(t *testing.T, table Table) {
	t.Helper()
	for i := range table.Ways {
		for _, r := range table.Reasons(i, Yearly{}) {
			assert.NotEmpty(t, r.Formula, r.Number)
			assert.NotEmpty(t, r.Source.Tag, r.Number)
			assert.True(t, r.Result != "" || r.Value.Kind != nil, r.Number)
		}
	}
}

// skippedIn are the keys of the ways that a table leaves out.
func skippedIn(table Table) []string {
	keys := make([]string, len(table.Skipped))
	for i, s := range table.Skipped {
		keys[i] = s.Key
	}
	return keys
}

// BenchmarkCompare is all ways of a wash, its day included.
func BenchmarkCompare(b *testing.B) {
	base := example()
	for b.Loop() {
		compared(b, base, Options{})
	}
}

// The bed that is in use is the same bed in every way: as worn as the plan's.
func TestTheBedIsAsWornInEveryWay(t *testing.T) {
	table := compared(t, example(), Options{})
	plan := table.Ways[0].Figures.Plan.Bed
	for _, w := range table.Ways {
		switch bed := w.Figures.Plan.Bed; w.Key {
		case "new-resin", "double-tank":
			assert.Zero(t, bed.Used, w.Key)
		default:
			assert.InEpsilon(t, float64(plan.Used), float64(bed.Used), 1e-12, w.Key)
		}
	}
}
