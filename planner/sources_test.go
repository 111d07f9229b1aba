package planner_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/planner/tag"
)

func sourceOf(t *testing.T, p planner.Plan, name string) tag.Source {
	for _, a := range p.Assumptions {
		if a.Name == name {
			return a.Source
		}
	}
	t.Fatal("the plan does not rest on " + name)
	return tag.Source{}
}

// The scale is stated with the reading of the tap, where neither pen nor limit has one.
func TestAScaleThatIsStatedWithTheTapIsStated(t *testing.T) {
	for text, want := range map[string]tag.Tag{"210 ppm NaCl": tag.Yours, "210 ppm": tag.Practice, "210 ppm 442": tag.Practice} {
		lib := store.Example()
		lib.Rig.Pens, lib.Rig.Defaults.Limit = nil, quantity.Opt[quantity.Reading]{}
		lib.Washes[0].Wash.Limit = quantity.Opt[quantity.Reading]{}
		reading, err := quantity.ParseReading(text)
		require.NoError(t, err)
		lib.Places[0].TDS = quantity.Some(reading)
		p := mustMake(t, lib.Rig, lib.Places, lib.Washes[0].Wash)
		assert.Equal(t, want, sourceOf(t, p, "scale of the ppm shown").Tag, text)
	}
}

// Gallons that the rig states are the rig's, until the log adds some.
func TestGallonsSoFarAreOfWhoSaysThem(t *testing.T) {
	at := func(text string) model.Moment {
		m, err := model.ParseMoment(text, nil)
		require.NoError(t, err)
		return m
	}
	reading := model.Entry{ID: "b234567890123456", At: at("2026-05-02T09:00:00-06:00"), Body: &model.Sample{
		Point: model.AfterBed, Bed: "half-foot tank", Place: "Juniper Flats", Flushed: model.Yes, Reading: quantity.Some(quantity.PPM(0, quantity.ScaleNaCl)),
	}}
	wash := model.Entry{ID: "c234567890123456", At: at("2026-05-03T09:30:00-06:00"), Body: &model.WashDone{
		Bed: "half-foot tank", Place: "Juniper Flats", DI: quantity.Some(30 * quantity.Gallon),
	}}
	refill := model.Entry{ID: "a234567890123456", At: at("2026-05-01T08:00:00-06:00"), Body: &model.Refill{Bed: "half-foot tank"}}
	for want, entries := range map[string][]model.Entry{
		"stated in your rig": {reading}, "stated in your rig, and your log from there on": {reading, wash}, "your log": {refill, reading, wash},
	} {
		lib := store.Example()
		memory := planner.Memory{Past: planner.Recall(model.NewLog(entries), lib.Rig, lib.Places)}
		p, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
		require.NoError(t, err)
		assert.Equal(t, tag.Source{Tag: tag.Yours, Text: want}, sourceOf(t, p, "bed gallons so far"))
	}
}

// What ran through the softener is the rig's too, until the log counts it.
func TestGallonsSinceSaltAreOfWhoSaysThem(t *testing.T) {
	at, err := model.ParseMoment("2026-05-03T09:30:00-06:00", nil)
	require.NoError(t, err)
	wash := model.Entry{ID: "c234567890123456", At: at, Body: &model.WashDone{Place: "Juniper Flats", Softened: quantity.Some(30 * quantity.Gallon)}}
	said := func(since quantity.Opt[quantity.Volume], entries ...model.Entry) tag.Source {
		lib := store.Example()
		lib.Rig.Softeners[0].SoFar = since
		memory := planner.Memory{Past: planner.Recall(model.NewLog(entries), lib.Rig, lib.Places)}
		p, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
		require.NoError(t, err)
		return sourceOf(t, p, "softener gallons since salt")
	}
	stated := quantity.Some(50 * quantity.Gallon)
	assert.Equal(t, "you stated it", said(stated).Text)
	assert.Equal(t, "your log", said(stated, wash).Text)
	assert.Equal(t, tag.Practice, said(quantity.Opt[quantity.Volume]{}).Tag)
}

