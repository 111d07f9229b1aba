package hands

import (
	"fmt"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"

	"washeve/ui/cells"
	"washeve/ui/internal/golden"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// Frames compares what a screen shows in every theme, at each of the sizes, with
// what is stored. Without colours it must say the same.
func Frames(t *testing.T, update bool, show func(theme.Theme) screen.Screen, sizes ...layout.Size) {
	t.Helper()
	for name, options := range map[string]theme.Options{
		"dark": {Profile: termenv.ANSI256}, "light": {Profile: termenv.ANSI256, Ground: theme.Light},
		"nocolor": {Profile: termenv.Ascii}, "plain": {Plain: true},
	} {
		s := show(theme.New(options))
		for _, size := range sizes {
			frame := s.View(size)
			Fits(t, frame, size)
			file := fmt.Sprintf("%s-%dx%d.txt", name, size.W, size.H)
			golden.Check(t, update, file, strings.ReplaceAll(frame, "\x1b", "^[")+"\n")
		}
	}
	colourIsOnlyAdded(t, show)
}

func colourIsOnlyAdded(t *testing.T, show func(theme.Theme) screen.Screen) {
	t.Helper()
	size := layout.Size{W: 100, H: 30}
	bare := show(theme.New(theme.Options{Profile: termenv.Ascii})).View(size)
	coloured := show(theme.New(theme.Options{Profile: termenv.ANSI256})).View(size)
	assert.Equal(t, bare, ansi.Strip(coloured))
}

// Fits fails a test whose frame has more lines than the size, or wider ones.
func Fits(t interface{ Fatalf(string, ...any) }, frame string, size layout.Size) {
	lines := strings.Split(frame, "\n")
	if len(lines) > size.H {
		t.Fatalf("%d lines on a screen of %d:\n%s", len(lines), size.H, frame)
	}
	for _, line := range lines {
		if cells.Width(line) > size.W {
			t.Fatalf("%q is wider than %d", line, size.W)
		}
	}
}

// Sent counts the bytes that the terminal library sends when one frame comes after
// another: every changed line anew.
func Sent(before, after string) int {
	old := strings.Split(before, "\n")
	bytes := 0
	for i, line := range strings.Split(after, "\n") {
		if i >= len(old) || old[i] != line {
			bytes += len(line) + len("\x1b[K\r\n")
		}
	}
	return bytes
}
