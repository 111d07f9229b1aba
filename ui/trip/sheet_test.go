package trip

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/layout"
)

// A new date is typed over the old one, and the hint says so; or the old one is changed.
func TestADateIsTypedOver(t *testing.T) {
	o, k := ours()
	p := play(t, o, "down enter enter")
	assert.Contains(t, p.Seen(), "type a new one, like 2026-06-12, 06-12, tomorrow or fri.")
	p.Keys("'2026-05-30' enter")
	assert.Equal(t, "2026-05-30", k.trips[0].Stops[0].Date.Words())
	p.Keys("up enter backspace '1' enter")
	assert.Equal(t, "2026-05-31", k.trips[0].Stops[0].Date.Words())
	p.Keys("up enter enter")
	assert.Equal(t, "2026-05-31", k.trips[0].Stops[0].Date.Words(), "looking changes nothing")
}

// Where a wash is at risk and no day is worth a change, what is said of the change does
// not speak against the day to order by: a spare fill is carried.
func TestASpareFillIsNoContradiction(t *testing.T) {
	o, _ := ours()
	o.Keeper.(*memory).trips[0].Washes = o.Keeper.(*memory).trips[0].Washes[:1]
	o.Rig.Beds = append([]model.Bed(nil), o.Rig.Beds...)
	o.Rig.Beds[0].SoFar = quantity.Some(150 * quantity.Gallon)
	p := play(t, o, "")
	require.True(t, p.M.plan.Carry.Spare)
	frame := p.Seen()
	assert.Contains(t, frame, "No change on a set day: carry a spare fill, and change when the pen says so.")
	assert.Contains(t, frame, "Order resin by")
	assert.NotContains(t, frame, "none is advised")
	p.S = layout.Size{W: 200, H: 40}
	assert.Contains(t, p.Seen(), "Have a fill along as a spare, and change when the pen shows the limit.")
}

// A text meant for a value, typed where no text goes, is no string of commands.
func TestTextOnALineOfWordsDoesNothing(t *testing.T) {
	o, k := ours()
	p := play(t, o, "enter down 4 'u5r' enter")
	assert.NotNil(t, p.M.sheet)
	assert.NotNil(t, p.M.picker, "the enter behind it opens the list, and takes nothing")
	assert.Zero(t, k.kept)
}

// Words count from today, wherever the trip lies.
func TestADayOfATripIsTypedInWords(t *testing.T) {
	o, k := ours()
	p := play(t, o, "down enter enter 'tomorrow'")
	assert.Contains(t, p.Seen(), o.Today.Plus(1).Full())
	p.Keys("enter")
	assert.Equal(t, o.Today.Plus(1), k.trips[0].Stops[0].Date.Or(model.Date{}))
	assert.Contains(t, p.Seen(), o.Today.Plus(1).Full()+". Saved.")
	p.Keys("u")
	assert.Equal(t, "2026-06-01", k.trips[0].Stops[0].Date.Words())
}

// A day without its year is the next such one not before the trip's start.
func TestADayIsTypedWithoutItsYear(t *testing.T) {
	for typed, want := range map[string]string{"06-13": "2026-06-13", "6-7": "2026-06-07", "05-31": "2027-05-31", "02-29": "2028-02-29", "13-01": "2026-06-06", "2026-06-14": "2026-06-14"} {
		o, k := ours()
		play(t, o, "down down enter enter '"+typed+"' enter")
		assert.Equal(t, want, k.trips[0].Washes[0].Date.Words(), typed)
	}
	o, k := ours()
	play(t, o, "down enter enter '05-30' enter")
	assert.Equal(t, "2026-05-30", k.trips[0].Stops[0].Date.Words(), "the start itself may be earlier, not before today")
}

// A minus begins a text as a digit does, so that nothing else is taken in its place.
func TestANumberBelowZeroIsRefusedAndSaid(t *testing.T) {
	o, k := ours()
	was := k.trips[0].Lead
	p := play(t, o, "enter down down down down '-5' enter")
	assert.Contains(t, p.Seen(), `Not taken: lead time of resin "-5" is below zero`)
	assert.Equal(t, was, k.trips[0].Lead)
}

// A bare limit is offered the pen's scale, and none where the pen states none.
func TestABareLimitGetsNoScaleThatNobodySaid(t *testing.T) {
	o, k := ours()
	limit := "enter" + strings.Repeat(" down", 6) + " '8' enter"
	play(t, o, limit)
	assert.Equal(t, "8 ppm NaCl", k.trips[0].Limit.Words())
	o, k = ours()
	o.Rig.Pens = nil
	assert.Contains(t, play(t, o, limit).Says(), "no scale said: counted as NaCl.")
	assert.Equal(t, "8 ppm", k.trips[0].Limit.Words())
}

// A letter by itself begins no text on a line of a sheet either.
func TestALetterThatIsNoKeyBeginsNoText(t *testing.T) {
	o, k := ours()
	was := k.trips[0].Name
	p := play(t, o, "enter 'o'")
	assert.Contains(t, p.Says(), "o is no key here: enter, then type.")
	assert.Nil(t, p.M.edit)
	p.Keys("enter")
	assert.Equal(t, was, k.trips[0].Name)
}

func TestATargetThatChangesNothingIsTold(t *testing.T) {
	o, _ := ours()
	p := play(t, o, "enter"+strings.Repeat(" down", 10)+" '100' enter")
	assert.Contains(t, p.Says(), "The target of 100 ppm NaCl changes no gallons: going over each face once with DI water does better than that already.")
	p.Keys("esc")
	assert.Contains(t, p.Seen(), "June loop: target 100 ppm NaCl")
	assert.Contains(t, strings.Join(strings.Fields(p.Page("y")), " "), "target in the film: 100 ppm NaCl, which sets no gallons")
}

// With metric units shown, a line of a trip takes metric units.
func TestABareNumberOfATripTakesTheUnitsShown(t *testing.T) {
	o, k := ours()
	o.Units = quantity.Metric
	p := play(t, o, "down enter")
	for p.M.sheet.key() != "on_hand" {
		p.Keys("down")
	}
	p.Keys("'400' enter")
	assert.Equal(t, "400 L", k.trips[0].Stops[0].OnHand.Words())
	assert.Equal(t, "Read as 400 L. Saved.", p.M.status)
}

// After a text that was refused a new one takes its place, or it is left, and that is told.
func TestARefusedTextIsNoTrap(t *testing.T) {
	o, k := ours()
	p := play(t, o, "down enter enter ctrl+u 'soon' enter")
	assert.True(t, p.M.Typing(), "a day may begin with a letter")
	p.Keys("'2026-06-03'")
	assert.Contains(t, p.Seen(), `In place of "soon", which was not taken.`)
	p.Keys("enter")
	assert.Equal(t, "2026-06-03", k.trips[0].Stops[0].Date.Or(model.Date{}).String())
	p.Keys("up enter 'later' enter down")
	assert.Nil(t, p.M.edit)
	assert.Contains(t, p.Seen(), `Not taken: `)
	assert.Equal(t, "2026-06-03", k.trips[0].Stops[0].Date.Or(model.Date{}).String())
}
