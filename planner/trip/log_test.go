package trip

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// A fill of which nobody said the age, and whose reading is high for a fresh one, may be of
// any age on a trip as in a plan.
func TestAFillOfUnknownAgeIsThePlansOwn(t *testing.T) {
	for _, ppm := range []float64{2, 4, 6} {
		in := example()
		in.Rig.Beds[0].SoFar, in.Rig.Beds[0].LastReading = quantity.Opt[quantity.Volume]{}, quantity.Opt[quantity.Reading]{}
		in.Trip.Washes = in.Trip.Washes[:1]
		entry := model.Entry{ID: "a", At: model.MomentOf(time.Date(2026, 4, 20, 8, 0, 0, 0, time.UTC)), Body: &model.Sample{
			Point: model.AfterBed, Reading: quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl)), Place: "Juniper Flats", Bed: in.Rig.Beds[0].Name,
			Flushed: model.Yes, Flow: quantity.Some(1.3 * quantity.GPM),
		}}
		in.Past = planner.Recall(model.NewLog([]model.Entry{entry}), in.Rig, in.Places)
		_, aged := in.Past.Bed(in.Rig.Beds[0].Name).Aged()
		require.True(t, aged, "%g ppm", ppm)
		like, _ := in.Like("Saturday wash")
		like.Date = quantity.Opt[model.Date]{}
		memory := planner.Memory{Past: in.Past}
		plan, err := memory.Make(in.Rig, in.Places, like)
		require.NoError(t, err)
		p := mustMake(t, in)
		assert.InDelta(t, float64(plan.Bed.ChanceLasts), float64(p.Washes[0].Chance), 0.07, "%g ppm, as far as the few states of each age in a plan tell it", ppm)
	}
}

// New resin is believed of on a trip as in a plan, after a reading that tells less of how
// much the fill holds than of that it holds less.
func TestNewResinIsThePlansOwn(t *testing.T) {
	for _, ppm := range []float64{1, 3, 4, 6, 8, 20} {
		in := example()
		b := &in.Rig.Beds[0]
		b.Resin, b.SoFar, b.LastReading = quantity.Some(0.22*quantity.CubicFoot), quantity.Some(15*quantity.Gallon), quantity.Opt[quantity.Reading]{}
		b.Rating = quantity.Opt[model.Rating]{}
		home := &in.Places[model.Find(in.Places.Names(), "Juniper Flats")]
		home.TDS, home.Hardness = quantity.Some(quantity.PPM(620, quantity.ScaleNaCl)), quantity.Opt[quantity.Hardness]{}
		in.Trip.Washes = in.Trip.Washes[:1]
		in.Trip.Changes = []model.ResinChange{{Date: in.Trip.Washes[0].Date}}
		entry := model.Entry{ID: "a", At: model.MomentOf(time.Date(2026, 4, 20, 8, 0, 0, 0, time.UTC)), Body: &model.Sample{
			Point: model.AfterBed, Reading: quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl)), Place: "Juniper Flats", Bed: b.Name,
			Flushed: model.Yes, Flow: quantity.Some(1.3 * quantity.GPM),
		}}
		in.Past = planner.Recall(model.NewLog([]model.Entry{entry}), in.Rig, in.Places)
		like, _ := in.Like("Saturday wash")
		like.Date = quantity.Opt[model.Date]{}
		memory := planner.Memory{Past: in.Past}
		plan, err := memory.MakeIn(planner.Setting{Fresh: true}, in.Rig, in.Places, like)
		require.NoError(t, err)
		p := mustMake(t, in)
		assert.InDelta(t, float64(plan.Bed.ChanceLasts), float64(p.Washes[0].Chance), 0.06, "%g ppm", ppm)
		assert.Less(t, float64(plan.Bed.ChanceLasts), 0.95, "near the end nothing would be told apart")
	}
}
