//go:build unix

package main

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The first plan of a person's own ends with the age of the bed, in a real terminal and
// beside a log that is read meanwhile.
func TestTheFirstPlanEndsWithTheAgeOfTheBed(t *testing.T) {
	home := t.TempDir()
	s := start(t, setup{home: home})
	s.sees("This is a built-in example.")
	s.press("e")
	s.sees("No plan yet")
	for _, fact := range []string{"40 ft", "12 ft", "0.5 ft3", "320 ppm NaCl"} {
		s.press(fact, "enter")
	}
	s.sees("The bed lasts this wash, if just filled", "Bed just filled? Type 0 gal, else what it has given.")
	s.press("120 gal", "enter")
	s.sees("Saved.", "gallons so far   120 gal")
	s.press("q")
	require.Zero(t, s.ends())
	assert.Contains(t, read(t, filepath.Join(home, "data", "washeve", "rig.toml")), "gallons_so_far = \"120 gal\"")
}

// ctrl+c while a value is typed takes what can be taken, with its unit; else it asks once, and
// a second ctrl+c ends the program.
func TestCtrlCLosesNoTextUnasked(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	rig := filepath.Join(dir, "rig.toml")
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("v", "down", "down", "down", "33 yards")
	s.sees("33 yards")
	before := read(t, rig)
	s.press("ctrl+c")
	s.sees("This would be lost: what is typed: length \"33 yards\"", "n stays")
	s.press("n")
	s.sees("33 yards", "esc as it was")
	s.press("ctrl+c")
	s.sees("This would be lost")
	s.press("ctrl+c")
	require.Zero(t, s.ends())
	assert.Equal(t, before, read(t, rig))

	s = start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("v", "down", "down", "down", "33")
	s.sees("needs its unit")
	s.press("ctrl+c")
	require.Zero(t, s.ends())
	assert.Contains(t, read(t, rig), "length = \"33 ft\"")
}
