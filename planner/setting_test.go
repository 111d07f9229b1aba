package planner_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

func makeIn(t *testing.T, s planner.Setting) planner.Plan {
	lib := store.Example()
	var memory planner.Memory
	p, err := memory.MakeIn(s, lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	return p
}

func TestNoSettingIsThePlan(t *testing.T) {
	lib := store.Example()
	assert.Equal(t, mustMake(t, lib.Rig, lib.Places, lib.Washes[0].Wash), makeIn(t, planner.Setting{}))
}

func TestASecondTankBehind(t *testing.T) {
	one, two := makeIn(t, planner.Setting{}), makeIn(t, planner.Setting{Behind: true})
	assert.Greater(t, two.Bed.ChanceLasts, one.Bed.ChanceLasts)
	assert.Greater(t, two.Bed.Remaining.P10, one.Bed.Remaining.P50, "a fresh tank behind it")
	assert.Greater(t, two.Bed.Fill, one.Bed.Fill, "the first tank is used to its end")
	assert.InEpsilon(t, float64(one.Softened.Load.Supply(one.Bed.Whole)), float64(two.Bed.Fill), 0.01, "and gives nearly all it holds")
	assert.InEpsilon(t, 2, float64(two.Bed.ContactTime/one.Bed.ContactTime), 1e-9)
	assert.Greater(t, two.Flush.Volume, one.Flush.Volume)
	assert.LessOrEqual(t, two.Sprayer.OpenHose, one.Sprayer.OpenHose)
	assert.Empty(t, two.Bed.Curve)
}

func TestNewResinAndSaltBeforeTheWash(t *testing.T) {
	old, fresh := makeIn(t, planner.Setting{}), makeIn(t, planner.Setting{Fresh: true, Salted: true})
	assert.Zero(t, fresh.Bed.SoFar)
	assert.Greater(t, fresh.Bed.Remaining.P50, old.Bed.Remaining.P50)
	assert.Greater(t, fresh.Softener.Remaining, old.Softener.Remaining)
	assert.Equal(t, old.DI.Volume > 0, fresh.DI.Volume > 0)
}

func TestAPurifiedFeedLastsAsMuchLonger(t *testing.T) {
	raw, pure := makeIn(t, planner.Setting{}), makeIn(t, planner.Setting{Rejected: 0.9})
	assert.Equal(t, raw.Raw, pure.Raw, "only the bed's feed is purified")
	assert.InEpsilon(t, 10, float64(pure.Bed.Fill/raw.Bed.Fill), 0.15)
	assert.GreaterOrEqual(t, pure.Bed.ChanceLasts, raw.Bed.ChanceLasts)
	assert.Greater(t, 0.15*raw.Cost.PerGallon, pure.Cost.PerGallon)
}

func TestTheSoftenersShareOfTheSalt(t *testing.T) {
	s := makeIn(t, planner.Setting{}).Softener
	salt, known := s.Salt.Get()
	require.True(t, known)
	assert.InEpsilon(t, 4, salt.Pounds(), 1e-9, "8 lb/ft3 on half a cubic foot")
	assert.InEpsilon(t, float64(s.Takes)*16*float64(quantity.Grain)/float64(quantity.Gallon)/float64(s.Capacity), float64(s.Share), 1e-3)
}

// A rig tells gallons. In another way of washing they have still run as they did.
func TestTheBedStandsAsBeforeAnotherPlan(t *testing.T) {
	lib := store.Example()
	base := makeIn(t, planner.Setting{})
	as := planner.Setting{As: &base}
	assert.Equal(t, base.Bed, makeIn(t, as).Bed)
	pure := makeIn(t, planner.Setting{As: &base, Rejected: 0.9})
	assert.InEpsilon(t, float64(base.Bed.Used), float64(pure.Bed.Used), 1e-12)
	assert.Less(t, makeIn(t, planner.Setting{Rejected: 0.9}).Bed.Used, base.Bed.Used)
	fresh := makeIn(t, planner.Setting{As: &base, Fresh: true})
	assert.Zero(t, fresh.Bed.Used)
	lib.Rig.Beds[0].Name = "another tank"
	lib.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
	lib.Rig.Defaults.Bed, lib.Washes[0].Wash.Bed = "", ""
	var memory planner.Memory
	p, err := memory.MakeIn(as, lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	assert.Zero(t, p.Bed.Used, "of another bed it says nothing")
}

// A fill costs its price over what it gives in all, by whatever is known of it.
func TestTheCostGoesByWhatIsKnownOfTheFill(t *testing.T) {
	lib := store.Example()
	wash := lib.Washes[0].Wash
	plain := mustMake(t, lib.Rig, lib.Places, wash)
	assert.True(t, plain.FillAsStated())
	assert.InEpsilon(t, 185/plain.Bed.StatedFill.Gallons(), plain.Cost.PerGallon, 0.02)

	memory := planner.Memory{Past: planner.Recall(generous(lib.Rig.Beds[0].Name), lib.Rig, lib.Places)}
	taught, err := memory.Make(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	assert.False(t, taught.FillAsStated())
	assert.Greater(t, taught.Bed.SoFar, 1.5*taught.Bed.StatedFill, "it gave more than is stated of it")
	all := taught.Bed.SoFar + taught.Bed.Remaining.P50
	assert.InEpsilon(t, float64(all), float64(taught.Bed.Fill), 0.001, "what a fill gives is what it gave and what is told as left")
	assert.InEpsilon(t, 185/all.Gallons(), taught.Cost.PerGallon, 0.001)
	assert.LessOrEqual(t, taught.Cost.PerGallon, 185/taught.Bed.SoFar.Gallons())
	again, err := memory.MakeIn(planner.Setting{Fresh: true}, lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	assert.InEpsilon(t, 185/again.Bed.Remaining.P50.Gallons(), again.Cost.PerGallon, 0.05, "and the next by what that taught")
}
