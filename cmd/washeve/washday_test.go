//go:build unix

package main

import (
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
)

// The whole wash of the built-in example: every step, a reading, a no-go and a way
// out. Killed at ten points and taken up again, its log and its gallons are the same.
func TestTheWholeWashUnbrokenAndKilled(t *testing.T) {
	unbroken := newBay(t)
	unbroken.begin()
	unbroken.toTheEnd(nil)
	unbroken.s.sees("The wash is done.", "planned", "done", "Left in the bed")
	assert.NoFileExists(t, filepath.Join(unbroken.dir(), "underway.toml"))
	washes := unbroken.washes()
	require.Len(t, washes, 1)
	assert.False(t, washes[0].Broken)
	di := quantity.Volume(0)
	for _, s := range washes[0].Stages {
		if s.Water == model.DI {
			di += s.Used.Or(0)
		}
	}
	assert.InDelta(t, di.Gallons(), washes[0].Wash.DI.Or(0).Gallons(), 0.05)
	assert.Greater(t, di.Gallons(), 10.0)
	unbroken.s.press("esc")
	unbroken.s.sees("Saturday wash")
	unbroken.s.press("q")
	assert.Zero(t, unbroken.s.ends())

	kills := 10
	if testing.Short() {
		kills = 3
	}
	random := rand.New(rand.NewPCG(20260516, 1))
	points := random.Perm(55)[:kills]
	killed := newBay(t)
	killed.begin()
	killed.toTheEnd(points)
	killed.s.sees("The wash is done.")
	assert.Equal(t, unbroken.log(), killed.log(), "killed at %v", points)
}

func TestAnEarlyEndKeepsWhatWasDone(t *testing.T) {
	b := newBay(t)
	b.begin()
	b.s.press("enter")
	b.s.sees("step 2 of")
	b.clock.set(t, instantAt(10*time.Second))
	b.s.press("space")
	b.s.sees("the time runs")
	b.clock.set(t, instantAt(130*time.Second))
	b.s.press("x")
	b.s.sees("End the wash here?")
	b.s.press("y")
	b.s.sees("ended early", "2.6 gal")
	washes := b.washes()
	require.Len(t, washes, 1)
	assert.InDelta(t, 2.6, washes[0].Wash.Softened.Or(0).Gallons(), 1e-9)
	assert.InDelta(t, 120, washes[0].Wash.Duration.Or(0).Seconds(), 1e-6)
	require.Len(t, washes[0].Stages, 1)
	b.s.press("esc")
	b.s.sees("Saturday wash")
	b.s.press("W")
	b.s.sees("step 1 of") // a new one
}

// The window made too small and large again, the clock on the wall set back an hour and
// carried to another zone, a dead battery: the seconds stay right.
func TestTheSecondsStayRight(t *testing.T) {
	b := newBay(t)
	b.begin()
	b.s.press("enter")
	b.s.sees("step 2 of")
	b.s.press("space")
	b.s.sees("the time runs")
	b.clock.set(t, instantAt(60*time.Second))
	b.s.sees("1:00 of 5:44", "1.3 gal of")
	b.s.resize(60, 20)
	b.s.sees("60 x 20", "80 x 24", "space: stop.", "the time runs")
	b.s.press("space")
	b.s.sees("space: start.", "the time stands")
	b.s.press("space")
	b.s.sees("space: stop.")
	b.s.resize(80, 24)
	b.s.sees("1:00 of 5:44")
	back := instantAt(90 * time.Second)
	back.Wall = back.Wall.Add(-time.Hour).In(time.FixedZone("", 2*3600))
	b.clock.set(t, back)
	b.s.sees("1:30 of 5:44", "13:16")
	b.s.kill()
	back.Up += 15 * time.Second
	b.clock.set(t, back)
	b.open()
	b.s.sees("A wash is under way", "with the time still running: 1:45 of", "5:44 have run")
	b.s.press("enter")
	b.s.sees("1:45 of 5:44")
	b.clock.set(t, model.Instant{Wall: washMorning.Add(200 * time.Second), Boot: "second", Up: time.Second})
	b.s.sees("3:20 of 5:44")
	b.clock.set(t, model.Instant{Wall: washMorning.Add(-time.Hour), Boot: "second", Up: time.Second})
	b.s.sees("A clock went back")
}

func TestARehearsalOfTheExampleIsKeptNowhere(t *testing.T) {
	home := t.TempDir()
	s := start(t, setup{home: home})
	s.sees("built-in example", "The bed lasts this wash")
	s.press("W")
	s.sees("Rehearsal, nothing is kept", "step 1 of")
	s.press("enter", "space")
	s.sees("the time runs")
	s.press("x", "y")
	s.sees("ended early", "This was a rehearsal")
	s.press("esc")
	s.sees("built-in example")
	assert.NoFileExists(t, filepath.Join(home, "data", "washeve", "log.toml"))
	assert.NoFileExists(t, filepath.Join(home, "data", "washeve", "underway.toml"))
}

func TestAFileThatDoesNotReadIsToldAndKept(t *testing.T) {
	b := newBay(t)
	path := filepath.Join(b.dir(), "underway.toml")
	require.NoError(t, os.WriteFile(path, []byte("format = 1\nid = \"x\"\n[[step]]\nkind = \"work\"\n[[deed]]\ndoes = \"sta"), 0o600))
	b.open()
	b.s.sees("cannot be gone on with", "underway.toml:6", "k keeps the file")
	b.s.press("k")
	b.s.sees("step 1 of", "Kept as underway-kept-")
	kept, err := filepath.Glob(filepath.Join(b.dir(), "underway-kept-*.toml"))
	require.NoError(t, err)
	require.Len(t, kept, 1)
	text, err := os.ReadFile(kept[0])
	require.NoError(t, err)
	assert.True(t, strings.HasSuffix(string(text), "sta"))
}
