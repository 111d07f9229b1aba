//go:build unix

package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestTheExampleOpensWithItsAnswer(t *testing.T) {
	for _, size := range [][2]int{{80, 24}, {100, 30}, {160, 50}} {
		s := start(t, setup{width: size[0], height: size[1]})
		s.sees("built-in example", "The bed lasts this wash", "flow cap", "Marigold")
		s.press("q")
		assert.Zero(t, s.ends())
	}
}

func TestATooSmallWindowSaysWhatItNeeds(t *testing.T) {
	s := start(t, setup{width: 60, height: 20})
	s.sees("60 x 20", "80 x 24")
	s.resize(100, 30)
	s.sees("The bed lasts this wash")
	s.resize(60, 20)
	s.sees("80 x 24")
	s.press("q")
	assert.Zero(t, s.ends())
}

// q quits a window that is too small, and what was being typed is kept.
func TestATooSmallWindowKeepsWhatIsTyped(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	s := start(t, setup{home: home})
	s.sees("flow cap")
	s.press("v", "down", "enter", "ctrl+u", "quay")
	s.sees("quay")
	s.resize(60, 20)
	s.sees("60 x 20")
	s.press("q")
	assert.Zero(t, s.ends())
	assert.Contains(t, read(t, filepath.Join(dir, "rig.toml")), "quay\"")
}

func TestAChangeOfPlaceTakesThreeKeys(t *testing.T) {
	s := start(t, setup{})
	s.sees("The bed lasts this wash")
	s.press("p", "down", "enter")
	s.sees("Marigold at Saltbush Wells")
}

// A new user states the few facts through the screen alone, leaves, and finds
// the answer on the first frame of the next start.
func TestANewUserTypesEverythingOnTheScreen(t *testing.T) {
	home := t.TempDir()
	s := start(t, setup{home: home})
	s.sees("built-in example")
	s.press("e")
	s.sees("No plan yet", "length")
	s.press("40 ft", "enter")
	s.sees("needs height")
	s.press("12 ft 6 in", "enter")
	s.sees("needs resin volume")
	s.press(".5 ft3", "enter")
	s.sees("needs TDS")
	s.press("250 ppm NaCl", "enter")
	s.sees("The bed lasts this wash", "Saved.")
	s.press("q")
	require.Zero(t, s.ends())

	again := start(t, setup{home: home})
	again.sees("The bed lasts this wash", "40 ft", "12 ft 6 in")
	assert.NotContains(t, again.text(), "built-in example")
	again.press("q")
	require.Zero(t, again.ends())
	rig, err := os.ReadFile(filepath.Join(home, "data", "washeve", "rig.toml"))
	require.NoError(t, err)
	assert.Contains(t, string(rig), `length = "40 ft"`)
}

// What was committed is there after kill -9.
func TestNothingTypedIsLostToAKill(t *testing.T) {
	home := t.TempDir()
	s := start(t, setup{home: home})
	s.sees("built-in example")
	s.press("e")
	s.sees("No plan yet")
	s.press("38 ft", "enter")
	s.sees("Saved.", "38 ft")
	s.kill()
	again := start(t, setup{home: home})
	again.sees("38 ft", "needs height")
}

func TestWrongTextIsToldAtOnceAndTheLastRightOneStays(t *testing.T) {
	s := start(t, setup{home: t.TempDir()})
	s.sees("built-in example")
	s.press("down", "down", "down", "enter", "ctrl+u", "400 ft")
	s.sees("is outside 5 ft to 75 ft")
	s.press("enter")
	s.sees("Not taken")
	s.sees("40 ft 6 in")
}

func TestNoColourMeansNoColour(t *testing.T) {
	s := start(t, setup{env: []string{"NO_COLOR=1"}})
	s.sees("The bed lasts this wash")
	s.press("tab", "?")
	s.sees("Keys")
	assert.NotRegexp(t, "\x1b\\[[0-9;]*(3[0-8]|4[0-8]|9[0-7])[0-9;]*m", s.output())
}

// A terminal that cannot draw, and one that is asked not to, get a line at a time,
// the wash day included; a command prints.
func TestDumbAndPlainTerminalsGetWords(t *testing.T) {
	for leave, s := range map[string]setup{"quit\n": {env: []string{"TERM=dumb"}}, "\x04": {args: []string{"--plain"}}} {
		run := start(t, s)
		run.sees("The bed lasts this wash", "Plan. A word, like")
		run.press("wash\n")
		run.sees("Step 1 of 32: set up.", "Wash day. A word, like")
		run.press("next\n")
		run.sees("Step 2 of 32: pre-rinse, roof")
		run.press("back\n")
		run.sees("Begin at 06:15 and are done by 09:39")
		run.press(leave)
		assert.Zero(t, run.ends())
		assert.NotContains(t, run.output(), "\x1b[?1049h")
		assert.NotRegexp(t, `\x1b\[[0-9;]*m`, run.output())
	}
	run := start(t, setup{args: []string{"plan", "--plain"}})
	run.await(func(string) bool { return strings.Contains(run.raw.String(), "THE BED LASTS THIS WASH") }, "the plan should be printed")
}

// A reading typed while the example is on the screen is kept nowhere, and that is
// said.
func TestTheExamplesLogIsNotWritten(t *testing.T) {
	home := t.TempDir()
	s := start(t, setup{home: home})
	s.sees("built-in example", "The bed lasts this wash")
	s.press("B")
	s.sees("r reading")
	s.press("r")
	s.sees("It reads")
	s.press("3", "enter")
	s.sees("Was the standing water out?")
	s.press("y")
	s.sees("Not written, but still here: this is the built-in example")
	assert.NoFileExists(t, filepath.Join(home, "data", "washeve", "log.toml"))
}
