package washday

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/ui/theme"
)

// atThePen is a wash whose flush has run, before its reading.
func atThePen(t *testing.T) *player {
	return fresh(t, "enter space 5m enter").to(model.Flush).keys("space 5m enter")
}

// A slip is put right by typing the reading once more: the bed is believed as if it had
// been read right at once.
func TestASecondReadingTakesThePlaceOfASlip(t *testing.T) {
	right := atThePen(t).keys("r '4' enter")
	p := atThePen(t).keys("r '14' enter esc r '4' enter")
	assert.Contains(t, oneLine(p.seen()), "No DI water has run since 14 ppm NaCl was read. Does 4 ppm NaCl take its place? y: it does, and that one is struck out. n: both stand.")
	assert.Equal(t, []string{"14 ppm NaCl"}, readingsOf(p.b.log), "nothing is written before the answer")
	p.keys("5 enter")
	assert.Contains(t, p.seen(), "take its place?", "neither a digit nor a second tap of enter is an answer")
	assert.Equal(t, []string{"14 ppm NaCl"}, readingsOf(p.b.log))
	p.keys("y")
	assert.Equal(t, []string{"4 ppm NaCl"}, readingsOf(p.b.log.Effective()))
	assert.Equal(t, []string{"14 ppm NaCl", "4 ppm NaCl"}, readingsOf(p.b.log), "struck out, not gone")
	assert.Equal(t, right.seen(), p.seen())
}

// Where the water has changed both count; esc writes nothing.
func TestBothReadingsMayStand(t *testing.T) {
	p := atThePen(t).keys("r '4' enter r '3' enter esc")
	assert.Contains(t, p.seen(), nothingWritten)
	p.keys("r '3' enter n")
	assert.Equal(t, []string{"4 ppm NaCl", "3 ppm NaCl"}, readingsOf(p.b.log.Effective()))
	assert.Contains(t, p.seen(), "the water is good now")
}

// A reading is asked about only while no water has run since.
func TestAfterWaterAReadingIsAnother(t *testing.T) {
	p := atThePen(t).keys("r '4' enter enter").to(model.LetDry).keys("enter space 3m r '5' enter")
	assert.Equal(t, []string{"4 ppm NaCl", "5 ppm NaCl"}, readingsOf(p.b.log.Effective()))
}

// What was said of the flush holds for the reading that takes the place.
func TestASlipOfAFirstCupIsAFirstCupStill(t *testing.T) {
	p := short(t).keys("r '14 ppm NaCl' enter n esc r '4 ppm NaCl' enter y")
	assert.Equal(t, model.No, sampleOf(t, p).Flushed)
	assert.Contains(t, p.seen(), "A FIRST CUP, no go yet")
}

func TestTheLastReadingIsTakenBack(t *testing.T) {
	p := atThePen(t)
	assert.Contains(t, p.keys("u").seen(), "Not now: no reading of this wash stands")
	p.keys("r '4' enter r '14' enter n esc u")
	assert.Contains(t, p.seen(), "Taken back: 14 ppm NaCl, struck out in the log.")
	assert.Contains(t, p.seen(), "GO: ")
	p.keys("u")
	assert.Contains(t, p.seen(), "Hold the pen in the stream")
	assert.Empty(t, readingsOf(p.b.log.Effective()))
}

// What cannot be written is told, and tried again: the log has it once in the end.
func TestATakeBackThatTheLogDoesNotTakeAtOnce(t *testing.T) {
	p := atThePen(t).keys("r '4' enter")
	p.b.logFail = errFull
	assert.Contains(t, p.keys("r '5' enter y").seen(), "NOT WRITTEN")
	assert.Equal(t, []string{"4 ppm NaCl"}, readingsOf(p.b.log.Effective()))
	p.b.logFail = nil
	p.m = Open(p.m.o).(Model)
	p.keys("enter")
	assert.Equal(t, []string{"5 ppm NaCl"}, readingsOf(p.b.log.Effective()))
}

func TestReadingsAreTakenBackByWords(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	said := talked(t, o, "next", "next", "next", "next", "next", "next", "reading 5", "reading 4", "yes", "reading 3", "no", "undo", "back")
	assert.Contains(t, said, "No DI water has run since 5 ppm NaCl was read. Does 4 ppm NaCl take its place? yes, or no where both stand")
	assert.Contains(t, said, "Taken back: 3 ppm NaCl, struck out in the log.")
	assert.Equal(t, []string{"4 ppm NaCl"}, readingsOf(b.log.Effective()))
}

// A rehearsal has no log to strike out in.
func TestARehearsalTakesBackTooAndWritesNothing(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Rehearsal = true
	p := play(t, b, o, "").to(model.Read).keys("r '4' enter u")
	assert.Contains(t, p.seen(), "Taken back: 4 ppm NaCl.")
	assert.NotContains(t, p.seen(), "struck")
	assert.Empty(t, b.log)
}

// Where a reading is over the limit it may be a slip: what takes it back is at the foot, at
// the pen and while the water runs.
func TestTakingBackIsAtTheFootWhereAReadingIsOverTheLimit(t *testing.T) {
	foot := func(p *player) string { return lastLine(p.seen()) }
	assert.Regexp(t, `^u undo reading   w ways out   a go all the same   r reading `, foot(atThePen(t).keys("r '14' enter esc")))
	p := fresh(t, "").to(model.Flush).keys("space 30s r '200 ppm' enter y")
	assert.Contains(t, p.seen(), "OVER THE LIMIT: 200 ppm")
	assert.Regexp(t, `^u undo reading   w ways out   r reading   space stop `, foot(p))
	p.keys("u")
	assert.Contains(t, p.seen(), "Taken back: 200 ppm")
	assert.NotRegexp(t, "^u ", foot(p))
	assert.Contains(t, foot(short(t).keys("r '1 ppm NaCl' enter n")), "u undo reading", "a first cup is no go either")
}

// While a wash that was left is offered, nothing of it changes, and that is said.
func TestNothingIsTakenBackBeforeTheWashIsGoneOnWith(t *testing.T) {
	p := atThePen(t).keys("r '4' enter")
	again := play(t, p.b, p.b.options(), "")
	assert.Contains(t, again.keys("u").seen(), "Not now: go on with the wash first.")
	assert.Contains(t, again.keys("r '6 ppm' enter").seen(), "It stands at step 7 of 32", "what is typed behind it is no command")
	assert.Equal(t, []string{"4 ppm NaCl"}, readingsOf(p.b.log.Effective()))
	assert.Contains(t, again.keys("enter u").seen(), "Taken back: 4 ppm NaCl")
}

func lastLine(frame string) string {
	lines := strings.Split(frame, "\n")
	return lines[len(lines)-1]
}

// What is left and its chance are as they were when a reading has been taken back.
func TestAReadingTakenBackLeavesWhatIsLeftAsItWas(t *testing.T) {
	p := fresh(t, "").to(model.Read)
	before := p.m.u.Outlook
	p.keys("r '7 ppm NaCl' enter")
	assert.NotEqual(t, before, p.m.u.Outlook)
	p.keys("u")
	assert.Equal(t, before, p.m.u.Outlook)
}
