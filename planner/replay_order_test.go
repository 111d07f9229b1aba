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

// A wash, a reading and a change of resin of one second count in the order in which the
// log holds them: a reading before the wash, the wash before it, resin between them.
func TestWhatHasOneSecondCountsAsTheLogHoldsIt(t *testing.T) {
	lib := store.Example()
	now := model.MomentOf(time.Date(2026, 6, 1, 12, 0, 0, 0, time.UTC))
	reading, err := quantity.ParseReading("3 ppm NaCl")
	require.NoError(t, err)
	wash := model.Entry{ID: "m", At: now, Body: &model.WashDone{Place: "Juniper Flats", Bed: "half-foot tank", DI: quantity.Some(30 * quantity.Gallon)}}
	read := func(id string) model.Entry {
		return model.Entry{ID: id, At: now, Body: &model.Sample{
			Point: model.AfterBed, Reading: quantity.Some(reading), Place: "Juniper Flats", Bed: "half-foot tank", Flushed: model.Yes,
		}}
	}
	resin := model.Entry{ID: "b", At: now, Body: &model.Refill{Bed: "half-foot tank"}}
	readAt := func(entries ...model.Entry) []float64 {
		var gallons []float64
		for _, r := range planner.Recall(model.NewLog(entries), lib.Rig, lib.Places).Bed("half-foot tank").Present().Readings {
			gallons = append(gallons, r.Gallons.Gallons())
		}
		return gallons
	}
	assert.InDeltaSlice(t, []float64{120, 150}, readAt(read("z"), wash, read("a")), 1e-9, "120 gal before the log, then 30")
	assert.InDeltaSlice(t, []float64{30}, readAt(resin, wash, read("a")), 1e-9)
	assert.InDeltaSlice(t, []float64{0}, readAt(wash, resin, read("a")), 1e-9)
}

// Resin that is changed between the last rinse of a wash and its end has had none of its
// water: the wash is written down after it, its stages before.
func TestResinChangedAfterTheLastRinseHadNoneOfIt(t *testing.T) {
	lib := store.Example()
	at := func(minute int) model.Moment {
		return model.MomentOf(time.Date(2026, 6, 1, 12, minute, 0, 0, time.UTC))
	}
	rinse := &model.StageDone{Wash: "w", Stage: "rinse", Water: model.DI, Place: "Juniper Flats", Bed: "half-foot tank", Used: quantity.Some(30 * quantity.Gallon)}
	log := model.Log{
		{ID: "s", At: at(0), Body: rinse},
		{ID: "r", At: at(20), Body: &model.Refill{Bed: "half-foot tank"}},
		{ID: "w", At: at(40), Body: &model.WashDone{Place: "Juniper Flats", Bed: "half-foot tank", DI: quantity.Some(30 * quantity.Gallon)}},
	}
	past := planner.Recall(log, lib.Rig, lib.Places).Bed("half-foot tank")
	assert.Zero(t, past.Present().Gallons)
	require.Len(t, past.Draws, 1)
	assert.InDelta(t, 30, past.Draws[0].Volume.Gallons(), 1e-9)
}
