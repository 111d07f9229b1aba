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
	assert.Contains(t, oneLine(p.Seen()), "Strike out the wash of 2026-09-12 18:30 UTC, with its 2 stages? It stays to be seen. y: its reading stays, a: its reading too, or n")
	p.Keys("y")
	assert.InDelta(t, before.Gallons(), p.M.given().Gallons(), 1e-6)
	assert.Contains(t, oneLine(p.Seen()), "Struck out, with its 2 stages; its reading stays; x again lets it count.")
	assert.Contains(t, oneLine(p.Seen()), "The fill has given "+quantity.Show(before, quantity.US)+", was "+quantity.Show(before+24*quantity.Gallon, quantity.US)+".")
	p.Keys("esc / 'with its wash' enter x")
	assert.Contains(t, oneLine(p.Seen()), "It is struck out with its wash, the wash of 2026-09-12, and counts again with it.")
	p.Keys("esc u y")
	assert.InDelta(t, (before + 24*quantity.Gallon).Gallons(), p.M.given().Gallons(), 1e-6)
}

// A wash that never was goes with the readings of it, in one deed that one undo takes back.
func TestAWashIsStruckWithItsReadings(t *testing.T) {
	log := model.NewLog(slices.Concat(seasonLog(t), washDay(quantity.CubicFoot)))
	o := options(log)
	p := play(t, o, "/ '24 gal DI' enter x a")
	assert.Contains(t, oneLine(p.Seen()), "Struck out, with its 2 stages, its reading too.")
	assert.Equal(t, seasonLog(t).Effective(), o.book().Kept.Effective(), "as if it had never been written")
	p.Keys("esc u y")
	assert.Equal(t, log.Effective(), o.book().Kept.Effective())
	p.Keys("/ '24 gal DI' enter x n")
	assert.Contains(t, p.Seen(), "Left as it was.")
	assert.NotContains(t, play(t, seasonOptions(t), "x").Seen(), "all:", "an entry without readings has no such answer")
}

// A part that was struck out by itself is not said to be so with its wash, and a strike says
// which of a day's readings it is about.
func TestEachStrikeSaysWhatIsTrueOfIt(t *testing.T) {
	day := washDay(quantity.CubicFoot)
	day[1].Note = "before lunch"
	p := play(t, options(model.NewLog(slices.Concat(seasonLog(t), day))), "/ 'lunch' enter x y esc / 'strikes out the reading' enter")
	assert.Contains(t, p.Seen(), "strikes out the reading 4 ppm NaCl of 2026-09-12")
	p.Keys("esc / '24 gal DI' enter x y esc / 'lunch' enter")
	assert.Contains(t, p.Seen(), "struck out: 4 ppm NaCl", "as it was before its wash was")
	assert.NotContains(t, p.Seen(), "with its wash")
	p.Keys("x y")
	assert.NotContains(t, p.Seen(), "struck out: 4 ppm NaCl")
	p.Keys("esc / 'does nothing' enter")
	assert.Contains(t, p.Seen(), "struck out (does nothing): strikes out the r")
}
