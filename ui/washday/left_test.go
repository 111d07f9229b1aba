package washday

import (
	"errors"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/screen"
)

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
	assert.Contains(t, asleep.seen(), "1:30 of 5:44", "what ran until the program was last seen counts, and no more")
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

// Killed when the deed is in the file and not in the log yet, or when it is in both and
// nobody has been told: the next start has it once.
func TestKilledBetweenFileAndLog(t *testing.T) {
	p := fresh(t, "enter space 60s")
	p.b.logFail = errFull
	p.keys("enter")
	require.Empty(t, p.b.log)
	require.Len(t, p.b.kept.Deeds, 3)
	p.b.logFail = nil
	again := play(t, p.b, p.b.options(), "enter")
	require.Len(t, p.b.log, 1)
	again.keys("space 5s space")
	play(t, p.b, p.b.options(), "enter")
	assert.Len(t, p.b.log, 1)
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

// What is planned for another day is begun on a yes only, and nothing is written before.
func TestAWashOfAnotherDayIsAskedAbout(t *testing.T) {
	assert.NotContains(t, fresh(t, "").seen(), "Planned for")
	b := &bay{at: -24 * time.Hour}
	p := play(t, b, b.options(), "")
	assert.Contains(t, p.seen(), "This wash is planned for 2026-05-16, tomorrow. Begin it now? y or n")
	assert.Empty(t, p.m.UnseenKeys())
	p.keys("enter space 5s x s")
	assert.Contains(t, p.seen(), "Begin it now?", "no other key acts")
	assert.Nil(t, b.kept)
	cmd := p.send(hands.Key("n"))
	require.NotNil(t, cmd)
	assert.IsType(t, screen.Back{}, cmd())
	p.keys("y")
	assert.Contains(t, p.seen(), "step 1 of")
	assert.Contains(t, p.seen(), "its weather may be another")
	b = &bay{at: -48 * time.Hour}
	o := b.options()
	assert.Contains(t, play(t, b, o, "").seen(), "planned for 2026-05-16. Begin it now?")
	o.Rehearsal = true
	assert.NotContains(t, play(t, b, o, "").seen(), "Begin it now?")
	b = &bay{at: 24 * time.Hour}
	assert.Contains(t, play(t, b, b.options(), "").seen(), "planned for 2026-05-16, yesterday.")
}

// On a day on which it freezes the wash is begun on a yes only, with the reason before it.
func TestAWashInFrostIsAskedAbout(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Wash.Low, o.Wash.High, o.Wash.DewPoint = quantity.Some(quantity.Celsius(-9)), quantity.Some(quantity.Celsius(-4)), quantity.Some(quantity.Celsius(-12))
	o.Wash.Start = quantity.Opt[model.TimeOfDay]{}
	o.Answer = func() (planner.Plan, *planner.Past, error) {
		p, err := o.Make(o.Rig, o.Places, o.Wash)
		return p, nil, err
	}
	p := play(t, b, o, "")
	assert.Contains(t, oneLine(p.seen()), "This is no day to wash: it freezes. Begin all the same? y or n")
	p.keys("enter space 5s")
	assert.Nil(t, b.kept, "no other key acts")
	p.keys("y")
	assert.Contains(t, p.seen(), "step 1 of")
	assert.Contains(t, p.seen(), "the plan speaks against this day")
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

// Where a wash was left is told without a gap, whatever the step has: no face, no time,
// or its time running.
func TestTheOfferNamesEveryKindOfStep(t *testing.T) {
	for _, tried := range []struct {
		kind   model.StepKind
		script string
		says   string
	}{
		{model.Work, "", "pre-rinse"},
		{model.Flush, "", "flush, "},
		{model.Flush, "space 1s", "flush, with the time still running"},
		{model.Read, "", "read the pen."},
		{model.LetDry, "", "let it drip right, with the time still running"},
		{model.PackUp, "", "drain and pack."},
	} {
		p := fresh(t, "enter").to(tried.kind).keys(tried.script)
		left := play(t, p.b, p.b.options(), "")
		require.True(t, left.m.offered, tried.kind)
		where := left.m.offerWords()[1]
		assert.Contains(t, where, ": "+tried.says)
		for _, gap := range []string{" ,", "  ", ", .", ",."} {
			assert.NotContains(t, where, gap)
		}
	}
}
