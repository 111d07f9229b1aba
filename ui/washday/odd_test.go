package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/theme"
)

// newBed is the bay with resin that has given nothing.
func newBed() (*bay, Options) {
	b := &bay{}
	o := b.options()
	o.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
	return b, o
}

// While the flush runs as well, no figure of the bed stands beside a reading that no bed
// explains; and to read again comes before the ways out.
func TestNoFigureStandsBesideAReadingThatFitsNoBed(t *testing.T) {
	b, o := newBed()
	p := play(t, b, o, "").to(model.Flush)
	assert.Contains(t, p.seen(), "Left in the bed: about")
	p.keys("space 30s r '200 ppm' enter y")
	assert.Contains(t, p.seen(), "OVER THE LIMIT: 200 ppm")
	for _, figure := range []string{"Left in the bed", "At the end", "over 99 %"} {
		assert.NotContains(t, p.seen(), figure)
	}
	assert.Contains(t, oneLine(p.seen()), "200 ppm fits no bed like this: what is left and the chance hold only without that reading. Is the bypass shut?")
	p.keys("w")
	assert.Contains(t, p.seen(), "1 read again  first: is the bypass shut?")
	assert.Contains(t, p.keys("enter").seen(), "The pen shows: ")
	p.keys("'1 ppm NaCl' enter n")
	assert.Contains(t, p.seen(), "Left in the bed: about")
	assert.NotContains(t, p.keys("w").seen(), "read again")
}

// Beside an end that is better than what was read stands why: on resin that has given nothing
// the one or the other is wrong. A reading within a pen's error needs no word.
func TestAnEndThatIsBetterThanTheReadingIsExplained(t *testing.T) {
	b, o := newBed()
	p := play(t, b, o, "").to(model.Read).keys("r '3.3 ppm NaCl' enter")
	frame := oneLine(p.seen())
	assert.Contains(t, frame, "GO: ")
	assert.Regexp(t, `At the end: under 0.1 ppm if the pen errs, else 3.3 ppm NaCl as read; lasts: .*Try the pen in distilled water: if it shows none there, the bed lets so much go now and to the end`, frame)
	assert.Contains(t, oneLine(p.keys("enter").seen()), "else 3.3 ppm NaCl as read", "and in the steps that follow")
	b, o = newBed()
	p = play(t, b, o, "").to(model.Read).keys("r '1 ppm NaCl' enter")
	assert.NotContains(t, oneLine(p.seen()), "the pen errs")
}

// A first cup that is within the limit is not called the reading that fits no bed.
func TestAFirstCupIsNotTheReadingInDoubt(t *testing.T) {
	b, o := newBed()
	p := play(t, b, o, "").to(model.Flush).keys("space 30s r '200 ppm' enter y r '3 ppm NaCl' enter n")
	assert.NotContains(t, oneLine(p.seen()), "3 ppm NaCl fits no bed")
}

// It is told in the steps that follow as well, and after the program was ended; a step
// without DI water has nothing to read.
func TestTheDoubtOutlivesTheStepAndTheProgram(t *testing.T) {
	b, o := newBed()
	p := play(t, b, o, "").to(model.Read).keys("r '200 ppm' enter esc a enter")
	assert.Contains(t, oneLine(p.seen()), "See to pen and scale too. Then:")
	assert.NotContains(t, p.keys("w").seen(), "read again  first")
	p = play(t, b, o, "enter")
	assert.Contains(t, oneLine(p.seen()), "200 ppm fits no bed like this")
	p.keys("u")
	assert.Contains(t, p.seen(), "Left in the bed: about")
}

// The doubt that the plan has already is that of the wash that begins.
func TestAWashBeginsInDoubtWhereItsPlanDoes(t *testing.T) {
	b, o := newBed()
	ended := play(t, b, o, "").to(model.Read).keys("r '200 ppm' enter esc x y")
	assert.Contains(t, oneLine(ended.seen()), "That holds only without the last reading in the log, which fits no bed like this")
	p := play(t, b, o, "")
	assert.Zero(t, p.m.state.At)
	assert.Contains(t, oneLine(p.seen()), "The last reading in the log fits no bed like this")
}

func TestReadingAgainByWords(t *testing.T) {
	_, o := newBed()
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	said := talked(t, o, "next", "next", "next", "next", "next", "next", "reading 200 ppm", "1", "2 ppm NaCl", "yes", "back")
	assert.Contains(t, said, "read again")
	assert.Contains(t, said, "GO: the pen shows no more than")
}
