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
