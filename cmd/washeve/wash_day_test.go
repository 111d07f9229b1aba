//go:build unix

package main

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/journal"
)

// wetDay is a wash day of the built-in example, made one's own, in a
// pseudo-terminal and by a clock that the test moves.
type wetDay struct {
	*screen
	t     *testing.T
	clock *movedClock
	home  string
}

func newWetDay(t *testing.T) *wetDay {
	d := &wetDay{t: t, clock: newTestClock(t), home: t.TempDir()}
	d.open()
	d.sees("built-in example")
	d.press("a")
	d.sees("yours")
	d.press("W")
	d.sees("step 1 of 32")
	return d
}

func (d *wetDay) open() {
	d.screen = start(d.t, setup{home: d.home, env: []string{clockFile + "=" + d.clock.path}})
}

// killAndGoOn kills the program as a dead battery would, and takes the wash up
// again.
func (d *wetDay) killAndGoOn() {
	d.kill()
	d.open()
	d.sees("A wash is under way: Marigold", "enter goes on")
	d.press("enter")
	d.sees("So far:")
}

// at waits for a step.
func (d *wetDay) at(step int) {
	d.t.Helper()
	d.sees(fmt.Sprintf("step %d of ", step))
}

// runs lets the water of a step run for some seconds.
func (d *wetDay) runs(seconds float64) {
	d.t.Helper()
	d.press("space")
	d.sees("the time runs")
	d.clock.pass(seconds)
	d.press("space")
	d.await(func(s string) bool { return !strings.Contains(s, "the time runs") }, "the time should stand")
}

// log is the day's log as it stands on the disk, without its identifiers.
func (d *wetDay) log() []string {
	log, faults := journal.Open(filepath.Join(d.home, "data", "washeve", "log.toml")).Load()
	require.Empty(d.t, faults)
	var lines []string
	id := regexp.MustCompile(`\n(id|wash|of)=[^\n]*`)
	for _, e := range log {
		lines = append(lines, id.ReplaceAllString(e.Content(), ""))
	}
	slices.Sort(lines) // of one second, identifiers order the log, and they differ from run to run
	return lines
}

// deeds is a whole wash: each step with its number and what is done in it. There
// is a reading that is a no-go and its way out, a flow check, and a step that is
// gone back to.
func (d *wetDay) deeds() []func() {
	const flush, read = 6, 7
	var all []func()
	add := func(f func()) { all = append(all, f) }
	add(func() { d.at(1); d.clock.pass(30); d.press("enter"); d.at(2) })
	for step := 2; step < flush; step++ {
		add(func() { d.runs(float64(60 + step)) })
		add(func() { d.press("enter"); d.at(step + 1) })
	}
	add(func() { d.press("b"); d.at(flush - 1) })
	add(func() { d.runs(20); d.press("enter"); d.at(flush) })
	add(func() { d.press("f"); d.sees("A gallon takes"); d.press("50 s", "enter"); d.sees("Measured: 1.2 gpm") })
	add(func() { d.runs(300); d.press("enter"); d.at(read) })
	add(func() {
		d.press("r")
		d.sees("The pen shows")
		d.press("14 ppm NaCl", "enter")
		d.sees("NO-GO", "glass and paint only")
	})
	add(func() { d.choose("softened water and a towel"); d.sees("Taken: softened water and a towel") })
	add(func() { d.press("enter"); d.at(read + 1) })
	add(func() { d.runs(45); d.press("enter"); d.at(read + 2) })
	add(func() { d.press("s"); d.at(read + 3) })
	add(func() { d.runs(33) })
	add(func() { d.press("x"); d.sees("End the wash here?"); d.press("y"); d.sees("ended early") })
	return all
}

// choose picks an option of the list on the screen by its words.
func (d *wetDay) choose(words string) {
	d.t.Helper()
	if !strings.Contains(d.text(), words) && strings.Contains(d.text(), "w ways out") {
		d.press("w")
	}
	d.sees(words)
	line := regexp.MustCompile(`(\d) ` + words).FindStringSubmatch(d.text())
	require.NotEmpty(d.t, line)
	d.press(line[1])
}

