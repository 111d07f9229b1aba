//go:build unix

package main

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/store"
	"washeve/model/store/journal"
	"washeve/planner/washday"
)

// bay is a data folder with the built-in example made one's own, and a clock.
type bay struct {
	t     *testing.T
	home  string
	clock fileClock
	s     *screen
}

var washMorning = time.Date(2026, 5, 16, 6, 15, 0, 0, time.FixedZone("", -6*3600))

func newBay(t *testing.T) *bay {
	b := &bay{t: t, home: t.TempDir()}
	b.clock = fileClock{filepath.Join(b.home, "clock")}
	b.clock.set(t, instantAt(0))
	_, errs, code := ran(t, "init", "--dir", b.dir())
	require.Zero(t, code, errs)
	wash := filepath.Join(b.dir(), "washes", "example.toml")
	text, err := os.ReadFile(wash)
	require.NoError(t, err)
	text = regexp.MustCompile(`(?m)^date = "[0-9-]+"`).ReplaceAll(text, []byte(`date = "`+washMorning.Format(time.DateOnly)+`"`))
	require.NoError(t, os.WriteFile(wash, text, 0o600))
	return b
}

func (b *bay) dir() string { return filepath.Join(b.home, "data", "washeve") }

// instantAt is so long into the morning, by both clocks.
func instantAt(d time.Duration) model.Instant {
	return model.Instant{Wall: washMorning.Add(d), Boot: "first", Up: time.Hour + d}
}

// open starts the program at a terminal.
func (b *bay) open(env ...string) {
	b.s = start(b.t, setup{home: b.home, env: append([]string{inClockFile + "=" + b.clock.path}, env...)})
}

// begin opens the wash day from the plan.
func (b *bay) begin(env ...string) {
	b.open(env...)
	b.s.sees("The bed lasts this wash")
	b.s.press("W")
	b.s.sees("step 1 of")
}

// resume starts the program again and goes on where the wash was.
func (b *bay) resume() {
	b.open()
	b.s.sees("A wash is under way: Marigold, begun 2026-05-16 06:15", "goes on where it was")
	b.s.press("enter")
	b.s.sees("step ", "So far: DI")
}

// underway is the wash as its file has it, nil where there is none.
// underway is the wash in its file, with what was done; how long it was seen to run is
// no deed of a hand.
func (b *bay) underway() *model.Underway {
	u, there, faults := store.Open(b.dir()).Underway()
	require.Empty(b.t, faults)
	if !there {
		return nil
	}
	u.Deeds = slices.DeleteFunc(u.Deeds, func(d model.Deed) bool { return d.Does == model.Seen })
	return &u
}

func (b *bay) deeds() int {
	if u := b.underway(); u != nil {
		return len(u.Deeds)
	}
	return -1
}

// hand presses what comes next in a wash that is done to the end: every step's time is
// taken, a slip at the pen is taken back, the pen is over the limit, and the second way out
// is taken. When a deed is
// done hangs on nothing but how many were done before it.
func (b *bay) hand(n int, u *model.Underway) {
	b.clock.set(b.t, instantAt(time.Duration(n)*97*time.Second))
	if u == nil {
		b.s.press("enter")
		return
	}
	state := washday.StandAtLast(u)
	if state.At == len(state.Steps) {
		return // the last step is written as done, and the end of the wash is about to be
	}
	step := state.Steps[state.At]
	switch state.Gate(u) {
	case washday.AskPen:
		b.s.press("r")
		b.s.sees("The pen shows:")
		b.s.press(typed(u), "enter")
		if state.Stands() {
			b.s.sees("y it was flushed")
			b.s.press("y")
		}
		return
	case washday.NoGo:
		b.s.press("w")
		b.s.sees("NO-GO", "glass and paint only")
		b.s.press("1")
		return
	case washday.Go:
		b.s.press("u")
		return
	case washday.GoAlong, washday.NoGate, washday.Cup:
	}
	timed := step.Timed() && step.Kind != model.LetDry
	if timed && !state.Running && state.Done[state.At].Spent == 0 {
		b.s.press("space")
		return
	}
	b.s.press("enter")
}

// typed is what is typed at the pen: a slip first.
func typed(u *model.Underway) string {
	if slices.ContainsFunc(u.Deeds, func(d model.Deed) bool { return d.Does == model.TakeBack }) {
		return "14 ppm NaCl"
	}
	return "1.4 ppm NaCl"
}

// done waits until deed n is written.
func (b *bay) done(n int) {
	b.s.await(func(string) bool { d := b.deeds(); return d > n || d < 0 && n > 0 }, fmt.Sprintf("deed %d should be written", n+1))
}

// toTheEnd does the whole wash. At the deeds named the program is killed right after
// its keys are sent, and taken up again.
func (b *bay) toTheEnd(kills []int) {
	for n := 0; n >= 0; {
		u := b.underway()
		b.hand(n, u)
		if i := slices.Index(kills, n); i >= 0 {
			kills = slices.Delete(kills, i, i+1)
			b.s.kill()
			if n = b.deeds(); n < 0 {
				n = 0
				b.begin()
				continue
			}
			b.resume()
			continue
		}
		b.done(n)
		n = b.deeds()
	}
	require.Empty(b.t, kills, "every kill was done")
}

// log is what counts in the log of a wash, in words, without its identifiers.
func (b *bay) log() []string {
	log, faults := journal.Open(filepath.Join(b.dir(), logFile)).Load()
	require.Empty(b.t, faults)
	require.Empty(b.t, log.Faults())
	var words []string
	for _, e := range log.Effective() {
		switch b := e.Body.(type) { // that name is of the moment
		case *model.StageDone:
			b.Wash = ""
		case *model.Sample:
			b.Wash = ""
		}
		words = append(words, (&model.Entry{At: e.At, Note: e.Note, Body: e.Body}).Content())
	}
	slices.Sort(words)
	return words
}

func (b *bay) washes() []model.WashRecord {
	log, faults := journal.Open(filepath.Join(b.dir(), logFile)).Load()
	require.Empty(b.t, faults)
	return log.Effective().Washes()
}