// A bed that was renamed has no log, and the plan says so until its gallons are stated.
func TestALogOfAnotherBedIsTold(t *testing.T) {
	at, err := model.ParseMoment("2026-05-03T09:30:00-06:00", nil)
	require.NoError(t, err)
	wash := model.Entry{ID: "c234567890123456", At: at, Body: &model.WashDone{Bed: "half-foot tank", Place: "Juniper Flats", DI: quantity.Some(30 * quantity.Gallon)}}
	told := func(bed string, soFar quantity.Opt[quantity.Volume]) []string {
		lib := store.Example()
		lib.Rig.Beds = lib.Rig.Beds[:1]
		lib.Rig.Beds[0].Name, lib.Rig.Beds[0].SoFar = bed, soFar
		lib.Rig.Defaults.Bed, lib.Washes[0].Wash.Bed = "", ""
		memory := planner.Memory{Past: planner.Recall(model.NewLog([]model.Entry{wash}), lib.Rig, lib.Places)}
		p, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
		require.NoError(t, err)
		return codes(p.Warnings)
	}
	unsaid := quantity.Opt[quantity.Volume]{}
	assert.NotContains(t, told("half-foot tank", unsaid), "log-of-another-bed")
	assert.Contains(t, told("big tank", unsaid), "log-of-another-bed")
	assert.NotContains(t, told("big tank", quantity.Some(30*quantity.Gallon)), "log-of-another-bed")
}

// The resin in the tank is that of the log's last change, whatever the rig states of it: that
// is told, and a width that nobody stated stays an assumption.
func TestAFillThatIsNotTheRigsIsTold(t *testing.T) {
	at, err := model.ParseMoment("2026-05-03T09:30:00-06:00", nil)
	require.NoError(t, err)
	planned := func(rig, log quantity.Volume) planner.Plan {
		lib := store.Example()
		lib.Rig.Beds = lib.Rig.Beds[:1]
		lib.Rig.Beds[0].Resin, lib.Rig.Beds[0].Diameter = quantity.Some(rig), quantity.Opt[quantity.Length]{}
		lib.Rig.Defaults.Bed, lib.Washes[0].Wash.Bed = "", ""
		entry := model.Entry{ID: "c234567890123456", At: at, Body: &model.Refill{Bed: lib.Rig.Beds[0].Name, Resin: quantity.Some(log)}}
		memory := planner.Memory{Past: planner.Recall(model.NewLog([]model.Entry{entry}), lib.Rig, lib.Places)}
		p, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
		require.NoError(t, err)
		return p
	}
	half := 0.5 * quantity.CubicFoot
	p := planned(5*quantity.CubicFoot, half)
	assert.InDelta(t, 0.5, p.Bed.Resin.CubicFeet(), 1e-9)
	assert.Equal(t, "your log", sourceOf(t, p, "bed resin volume").Text)
	assert.Equal(t, tag.Source{Tag: tag.Practice, Text: "the proportions of half a cubic foot in 8 in, for the rig's resin volume"}, sourceOf(t, p, "bed tank diameter"))
	i := slices.IndexFunc(p.Warnings, func(n planner.Note) bool { return n.Code == planner.FillOfLog })
	require.GreaterOrEqual(t, i, 0)
	assert.Equal(t, "In the tank is what the log says was filled in on 2026-05-03, 0.5 ft3 of resin, and not the rig's 5 ft3. To change that, log a change of resin, or correct that entry.", p.Warnings[i].Text(quantity.US))
	for _, log := range []quantity.Volume{half, 14 * quantity.Litre} {
		p := planned(half, log)
		assert.NotContains(t, codes(p.Warnings), planner.FillOfLog, "it is half a cubic foot, to rounding")
		assert.Equal(t, "you stated it", sourceOf(t, p, "bed resin volume").Text)
		assert.Equal(t, tag.Source{Tag: tag.Practice, Text: "the proportions of half a cubic foot in 8 in"}, sourceOf(t, p, "bed tank diameter"))
	}
}
