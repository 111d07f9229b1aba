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

// A way of a trip becomes its plan by a key: the trip's file says it, and u takes it
// back. What a way buys goes into the rig's file, and the trip names it.
func TestAWayOfATripIsMadeItsPlan(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	trip, rig := filepath.Join(dir, "trips", "example.toml"), filepath.Join(dir, "rig.toml")
	before := read(t, trip)
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("T")
	s.sees(" loop, ", "C ways")
	s.press("C")
	s.sees("Compare: ", " loop, ", "all on spec", "More ways: 9 to the right.")
	s.press("right", "enter")
	s.sees("The trip is now: DI for all. u takes it back.")
	assert.Contains(t, read(t, trip), "\ndi_for = \"every stage\"\n")
	s.takesBack(trip, before)

	s.press("C")
	s.sees("Compare: ", " loop, ")
	s.press("right", "right", "right", "right", "right", "right")
	s.sees("Only compared: enter cannot make it the plan")
	s.press("enter")
	s.sees("Not now: a plan and its log know one tank")
	s.press("left", "enter")
	s.sees("Put a tank of 1 ft3 into your rig")
	s.press("y")
	s.sees("Now: twice the tank.", "stays in the rig")
	s.press("esc")
	s.sees("In the rig now, for the trip: a tank of 1 ft3")
	s.press("q")
	require.Zero(t, s.ends())
	assert.Contains(t, read(t, trip), "bed = \"twice half-foot tank\"")
	assert.Contains(t, read(t, rig), "name = \"twice half-foot tank\"")
	again := start(t, setup{home: home})
	again.sees("Marigold at Juniper Flats")
	again.press("T")
	again.sees(" loop, ", ": twice half-foot tank", "The resin lasts this trip")
}

// What a way puts into a file is taken out again by u, without a question.
func TestAWayThatAddsToAFileIsTakenBack(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	trip, rig := filepath.Join(dir, "trips", "example.toml"), filepath.Join(dir, "rig.toml")
	before, owned := read(t, trip), read(t, rig)
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("T")
	s.sees(" loop, ", "C ways")
	s.press("C")
	s.sees("Compare: ", " loop, ")
	s.press("right", "right", "right", "right", "right", "right", "right", "enter")
	s.sees("The trip is now: change once. u takes it back.")
	assert.Contains(t, read(t, trip), "\n[[change]]\n")
	s.takesBack(trip, before)

	s.press("esc")
	s.sees("Marigold at Juniper Flats")
	s.press("C")
	s.sees("Compare")
	s.press("right", "right", "right", "right", "right", "enter")
	s.sees("Put a tank of 1 ft3 into your rig")
	s.press("y")
	s.sees("The plan is now: twice the tank. u takes it back. The tank counts as freshly")
	assert.NotEqual(t, owned, read(t, rig))
	s.takesBack(rig, owned)
}

// A place and a vehicle that a trip names are renamed: the trip follows with all else
// that stands in its file, and so it does when that is taken back.
func TestATripFollowsANewName(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	trip := filepath.Join(dir, "trips", "example.toml")
	before := read(t, trip)
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("R")
	s.sees("n new vehicle")
	s.press("e", "ctrl+u", "Old Goose", "enter")
	s.sees("Renamed")
	assert.Equal(t, strings.ReplaceAll(before, "vehicle = \"Marigold\" ", "vehicle = \"Old Goose\" "), read(t, trip))
	s.takesBack(trip, before)
	s.press("r")
	s.sees("Done again: ")
	s.press("R")
	s.sees("Old Goose at Juniper Flats")
	s.press("T")
	s.sees(" loop, ", "First at risk")
	s.press("q")
	require.Zero(t, s.ends())
	assert.Contains(t, read(t, trip), "vehicle = \"Old Goose\"")
}

// takesBack takes the last change back: the file is as it was before.
func (s *screen) takesBack(path, before string) {
	s.t.Helper()
	s.press("u")
	s.sees("Undone: ")
	assert.Equal(s.t, before, read(s.t, path))
}

func read(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	return string(data)
}

// beginsATrip begins a second trip on the Trip screen, and names its file.
func beginsATrip(t *testing.T) (s *screen, begun string) {
	t.Helper()
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	s = start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("T")
	s.sees(" loop, ")
	s.press("b")
	s.sees("(2 of 2)", "A trip to start from.")
	return s, filepath.Join(dir, "trips", "trip-2.toml")
}

// A trip that is begun has a file at once; u takes the trip and its file away, and r brings
// both back.
func TestATripThatWasBegunIsTakenBack(t *testing.T) {
	s, begun := beginsATrip(t)
	was := read(t, begun)
	s.press("u")
	s.sees(" loop, ", "Undone: ")
	assert.NoFileExists(t, begun)
	s.press("r")
	s.sees("(2 of 2)", "Done again: ")
	assert.Equal(t, was, read(t, begun))
	s.press("u")
	s.sees(" loop, ", "Undone: ")
	s.press("q")
	require.Zero(t, s.ends())
	assert.NoFileExists(t, begun)
}

// One that somebody else wrote into meanwhile is theirs: it stays, and every byte of it.
func TestABegunTripThatAnEditorChangedStays(t *testing.T) {
	s, begun := beginsATrip(t)
	mine := read(t, begun) + "# mine\n"
	require.NoError(t, os.WriteFile(begun, []byte(mine), 0o600))
	s.press("u")
	s.sees("(2 of 2)", "The trip stays: trips/trip-2.toml was changed on the disk")
	s.press("down", ".")
	s.sees("trips/trip-2.toml was changed on the disk")
	s.press("q")
	s.sees("This would be lost")
	s.press("y")
	require.Zero(t, s.ends())
	assert.Equal(t, mine, read(t, begun))
}

// A trip that could not be saved is asked about at the end, though its screen was left.
func TestATripLeftUnsavedIsAskedAbout(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	path := filepath.Join(dir, "trips", "example.toml")
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("T", "down", "down")
	s.sees(" loop, ", "Uses up")
	edited := read(t, path) + "# mine\n"
	require.NoError(t, os.WriteFile(path, []byte(edited), 0o600))
	s.press(".")
	s.sees("still here")
	s.press("esc")
	s.sees("flow cap")
	s.press("q")
	s.sees("This would be lost: trips/example.toml was changed on the disk")
	s.press("n", "A")
	s.sees("Read the files anew")
	s.press("y")
	s.sees("What you had here is in", "trips/example.toml.bak-1.")
	s.press("q")
	require.Zero(t, s.ends())
	assert.Equal(t, edited, read(t, path))
}
