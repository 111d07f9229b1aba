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

// ownFiles writes the example out as a person's own, with a line of theirs.
func ownFiles(t *testing.T, home string) (dir, rig string) {
	t.Helper()
	dir = filepath.Join(home, "data", "washeve")
	s := start(t, setup{home: home})
	s.sees("built-in example")
	s.press("a")
	s.sees("It is yours now")
	s.press("q")
	require.Zero(t, s.ends())
	data, err := os.ReadFile(filepath.Join(dir, "rig.toml"))
	require.NoError(t, err)
	rig = strings.Replace(string(data), "name = \"garden nozzle\"", "name   = 'garden nozzle'  # the green one", 1)
	require.NoError(t, os.WriteFile(filepath.Join(dir, "rig.toml"), []byte(rig), 0o600))
	return dir, rig
}

// A second vehicle is added, used in the next wash and planned, and the file
// keeps every other byte.
func TestASecondVehicleIsAddedAndPlanned(t *testing.T) {
	home := t.TempDir()
	dir, before := ownFiles(t, home)
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("R")
	s.sees("Vehicles", "Marigold", "n new vehicle")
	s.press("n", "Tin Box", "enter")
	s.sees("Saved.", "needs length")
	s.press("24 ft", "enter", "10 ft", "enter")
	s.sees("(8 ft 6 in)")
	s.press("t")
	s.sees("Tin Box is in the wash that is planned.")
	s.press("R")
	s.sees("Tin Box at Juniper Flats", "24 ft")
	s.press("q")
	require.Zero(t, s.ends())

	after, err := os.ReadFile(filepath.Join(dir, "rig.toml"))
	require.NoError(t, err)
	assert.Equal(t, before, strings.Replace(string(after), "\n[[vehicle]]\nname = \"Tin Box\"\nlength = \"24 ft\"\nheight = \"10 ft\"\n", "", 1))
	again := start(t, setup{home: home})
	again.sees("Tin Box at Juniper Flats")
}

// A vehicle that another wash names is renamed: that wash follows, and the
// program opens again.
func TestRenamingReachesTheOtherWashes(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	other := filepath.Join(dir, "washes", "april.toml")
	require.NoError(t, os.WriteFile(other, []byte("format = 1\nname = \"April\" # as in May\ndate = \"2020-04-01\"\nvehicle = \"Marigold\"   # ours\n"), 0o600))
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("R")
	s.sees("n new vehicle")
	s.press("e", "ctrl+u", "Old Goose", "enter")
	s.sees("washes/april.toml")
	s.press("R")
	s.sees("Old Goose at Juniper Flats")
	s.press("q")
	require.Zero(t, s.ends())
	data, err := os.ReadFile(other)
	require.NoError(t, err)
	assert.Equal(t, "format = 1\nname = \"April\" # as in May\ndate = \"2020-04-01\"\nvehicle = \"Old Goose\"   # ours\n", string(data))
	again := start(t, setup{home: home})
	again.sees("Old Goose at Juniper Flats")
}

// The example is changed on the Rig screen, and adopted from there.
func TestTheExampleIsAdoptedFromTheRig(t *testing.T) {
	home := t.TempDir()
	s := start(t, setup{home: home})
	s.sees("built-in example")
	s.press("R")
	s.sees("Vehicles")
	s.press("n", "Tin Box", "enter")
	s.sees("needs length")
	s.press("a")
	s.await(func(shown string) bool {
		return !strings.Contains(shown, "built-in example") && strings.Contains(shown, "Tin Box")
	}, "the Rig screen is there again, and the rig is one's own")
	s.press("q")
	require.Zero(t, s.ends())
	rig, err := os.ReadFile(filepath.Join(home, "data", "washeve", "rig.toml"))
	require.NoError(t, err)
	assert.Contains(t, string(rig), `name = "Tin Box"`)
}
