package bed

import (
	"fmt"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
)

// washDay is a wash as the wash day writes it: its stages, a reading with the gallons that it
// counted, the wash.
func washDay(soFar quantity.Volume) model.Log {
	at := func(minute int) model.Moment {
		return model.MomentOf(time.Date(2026, 9, 12, 18, minute, 0, 0, time.UTC))
	}
	stage := func(n int) model.Entry {
		return model.Entry{ID: fmt.Sprintf("stage%02d", n), At: at(10 * n), Body: &model.StageDone{
			Wash: "washed", Stage: "final rinse", Water: model.DI, Place: "Juniper Flats", Bed: "half-foot tank", Used: quantity.Some(12 * quantity.Gallon),
		}}
	}
	read := reading("inwash", 12, 4)
	read.At = at(15)
	s := read.Body.(*model.Sample)
	s.Wash, s.SoFar = "washed", quantity.Some(soFar+12*quantity.Gallon)
	return model.Log{stage(1), read, stage(2), {ID: "washed", At: at(30), Body: &model.WashDone{
		Place: "Juniper Flats", Bed: "half-foot tank", DI: quantity.Some(24 * quantity.Gallon),
	}}}
}

// Striking out a wash takes the water of its stages back, and that which its readings
// counted; it is one deed, which one undo takes back.
func TestAStruckWashGivesItsWaterBack(t *testing.T) {
	before := play(t, seasonOptions(t), "").M.given()
	o := options(model.NewLog(slices.Concat(seasonLog(t), washDay(before))))
	p := play(t, o, "/ '24 gal DI' enter")
	assert.InDelta(t, (before + 24*quantity.Gallon).Gallons(), p.M.given().Gallons(), 1e-6)
	p.Keys("x")
	assert.Contains(t, oneLine(p.Seen()), "Strike out the wash of 2026-09-12 18:30 UTC, with its 2 stages? It stays to be seen; its reading stays.")
	p.Keys("y")
	assert.InDelta(t, before.Gallons(), p.M.given().Gallons(), 1e-6)
	assert.Contains(t, oneLine(p.Seen()), "Struck out, with its 2 stages; its reading stays; x again lets it count.")
	assert.Contains(t, oneLine(p.Seen()), "The fill has given "+quantity.Show(before, quantity.US)+", was "+quantity.Show(before+24*quantity.Gallon, quantity.US)+".")
	p.Keys("esc / 'with its wash' enter x")
	assert.Contains(t, oneLine(p.Seen()), "It is struck out with its wash, the wash of 2026-09-12, and counts again with it.")
	p.Keys("esc u y")
	assert.InDelta(t, (before + 24*quantity.Gallon).Gallons(), p.M.given().Gallons(), 1e-6)
}
