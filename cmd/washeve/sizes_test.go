//go:build unix

package main

import (
	"fmt"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/charmbracelet/x/vt"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Every screen, in each way it may stand, in windows of three sizes and in one that is
// too small.
func TestEveryScreenAtEverySize(t *testing.T) {
	for _, st := range stations() {
		if !st.looksItsOwn() {
			continue
		}
		t.Run(st.name, func(t *testing.T) {
			t.Parallel()
			s := st.open(t, setup{width: 80, height: 24, margin: 6, quiet: 50 * time.Millisecond})
			s.fits(80, 24)
			for _, size := range [][2]int{{160, 50}, {79, 24}, {100, 30}, {80, 23}, {80, 24}} {
				w, h := size[0], size[1]
				text := st.sees()
				if w < 80 || h < 24 {
					text = fmt.Sprintf("This window has %d x %d cells; the plan needs 80 x 24.", w, h)
				}
				drawn := len(s.output())
				s.resize(w, h)
				s.drawsAfter(drawn, text)
				s.fits(w, h)
				s.leavesNothing(text)
			}
		})
	}
}

// drawsAfter waits until more than so many bytes have come, and a text is seen.
func (s *screen) drawsAfter(bytes int, text string) {
	s.t.Helper()
	s.await(func(shown string) bool { return s.raw.Len() > bytes && strings.Contains(shown, text) }, "the screen should be drawn anew with "+text)
	s.settles()
}

// fits checks that nothing is drawn beyond the window, and that the cursor is in it.
func (s *screen) fits(width, height int) {
	s.t.Helper()
	s.await(func(shown string) bool {
		for y, line := range strings.Split(shown, "\n") {
			if y >= height && strings.TrimSpace(line) != "" {
				return false
			}
		}
		for y := range s.emu.Height() {
			for x := width; x < s.emu.Width(); x++ {
				if cell := s.emu.CellAt(x, y); cell != nil && strings.TrimSpace(cell.Content) != "" {
					return false
				}
			}
		}
		at := s.emu.CursorPosition()
		return at.X <= width && at.Y < height // behind the last cell of a line a cursor waits
	}, fmt.Sprintf("the frame should fit %d x %d", width, height))
}

// leavesNothing checks that the screen holds what the program means it to, a text among
// it, and nothing of a former frame: continued, the program draws all of it anew on an
// empty screen.
func (s *screen) leavesNothing(text string) {
	s.t.Helper()
	before, after := "", ""
	for range 3 { // a lesson or the clock may change the frame meanwhile
		before = s.text()
		drawn := len(s.output())
		require.NoError(s.t, s.cmd.Process.Signal(syscall.SIGCONT))
		s.await(func(string) bool { return strings.Contains(s.raw.String()[drawn:], "\x1b[?1049h") }, "the screen should be emptied")
		s.drawsAfter(drawn, text)
		if after = s.text(); after == before {
			return
		}
	}
	assert.Equal(s.t, after, before, "something of a former frame is left")
}

// The emulator tells what is wrong: without this the tests above could not fail.
func TestTheEmulatorShowsWhatDoesNotFit(t *testing.T) {
	emu := vt.NewSafeEmulator(16, 4)
	s := &screen{t: t, emu: emu}
	_, _ = emu.WriteString("0123456789ab\r\nx")
	assert.Equal(t, "0123456789ab\nx\n\n\n", s.text())
	_, _ = emu.WriteString("\x1b[2J\x1b[HZ")
	assert.Equal(t, "Z\n\n\n\n", s.text())
}
