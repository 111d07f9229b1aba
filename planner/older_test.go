package planner_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// readingsOf is what a log of readings alone says of the example's bed, whose age the rig
// states or not.
func readingsOf(t *testing.T, stated quantity.Opt[quantity.Volume], ppm ...float64) (planner.Plan, *planner.BedPast) {
	lib := store.Example()
	lib.Rig.Beds[0].SoFar, lib.Rig.Beds[0].LastReading = stated, quantity.Opt[quantity.Reading]{}
	var entries []model.Entry
	for i, v := range ppm {
		entries = append(entries, model.Entry{
			ID: string(rune('a' + i)), At: model.MomentOf(time.Date(2026, 6, 1+i, 8, 0, 0, 0, time.UTC)),
			Body: &model.Sample{
				Point: model.AfterBed, Reading: quantity.Some(quantity.PPM(v, quantity.ScaleNaCl)), Place: "Juniper Flats", Bed: "half-foot tank",
				Flushed: model.Yes, Flow: quantity.Some(1.3 * quantity.GPM),
			},
		})
	}
	memory := planner.Memory{Past: planner.Recall(model.NewLog(entries), lib.Rig, lib.Places)}
	plan, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	return plan, memory.Past.Bed("half-foot tank")
}

func hasWarning(p *planner.Plan, code string) bool {
	for _, n := range p.Warnings {
		if n.Code == code {
			return true
		}
	}
	return false
}

// Of a fill of which nobody said the age, a reading that is high for a fresh one tells the
// age. Well over the limit it is that which a rig tells that states the reading alone; near zero a
// fresh fill and an old one both stay likely, and the chance is between.
func TestReadingsTellAnAgeThatNobodySaid(t *testing.T) {
	var none quantity.Opt[quantity.Volume]
	for _, ppm := range []float64{25, 40, 100} {
		plan, past := readingsOf(t, none, ppm)
		before, aged := past.Aged()
		require.True(t, aged, "%g ppm", ppm)
		assert.Nil(t, past.Present().Readings[0].Suspect, "%g ppm", ppm)
		assert.True(t, hasWarning(&plan, "age-by-readings"))
		assert.False(t, plan.CountedFromLog(), "it does not count as fresh")
		assert.Equal(t, planner.WillNotLast, plan.Verdict, "%g ppm is over the limit of 10", ppm)
		assert.InDelta(t, past.Present().Gallons.Gallons(), before.P50.Gallons(), 1e-9)

		lib := store.Example()
		lib.Rig.Beds[0].SoFar, lib.Rig.Beds[0].LastReading = none, quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl))
		lib.Rig.Beds[0].LastFlow = quantity.Some(1.3 * quantity.GPM)
		alone, err := planner.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
		require.NoError(t, err)
		assert.InEpsilon(t, alone.Bed.SoFar.Gallons(), before.P50.Gallons(), 0.25, "%g ppm", ppm)
	}
	chances := []float64{1}
	for _, ppm := range []float64{2, 4, 6, 8} {
		plan, past := readingsOf(t, none, ppm)
		_, aged := past.Aged()
		assert.True(t, aged, "%g ppm", ppm)
		assert.Less(t, float64(plan.Bed.ChanceLasts), chances[len(chances)-1], "%g ppm", ppm)
		chances = append(chances, float64(plan.Bed.ChanceLasts))
	}
	assert.Greater(t, chances[1], 0.75, "2 ppm is most often a pen's error")
	assert.Less(t, chances[4], 0.25, "8 ppm is hardly one")
}

// Where the readings fit a fresh fill, or somebody said the age, or no age explains them
// all, none is made up.
func TestAnAgeIsNotMadeUp(t *testing.T) {
	var none quantity.Opt[quantity.Volume]
	for _, ppm := range []float64{0, 1} {
		plan, past := readingsOf(t, none, ppm)
		_, aged := past.Aged()
		assert.False(t, aged, "%g ppm fits a fresh fill", ppm)
		assert.True(t, plan.CountedFromLog())
	}
	_, past := readingsOf(t, quantity.Some(0*quantity.Gallon), 100)
	_, aged := past.Aged()
	assert.False(t, aged, "somebody said it")
	require.NotNil(t, past.Present().Readings[0].Suspect)
	_, past = readingsOf(t, none, 100, 0)
	_, aged = past.Aged()
	assert.False(t, aged, "no age explains both")
	_, aged = (*planner.BedPast)(nil).Aged()
	assert.False(t, aged)
}
