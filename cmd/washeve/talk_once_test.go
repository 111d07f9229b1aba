package main

import (
	"bytes"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui/cells"
	"washeve/ui/talk"
)

// What is said is broken once: whole where no width is known, and by the width of the
// window alone where it is narrow.
func TestLongAnswersAreBrokenOnce(t *testing.T) {
	for _, c := range []struct{ say, long string }{
		{"full", "Stay within the tank's pressure and temperature.*Never reverse the flow\\."},
		{"full", "order at 06:[0-9]+: roof.*(rest of the day|until [0-9:]+)[)]"},
		{"why inputs", "MEMORY    height of the wind.*FAO-56 eq\\. 47"},
		{"terms", "A tank filled with resin.*its resin is changed\\."},
		{"trouble", "to do: *Write the reading down.*with a towel now\\."},
		{"bed; evidence", "A flushed reading now at.*keeps to the cap\\."},
		{"trip; full", "First at risk.*All of them: [0-9]+ %"},
		{"help", "list WORDS:.*all tells every one\\."},
	} {
		lines := strings.Split(c.say, "; ")
		whole := regexp.MustCompile(`(?m)^.*(` + c.long + `).*$`).FindString(saidAt(t, 0, lines...))
		require.Greater(t, cells.Width(whole), 60, "%s: %s", c.say, c.long)
		for _, width := range []int{40, 60} {
			var once strings.Builder
			_, err := talk.Wrapped(&once, func() int { return width }).Write([]byte(whole))
			require.NoError(t, err)
			assert.Contains(t, saidAt(t, width, lines...), once.String(), c.say)
		}
	}
}

// saidAt is what is said in a window so wide, or on no terminal that has a width, with 0.
func saidAt(t *testing.T, width int, lines ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	s := atTerminal(&out, &errs, lines...)
	s.width = func() int { return width }
	require.Zero(t, run([]string{"--plain", "--dir", mine(t)}, s), errs.String())
	return out.String()
}

// What is undone on a trip after it was left names a place as it is called by now.
func TestATripUndoneLaterFollowsNames(t *testing.T) {
	dir := mine(t)
	before := kept(t, dir)["trips/example.toml"]
	saidIn(t, dir, "trip", "later 3", "back", "rig", "rename Fernwater to Dock", "back", "back")
	assert.NotEqual(t, strings.ReplaceAll(before, "Fernwater", "Dock"), kept(t, dir)["trips/example.toml"], "a wash is a day later")
	dir = mine(t)
	said := saidIn(t, dir, "trip", "later 3", "back", "rig", "rename Fernwater to Dock", "back", "back", "trip", "undo")
	assert.Contains(t, said, "Undone: \"date\" of the wash of ")
	assert.Equal(t, strings.ReplaceAll(before, `"Fernwater"`, `"Dock"`), kept(t, dir)["trips/example.toml"])
}
