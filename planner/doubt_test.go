package planner_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// A reading of nearly the feed from a young bed is a fault of the plumbing, not
// of the resin: it is told, with what to check, and the verdict is in doubt.
func TestAReadingThatFitsNoBedIsTold(t *testing.T) {
	rig, places, wash := threeFacts()
	rig.Beds[0].SoFar = quantity.Some(40 * quantity.Gallon)
	rig.Beds[0].LastReading = quantity.Some(quantity.PPM(200, quantity.ScaleNaCl))
	p := mustMake(t, rig, places, wash)
	assert.Contains(t, codes(p.Warnings), "unexplained-reading")
	assert.Contains(t, codes(p.Warnings), "reading-in-doubt")
	assert.NotContains(t, codes(p.Warnings), "tight-bed", "what is left is not what is doubted")
	assert.True(t, p.InDoubt())
	assert.NotEqual(t, planner.Lasts, p.Verdict)
}

func TestAReadingOverTheFeedIsAContradiction(t *testing.T) {
	rig, places, wash := threeFacts()
	rig.Beds[0].LastReading = quantity.Some(quantity.PPM(400, quantity.ScaleNaCl))
	assert.Contains(t, codes(mustMake(t, rig, places, wash).Warnings), "reading-over-feed")
}

// Soap after a DI stage makes the film dirty again: only the DI that comes after
// it counts.
func TestTheFilmIsCarriedThroughTheStages(t *testing.T) {
	rig, places, wash := threeFacts()
	quick := quantity.Some(400 * quantity.SquareFootPerMinute)
	final := model.Stage{Name: "final rinse", Water: model.DI, Final: true, Coverage: quick}
	soap := model.Stage{Name: "soap", Water: model.Raw}
	early := model.Stage{Name: "early rinse", Water: model.DI}
	wash.Stages = []model.Stage{soap, final}
	plain := mustMake(t, rig, places, wash)
	wash.Stages = []model.Stage{early, soap, final}
	after := mustMake(t, rig, places, wash)
	wash.Stages = []model.Stage{soap, early, final}
	twice := mustMake(t, rig, places, wash)
	for i := range plain.Faces {
		assert.InDelta(t, plain.Faces[i].PPMLeft, after.Faces[i].PPMLeft, 0.01)
		assert.Less(t, twice.Faces[i].PPMLeft, plain.Faces[i].PPMLeft)
		assert.LessOrEqual(t, plain.Faces[i].PPMLeft, 10.1, "dilution brings it to the target")
		assert.Equal(t, planner.NoSpots, plain.Faces[i].Spots)
	}
}

func TestAWeakTapAllowsNoFlow(t *testing.T) {
	rig, places, wash := threeFacts()
	places[0].Pressure = quantity.Some(12 * quantity.PSI)
	p := mustMake(t, rig, places, wash)
	assert.Equal(t, planner.ByPressure, p.Cap.BoundBy)
	assert.Zero(t, float64(p.Cap.Flow))
	assert.False(t, p.Sprayer.WithinCap)
	assert.False(t, p.Sprayer.Enough)
}

func TestEveryDIStageIsHeldToTheCap(t *testing.T) {
	rig, places, wash := threeFacts()
	rig.Sprayers = []model.Sprayer{
		{Name: "washer", Tool: model.PressureWasher, Flow: quantity.Some(1.3 * quantity.GPM)},
		{Name: "open end", Tool: model.OpenHose},
	}
	wash.Stages = []model.Stage{
		{Name: "hose-down", Water: model.DI, Sprayer: "open end"},
		{Name: "final rinse", Water: model.DI, Final: true},
	}
	p := mustMake(t, rig, places, wash)
	assert.False(t, p.Sprayer.WithinCap)
	require.Contains(t, codes(p.Warnings), "over-cap")
	for _, w := range p.Warnings {
		if w.Code == "over-cap" {
			assert.Contains(t, w.Text(quantity.US), "hose-down")
			assert.Contains(t, w.Text(quantity.US), "Throttle it until a one-gallon jug takes ")
			assert.Contains(t, w.Text(quantity.Metric), "Throttle it until 10 L takes ")
		}
	}
}

func TestWaterThatKeepsTheLimitNeedsNoBed(t *testing.T) {
	rig, places, wash := threeFacts()
	places[0].TDS = quantity.Some(quantity.PPM(6, quantity.ScaleNaCl))
	rig.Beds[0].SoFar = quantity.Some(5000 * quantity.Gallon)
	p := mustMake(t, rig, places, wash)
	assert.Equal(t, planner.Lasts, p.Verdict)
	assert.Contains(t, codes(p.Warnings), "limit-over-feed")
}

// The project's method, section 2: planning at rated conditions gives back the
// stated gallons. Here with the usual contact, at 25 C on sodium water, to the
// outlet that the capacity is stated for, in the middle of what is believed.
func TestStatedGallonsComeBackInThePlan(t *testing.T) {
	rig, places, wash := threeFacts()
	b, p := &rig.Beds[0], &places[0]
	rig.Sprayers = []model.Sprayer{{Name: "washer", Tool: model.PressureWasher, Flow: quantity.Some(1.5 * quantity.GPM)}}
	p.Temperature, p.Hardness = quantity.Some(quantity.Celsius(25)), quantity.Some(quantity.Hardness(0))
	wash.Limit = quantity.Some(quantity.PPM(0.05*250, quantity.ScaleNaCl))
	plan := mustMake(t, rig, places, wash)
	stated := plan.Softened.Load.Supply(plan.Bed.Capacity)
	assert.InEpsilon(t, stated.Gallons(), plan.Bed.Remaining.P50.Gallons(), 0.02, "the middle of a band of 240 draws")
	b.RatedFlow = quantity.Some(1.5 * quantity.GPM)
	assert.Equal(t, plan.Bed.Capacity, mustMake(t, rig, places, wash).Bed.Capacity)
}

func TestLoggedWaterCountsAgainstTheSoftener(t *testing.T) {
	lib := store.Example()
	at, err := model.ParseMoment("2026-05-02T09:30:00-06:00", nil)
	require.NoError(t, err)
	log := model.NewLog([]model.Entry{{ID: "c234567890123456", At: at, Body: &model.WashDone{
		Bed: "half-foot tank", Place: "Juniper Flats", DI: quantity.Some(30 * quantity.Gallon), Softened: quantity.Some(100 * quantity.Gallon),
	}}})
	before := mustMake(t, lib.Rig, lib.Places, lib.Washes[0].Wash)
	memory := planner.Memory{Past: planner.Recall(log, lib.Rig, lib.Places)}
	after, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	assert.InDelta(t, 130, (before.Softener.Remaining - after.Softener.Remaining).Gallons(), 1e-6)
}
