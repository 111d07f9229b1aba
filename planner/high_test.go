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

// Common practice without a source: pens are sold as good to 2 ppm or 2 %, and fresh resin
// gives water that shows none. So 2 is told of on a fresh fill, and 1 is not; what no
// pen explains is told by its causes.
func TestAHighReadingOfAFreshFill(t *testing.T) {
	lib := store.Example()
	at := func(hour int) model.Moment { return model.MomentOf(time.Date(2026, 6, 1, hour, 0, 0, 0, time.UTC)) }
	past := func(ppm float64, flushed model.Answer) *planner.BedPast {
		s := &model.Sample{Point: model.AfterBed, Reading: quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl)), Place: "Juniper Flats", Bed: "half-foot tank", Flushed: flushed}
		log := model.NewLog([]model.Entry{{ID: "a", At: at(8), Body: &model.Refill{Bed: "half-foot tank"}}, {ID: "b", At: at(9), Body: s}})
		return planner.Recall(log, lib.Rig, lib.Places).Bed("half-foot tank")
	}
	for ppm, want := range map[float64]bool{0: false, 1: false, 2: true, 3: true, 100: false} {
		_, high := past(ppm, model.Yes).High()
		assert.Equal(t, want, high, "%g ppm", ppm)
	}
	require.NotNil(t, past(100, model.Yes).Present().Readings[0].Suspect)
	_, high := past(3, model.No).High()
	assert.False(t, high, "a first cup is not used")
	_, high = (*planner.BedPast)(nil).High()
	assert.False(t, high)
}

// Two readings that are low and alike may be a pen's own, and it is told; readings that rise,
// or a lone one, are a bed's.
func TestReadingsThatAPenMayMakeItself(t *testing.T) {
	lib := store.Example()
	past := func(ppm ...float64) *planner.BedPast {
		entries := []model.Entry{{ID: "a", At: model.MomentOf(time.Date(2026, 6, 1, 8, 0, 0, 0, time.UTC)), Body: &model.Refill{Bed: "half-foot tank"}}}
		for i, v := range ppm {
			entries = append(entries, model.Entry{ID: string(rune('b' + i)), At: model.MomentOf(time.Date(2026, 6, 2+i, 8, 0, 0, 0, time.UTC)), Body: &model.Sample{
				Point: model.AfterBed, Reading: quantity.Some(quantity.PPM(v, quantity.ScaleNaCl)), Place: "Juniper Flats", Bed: "half-foot tank",
				Flushed: model.Yes, FlushWater: quantity.Some(6 * quantity.Gallon),
			}})
		}
		return planner.Recall(model.NewLog(entries), lib.Rig, lib.Places).Bed("half-foot tank")
	}
	least, most, told := past(4, 5).Steady()
	assert.True(t, told)
	assert.Equal(t, []float64{4, 5}, []float64{least, most})
	for name, ppm := range map[string][]float64{"lone": {4}, "near enough zero": {1, 1}, "one is": {0, 2}, "rising": {4, 8}, "high": {14, 15}} {
		_, _, told := past(ppm...).Steady()
		assert.False(t, told, name)
	}
	_, _, told = (*planner.BedPast)(nil).Steady()
	assert.False(t, told)
}
