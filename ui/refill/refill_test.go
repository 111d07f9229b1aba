package refill

import (
	"errors"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

var update = golden.Flag()

func TestFrames(t *testing.T) {
	for name, opt := range map[string]theme.Options{"dark": {Profile: termenv.ANSI256}, "plain": {Plain: true}} {
		for sizeName, size := range map[string]layout.Size{"80x24": {W: 80, H: 24}, "140x40": {W: 140, H: 40}} {
			o := desk(t)
			o.Theme, o.Size = theme.New(opt), size
			var all strings.Builder
			p := play(t, o, "")
			for range steps() {
				frame := p.M.View(size)
				hands.Fits(t, frame, size)
				all.WriteString(strings.ReplaceAll(frame, "\x1b", "^[") + "\n\n")
				p.Keys("right")
			}
			golden.Check(t, *update, name+"-"+sizeName+".txt", all.String())
		}
	}
}

// The figures for running on come before the change.
func TestWhenNotToChange(t *testing.T) {
	text := words(play(t, desk(t), ""))
	for _, want := range []string{"run on only with the new resin at hand", "about 7 in 10", "85 gal left (8 in 10: 40 to 150 gal)", "enough for 0 to 2 washes", "$0.87 a gallon", "Order new resin by 2026-09-18"} {
		assert.Contains(t, text, want)
	}
	for verdict, want := range map[planner.Verdict]string{planner.Lasts: "Not yet: run on.", planner.WillNotLast: "Slowing down does not bring a spent bed back"} {
		o := desk(t)
		o.Answer = func() (planner.Plan, *planner.Past, error) {
			p := sample.Plan()
			p.Verdict = verdict
			return p, nil, nil
		}
		assert.Contains(t, words(play(t, o, "")), want)
	}
}

// The user's own amounts, by hand: 0.7 ft3 from bags of half a cubic foot.
func TestAmounts(t *testing.T) {
	p := play(t, desk(t), "right")
	assert.Contains(t, words(p), "Buy 1 bag of 0.5 ft3")
	assert.Contains(t, words(p), "Nothing is left over")
	p.Keys("'0.7' enter")
	for _, want := range []string{"Buy 2 bags of 0.5 ft3: 1 ft3 to fill 0.7 ft3", "43 lb to 45 lb to carry (30.1 lb to 31.5 lb goes into the tank)", "0.3 ft3 is left over"} {
		assert.Contains(t, words(p), want)
	}
	p.Keys("down '1' enter")
	assert.Contains(t, words(p), "Buy 1 bag of 1 ft3")
	p.Keys("'99' enter")
	assert.Contains(t, p.Seen(), `Not taken: in one bag "99" is outside 0.02 ft3 to 10 ft3; write it like 0.5 ft3.`)
	p.Keys("esc '2' esc up")
	assert.Contains(t, words(p), "Buy 1 bag of 1 ft3")
	p.Keys("right right right right")
	assert.Contains(t, words(p), "Pour 0.7 ft3")
	p.Keys("right right right")
	assert.Contains(t, p.Seen(), "0.7 ft3", "the entry has it too")
}

// What method and law ask to be said is said.
func TestEveryCautionIsThere(t *testing.T) {
	p := play(t, desk(t), "")
	all := ""
	for range steps() {
		all += words(p)
		p.Keys("right")
	}
	for _, want := range []string{
		"releases the pressure", "lift with two", "local rules on run-off", "ball bearings", "local waste rules", "middle of the bottom", "threads", "O-ring",
		"stays free under the neck", "Hand-tight", "Never reverse the flow", "until the air is out", "Then flush: 4 gal at 1.4 gpm", "not for drinking", "bare copper and brass",
		"before frost", "pressure and the temperature on the tank's label", "27.4 lb of water", "expect 1 ppm or less", "64 gal further on",
	} {
		assert.Contains(t, all, want)
	}
}

func TestTheNewFillIsWritten(t *testing.T) {
	o := desk(t)
	o.Deeds = &entry.Deeds{}
	p := play(t, o, "right right right right right right right right")
	assert.Contains(t, p.Seen(), "The new fill, for the log")
	p.Keys("enter ctrl+u '$199' enter enter '26-0900' enter")
	assert.Error(t, p.M.Leave(), "stated and not written")
	p.Keys("w")
	assert.Contains(t, p.Seen(), "Written.")
	log := o.Logger.Log()
	r := log[len(log)-1].Body.(*model.Refill)
	assert.Equal(t, "half-foot tank", r.Bed)
	assert.Equal(t, "0.5 ft3", r.Resin.Words())
	assert.Equal(t, "$199", r.Price.Words())
	assert.Equal(t, "26-0900", r.Lot)
	assert.Equal(t, model.NewResin, r.State)
	assert.NoError(t, p.M.Leave())
	assert.Zero(t, p.M.past.Present().Gallons)

	p.Keys("right r 1 enter y")
	assert.Contains(t, p.Seen(), "Read: 1 ppm NaCl.")
	p.Keys("right r 0 enter n")
	assert.Contains(t, p.Seen(), "Read: 0 ppm NaCl, a first cup, not used.")
	assert.Len(t, p.M.past.Present().Readings, 2)
	back := p.Send(hands.Key("esc")).(screen.Back)
	assert.Equal(t, entry.Written{}, back.With)
	assert.Equal(t, 3, o.Deeds.Count(), "the fill and two readings, each to be undone by itself")
}

// The rig's price is filled in, and a bare number is in the rig's currency.
func TestThePriceComesFromTheRig(t *testing.T) {
	for script, want := range map[string]string{"w": "$185", "enter ctrl+u '130' enter w": "$130"} {
		o := desk(t)
		p := play(t, o, "right right right right right right right right")
		assert.Contains(t, p.Seen(), "$185")
		p.Keys(script)
		log := o.Logger.Log()
		assert.Equal(t, want, log[len(log)-1].Body.(*model.Refill).Price.Words())
	}
}

func TestFailedAppendKeepsTheFill(t *testing.T) {
	o := desk(t)
	o.Logger.(*sample.Log).Fail = errors.New("no space left on the disk")
	p := play(t, o, "right right right right right right right right w")
	assert.Contains(t, words(p), "Not written, but still here: no space left on the disk")
	assert.Contains(t, p.Seen(), "The new fill, for the log")
	assert.Error(t, p.M.Leave())
	o.Logger.(*sample.Log).Fail = nil
	p.Keys("w")
	assert.True(t, p.M.written)
	assert.NoError(t, p.M.Leave())
}

func TestReadingWaitsForTheFill(t *testing.T) {
	p := play(t, desk(t), "right right right right right right right right right r")
	assert.Contains(t, p.Seen(), "Not now: write the fill in the log first")
}

func TestUnitsAndWhy(t *testing.T) {
	p := play(t, desk(t), "m")
	assert.Contains(t, words(p), "a litre")
	msg := p.Send(hands.Key("y")).(screen.Go)
	page := ansi.Strip(msg.To.View(layout.Size{W: 80, H: 100}))
	for _, want := range []string{"weight of the resin", "43 to 45 lb/ft3", "first fill", "water in the tank", "PRACTICE"} {
		assert.Contains(t, page, want)
	}
	assert.Equal(t, quantity.Metric, p.M.sys)
}

func TestWithoutAPlan(t *testing.T) {
	o := desk(t)
	o.Answer = func() (planner.Plan, *planner.Past, error) {
		return planner.Plan{}, nil, errors.New("there is no bed yet")
	}
	assert.Contains(t, play(t, o, "right").Seen(), "No figures yet: there is no bed yet")
}

// A bare number has the unit of the amount that it takes the place of.
func TestABareAmountHasTheUnitThatStandsThere(t *testing.T) {
	o := desk(t)
	o.Units = quantity.Metric
	p := play(t, o, "right 2 0")
	assert.Contains(t, p.Seen(), "enter takes it as 20 L")
	p.Keys("enter")
	assert.Contains(t, words(p), "to fill 20 L")
}

// After an amount that was refused a new one takes its place, or it is left.
func TestARefusedAmountIsNoTrap(t *testing.T) {
	p := play(t, desk(t), "right '99' enter")
	assert.False(t, p.M.Typing(), "q and ? are keys")
	p.Keys("'0.7' enter")
	assert.Contains(t, words(p), "Buy 2 bags of 0.5 ft3: 1 ft3 to fill 0.7 ft3")
	p.Keys("'99' enter down")
	assert.Nil(t, p.M.edit)
	assert.Equal(t, 1, p.M.hand)
	assert.Contains(t, p.Seen(), `Not taken: `)
	assert.Contains(t, words(p), "Buy 2 bags of 0.5 ft3: 1 ft3 to fill 0.7 ft3")
}

// How many washes the bed gives is said in words that a person would use.
func TestEnoughForSoManyWashes(t *testing.T) {
	for want, washes := range map[string]planner.Band[float64]{
		"not enough for one wash like the next":      {P10: 0.1, P90: 0.9},
		"enough for 0 to 1 washes like the next one": {P10: 0.1, P90: 1.9},
		"enough for one wash like the next":          {P10: 1.1, P90: 1.9},
		"enough for 3 washes like the next one":      {P10: 3.1, P90: 3.9},
	} {
		assert.Equal(t, want, enoughFor(washes))
	}
}
