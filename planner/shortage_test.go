package planner_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/planner/split"
)

// worn is the example with a bed that has given so many gallons.
func worn(gallons float64) store.Library {
	lib := store.Example()
	lib.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(gallons) * quantity.Gallon)
	return lib
}

func shorten(t require.TestingT, lib store.Library, wash model.Wash) planner.Shortage {
	var memory planner.Memory
	s, err := memory.Shorten(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	return s
}

func wayOf(t require.TestingT, s planner.Shortage, code string) planner.WayOut {
	i := slices.IndexFunc(s.Ways, func(w planner.WayOut) bool { return w.Code == code })
	require.GreaterOrEqual(t, i, 0, code)
	return s.Ways[i]
}

// A bed that gives for the front and one side: these get it, the rest a towel, and
// the plan of that lasts with the confidence asked for.
func TestShareOfAShortBed(t *testing.T) {
	lib := worn(148)
	s := shorten(t, lib, lib.Washes[0].Wash).Share
	assert.Equal(t, []model.Side{model.Front, model.Right}, s.Order())
	assert.ElementsMatch(t, []model.Side{model.Left, model.Rear}, s.Wash.TowelFaces)
	assert.LessOrEqual(t, s.Takes, s.Gives)
	assert.GreaterOrEqual(t, s.Chance, s.Confidence)
	assert.Equal(t, planner.Lasts, s.Verdict)
	assert.Less(t, s.Flow, s.Drawn, "a slower flow gives more")
	assert.InDelta(t, 0.5, float64(s.Spared), 0.02)
	made := mustMake(t, lib.Rig, lib.Places, s.Wash)
	assert.Equal(t, made.Bed.ChanceLasts, s.Chance, "the plan of the share says the same")
	assert.Equal(t, made.DI, s.DI)
	assert.Equal(t, made.Verdict, s.Verdict)
	require.Len(t, s.Faces, 5)
	for _, f := range s.Faces {
		switch {
		case f.DI:
			assert.Equal(t, model.DI, f.Water)
			assert.Zero(t, f.Towel)
			assert.InDelta(t, float64(f.Needs), float64(f.Volume), 1e-9, "the plan takes what the share thought")
		case f.Asked:
			assert.Equal(t, model.Softened, f.Water)
			assert.Positive(t, f.Towel)
			assert.Positive(t, f.Volume)
		default:
			assert.Equal(t, model.Roof, f.Name)
		}
	}
}

func TestEnoughForAllIsLeftAsItIs(t *testing.T) {
	lib := worn(0)
	s := shorten(t, lib, lib.Washes[0].Wash)
	assert.Empty(t, s.Share.Wash.TowelFaces)
	assert.False(t, s.Share.Wash.DIFlow.Given())
	assert.Equal(t, quantity.Fraction(1), s.Share.Spared)
	assert.NotEmpty(t, wayOf(t, s, planner.WaySplit).Not.Code)
	assert.NotEmpty(t, wayOf(t, s, planner.WayBuy).Not.Code)
}

func TestPinsAndTheirCost(t *testing.T) {
	lib := worn(148)
	wash := lib.Washes[0].Wash
	free := shorten(t, lib, wash).Share
	wash.DIFaces, wash.TowelFaces = []model.Side{model.Rear}, []model.Side{model.Front}
	s := shorten(t, lib, wash).Share
	assert.Contains(t, s.Order(), model.Rear)
	assert.NotContains(t, s.Order(), model.Front)
	assert.Less(t, s.Spared, s.Unpinned)
	assert.Equal(t, free.Spared, s.Unpinned)
	for _, f := range free.Faces {
		if f.Name == model.Rear {
			assert.Equal(t, []model.Side{model.Rear}, f.Other.Gain)
			assert.Equal(t, []model.Side{model.Front}, f.Other.Lose)
			assert.Less(t, f.Other.Spared, free.Spared, "the cost is told before the pin is set")
		}
	}
}

func TestPinnedInThatDoesNotFitSaysSo(t *testing.T) {
	lib := worn(148)
	wash := lib.Washes[0].Wash
	wash.DIFaces = []model.Side{model.Left, model.Right, model.Roof}
	s := shorten(t, lib, wash)
	assert.Positive(t, s.Share.Short)
	assert.ElementsMatch(t, wash.DIFaces, s.Share.Order())
	assert.Contains(t, wayOf(t, s, planner.WaySplit).Not.Text(quantity.US), "too much")
}

// Each way that states something is what a plan of that wash says.
func TestWaysAreReallyMade(t *testing.T) {
	lib := worn(200)
	s := shorten(t, lib, lib.Washes[0].Wash)
	base := mustMake(t, lib.Rig, lib.Places, lib.Washes[0].Wash)
	for _, w := range s.Ways {
		if w.Wash == nil {
			continue
		}
		p := mustMake(t, lib.Rig, lib.Places, *w.Wash)
		assert.Equal(t, p.Bed.ChanceLasts, w.Chance, w.Code)
		assert.Equal(t, p.DI, w.DI, w.Code)
		assert.GreaterOrEqual(t, w.Chance, base.Bed.ChanceLasts, w.Code)
	}
	slower := wayOf(t, s, planner.WaySlower)
	assert.Greater(t, slower.DI.Duration, base.DI.Duration)
	assert.InDelta(t, float64(base.DI.Volume), float64(slower.DI.Volume), 1e-9, "the hand goes slower with the flow")
}

func TestNewResinAndTwoFills(t *testing.T) {
	lib := worn(200)
	s := shorten(t, lib, lib.Washes[0].Wash)
	fresh := mustMake(t, worn(0).Rig, lib.Places, lib.Washes[0].Wash)
	resin, two := wayOf(t, s, planner.WayResin), wayOf(t, s, planner.WayTwoFills)
	assert.InDelta(t, float64(fresh.Bed.ChanceLasts), float64(resin.Chance), 1e-9)
	assert.Greater(t, two.Chance, s.Share.Chance/2)
	assert.GreaterOrEqual(t, two.Chance, resin.Chance-0.01)
	price, known := resin.Buy.Price.Get()
	assert.True(t, known)
	assert.Equal(t, "$185.00", price.String())
	lib.Rig.Beds[0].Price = quantity.Opt[quantity.Money]{}
	unknown := wayOf(t, shorten(t, lib, lib.Washes[0].Wash), planner.WayResin)
	assert.True(t, unknown.Buy.Needed)
	assert.False(t, unknown.Buy.Price.Given(), "an unknown price is unknown, not zero")
	assert.False(t, unknown.Resin.Known)
}

func TestBoughtWaterIsPricedByTheGallon(t *testing.T) {
	lib := worn(200)
	buy := wayOf(t, shorten(t, lib, lib.Washes[0].Wash), planner.WayBuy)
	assert.True(t, buy.Buy.Needed)
	assert.False(t, buy.Buy.Price.Given())
	lib.Rig.Defaults.DIPrice = quantity.Some(quantity.Money{Hundredths: 75, Currency: "$"})
	buy = wayOf(t, shorten(t, lib, lib.Washes[0].Wash), planner.WayBuy)
	price, _ := buy.Buy.Price.Get()
	assert.Equal(t, "$", price.Currency)
	assert.InDelta(t, 24.1*0.75, price.Amount(), 0.2, "all 24.1 gal, as the bed surely gives nothing")
}

// A hose that is run wide open: shutting it down to the cap is a way.
func TestAHoseIsShutDownToTheCap(t *testing.T) {
	lib := worn(148)
	wash := lib.Washes[0].Wash
	lib.Rig.Sprayers = []model.Sprayer{{Name: "bare hose", Tool: model.OpenHose}}
	wash.Sprayer = "bare hose"
	for i := range wash.Stages {
		wash.Stages[i].Sprayer = ""
	}
	s := shorten(t, lib, wash)
	base := mustMake(t, lib.Rig, lib.Places, wash)
	shut := wayOf(t, s, planner.WayCap)
	require.Empty(t, shut.Not.Code)
	assert.Greater(t, shut.Chance, base.Bed.ChanceLasts)
	p := mustMake(t, lib.Rig, lib.Places, *shut.Wash)
	assert.Less(t, p.Sprayer.Flow, base.Sprayer.Flow)
}

func TestGelCoatSparesMostByGlassOnly(t *testing.T) {
	lib := worn(200)
	lib.Rig.Vehicles[0].Skin = model.GelCoat
	w := wayOf(t, shorten(t, lib, lib.Washes[0].Wash), planner.WaySurfaces)
	base := mustMake(t, lib.Rig, lib.Places, lib.Washes[0].Wash)
	assert.Empty(t, w.Not.Code)
	assert.Less(t, w.DI.Volume, base.DI.Volume/3)
	assert.Positive(t, w.Towels)
}

// The share under any wear, pins and confidence keeps what it promises.
func TestShareProperties(t *testing.T) {
	checks := 8
	if testing.Short() {
		checks = 3
	}
	n := 0
	rapid.Check(t, func(t *rapid.T) {
		if n++; n > checks {
			return
		}
		gallons := rapid.Float64Range(100, 220).Draw(t, "so far")
		lib := worn(gallons)
		wash := lib.Washes[0].Wash
		wash.Confidence = quantity.Some(quantity.Fraction(rapid.Float64Range(0.5, 0.95).Draw(t, "confidence")))
		var memory planner.Memory
		sharing, err := memory.Sharing(lib.Rig, lib.Places, wash)
		require.NoError(t, err)
		free, err := sharing.Out(wash)
		require.NoError(t, err)
		for _, side := range model.Sides() {
			switch rapid.IntRange(0, 3).Draw(t, string(side)) {
			case 0:
				wash.DIFaces = append(wash.DIFaces, side)
			case 1:
				wash.TowelFaces = append(wash.TowelFaces, side)
			}
		}
		pinned, err := sharing.Out(wash)
		require.NoError(t, err)
		for _, s := range []planner.Share{free, pinned} {
			if s.Short > 0 || len(s.Order()) == 0 {
				continue
			}
			assert.LessOrEqual(t, s.Takes, s.Gives)
			assert.GreaterOrEqual(t, s.Chance, s.Confidence)
		}
		if pinned.Short == 0 && len(wash.DIFaces) == 0 {
			assert.LessOrEqual(t, pinned.Spared, free.Spared)
		}
		for _, f := range pinned.Faces {
			assert.False(t, f.Pin == split.In && !f.DI, "%s is pinned in", f.Name)
			assert.False(t, f.Pin == split.Out && f.DI, "%s is pinned out", f.Name)
		}
		fresher := worn(gallons - 60)
		more := shorten(t, fresher, free.Asked).Share
		assert.GreaterOrEqual(t, more.Spared, free.Spared-1e-9, "a fresher bed never spares less")
	})
}

func BenchmarkShareOut(b *testing.B) {
	lib := worn(148)
	var memory planner.Memory
	s, err := memory.Sharing(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(b, err)
	for b.Loop() {
		if _, err := s.Out(lib.Washes[0].Wash); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSharing(b *testing.B) {
	lib := worn(148)
	var memory planner.Memory
	for b.Loop() {
		if _, err := memory.Sharing(lib.Rig, lib.Places, lib.Washes[0].Wash); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkShorten(b *testing.B) {
	lib := worn(148)
	for b.Loop() {
		shorten(b, lib, lib.Washes[0].Wash)
	}
}

// What a way states is read back from its text as what it was made with.
func TestWaysSurviveTheirFile(t *testing.T) {
	lib := worn(190)
	for _, w := range shorten(t, lib, lib.Washes[0].Wash).Ways {
		if w.Wash == nil {
			continue
		}
		again := lib.Washes[0].Wash
		from := w.Wash.Fields()
		for i, f := range again.Fields() {
			require.NoError(t, f.Set(from[i].Text()), f.Key)
			assert.NotContains(t, from[i].Text(), "000000", "%s reads as a person would write it", f.Key)
		}
		p := mustMake(t, lib.Rig, lib.Places, again)
		assert.InDelta(t, float64(w.Chance), float64(p.Bed.ChanceLasts), 1e-9, w.Code)
	}
}

// What the DI water is held to tomorrow does not change what the bed has been
// through.
func TestHoldingTheFlowLeavesThePastAlone(t *testing.T) {
	lib := worn(180)
	wash := lib.Washes[0].Wash
	before := mustMake(t, lib.Rig, lib.Places, wash)
	wash.DIFlow = quantity.Some(0.5 * quantity.GPM)
	held := mustMake(t, lib.Rig, lib.Places, wash)
	assert.Equal(t, before.Bed.Used, held.Bed.Used)
	assert.Equal(t, before.Bed.Before, held.Bed.Before)
	assert.Equal(t, before.DI.Volume, held.DI.Volume)
	assert.InDelta(t, 1.3/0.5*before.DI.Duration.Minutes(), held.DI.Duration.Minutes(), 1e-6)
}
