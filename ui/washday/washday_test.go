package washday

import (
	"bufio"
	"errors"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

var update = golden.Flag()

func TestFrames(t *testing.T) {
	for name, opt := range map[string]theme.Options{"dark": {Profile: termenv.ANSI256}, "plain": {Plain: true}} {
		for sizeName, size := range map[string]layout.Size{"80x24": {W: 80, H: 24}, "140x40": {W: 140, H: 40}} {
			p := play(t, "")
			p.m.th, p.size = theme.New(opt), size
			var all strings.Builder
			shot := func() {
				p.seen()
				all.WriteString(strings.ReplaceAll(p.m.View(size), "\x1b", "^[") + "\n\n")
			}
			shot()
			p.keys("enter").blank().pass(200 * time.Second)
			shot()
			p.pass(200 * time.Second)
			shot()
			p.keys("enter enter enter enter enter")
			shot()
			p.keys("r '14'")
			shot()
			p.keys("enter")
			shot()
			p.keys("esc a enter")
			shot()
			p.keys("x y")
			shot()
			golden.Check(t, *update, name+"-"+sizeName+".txt", all.String())
		}
	}
}

func TestTheBellRingsOnceAtAStepsEnd(t *testing.T) {
	p := play(t, "enter").blank()
	p.pass(343 * time.Second)
	assert.Zero(t, p.bells)
	for range 3 {
		p.pass(2 * time.Second)
	}
	assert.Equal(t, 1, p.bells)
	assert.Contains(t, p.seen(), "The planned time of this step is over.", "never sound alone")
	p.blank().blank().pass(time.Second)
	assert.Equal(t, 1, p.bells, "a step that is over does not ring again")
}

func TestWhatCannotBeWrittenStaysAndIsTriedAgain(t *testing.T) {
	p := play(t, "enter")
	p.fail = errors.New("no space left on the disk")
	p.blank().pass(10 * time.Second).keys("enter")
	assert.Contains(t, p.seen(), "NOT WRITTEN")
	assert.ErrorContains(t, p.m.Leave(), "no space left")
	assert.Contains(t, p.seen(), "step 3 of")
	p.fail = nil
	p.keys("enter")
	require.NoError(t, p.m.Leave())
	assert.Len(t, p.log, 2, "both steps are in the log")
	assert.Len(t, p.kept[len(p.kept)-1].Deeds, 4)
}

func TestAReadingOnlyWhereDIRuns(t *testing.T) {
	p := play(t, "r")
	assert.Contains(t, p.seen(), "Not now: no DI water runs in this step.")
	p.keys("enter enter enter enter enter enter")
	assert.Contains(t, p.seen(), "step 7 of")
	p.keys("enter")
	assert.Contains(t, p.seen(), "read the pen first")
	p.keys("r 'x' enter")
	assert.Contains(t, p.seen(), "Not taken")
	p.keys("ctrl+u '3' enter")
	assert.Contains(t, p.seen(), "GO: the pen shows no more than")
	assert.True(t, slices.ContainsFunc(p.log, func(e model.Entry) bool { return e.Kind() == model.ReadingKind }))
	p.keys("enter")
	assert.Contains(t, p.seen(), "step 8 of")
}

// A measured flow changes the water of the steps to come, not their time.
func TestAFlowCheckChangesTheStepsToCome(t *testing.T) {
	p := play(t, "enter f '30 s' enter")
	assert.Contains(t, p.seen(), "Measured: 2 gpm")
	assert.Contains(t, p.seen(), "of 11.5 gal")
	assert.Contains(t, p.seen(), "0:00 of 5:44")
	p.keys("f 'soon' enter")
	assert.Contains(t, p.seen(), "Not taken")
	p.keys("esc")
	assert.NotContains(t, p.seen(), "A gallon takes")
}

func TestGoingOnWithAWashThatWasLeft(t *testing.T) {
	p := play(t, "enter").blank()
	p.pass(30 * time.Second)
	left := p.kept[len(p.kept)-1]
	p.clock += time.Minute
	p.m = GoOn(p.options(), left)
	assert.Contains(t, p.seen(), "with the time still running: 4:14")
	p.keys("enter")
	assert.Contains(t, p.seen(), "1:30 of 5:44")
	p.m = GoOn(p.options(), left)
	p.keys("x y")
	assert.Contains(t, p.seen(), "ended early")
	assert.Equal(t, 1, p.closed)
	assert.Len(t, p.log.Washes(), 1)
}

func TestTheWholeWashByLines(t *testing.T) {
	s := &shore{}
	o := s.options()
	o.Theme = theme.New(theme.Options{Plain: true})
	input := bufio.NewScanner(strings.NewReader(strings.Join([]string{
		"n", "o", "o", "zz", "r", "n", "n", "n", "n", "n", "r", "what", "14 ppm NaCl", "9", "w", "2", "r", "2 ppm NaCl", "n", "b", "t", "x", "n", "x", "y",
	}, "\n")))
	var out strings.Builder
	ask := func(q string) (string, bool) {
		out.WriteString(q + ": ")
		if !input.Scan() {
			return "", false
		}
		out.WriteString(input.Text() + "\n")
		return input.Text(), true
	}
	say := func(lines ...string) { out.WriteString(strings.Join(lines, "\n") + "\n") }
	require.NoError(t, Talk(New(o), ask, say))
	for _, want := range []string{
		"Step 1 of 32: set up.", "Step 2 of 32: pre-rinse, roof, 5:44, the time runs.", "There is no zz here.", "Not now: no DI water runs in this step.",
		"Valves: softener THROUGH, DI bed bypassed", "NO-GO", "Read the pen again: r.", "GO: the pen shows no more than", "The wash was ended early",
	} {
		assert.Contains(t, out.String(), want)
	}
	for _, r := range out.String() {
		assert.Less(t, r, rune(0x7f))
	}
	assert.Len(t, s.log.Effective().Washes(), 1)
}

func TestEveryKeyIsListedAndNoFrameBreaks(t *testing.T) {
	for _, script := range []string{"", "enter", "enter enter enter enter enter enter", "x", "f", "x y", "enter enter enter enter enter enter r '20' enter"} {
		p := play(t, script)
		for _, b := range p.m.Keys() {
			for _, key := range b.Binding.Keys() {
				q := play(t, script)
				next, _ := q.m.Update(hands.Key(key))
				if m, ok := next.(Model); ok {
					q.m = m
					q.seen()
				}
			}
		}
	}
}

func BenchmarkKeyToFrame(b *testing.B) {
	p := play(b, "enter")
	for b.Loop() {
		next, _ := p.m.Update(hands.Key(" "))
		_ = next.View(p.size)
	}
}

func BenchmarkTick(b *testing.B) {
	p := play(b, "enter").blank()
	for b.Loop() {
		p.pass(time.Millisecond)
		_ = p.m.View(p.size)
	}
}
