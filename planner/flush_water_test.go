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

// Water that is run out before a reading goes through the bed (the method: a flush comes
// before every reading, and throughput is what uses the bed up). So a flush that is
// stated by itself does what a meter says that counts it, and what is not stated does
// nothing.
func TestAFlushForAReadingGoesThroughTheBed(t *testing.T) {
	lib := store.Example()
	at := func(hour int) model.Moment { return model.MomentOf(time.Date(2026, 6, 1, hour, 0, 0, 0, time.UTC)) }
	shows, err := quantity.ParseReading("3 ppm NaCl")
	require.NoError(t, err)
	gallons := func(v quantity.Volume) quantity.Opt[quantity.Volume] { return quantity.Some(v * quantity.Gallon) }
	past := func(s model.Sample) *planner.BedPast {
		s.Point, s.Reading, s.Place, s.Bed, s.Flushed = model.AfterBed, quantity.Some(shows), "Juniper Flats", "half-foot tank", model.Yes
		log := model.NewLog([]model.Entry{
			{ID: "a", At: at(8), Body: &model.WashDone{Place: "Juniper Flats", Bed: "half-foot tank", DI: gallons(30)}},
			{ID: "b", At: at(9), Body: &s},
		})
		return planner.Recall(log, lib.Rig, lib.Places).Bed("half-foot tank")
	}
	flushed, metered, unsaid := past(model.Sample{FlushWater: gallons(4)}), past(model.Sample{SoFar: gallons(154)}), past(model.Sample{})
	assert.InDelta(t, 154, flushed.Present().Gallons.Gallons(), 1e-9, "120 gal before the log, 30 of the wash, 4 of the flush")
	assert.InDelta(t, 154, metered.Present().Gallons.Gallons(), 1e-9)
	assert.InDelta(t, 150, unsaid.Present().Gallons.Gallons(), 1e-9, "no gallons are made up")
	assert.InDelta(t, metered.Present().Readings[0].Expected, flushed.Present().Readings[0].Expected, 1e-12)
	both := past(model.Sample{FlushWater: gallons(4), SoFar: gallons(160)})
	assert.InDelta(t, 160, both.Present().Gallons.Gallons(), 1e-9, "a meter has counted the flush")
	assert.Len(t, flushed.Draws, 1, "a flush is no wash")
}

// A flush is in no wash (the log's own words of flush_water): where a meter has counted it
// as well, the wash that is written down next still gives all its gallons.
func TestAFlushThatAMeterCountedIsNotTakenOffTheNextWash(t *testing.T) {
	lib := store.Example()
	at := func(hour int) model.Moment { return model.MomentOf(time.Date(2026, 6, 1, hour, 0, 0, 0, time.UTC)) }
	gallons := func(v quantity.Volume) quantity.Opt[quantity.Volume] { return quantity.Some(v * quantity.Gallon) }
	shows, err := quantity.ParseReading("3 ppm NaCl")
	require.NoError(t, err)
	reading := &model.Sample{
		Point: model.AfterBed, Reading: quantity.Some(shows), Place: "Juniper Flats", Bed: "half-foot tank",
		Flushed: model.Yes, FlushWater: gallons(4), SoFar: gallons(124),
	}
	log := model.Log{
		{ID: "a", At: at(8), Body: reading},
		{ID: "b", At: at(9), Body: &model.WashDone{Place: "Juniper Flats", Bed: "half-foot tank", DI: gallons(30)}},
	}
	past := planner.Recall(log, lib.Rig, lib.Places).Bed("half-foot tank")
	assert.InDelta(t, 154, past.Present().Gallons.Gallons(), 1e-9, "120 gal before the log, 4 of the flush, 30 of the wash")
}

// A flush is fed through the softener as a wash is.
func TestAFlushForAReadingUsesTheSoftenerUp(t *testing.T) {
	lib := store.Example()
	used := func(feed model.Answer) float64 {
		log := model.Log{{ID: "a", At: model.MomentOf(time.Unix(1780000000, 0)), Body: &model.Sample{
			Point: model.AfterBed, Bed: "half-foot tank", Flushed: model.Yes, Feed: feed, FlushWater: quantity.Some(4 * quantity.Gallon),
		}}}
		memory := planner.Memory{Past: planner.Recall(log, lib.Rig, lib.Places)}
		plan, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
		require.NoError(t, err)
		require.NotNil(t, plan.Softener)
		return -plan.Softener.Remaining.Gallons()
	}
	assert.InDelta(t, 4, used(model.Yes)-used(model.No), 1e-9)
}
