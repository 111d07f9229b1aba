package planner_test

import (
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// afterReading is the plan of the example once its fill was read at so much.
func afterReading(t *testing.T, ppm float64, entries ...model.Entry) planner.Plan {
	lib := store.Example()
	s := &model.Sample{Point: model.AfterBed, Reading: quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl)), Place: "Juniper Flats", Bed: "half-foot tank", Flushed: model.Yes}
	log := model.NewLog(append(entries, model.Entry{ID: "z", At: model.MomentOf(time.Date(2026, 5, 1, 9, 0, 0, 0, time.UTC)), Body: s}))
	memory := planner.Memory{Past: planner.Recall(log, lib.Rig, lib.Places)}
	plan, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	return plan
}

func at(p planner.Plan, code string) int {
	return slices.IndexFunc(p.Warnings, func(n planner.Note) bool { return n.Code == code })
}

// The plan itself warns of a reading that no bed as it is said to be would show, and what is
// behind it goes by whether the log knows when the resin was filled in.
func TestThePlanWarnsOfAHighReading(t *testing.T) {
	filled := model.Entry{ID: "a", At: model.MomentOf(time.Date(2026, 5, 1, 8, 0, 0, 0, time.UTC)), Body: &model.Refill{Bed: "half-foot tank"}}
	plan := afterReading(t, 3, filled)
	require.Equal(t, 0, at(plan, planner.ReadingHigh), "before all that rests on it")
	assert.Equal(t, "The bed last read 3 ppm NaCl, where under 0.1 ppm was expected. Try the pen in distilled water: if it shows none there, the resins are badly mixed, or water gets past them, and the chance is too good.",
		plan.Warnings[0].Text(quantity.US))
	assert.Equal(t, "3 ppm NaCl", plan.ReadHigh)
	plan = afterReading(t, 1, filled)
	assert.Equal(t, -1, at(plan, planner.ReadingHigh))
	assert.Empty(t, plan.ReadHigh)
}

// Frost stands before what is only worth knowing, also before what is told of the other washes
// once the plan is made; a day that is past before both.
func TestFrostIsTheFirstThingToHeed(t *testing.T) {
	lib := store.Example()
	wash := lib.Washes[0].Wash
	wash.Start = quantity.Opt[model.TimeOfDay]{}
	wash.Low, wash.High, wash.DewPoint = quantity.Some(quantity.Celsius(-9)), quantity.Some(quantity.Celsius(-4)), quantity.Some(quantity.Celsius(-12))
	plan, err := planner.Make(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	require.Equal(t, planner.NoStart, plan.Warnings[0].Code)
	frost, told := plan.NoDay()
	require.True(t, told)
	assert.Equal(t, "This is no day to wash: it freezes.", frost.Text(quantity.US))
	plan.Warn(planner.Note{Code: planner.PlannedBefore})
	assert.Equal(t, planner.NoStart, plan.Warnings[0].Code)
	plan.Seen(model.Date{Year: 2099, Month: 1, Day: 1})
	assert.Equal(t, planner.PastDay, plan.Warnings[0].Code)
	mild, err := planner.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	_, told = mild.NoDay()
	assert.False(t, told)
}
