package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/theme"
)

// A reading over what goes into the bed looks like a slip of wet hands: it is asked about
// once, where it was typed, and the log gets nothing before the answer.
func TestAReadingOverTheFeedIsAskedAbout(t *testing.T) {
	p := fresh(t, "enter space 5m enter").to(model.Flush).keys("space 5m enter r '900' enter")
	logged, deeds := len(p.b.log), len(p.m.u.Deeds)
	assert.Regexp(t, `The pen shows: 900 ppm NaCl *\n *Over the \d+ ppm NaCl that goes into the bed\. Write it all the same\? y or n`, p.seen())
	p.keys("5")
	assert.Contains(t, p.seen(), "The pen shows: 900 ", "a digit is no answer")
	p.keys("n")
	assert.Contains(t, p.seen(), "Not written: type it anew.")
	p.keys("'900' enter esc")
	assert.Contains(t, p.seen(), nothingWritten)
	assert.Len(t, p.b.log, logged)
	assert.Len(t, p.m.u.Deeds, deeds)
	p.keys("r '900' enter y")
	assert.Equal(t, "900 ppm NaCl", sampleOf(t, p).Reading.Or(quantity.Reading{}).String())
	assert.Contains(t, p.seen(), "NO-GO")
}

// What a bed can read is written without a word more, however poor it is.
func TestAReadingUnderTheFeedIsNotAskedAbout(t *testing.T) {
	p := fresh(t, "enter space 5m enter").to(model.Flush).keys("space 5m enter r '100' enter")
	assert.Equal(t, "100 ppm NaCl", sampleOf(t, p).Reading.Or(quantity.Reading{}).String())
}

// After it, the question of the flush is asked as of any reading.
func TestAfterTheSlipTheFlushIsAskedAbout(t *testing.T) {
	p := short(t).keys("r '900' enter y")
	assert.Contains(t, p.seen(), "flushed all the same?")
	p.keys("y")
	assert.Equal(t, model.Yes, sampleOf(t, p).Flushed)
}

func TestTheSlipByWords(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	said := talked(t, o, "next", "next", "next", "next", "next", "next", "reading 900", "no", "2", "back")
	assert.Contains(t, said, "that goes into the bed. Write it all the same? yes or no")
	assert.Contains(t, said, "GO: the pen shows no more than")
	assert.Equal(t, []string{"2 ppm NaCl"}, readingsOf(b.log))
}

func readingsOf(log model.Log) []string {
	var all []string
	for i := range log {
		if s, is := log[i].Body.(*model.Sample); is {
			all = append(all, s.Reading.Or(quantity.Reading{}).String())
		}
	}
	return all
}

// A bare number is given no scale that nobody said, and it is told which it counts on.
func TestABareReadingIsGivenNoScaleThatNobodySaid(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Rig.Pens = nil
	p := play(t, b, o, "").to(model.Read).keys("r 5")
	assert.Contains(t, p.seen(), "enter takes it as 5 ppm; no scale said: counted as NaCl")
	p.keys("enter n")
	assert.Equal(t, []string{"5 ppm"}, readingsOf(p.b.log))
}

// A slipped point makes a reading ten times as much: what is far above the reading before it,
// and above what such a bed shows by now, is asked about before it is a no-go.
func TestAReadingFarAboveTheLastIsAskedAbout(t *testing.T) {
	b := &bay{}
	b.log = model.NewLog([]model.Entry{{
		ID: "yesterday1", At: model.MomentOf(b.instant().Wall.AddDate(0, 0, -1)),
		Body: &model.Sample{
			Point: model.AfterBed, Bed: "half-foot tank", Place: "Juniper Flats", Pen: "yellow pen", Flushed: model.Yes,
			Reading: quantity.Some(quantity.PPM(4, quantity.ScaleNaCl)), Flow: quantity.Some(1.3 * quantity.GPM),
		},
	}})
	p := play(t, b, b.options(), "").to(model.Read).keys("r '50' enter")
	assert.Contains(t, oneLine(p.seen()), "50 ppm NaCl, really? The bed read 4 ppm NaCl on 2026-05-15, and nine such beds in ten show no more than ")
	assert.Len(t, readingsOf(b.log), 1)
	p.keys("n '5.0' enter")
	assert.Equal(t, []string{"4 ppm NaCl", "5 ppm NaCl"}, readingsOf(b.log))
}
