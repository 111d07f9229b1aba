package planner_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// Grains used are gallons times load, as a person counts them with a pencil, and a reading
// moves what is left and not them.
func TestGrainsUsedAreGallonsTimesLoad(t *testing.T) {
	rig, places, wash := threeFacts()
	rig.Beds[0].SoFar = quantity.Some(28.3 * quantity.Gallon)
	p := mustMake(t, rig, places, wash)
	load := p.Softened.Load
	if !p.BedBehind {
		load = p.Raw.Load
	}
	assert.InEpsilon(t, load.In(28.3*quantity.Gallon).Grains(), p.Bed.Used.Grains(), 1e-9)
	rig.Beds[0].LastReading = quantity.Some(quantity.PPM(4, quantity.ScaleNaCl))
	read := mustMake(t, rig, places, wash)
	assert.NotEqual(t, p.Bed.Remaining, read.Bed.Remaining)
	assert.InEpsilon(t, p.Bed.Used.Grains(), read.Bed.Used.Grains(), 1e-9)
}

// Of a log as well.
func TestGrainsUsedOfALogStayWhatWasCounted(t *testing.T) {
	lib := store.Example()
	at, err := model.ParseMoment("2026-05-02T09:30:00-06:00", nil)
	assert.NoError(t, err)
	log := model.Log{{ID: "c234567890123456", At: at, Body: &model.Refill{Bed: "half-foot tank"}},
		{ID: "d234567890123456", At: at.Plus(60), Body: &model.WashDone{Bed: "half-foot tank", Place: "Juniper Flats", Softener: model.NoSoftener, DI: quantity.Some(30 * quantity.Gallon)}}}
	used := func(log model.Log) float64 {
		memory := planner.Memory{Past: planner.Recall(model.NewLog(log), lib.Rig, lib.Places)}
		p, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
		assert.NoError(t, err)
		return p.Bed.Used.Grains()
	}
	counted := used(log)
	assert.Positive(t, counted)
	read := append(log, model.Entry{ID: "f234567890123456", At: at.Plus(120), Body: &model.Sample{Point: model.AfterBed, Bed: "half-foot tank", Place: "Juniper Flats", Flushed: model.Yes, Feed: model.No, Reading: quantity.Some(quantity.PPM(3, quantity.ScaleNaCl))}})
	assert.InEpsilon(t, counted, used(read), 1e-9)
}
