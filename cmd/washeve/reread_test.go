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

// changes puts other text into a file of the data folder, as an editor does.
func changes(t *testing.T, path, was, is string) string {
	t.Helper()
	before := read(t, path)
	require.Contains(t, before, was)
	after := strings.Replace(before, was, is, 1)
	require.NoError(t, os.WriteFile(path, []byte(after), 0o600))
	return after
}

// A file that an editor changes is read anew where the program stands: the answer follows,
// nothing is asked, and the next edit is saved.
func TestFilesAreReadAnewInPlace(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	coach, van := withVan(t, dir)
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("A")
	s.sees("All files are as they are shown here.")
	s.press("L", "2")
	s.sees("In hand now, in its own file: Van wash")
	changes(t, van, "Juniper Flats", "Fernwater")
	changes(t, filepath.Join(dir, "rig.toml"), "length = ", "length : ")
	s.press("f5")
	s.sees("Nothing was read anew, and what is here stays. Mend these lines first:", "rig.toml:", "length: has a colon", "Any key goes on.")
	s.press("x")
	s.sees("Van wash: Marigold at Juniper Flats")
	changes(t, filepath.Join(dir, "rig.toml"), "length : ", "length = ")
	s.press("A")
	s.sees("Read anew: washes/van.toml. Undo starts anew.", "Van wash: Marigold at Fernwater")
	before := read(t, coach)
	s.press("p", "1")
	s.sees("Saved.", "Van wash: Marigold at Juniper Flats")
	assert.Equal(t, vanWash, read(t, van))
	assert.Equal(t, before, read(t, coach))
	s.press("q")
	require.Zero(t, s.ends())
}

// A file that an editor changes is told after each key, until it is read.
func TestAFileThatAnEditorChangesIsTold(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	changes(t, filepath.Join(dir, "rig.toml"), `length = "40 ft 6 in"`, `length = "35 ft"`)
	s.press("down")
	s.sees("Changed on the disk meanwhile: rig.toml.", "A reads anew")
	s.press("A")
	s.sees("Read anew: rig.toml.", "35 ft")
	s.press("down")
	s.settles()
	s.await(func(text string) bool { return !strings.Contains(text, "Changed on the disk") }, "nothing is told any more")
	s.press("q")
	require.Zero(t, s.ends())
}

// What was edited here and cannot be saved is lost only after a question, and is in a copy
// beside the file: of the plan, of the rig, of a trip.
func TestUnsavedWorkIsKeptInACopy(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	rig, trip := filepath.Join(dir, "rig.toml"), filepath.Join(dir, "trips", "example.toml")
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	tells := func() {
		s.sees("still here")
		s.press("A")
		s.sees("Read the files anew, and keep what you have here in a copy beside them?")
	}
	lost := strings.Replace(read(t, rig), `shape = "coach"`, `shape = "trailer"`, 1)
	edited := changes(t, rig, "# ", "#  ")
	s.press("v", "down", "down", "right")
	tells()
	s.press("n")
	s.sees("Left as it was.", "trailer")
	tells = func() {
		s.press("A")
		s.sees("Read the files anew, and keep what you have here in a copy beside them?")
		s.press("y")
	}
	tells()
	s.sees("Read anew: rig.toml. Undo starts anew. What you had here is in rig.toml.bak-1.", "coach")
	assert.Equal(t, lost, read(t, rig+".bak-1"))
	assert.Equal(t, edited, read(t, rig))

	s.press("R", "tab", "down")
	changes(t, rig, "#  ", "#   ")
	s.press("right")
	s.sees("still here")
	tells()
	s.sees("What you had here is in rig.toml.bak-2.")
	assert.Contains(t, read(t, rig+".bak-2"), `shape = "trailer"`)

	s.press("T", "down", "down")
	s.sees(" loop, ", "Uses up")
	was := read(t, trip)
	changes(t, trip, "# ", "#  ")
	s.press(".")
	s.sees("still here")
	tells()
	s.sees("What you had here is in", "trips/example.toml.bak-1.")
	assert.NotEqual(t, was, read(t, trip+".bak-1"))
	s.press("q")
	require.Zero(t, s.ends())
}

// By words it is the same.
func TestFilesAreReadAnewByWords(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	places := filepath.Join(dir, "places.toml")
	s := start(t, setup{home: home, args: []string{"--plain"}})
	answered := 0
	says := func(line string) (answer string) {
		s.press(line, "enter")
		s.await(func(string) bool {
			answer = strings.Join(strings.Fields(s.raw.String()[answered:]), " ")
			return strings.HasSuffix(answer, "help:") || strings.HasSuffix(answer, "y or n:") || strings.HasSuffix(answer, "yes or no:")
		}, "there should be an answer to "+line)
		answered = len(s.output())
		assert.Empty(t, keysNamed(answer))
		return answer
	}
	s.sees("or help:")
	answered = len(s.output())
	assert.Contains(t, says("reload"), "All files are as they are shown here.")
	edited := changes(t, places, "# ", "#  ")
	assert.Contains(t, says("change TDS 300 ppm NaCl"), "nothing was written over; reload reads it anew, then repeat your change")
	assert.Contains(t, says("reload"), "Read the files anew, and keep what you have here in a copy beside them?")
	assert.Contains(t, says("no"), "Left as it was.")
	says("reload")
	assert.Contains(t, says("yes"), "Read anew: places.toml. Undo starts anew. What you had here is in places.toml.bak-1.")
	assert.Contains(t, read(t, places+".bak-1"), `tds = "300 ppm NaCl"`)
	assert.Equal(t, edited, read(t, places))
	changes(t, places, "tds = ", "tds : ")
	assert.Contains(t, says("reload"), "Nothing was read anew, and what is here stays. Mend these lines first: places.toml:")
	assert.Contains(t, says("change vehicle length 33 ft"), "vehicle length: 33 ft. Saved.")
	s.press("quit", "enter")
	require.Zero(t, s.ends())
}

// At the end the faults of the log are told as it was read last, after all was read anew too.
func TestFaultsOfTheLogAreToldAfterAllWasReadAnew(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	changes(t, filepath.Join(dir, "rig.toml"), `length = "40 ft 6 in"`, `length = "35 ft"`)
	s.press("A")
	s.sees("Read anew: rig.toml.", "35 ft")
	season := read(t, "../../testdata/season/log.toml")
	require.NoError(t, os.WriteFile(filepath.Join(dir, logFile), []byte(season+"nonsense\n"), 0o600))
	_, before, _ := strings.Cut(s.text(), "bed has")
	s.press("down")
	s.await(func(text string) bool { return !strings.Contains(text, "bed has"+before[:20]) }, "the log to be read")
	s.press("up")
	s.sees("Not all of the log can be read", "log.toml:", "cannot be read")
	s.press("down")
	s.await(func(text string) bool { return !strings.Contains(text, "Not all of the log") }, "it is told once")
	s.press("q")
	require.Zero(t, s.ends())
	s.await(func(string) bool { return strings.Contains(s.raw.String(), "error: log.toml:") }, "the fault of the log")
}
