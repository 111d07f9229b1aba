package washday

import (
	"errors"
	"testing"
	"time"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/washday"
	"washeve/ui/entry"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

var update = golden.Flag()

// frames are the places of a wash that are stored.
func frames(t *testing.T) map[string]*player {
	return map[string]*player{
		"set-up":  fresh(t, ""),
		"running": fresh(t, "enter space 100s"),
		"over":    fresh(t, "enter space 6m"),
		"read":    fresh(t, "").to(model.Read).keys("r '14'"),
		"no-go":   fresh(t, "").to(model.Read).keys("r '14 ppm NaCl' enter esc"),
		"ways":    fresh(t, "").to(model.Read).keys("r '14 ppm NaCl' enter down"),
		"rinse":   fresh(t, "").to(model.Read).keys("r '3 ppm NaCl' enter enter").to(model.LetDry).keys("enter space 130s"),
		"done":    fresh(t, "enter space 5m enter").to(model.Flush).keys("space 4m enter r '3 ppm NaCl' enter").to(model.PackUp).keys("enter"),
	}
}

func TestFrames(t *testing.T) {
	for name, p := range frames(t) {
		for size, at := range map[string]layout.Size{"80x24": {W: 80, H: 24}, "140x40": {W: 140, H: 40}} {
			p.s = at
			golden.Check(t, *update, name+"-"+size+".txt", p.seen())
		}
		p.s = layout.Least()
		p.m.th = theme.New(theme.Options{Plain: true})
		plain := p.seen()
		golden.Check(t, *update, name+"-plain.txt", plain)
		for _, r := range plain {
			require.Less(t, r, rune(0x7f), "%s: plain is ASCII", name)
		}
	}
}

func TestNothingIsWrittenBeforeTheFirstDeed(t *testing.T) {
	p := fresh(t, "")
	assert.Nil(t, p.b.kept)
	p.keys("enter")
	require.NotNil(t, p.b.kept)
	assert.Len(t, p.b.kept.Deeds, 1)
}

func TestAStepIsTimedAndLogged(t *testing.T) {
	p := fresh(t, "enter space 90s")
	assert.Contains(t, p.seen(), "This step: 1:30 of 5:44, 2.0 gal of 7.5 gal")
	p.keys("space 60s space 30s")
	assert.Contains(t, p.seen(), "2:00 of 5:44")
	assert.Empty(t, p.b.log)
	p.keys("enter")
	require.Len(t, p.b.log, 1)
	s := p.b.log[0].Body.(*model.StageDone)
	assert.InDelta(t, 120, s.Duration.Or(0).Seconds(), 1e-9)
	assert.Equal(t, "2.6 gal", s.Used.Words())
	p.keys("b space 30s enter")
	require.Len(t, p.b.log, 3, "struck, and written anew")
	assert.Len(t, p.b.log.Effective(), 1)
}

func TestTheBellRingsOnceUnlessTheRigSaysNo(t *testing.T) {
	ring := func(says model.Answer) int {
		b := &bay{}
		o := b.options()
		o.Rig.Defaults.Bell, o.Tick = says, 0
		p := play(t, b, o, "enter space")
		for range 3 {
			b.at += 6 * time.Minute
			if bell := p.send(ticked{p.m.ticks}); bell != nil {
				bell()
			}
		}
		assert.Contains(t, p.seen(), "The planned time of this step is over.", "it is told in words too")
		return b.bells
	}
	assert.Equal(t, 1, ring(""))
	assert.Equal(t, 1, ring(model.Yes))
	assert.Equal(t, 0, ring(model.No))
}

func TestTheReadingDecides(t *testing.T) {
	p := fresh(t, "").to(model.Read)
	assert.Contains(t, p.keys("enter").seen(), "Not now: there is no reading yet")
	p.keys("r '4 ppm NaCl' enter")
	assert.Contains(t, p.seen(), "GO: the pen shows no more than the limit")
	require.Len(t, p.b.log, 1)
	sample := p.b.log[0].Body.(*model.Sample)
	assert.Equal(t, model.Yes, sample.Flushed)
	assert.Equal(t, "120 gal", sample.SoFar.Words(), "the flush was skipped, so nothing has run")
	assert.Equal(t, "yellow pen", sample.Pen)
	p.keys("r '30 ppm NaCl' enter esc enter")
	assert.Contains(t, p.seen(), "Not now: the pen is over the limit")
	p.keys("a enter")
	assert.NotEqual(t, model.Read, p.m.step().Kind)
}

func TestWaysOutChangeTheStepsThatFollow(t *testing.T) {
	p := fresh(t, "").to(model.Read).keys("r '14 ppm NaCl' enter")
	frame := p.seen()
	for _, words := range []string{"glass and paint only", "change the resin now", "softened water and a towel", "No way out here:", "slower flow"} {
		assert.Contains(t, frame, words)
	}
	at := p.m.state.At
	p.keys("3")
	assert.Equal(t, at, p.m.state.At)
	for _, s := range p.m.state.Steps[at+1:] {
		assert.False(t, s.Kind == model.Work && s.Water == model.DI, "no face gets DI water any more")
	}
	towels := 0
	for _, s := range p.m.state.Steps {
		if s.Towel == model.Yes {
			towels++
			assert.NotEqual(t, model.Roof, s.Face, "nobody is sent onto a roof")
		}
	}
	assert.Equal(t, 4, towels)
	assert.Equal(t, washday.GoAlong, p.m.state.Gate(&p.m.u))
}

// In the middle of the rinse the pen may pass the limit: then the ways are there too.
func TestAReadingOverTheLimitInTheRinse(t *testing.T) {
	p := fresh(t, "").to(model.LetDry).keys("enter space 30s r '14 ppm NaCl' enter")
	assert.Contains(t, p.seen(), "OVER THE LIMIT: 14 ppm NaCl.")
	p.keys("w 3")
	assert.True(t, p.m.state.Running, "the step at hand runs on")
	for _, s := range p.m.state.Steps[p.m.state.At+1:] {
		assert.False(t, s.Kind == model.Work && s.Water == model.DI)
	}
}

func TestNewResinOpensTheGuidedChangeAndFlushesAgain(t *testing.T) {
	b := &bay{}
	o := b.options()
	opened := false
	o.Refill = func(entry.Desk) screen.Screen { opened = true; return New(o) }
	p := play(t, b, o, "").to(model.Read).keys("r '14 ppm NaCl' enter")
	cmd := p.send(hands.Key("2"))
	require.NotNil(t, cmd)
	_, isGo := cmd().(screen.Go)
	assert.True(t, isGo && opened)
	assert.Equal(t, washday.NoGate, p.m.state.Gate(&p.m.u), "the new resin is flushed before it is read")
	kinds := []model.StepKind{p.m.step().Kind, p.m.state.Steps[p.m.state.At+1].Kind}
	assert.Equal(t, []model.StepKind{model.Flush, model.Read}, kinds)
	assert.False(t, p.m.soFar().Given(), "what a new fill has given is not known from here")
}

// What the log teaches afterwards: the fill has given what it had before and all DI water
// of this wash, and the reading stands where it was taken.
func TestTheBedHasGivenWhatTheLogSays(t *testing.T) {
	p := fresh(t, "").to(model.Flush).keys("space 283s enter r '3 ppm NaCl' enter")
	given := func() *planner.FillPast {
		past := planner.Recall(p.b.log, p.m.o.Rig, p.m.o.Places).Bed("half-foot tank")
		require.NotNil(t, past)
		return past.Present()
	}
	flushed := p.m.state.Tally().DI
	assert.InDelta(t, 120+flushed.Gallons(), given().Gallons.Gallons(), 0.02, "under way")
	p.keys("enter").to(model.LetDry).keys("enter space 300s enter space 60s x y")
	di := p.m.state.Tally().DI.Gallons()
	assert.Greater(t, di, flushed.Gallons()+6)
	fill := given()
	assert.InDelta(t, 120+di, fill.Gallons.Gallons(), 0.02)
	require.Len(t, fill.Readings, 1)
	assert.InDelta(t, 120+flushed.Gallons(), fill.Readings[0].Gallons.Gallons(), 0.02)
	assert.Nil(t, fill.Readings[0].Suspect)
	assert.Equal(t, 1, fill.Washes)
}

func TestThePaceIsToldAtTheEnd(t *testing.T) {
	p := fresh(t, "enter space 600s enter space 344s enter x y")
	assert.Contains(t, p.seen(), "Your pace: pre-rinse 34.4 ft2/min (planned 60 ft2/min), soap 60 ft2/min")
	assert.NotContains(t, fresh(t, "enter enter enter x y").seen(), "Your pace", "no time was taken, so there is none")
}

func TestAFlowCheckChangesWhatFollows(t *testing.T) {
	p := fresh(t, "enter f '60 s' enter")
	assert.Contains(t, p.seen(), "0.0 gal of 5.7 gal")
	assert.Contains(t, p.seen(), "small pressure washer, 1 gpm")
	p.keys("f '5 gal in 200 s' enter")
	assert.Contains(t, p.seen(), "1.5 gpm")
	p.keys("f '0.001 gpm' enter")
	assert.Contains(t, p.seen(), "Not taken")
	p.keys("esc").to(model.Flush).keys("f '40 s' enter")
	assert.Contains(t, p.seen(), "1.5 gpm")
	assert.Equal(t, p.m.u.Outlook.SoFar.Or(0), 120*quantity.Gallon)
}

func TestADiskThatIsFullIsToldAndTriedAgain(t *testing.T) {
	p := fresh(t, "enter space")
	p.b.fail = errFull
	p.keys("60s enter")
	assert.Contains(t, p.seen(), "NOT WRITTEN, but still here")
	assert.Error(t, p.m.Leave())
	p.b.fail = nil
	p.keys("space")
	assert.NotContains(t, p.seen(), "NOT WRITTEN")
	assert.NoError(t, p.m.Leave())
	assert.Len(t, p.b.log, 1)
}

func TestAWashThatWasLeftIsOffered(t *testing.T) {
	p := fresh(t, "enter space 60s")
	again := play(t, p.b, p.b.options(), "")
	assert.Contains(t, again.seen(), "A wash is under way: Marigold, begun 2026-05-16 06:15.")
	again.keys("30s enter")
	assert.Contains(t, again.seen(), "1:30 of 5:44")
	p.b.at += 3 * 3600e9
	asleep := play(t, p.b, p.b.options(), "o")
	assert.Contains(t, asleep.seen(), "0:00 of 5:44", "the time since the last key is left out")
	assert.False(t, asleep.m.state.Running)
	third := play(t, p.b, p.b.options(), "x")
	assert.Contains(t, third.seen(), "End the wash here?")
	third.keys("n")
	assert.Contains(t, third.seen(), "goes on where it was")
	third.keys("x y")
	assert.Contains(t, third.seen(), "ended early")
	assert.Nil(t, p.b.kept)
	assert.Len(t, p.b.log.Effective().Washes(), 1)
}

// Killed between the last deed and the log: the next start writes what is lacking.
func TestAWashThatIsOverIsFinished(t *testing.T) {
	p := fresh(t, "enter space 60s x y")
	over := p.m.u
	b := &bay{kept: &over}
	again := play(t, b, b.options(), "")
	assert.Contains(t, again.seen(), "ended early")
	assert.Nil(t, b.kept)
	assert.Len(t, b.log, 2)
}

// A file in which the last step is left but the wash is not ended is one that somebody
// has edited; it is ended all the same.
func TestAWashPastItsLastStepIsEnded(t *testing.T) {
	p := fresh(t, "enter")
	u := *p.b.kept
	for range u.Steps {
		u.Deeds = append(u.Deeds, u.Deeds[0])
	}
	b := &bay{kept: &u}
	again := play(t, b, b.options(), "")
	again.seen()
	again.keys("enter")
	assert.Contains(t, again.seen(), "The wash is done.")
}

func TestAFileThatDoesNotReadIsSetAside(t *testing.T) {
	b := &bay{left: errors.New("underway.toml:3: something")}
	p := play(t, b, b.options(), "")
	assert.Contains(t, p.seen(), "underway.toml:3")
	p.keys("enter")
	assert.Contains(t, p.seen(), "underway.toml:3")
	p.keys("k")
	assert.Contains(t, p.seen(), "Kept as underway-kept.toml")
}

func TestARehearsalIsKeptNowhere(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Rehearsal = true
	p := play(t, b, o, "enter space 60s x y")
	assert.Contains(t, p.seen(), "This was a rehearsal")
	assert.Nil(t, b.kept)
	assert.Empty(t, b.log)
}

func TestNothingOfAnOldLookIsShown(t *testing.T) {
	p := fresh(t, "enter space")
	old := ticked{p.m.ticks}
	p.send(screen.Again{})
	assert.Nil(t, p.send(old), "one clock counts, not two")
	assert.NotNil(t, p.send(ticked{p.m.ticks}))
}

var sink string

// BenchmarkKey is a key that starts or stops the time, with all that follows: the
// file, the log, the frame.
func BenchmarkKey(b *testing.B) {
	p := fresh(b, "enter")
	p.m.th = theme.New(theme.Options{Profile: termenv.ANSI256})
	for b.Loop() {
		if len(p.m.u.Deeds) > 200 {
			p.m.u.Deeds = p.m.u.Deeds[:1]
		}
		p.send(hands.Key(" "))
		sink = p.m.View(p.s)
	}
}
