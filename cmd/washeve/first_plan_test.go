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
