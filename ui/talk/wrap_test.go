package talk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui/cells"
	"washeve/ui/internal/hands"
	"washeve/ui/talk"
)

// onTerminal is a text as a terminal so wide gets it.
func onTerminal(t *testing.T, width int, text string) string {
	var out strings.Builder
	n, err := talk.Wrapped(&out, func() int { return width }).Write([]byte(text))
	require.NoError(t, err)
	assert.Len(t, text, n)
	return out.String()
}

func TestLongLinesAreBrokenAtWords(t *testing.T) {
	assert.Equal(t, "It takes\n24 gal or\n36 gal a\nwash.\nNext.\n", onTerminal(t, 12, "It takes 24 gal or 36 gal a wash.\nNext.\n"), "a number keeps its unit")
	assert.Equal(t, "It is 93 or\n100 %.\n", onTerminal(t, 15, "It is 93 or 100 %.\n"), "and so does a share")
	assert.Equal(t, "  one two three four\n  five six seven\n", onTerminal(t, 22, "  one two three four five six seven\n"), "a line stays as far in as it was")
	assert.Equal(t, "a long question,\nand help: ", onTerminal(t, 17, "a long question, and help: "), "the blank behind a question stays")
	assert.Equal(t, strings.Repeat("word ", 40)+"\n", onTerminal(t, 0, strings.Repeat("word ", 40)+"\n"), "no width is known")
}

func TestATalkOnANarrowTerminalBreaksNoWord(t *testing.T) {
	var out strings.Builder
	in := strings.NewReader("help\nzz\nwhy\nhelp light\n")
	require.NoError(t, talk.Run(t.Context(), hands.Root{Screen: lamp{}}, in, talk.Wrapped(&out, func() int { return 40 })))
	for _, line := range strings.Split(out.String(), "\n") {
		for _, shown := range strings.SplitAfter(line, "or help: ") { // the answer is typed behind it, and ends the line
			assert.LessOrEqual(t, cells.Width(shown), 40, shown)
		}
	}
	assert.Contains(t, out.String(), "what to do when something")
}

func TestAnErrorOfTheTerminalIsTold(t *testing.T) {
	_, err := talk.Wrapped(shut{}, func() int { return 10 }).Write([]byte("any words at all\n"))
	assert.Error(t, err)
}
