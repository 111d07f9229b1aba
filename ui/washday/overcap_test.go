package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/ui/theme"
)

// firstDI is a wash at its first rinse with DI water.
func firstDI(t *testing.T) *player {
	return atThePen(t).keys("r '3 ppm NaCl' enter enter").to(model.LetDry).keys("enter")
}

// A flow that the bed cannot purify is told at once, and stays told in large until it is
// throttled; the hand is as fast as before, so the time stays and the gallons grow.
func TestAFlowOverTheCapIsToldUntilItIsThrottled(t *testing.T) {
	p := firstDI(t)
	require.Contains(t, p.seen(), "0.0 gal of 9.9 gal")
	p.keys("f '5 gal in 60 s' enter")
	assert.Contains(t, p.seen(), "Measured: 5 gpm, over the cap: throttle.")
	what, _, _ := p.m.headWords()
	assert.Equal(t, "over cap", what)
	assert.Contains(t, oneLine(p.seen()), "This flow is OVER THE CAP of 2.49 gpm: throttle until a gallon jug takes 24 s or longer, then f measures again.")
	assert.Contains(t, p.seen(), "This step: 0:00 of 7:36, 0.0 gal of 38.1 gal")
	p.keys("space 60s")
	what, _, _ = p.m.headWords()
	assert.Equal(t, "over cap", what, "as long as it holds")
	p.keys("f '24 s' enter")
	what, _, _ = p.m.headWords()
	assert.Equal(t, "final rinse", what)
	assert.NotContains(t, p.seen(), "OVER THE CAP")
	assert.Contains(t, oneLine(p.seen()), "Measured: 2.5 gpm")
}

// At the reading it is the flow that is over the cap, no pen; and in litres the jug is one
// of litres, as on the plan.
func TestAFlowOverTheCapAtTheReadingAndInLitres(t *testing.T) {
	p := fresh(t, "").to(model.Read).keys("f '5 gpm' enter")
	require.Equal(t, model.Read, p.m.step().Kind)
	assert.Contains(t, oneLine(p.seen()), "This flow is OVER THE CAP of 2.49 gpm: throttle until a gallon jug takes 24 s or longer")
	p.keys("m")
	assert.Contains(t, oneLine(p.seen()), "This flow is OVER THE CAP of 9.43 L/min: throttle until 10 L takes 64 s or longer, then f measures again.")
	assert.NotContains(t, p.keys("f").seen(), "46 s", "the example is of litres")
	p = firstDI(t).keys("m")
	assert.Contains(t, oneLine(p.seen()), "cap 9.43 L/min: 10 L takes 64 s or longer")
	assert.Contains(t, oneLine(p.keys("f '6 L/min' enter").seen()), "and the litres change.")
}

// Where no face gets less than what replaces its film, and in a flush, it is the time that
// changes.
func TestWhatAMeasuredFlowChanges(t *testing.T) {
	assert.Contains(t, oneLine(firstDI(t).keys("f '1.5 gpm' enter").seen()), "the hand sets the time, and the gallons change.")
	assert.Contains(t, oneLine(firstDI(t).keys("f '0.5 gpm' enter").seen()), "so much water is needed, and the time changes.")
	assert.Contains(t, oneLine(fresh(t, "").to(model.Flush).keys("f '1 gpm' enter").seen()), "so much water is needed, and the time changes.")
}

// Water that bypasses the bed has no cap.
func TestNoCapWhereTheBedIsBypassed(t *testing.T) {
	assert.NotContains(t, fresh(t, "enter f '5 gpm' enter").seen(), "OVER THE CAP")
}

func TestAFlowOverTheCapByWords(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	said := talked(t, o, "next", "next", "next", "next", "next", "next", "flow 5 gpm", "back")
	assert.Contains(t, said, "Measured: 5 gpm, over the cap: throttle.")
	assert.Contains(t, said, "read the pen, over the cap")
	assert.Contains(t, said, "throttle until a gallon jug takes 24 s or longer, then flow measures again.")
}

// A flush goes to waste, so it may run faster than the bed can purify, but no faster than the
// tank allows; the rinse after it may not.
func TestAFlushMayRunOverTheCap(t *testing.T) {
	p := fresh(t, "").to(model.Flush).keys("f '4 gpm' enter")
	what, _, _ := p.m.headWords()
	assert.Equal(t, "flush", what)
	frame := oneLine(p.seen())
	assert.NotContains(t, frame, "OVER THE CAP")
	assert.Contains(t, frame, "to waste it may run faster than the cap of 2.49 gpm, the rinse not")
	assert.NotContains(t, frame, "throttle")
	assert.Contains(t, frame, "Measured: 4 gpm, for this flush alone: the rinse keeps its own flow.")
	p.keys("f '12 gpm' enter")
	assert.Contains(t, oneLine(p.seen()), "This flow is OVER THE CAP of ")
	p.keys("f '4 gpm' enter enter")
	assert.NotContains(t, oneLine(p.seen()), "OVER THE CAP", "nobody rinses at 4 gpm")
	p.keys("f '4 gpm' enter")
	assert.Contains(t, oneLine(p.seen()), "This flow is OVER THE CAP of 2.49 gpm", "what is measured at the pen is the rinse's")
}
