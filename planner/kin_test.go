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

// generous is a log whose one fill has given twice what is stated of it, and still reads low.
func generous(bed string) model.Log {
	at := func(day int) model.Moment { return model.MomentOf(time.Date(2026, 5, day, 9, 0, 0, 0, time.UTC)) }
	gallons := func(v float64) quantity.Opt[quantity.Volume] {
		return quantity.Some(quantity.Volume(v) * quantity.Gallon)
	}
	wash := func() *model.WashDone { return &model.WashDone{Bed: bed, Place: "Juniper Flats", DI: gallons(240)} }
	return model.NewLog([]model.Entry{
		{ID: "1", At: at(1), Body: &model.Refill{Bed: bed}},
		{ID: "2", At: at(2), Body: wash()},
		{ID: "3", At: at(9), Body: wash()},
		{ID: "4", At: at(10), Body: &model.Sample{Bed: bed, Point: model.AfterBed, Place: "Juniper Flats", Flushed: model.Yes, Reading: quantity.Some(quantity.PPM(3, quantity.ScaleNaCl))}},
	})
}

// with is the example with a second tank, fresh, like the first but for what is changed.
func withSecond(change func(*model.Bed)) store.Library {
	lib := store.Example()
	second := lib.Rig.Beds[0]
	second.Name, second.SoFar = "second", quantity.Some(quantity.Volume(0))
	change(&second)
	lib.Rig.Beds = append(slices.Clone(lib.Rig.Beds), second)
	return lib
}

func leftIn(t testing.TB, lib store.Library, bed string, log model.Log) planner.Plan {
	memory := planner.Memory{Past: planner.Recall(log, lib.Rig, lib.Places)}
	wash := lib.Washes[0].Wash
	wash.Bed = bed
	p, err := memory.MakeIn(planner.Setting{Fresh: bed == lib.Rig.Beds[0].Name}, lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	return p
}

func TestATankIsJudgedByFillsOfTheSameResin(t *testing.T) {
	same := func(*model.Bed) {}
	lib := withSecond(same)
	first := lib.Rig.Beds[0].Name
	log := generous(first)
	own := leftIn(t, lib, first, log).Bed.Remaining
	other := leftIn(t, lib, "second", log)
	assert.Equal(t, own, other.Bed.Remaining, "new resin is new resin, in whichever tank")
	i := slices.IndexFunc(other.Assumptions, func(a planner.Assumption) bool { return a.Words == first })
	require.GreaterOrEqual(t, i, 0, "and the plan says what it goes by")
	untaught := leftIn(t, lib, "second", nil).Bed.Remaining
	assert.Greater(t, own.P50, 1.4*untaught.P50)

	big := withSecond(func(b *model.Bed) {
		b.Resin = quantity.Some(quantity.CubicFoot)
		b.Diameter = quantity.Opt[quantity.Length]{}
	})
	assert.Greater(t, leftIn(t, big, "second", log).Bed.Remaining.P50, 1.9*own.P50, "twice the resin holds twice as much")

	for name, change := range map[string]func(*model.Bed){
		"regenerated resin":    func(b *model.Bed) { b.State = model.RegeneratedResin },
		"another rating":       func(b *model.Bed) { b.Rating = quantity.Some(model.Rating{Total: 7000 * quantity.Grain}) },
		"a fill in use":        func(b *model.Bed) { b.SoFar = quantity.Some(20 * quantity.Gallon) },
		"a reading of its own": func(b *model.Bed) { b.LastReading = quantity.Some(quantity.PPM(0, quantity.ScaleNaCl)) },
	} {
		lib := withSecond(change)
		assert.Equal(t, leftIn(t, lib, "second", nil).Bed.Remaining, leftIn(t, lib, "second", log).Bed.Remaining, name)
	}
}

// What the first wash with the second tank writes down takes nothing of that back.
func TestTheFirstWashOfATankKeepsWhatOthersTaught(t *testing.T) {
	lib := withSecond(func(*model.Bed) {})
	log := generous(lib.Rig.Beds[0].Name)
	before := leftIn(t, lib, "second", log).Bed.Remaining.P50
	used := 30 * quantity.Gallon
	log = model.NewLog(append(slices.Clone(log), model.Entry{
		ID: "5", At: model.MomentOf(time.Date(2026, 5, 20, 9, 0, 0, 0, time.UTC)),
		Body: &model.WashDone{Bed: "second", Place: "Juniper Flats", DI: quantity.Some(used)},
	}))
	assert.InEpsilon(t, float64(before-used), float64(leftIn(t, lib, "second", log).Bed.Remaining.P50), 0.05)
}