// The whole wash in one go, against itself killed at ten random points and taken
// up again: the same log, the same gallons, and no file of a wash under way left.
func TestAWashKilledAtTenPointsLosesNothing(t *testing.T) {
	whole := newWetDay(t)
	for _, deed := range whole.deeds() {
		deed()
	}
	want := whole.log()
	assertWholeDay(t, whole, want)

	killed := newWetDay(t)
	deeds := killed.deeds()
	points := rand.New(rand.NewPCG(7, 11)).Perm(len(deeds) - 1)[:10]
	dead := map[int]bool{}
	for _, p := range points {
		dead[p] = true
	}
	for i, deed := range deeds {
		deed()
		if dead[i] {
			killed.killAndGoOn()
		}
	}
	assert.Equal(t, want, killed.log())
	for _, d := range []*wetDay{whole, killed} {
		assert.NoFileExists(t, filepath.Join(d.home, "data", "washeve", "underway.toml"))
		d.press("q")
		assert.Zero(t, d.ends())
	}
}

// assertWholeDay checks the unbroken run by hand: 300 s of flush at 1.2 gpm is 6
// gal of DI; softened water ran 62 + 63 + 65 + 20 s at 1.3 gpm by hand-free steps,
// then 45 and 33 s.
func assertWholeDay(t *testing.T, d *wetDay, lines []string) {
	log, _ := journal.Open(filepath.Join(d.home, "data", "washeve", "log.toml")).Load()
	washes := log.Effective().Washes()
	require.Len(t, washes, 1)
	w := washes[0].Wash
	assert.InDelta(t, 6, w.DI.Or(0).Gallons(), 0.05)
	assert.Equal(t, "Marigold", w.Vehicle)
	assert.Positive(t, float64(w.Softened.Or(0)))
	sum := quantity.Volume(0)
	for _, s := range washes[0].Stages {
		if s.Water == model.Softened {
			sum += s.Used.Or(0)
		}
	}
	assert.InDelta(t, float64(w.Softened.Or(0)), float64(sum), 1e-9)
	readings := 0
	for _, line := range lines {
		if strings.HasPrefix(line, "reading") {
			readings++
			assert.Contains(t, line, "flow=1.2 gpm")
		}
	}
	assert.Equal(t, 1, readings)
}

func TestAStepKeepsItsTimeThroughEverything(t *testing.T) {
	d := newWetDay(t)
	d.press("enter")
	d.at(2)
	d.press("space")
	d.sees("the time runs", "0:00 of")
	d.clock.pass(30)
	d.sees("0:30 of")
	// Put to sleep by the shell, and woken.
	require.NoError(t, d.cmd.Process.Signal(syscall.SIGTSTP))
	d.clock.pass(60)
	require.NoError(t, d.cmd.Process.Signal(syscall.SIGCONT))
	d.sees("1:30 of")
	// A small window and back.
	d.resize(60, 20)
	d.sees("60 x 20")
	d.clock.pass(10)
	d.resize(80, 24)
	d.sees("1:40 of")
	// The wall's clock set back an hour.
	d.clock.set(d.clock.wall-3600, d.clock.up+5)
	d.sees("1:45 of")
	// Killed with the water on: the time runs on.
	d.kill()
	d.clock.pass(15)
	d.open()
	d.sees("A wash is under way", "with the time still running")
	d.press("enter")
	d.sees("2:00 of", "the time runs")
	// A file that was spoilt meanwhile is told and kept.
	d.kill()
	path := filepath.Join(d.home, "data", "washeve", "underway.toml")
	require.NoError(t, os.WriteFile(path, []byte("format = 1\nid = \n"), 0o600))
	d.open()
	d.sees("a wash was under way, but its file does not read")
	kept, err := filepath.Glob(filepath.Join(d.home, "data", "washeve", "underway-kept-*.toml"))
	require.NoError(t, err)
	assert.Len(t, kept, 1)
}
