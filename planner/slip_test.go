package planner_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// What a bed cannot give or show looks like a slip of the hand; what it can does not.
func TestEntriesThatLookLikeASlip(t *testing.T) {
	rig, places, wash := threeFacts()
	p := mustMake(t, rig, places, wash)
	feed := p.Raw.TDS.Number
	after := func(ppm float64) *model.Sample {
		return &model.Sample{Point: model.AfterBed, Reading: quantity.Some(quantity.PPM(ppm, p.Raw.TDS.Scale))}
	}
	took := func(v quantity.Volume) *model.WashDone { return &model.WashDone{DI: quantity.Some(v)} }
	tap, elsewhere := after(3*feed), after(3*feed)
	tap.Point, elsewhere.Place = model.AtTap, "another place"
	for name, c := range map[string]struct {
		body model.Body
		code string
	}{
		"a tenth over the feed":        {after(1.1 * feed), "reading-over-feed"},
		"as the feed":                  {after(feed), ""},
		"as a good bed":                {after(2), ""},
		"at the tap":                   {tap, ""},
		"another water, of which none": {elsewhere, ""},
		"more than it ever gives":      {took(p.Bed.Remaining.P90 + quantity.Gallon), "wash-over-bed"},
		"what a good one has":          {took(p.Bed.Remaining.P90 - quantity.Gallon), ""},
		"a change of resin":            {&model.Refill{}, ""},
	} {
		note, odd := p.Slip(&rig, c.body)
		assert.Equal(t, c.code != "", odd, name)
		assert.Equal(t, c.code, note.Code, name)
	}
	note, _ := p.Slip(&rig, took(2000*quantity.Gallon))
	assert.Contains(t, note.Text(quantity.US), "2000 gal of DI water is more than this fill can have given")
}

// A bed that is used up goes on being washed with, reading by reading.
func TestAWashOfAUsedUpBedIsNoSlip(t *testing.T) {
	rig := model.Rig{}
	p := planner.Plan{Bed: planner.BedOutlook{SoFar: 300 * quantity.Gallon}}
	_, odd := p.Slip(&rig, &model.WashDone{DI: quantity.Some(30 * quantity.Gallon)})
	assert.False(t, odd)
	_, odd = p.Slip(&rig, &model.WashDone{DI: quantity.Some(301 * quantity.Gallon)})
	assert.True(t, odd)
}

// A reading that is ten times the one before it has a slipped point, unless the bed may have
// come to that since.
func TestAReadingFarAboveTheOneBeforeIsASlip(t *testing.T) {
	rig, places, wash := threeFacts()
	rig.Beds[0].SoFar = quantity.Some(100 * quantity.Gallon)
	reads := func(ppm float64) (planner.Note, bool) {
		p := mustMake(t, rig, places, wash)
		return p.Slip(&rig, &model.Sample{Point: model.AfterBed, Reading: quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl))})
	}
	_, odd := reads(50)
	assert.False(t, odd, "nothing was read before")
	rig.Beds[0].LastReading = quantity.Some(quantity.PPM(4, quantity.ScaleNaCl))
	note, odd := reads(50)
	assert.True(t, odd)
	assert.Equal(t, planner.ReadingJumped, note.Code)
	assert.Contains(t, note.Text(quantity.US), "50 ppm NaCl, really? The bed read 4 ppm NaCl when it was last read")
	for _, ppm := range []float64{0, 4, 8, 12} {
		_, odd = reads(ppm)
		assert.False(t, odd, ppm)
	}
	rig.Beds[0].LastReading = quantity.Some(quantity.PPM(0, quantity.ScaleNaCl))
	_, odd = reads(9)
	assert.False(t, odd, "near nothing a pen is off by as much")
	rig.Beds[0].LastReading, rig.Beds[0].Flushed = quantity.Some(quantity.PPM(4, quantity.ScaleNaCl)), model.No
	_, odd = reads(50)
	assert.False(t, odd, "a first cup is no measure")
}
