package washday

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/ui/theme"
)

// short is a wash whose flush was ended after a second.
func short(t *testing.T) *player { return fresh(t, "").to(model.Flush).keys("space 1s enter") }

// sampleOf is the last reading in the log.
func sampleOf(t *testing.T, p *player) *model.Sample {
	t.Helper()
	for i := len(p.b.log) - 1; i >= 0; i-- {
		if s, is := p.b.log[i].Body.(*model.Sample); is {
			return s
		}
	}
	require.Fail(t, "no reading is written")
	return nil
}

func TestAFlushCutShortIsToldAndAsked(t *testing.T) {
	p := short(t)
	assert.Contains(t, p.seen(), "Only 0.0 gal of 6.1 gal were run out: standing water reads too low. b goes back")
	assert.Contains(t, p.seen(), "The flush was cut short: b goes back and runs the rest.")
	p.keys("r '1 ppm NaCl' enter")
	assert.Contains(t, p.seen(), "flushed all the same?")
	logged := len(p.b.log)
	p.keys("esc")
	assert.Contains(t, p.seen(), "Nothing was written.")
	assert.Len(t, p.b.log, logged)
	p.keys("r '1 ppm NaCl' enter n")
	assert.Equal(t, model.No, sampleOf(t, p).Flushed)
	assert.Contains(t, p.seen(), "A FIRST CUP, no go yet")
	assert.Contains(t, p.keys("enter").seen(), "Not now: a first cup reads too low")
	require.Equal(t, model.Read, p.m.step().Kind)
	p.keys("a enter")
	assert.Equal(t, model.Work, p.m.step().Kind)
}

// By words the question is answered by yes or no, and the hints name words.
func TestTheQuestionByWords(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	said := talked(t, o, "next", "next", "next", "next", "next", "skip", "reading 1 ppm NaCl", "no", "before", "next", "reading 1 ppm NaCl", "back")
	assert.Contains(t, said, "The flush was left out: before goes back and runs it.")
	assert.Contains(t, said, "Was the bed flushed all the same? yes, or no for a first cup")
	assert.Contains(t, said, "A FIRST CUP, no go yet")
	assert.Contains(t, said, "GO: the pen shows no more than")
	assert.NotContains(t, said, "b goes back")
}

// A reading while the flush runs is no gate, and a first cup all the same.
func TestAFirstCupWhileTheFlushRuns(t *testing.T) {
	p := fresh(t, "").to(model.Flush).keys("r '1 ppm NaCl' enter n")
	assert.Equal(t, model.No, sampleOf(t, p).Flushed)
	assert.Contains(t, p.seen(), "Written as a first cup, and not used.")
}

func TestAFlushThatIsLeftOutIsAskedAboutToo(t *testing.T) {
	p := fresh(t, "").to(model.Flush).keys("s")
	assert.Contains(t, p.seen(), "The flush was left out: b goes back and runs it.")
	assert.Contains(t, p.keys("r '1 ppm NaCl' enter").seen(), "Only 0.0 gal of 6.1 gal were run out")
}

// The rest of the flush is run, and then the reading counts without a question.
func TestTheRestOfTheFlushIsRun(t *testing.T) {
	p := short(t).keys("r '1 ppm NaCl' enter n b space 300s enter r '1 ppm NaCl' enter")
	assert.Contains(t, p.seen(), "GO: the pen shows no more than the limit")
	assert.Equal(t, model.Yes, sampleOf(t, p).Flushed)
}

func TestThePersonMaySayThatItWasFlushed(t *testing.T) {
	p := short(t).keys("r '1 ppm NaCl' enter y")
	assert.Contains(t, p.seen(), "GO: the pen shows no more than the limit")
	assert.Equal(t, model.Yes, sampleOf(t, p).Flushed)
	p.keys("r '2 ppm NaCl' enter n")
	assert.Contains(t, p.seen(), "GO: the pen shows no more than the limit", "said once, it is not asked again")
	p.keys("b enter r '2 ppm NaCl' enter")
	assert.Contains(t, p.seen(), "Was the bed", "another flush is another question")
}

// Of a flush that runs still, little is out.
func TestAReadingInTheMiddleOfTheFlushIsAFirstCup(t *testing.T) {
	p := fresh(t, "").to(model.Flush).keys("space 30s r '1 ppm NaCl' enter")
	assert.Contains(t, p.seen(), "Only 0.7 gal of 6.1 gal were run out")
	p.keys("n")
	assert.Equal(t, model.No, sampleOf(t, p).Flushed)
	assert.True(t, p.m.state.Running, "the flush runs on")
}

// The first DI rinse comes an hour after the reading: what the bed did meanwhile is told
// before the water is turned on, and a reading of it is asked about.
func TestABedThatStoodIsToldAtItsNextWater(t *testing.T) {
	p := fresh(t, "enter").to(model.Read).keys("r '3 ppm NaCl' enter enter").to(model.LetDry)
	p.keys("58m enter")
	require.Equal(t, model.DI, p.m.step().Water)
	assert.Contains(t, oneLine(p.seen()), "The bed has stood 58 min: purer water, none to waste; a new reading counts after 6.1 gal.")
	p.keys("r '1 ppm NaCl' enter")
	assert.Contains(t, oneLine(p.seen()), "The bed has stood 58 min. Only 0.0 gal of 6.1 gal were run out: standing water reads too low. Was the bed flushed all the same?")
	p.keys("n")
	assert.Equal(t, model.No, sampleOf(t, p).Flushed)
	p.keys("space 5m")
	assert.NotContains(t, p.seen(), "has stood")
	p.keys("r '2 ppm NaCl' enter")
	assert.Equal(t, model.Yes, sampleOf(t, p).Flushed, "a rinse flushes the bed as well")
}

func oneLine(frame string) string { return strings.Join(strings.Fields(frame), " ") }
