package washday

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/washday"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// A reading that no bed like this one would show is not believed, and the ways say so,
// since their chances are those of the bed without it.
func TestAReadingThatIsNotBelievedIsToldAmongTheWays(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
	p := play(t, b, o, "").to(model.Read).keys("r '40 ppm NaCl' enter")
	assert.Contains(t, p.seen(), "40 ppm NaCl is not believed: no bed like this would show it")
	assert.Contains(t, p.seen(), "chance over 99 %")
	p.keys("esc")
	assert.Contains(t, p.seen(), "w ways out   a go all the same   r reading", "the key of the next reading is at the foot")
	assert.Contains(t, oneLine(p.seen()), "40 ppm NaCl fits no bed like this: what is left and the chance hold only without that reading. Is the bypass shut? See to pen and scale too, then r again.")
	p.keys("r '3 ppm NaCl' enter y w")
	assert.NotContains(t, p.seen(), "is not believed")
}

// By words the next reading is asked for by its word.
func TestAReadingThatIsNotBelievedByWords(t *testing.T) {
	o := (&bay{}).options()
	o.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	steps := slices.Repeat([]string{"next"}, 6)
	said := talked(t, o, append(steps, "reading 40 ppm NaCl", "", "tell", "back")...)
	assert.Contains(t, said, "See to pen and scale too, then reading again.")
}

func TestTheReadingDecides(t *testing.T) {
	p := fresh(t, "").to(model.Read)
	assert.Contains(t, p.keys("enter").seen(), "Not now: there is no reading yet")
	p.keys("r '4 ppm NaCl' enter")
	assert.Contains(t, p.seen(), "GO: the pen shows no more than the limit")
	sample := sampleOf(t, p)
	assert.Equal(t, model.Yes, sample.Flushed)
	assert.InDelta(t, 120+p.m.state.Tally().DI.Gallons(), sample.SoFar.Or(0).Gallons(), 0.01, "the flush has run")
	assert.Equal(t, "yellow pen", sample.Pen)
	p.keys("r '30 ppm NaCl' enter y n esc enter")
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
	p.keys("w 4")
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

func TestAWashWithoutASoftenerSaysSo(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Wash.Softener = model.NoSoftener
	answer := o.Answer
	o.Answer = func() (planner.Plan, *planner.Past, error) {
		_, past, _ := answer()
		p, err := o.Make(o.Rig, o.Places, o.Wash)
		return p, past, err
	}
	p := play(t, b, o, "enter space 60s")
	assert.Contains(t, p.seen(), "So far: DI 0.0 gal, raw 1.3 gal")
	p.keys("m f")
	assert.Contains(t, p.seen(), "10 L takes (or 12 L in 144 s, or 5 L/min):")
	p.keys("'10 L in 120 s' enter")
	assert.Contains(t, p.seen(), "5 L/min")
	p.keys("x y")
	assert.Equal(t, model.NoSoftener, b.log.Effective().Washes()[0].Wash.Softener)
}

func TestThePaceIsToldAtTheEnd(t *testing.T) {
	p := fresh(t, "enter space 600s enter space 344s enter x y")
	assert.Contains(t, p.seen(), "Your pace: pre-rinse 34.4 ft2/min (planned 60 ft2/min), soap 60 ft2/min")
	assert.NotContains(t, fresh(t, "enter enter enter x y").seen(), "Your pace", "no time was taken, so there is none")
	p = fresh(t, "enter space 20s enter x y")
	assert.Contains(t, p.seen(), "Too far from the plan to be a pace, and not learned: 1 of 1 stages.")
	assert.NotContains(t, p.seen(), "Your pace")
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
