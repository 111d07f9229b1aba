package thrift

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/vt"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// A terminal shows the same after what was squeezed, whatever it showed before.
// The emulator is one that others wrote.
func TestSqueezedLinesLookTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var sent strings.Builder
		sent.WriteString("\x1b[H")
		for range rapid.IntRange(1, 5).Draw(t, "lines") {
			for range rapid.IntRange(1, 4).Draw(t, "pieces") {
				sent.WriteString(rapid.SampledFrom([]string{"bed", "─", "\x1b[38;5;80mDI\x1b[m", "水箱", "\x1b[1m"}).Draw(t, "words"))
				sent.WriteString(strings.Repeat(" ", rapid.IntRange(0, 30).Draw(t, "blanks")))
			}
			sent.WriteString("\x1b[m\x1b[K\r\n")
		}
		squeezed := squeeze([]byte(sent.String()))
		require.LessOrEqual(t, len(squeezed), sent.Len())
		require.Equal(t, seen(t, []byte(sent.String())), seen(t, squeezed))
	})
}

// seen is what a terminal full of other things shows after some bytes: each
// letter in its colours. A blank looks the same in all.
func seen(t require.TestingT, sent []byte) []string {
	const across, down = 150, 7
	screen := vt.NewEmulator(across, down)
	defer screen.Close()
	_, err := screen.WriteString(strings.Repeat(strings.Repeat("#", across), down) + string(sent))
	require.NoError(t, err)
	var letters []string
	for y := range down {
		for x := range across {
			cell := screen.CellAt(x, y)
			letter := cell.Content
			if letter != " " {
				letter += cell.Style.String()
			}
			letters = append(letters, letter)
		}
	}
	return letters
}

func TestFewBlanksAreSentAsTheyAre(t *testing.T) {
	require.Equal(t, "a          b", string(squeeze([]byte("a          b"))))
	require.Equal(t, "a\x1b[11X\x1b[11Cb", string(squeeze([]byte("a           b"))))
}
