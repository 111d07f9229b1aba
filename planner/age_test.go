package planner_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// A bed of which nothing was said is taken as new, and the plan says so.
func TestABedOfUnknownAgeIsTakenAsNew(t *testing.T) {
	rig, places, wash := threeFacts()
	silent := mustMake(t, rig, places, wash)
	assert.True(t, silent.TakenAsNew())
	rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
	stated := mustMake(t, rig, places, wash)
	assert.False(t, stated.TakenAsNew())
	assert.Equal(t, silent.Bed.Remaining, stated.Bed.Remaining)
	rig.Beds[0].SoFar = quantity.Opt[quantity.Volume]{}
	rig.Beds[0].LastReading = quantity.Some(quantity.PPM(3, quantity.ScaleNaCl))
	read := mustMake(t, rig, places, wash)
	assert.False(t, read.TakenAsNew())
}

// A log that begins with a reading does not say how old the fill was by then.
func TestALogWithoutABeginningIsToldAsSuch(t *testing.T) {
	rig, places, wash := threeFacts()
	at, err := model.ParseMoment("2026-05-02T09:00:00-06:00", nil)
	require.NoError(t, err)
	sample := &model.Sample{Point: model.AfterBed, Bed: rig.Beds[0].Name, Place: places[0].Name, Flushed: model.Yes, Reading: quantity.Some(quantity.PPM(1, quantity.ScaleNaCl))}
	told := func() bool {
		log := model.NewLog([]model.Entry{{ID: "b234567890123456", At: at, Body: sample}})
		memory := planner.Memory{Past: planner.Recall(log, rig, places)}
		require.NotNil(t, memory.Past.Bed(rig.Beds[0].Name))
		plan, err := memory.Make(rig, places, wash)
		require.NoError(t, err)
		assumed := slices.ContainsFunc(plan.Assumptions, func(a planner.Assumption) bool { return a.Name == "bed age when the log began" })
		assert.Equal(t, assumed, plan.TakenAsNew(), "a reading alone says nothing of the age")
		return assumed
	}
	assert.True(t, told())
	sample.SoFar = quantity.Some(20 * quantity.Gallon)
	assert.False(t, told(), "a meter says it")
	sample.SoFar = quantity.Opt[quantity.Volume]{}
	rig.Beds[0].SoFar = quantity.Some(20 * quantity.Gallon)
	assert.False(t, told(), "the rig says it")
}

// What a reading in the middle of a wash says of the gallons is the program's own count:
// how old the fill was before is as unknown as it was.
func TestTheCountOfAWashIsNoMeter(t *testing.T) {
	rig, places, wash := threeFacts()
	told := func(soFar quantity.Volume, given float64) bool {
		moment := func(text string) model.Moment {
			at, err := model.ParseMoment(text, nil)
			require.NoError(t, err)
			return at
		}
		log := model.NewLog([]model.Entry{
			{ID: "b234567890123456", At: moment("2026-05-02T09:00:00-06:00"), Body: &model.Sample{
				Point: model.AfterBed, Bed: rig.Beds[0].Name, Place: places[0].Name, Flushed: model.Yes, Reading: quantity.Some(quantity.PPM(1, quantity.ScaleNaCl)), SoFar: quantity.Some(soFar),
			}},
			{ID: "c234567890123456", At: moment("2026-05-02T10:00:00-06:00"), Body: &model.WashDone{Bed: rig.Beds[0].Name, Place: places[0].Name, DI: quantity.Some(40 * quantity.Gallon)}},
		})
		memory := planner.Memory{Past: planner.Recall(log, rig, places)}
		require.InDelta(t, given, memory.Past.Bed(rig.Beds[0].Name).Present().Gallons.Gallons(), 1e-9)
		plan, err := memory.Make(rig, places, wash)
		require.NoError(t, err)
		assert.False(t, plan.TakenAsNew(), "a wash has run")
		return plan.CountedFromLog()
	}
	assert.True(t, told(6*quantity.Gallon, 40), "the flush of this wash")
	assert.False(t, told(300*quantity.Gallon, 340), "more than this wash has run: it was given before")
}

// What a meter said the day before is no part of the wash of today.
func TestAMeterOfTheDayBeforeCountsApart(t *testing.T) {
	rig, places, _ := threeFacts()
	entry := func(id, at string, body model.Body) model.Entry {
		moment, err := model.ParseMoment(at, nil)
		require.NoError(t, err)
		return model.Entry{ID: id, At: moment, Body: body}
	}
	read := func(soFar quantity.Volume) *model.Sample {
		return &model.Sample{
			Point: model.AfterBed, Bed: rig.Beds[0].Name, Place: places[0].Name, Flushed: model.Yes, Reading: quantity.Some(quantity.PPM(1, quantity.ScaleNaCl)), SoFar: quantity.Some(soFar),
		}
	}
	log := model.NewLog([]model.Entry{
		entry("b234567890123456", "2026-05-01T09:00:00-06:00", read(100*quantity.Gallon)),
		entry("c234567890123456", "2026-05-02T09:00:00-06:00", read(106*quantity.Gallon)),
		entry("d234567890123456", "2026-05-02T10:00:00-06:00", &model.WashDone{Bed: rig.Beds[0].Name, Place: places[0].Name, DI: quantity.Some(40 * quantity.Gallon)}),
	})
	assert.InDelta(t, 140, planner.Recall(log, rig, places).Bed(rig.Beds[0].Name).Present().Gallons.Gallons(), 1e-9)
}

// A softener that is bought later does not change what an older reading said.
func TestAReadingSaysWhatTheBedWasFedWith(t *testing.T) {
	rig, places, wash := threeFacts()
	at, err := model.ParseMoment("2026-05-02T09:00:00-06:00", nil)
	require.NoError(t, err)
	sample := &model.Sample{
		Point: model.AfterBed, Bed: rig.Beds[0].Name, Place: places[0].Name, Flushed: model.Yes, Feed: model.No,
		Reading: quantity.Some(quantity.PPM(4, quantity.ScaleNaCl)), SoFar: quantity.Some(90 * quantity.Gallon),
	}
	left := func() planner.Band[quantity.Volume] {
		log := model.NewLog([]model.Entry{{ID: "b234567890123456", At: at, Body: sample}})
		memory := planner.Memory{Past: planner.Recall(log, rig, places)}
		plan, err := memory.Make(rig, places, wash)
		require.NoError(t, err)
		assert.False(t, plan.BedBehind)
		return plan.Bed.Remaining
	}
	before := left()
	rig.Softeners = []model.Softener{{Name: "bay softener", Resin: quantity.Some(0.4 * quantity.CubicFoot)}}
	wash.Softener = model.NoSoftener
	assert.Equal(t, before, left())
	sample.Feed = ""
	assert.Greater(t, left().P50, before.P50, "where it is not said, the rig's softener is taken as in the line")
}
