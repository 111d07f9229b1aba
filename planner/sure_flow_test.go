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

// The cap by the exchange promises nothing: where the bed does not surely last at it, that is
// told, and the flow beside it is the one that keeps the limit for sure, or there is none.
func TestTheCapByTheExchangeIsNoSafeFlow(t *testing.T) {
	lib := store.Example()
	wash := lib.Washes[0].Wash
	found, none := false, false
	for _, ppm := range []float64{2, 3, 4, 6, 8, 9, 9.5} {
		memory := planner.Memory{Past: planner.Recall(readOften(lib.Rig.Beds[0].Name, ppm), lib.Rig, lib.Places)}
		made := func(held quantity.Opt[quantity.Flow]) planner.Plan {
			wash.DIFlow = held
			p, err := memory.Make(lib.Rig, lib.Places, wash)
			require.NoError(t, err)
			return p
		}
		p := made(quantity.Opt[quantity.Flow]{})
		told := slices.ContainsFunc(p.Warnings, func(n planner.Note) bool { return n.Code == planner.UnsafeCap })
		if doubt := p.Cap.BoundBy == planner.ByExchange && p.Cap.Useful() && p.Verdict != planner.Lasts; !doubt {
			assert.False(t, told || p.Cap.Sure.Given(), "%v ppm", ppm)
			continue
		}
		assert.Equal(t, made(quantity.Some(p.Cap.Flow)).Verdict != planner.Lasts, told, "%v ppm", ppm)
		sure, given := p.Cap.Sure.Get()
		found, none = found || given, none || !given
		if given {
			assert.Less(t, sure, p.Cap.Flow)
			assert.InDelta(t, 0.9, float64(made(quantity.Some(sure)).Bed.ChanceLasts), 0.04, "%v ppm", ppm)
		} else {
			assert.Less(t, float64(made(quantity.Some(0.4*quantity.GPM)).Bed.ChanceLasts), 0.9, "%v ppm", ppm)
		}
	}
	assert.True(t, found, "a sure flow is found for some")
	assert.True(t, none, "and for some there is none")
}

// readOften is a log of a fill that was read three times at its end.
func readOften(bed string, ppm float64) model.Log {
	log := slices.Clone(generous(bed)[:3])
	for i := range 3 {
		log = append(log, model.Entry{
			ID: string(rune('a' + i)), At: model.MomentOf(time.Date(2026, 5, 10, 9+i, 0, 0, 0, time.UTC)),
			Body: &model.Sample{Bed: bed, Point: model.AfterBed, Place: "Juniper Flats", Flushed: model.Yes, Reading: quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl))},
		})
	}
	return model.NewLog(log)
}
