//go:build unix

package main

import (
	"strings"
	"syscall"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/term"
)

// From everywhere, and by each way out, the terminal is left as it was found. Who is
// asked because work would be lost says yes; nobody asks where a signal ends the
// program or the terminal is gone, and then the exit code tells.
func TestEveryWayOutOfEveryScreen(t *testing.T) {
	screens := map[string]bool{}
	for i, st := range stations() {
		ways := hardWays()
		if screens[st.screen] { // each of its other stations by one of them
			ways = ways[i%len(ways) : i%len(ways)+1]
		}
		screens[st.screen] = true
		t.Run(st.name, func(t *testing.T) {
			t.Parallel()
			code := done
			for _, key := range quits(st.twin(t)) {
				s := st.open(t, setup{})
				s.press(key)
				if s.asksWhetherToLose() {
					code = couldNot
					s.press("y")
				}
				assert.Equal(t, done, s.ends(), key)
				s.isAsFound(key)
			}
			for _, way := range ways {
				s := st.open(t, setup{})
				way.goes(s)
				assert.Equal(t, code, s.ends(), way.name)
				if way.name == closed {
					continue
				}
				s.isAsFound(way.name)
				assert.Equal(t, code != done, strings.Contains(s.output(), "the program was ended, and this is lost: "), "%s: what is lost is told", way.name)
			}
		})
	}
}

const closed = "the terminal is closed"

// hardWays are the ways out by which nobody can be asked.
func hardWays() []wayOut {
	signalled := func(signal syscall.Signal) wayOut {
		return wayOut{signal.String(), func(s *screen) { require.NoError(s.t, s.cmd.Process.Signal(signal)) }}
	}
	return []wayOut{
		signalled(syscall.SIGTERM), signalled(syscall.SIGHUP),
		{closed, func(s *screen) { require.NoError(s.t, s.pty.Close()) }},
	}
}

type wayOut struct {
	name string
	goes func(*screen)
}

// asksWhetherToLose waits for the end of the program, or for its question.
func (s *screen) asksWhetherToLose() bool {
	const asks = "This would be lost"
	s.mu.Lock()
	defer s.mu.Unlock()
	for !s.over && !strings.Contains(s.text(), asks) {
		s.news.Wait()
	}
	return strings.Contains(s.text(), asks)
}

// isAsFound checks that the program has given the terminal back.
func (s *screen) isAsFound(after string) {
	s.t.Helper()
	s.mu.Lock()
	for !s.over {
		s.news.Wait()
	}
	defer s.mu.Unlock()
	s.looksAsFound(after)
}

// looksAsFound is the check itself. The screen is locked.
func (s *screen) looksAsFound(after string) {
	s.t.Helper()
	assert.False(s.t, s.emu.IsAltScreen(), "%s: the other screen is left", after)
	assert.False(s.t, s.emu.CursorHidden(), "%s: the cursor is there", after)
	for _, mode := range []ansi.Mode{ansi.ModeMouseX10, ansi.ModeMouseNormal, ansi.ModeMouseButtonEvent, ansi.ModeMouseAnyEvent, ansi.ModeMouseExtSgr, ansi.ModeFocusEvent, ansi.ModeBracketedPaste} {
		assert.False(s.t, s.modes[mode], "%s: mode %d is off", after, mode.Mode())
	}
	now, err := term.GetState(int(s.pty.Fd()))
	require.NoError(s.t, err)
	assert.Equal(s.t, s.found, now, "%s: the settings of the line", after)
}
