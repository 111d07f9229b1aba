package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// childOf is the only child of a process, whichever of its threads began it.
func childOf(t *testing.T, pid int) int {
	lists, err := filepath.Glob(fmt.Sprintf("/proc/%d/task/*/children", pid))
	require.NoError(t, err)
	var children []string
	for _, list := range lists {
		text, err := os.ReadFile(list)
		require.NoError(t, err)
		children = append(children, strings.Fields(string(text))...)
	}
	require.Len(t, children, 1)
	child, err := strconv.Atoi(children[0])
	require.NoError(t, err)
	return child
}

// stateOf is the letter that the system has for what a process does: T for stopped.
func stateOf(pid int) string {
	text, err := os.ReadFile(fmt.Sprintf("/proc/%d/stat", pid))
	if err != nil {
		return ""
	}
	after := string(text[strings.LastIndexByte(string(text), ')')+1:])
	return strings.Fields(after)[0]
}

// becomes waits until a process does what the letters say.
func becomes(t *testing.T, pid int, letters string) {
	t.Helper()
	require.Eventually(t, func() bool { return strings.Contains(letters, stateOf(pid)) }, patience, 2*time.Millisecond, "state %s", letters)
}

// Stopped by the shell and continued, the seconds are those of the clock, and the
// terminal is the program's again.
func TestStoppedAndContinued(t *testing.T) {
	b := newBay(t)
	b.begin(asShell + "=1")
	program := childOf(t, b.s.cmd.Process.Pid)
	t.Cleanup(func() { _ = syscall.Kill(program, syscall.SIGKILL) })
	b.s.press("enter")
	b.s.sees("step 2 of")
	b.s.press("space")
	b.s.sees("the time runs")
	b.clock.set(t, instantAt(30*time.Second))
	b.s.sees("0:30 of 5:44")
	for i := range 3 {
		require.NoError(t, syscall.Kill(program, syscall.SIGTSTP))
		becomes(t, program, "T")
		b.s.await(func(string) bool { return !b.s.emu.IsAltScreen() }, "the terminal should be given back")
		b.s.mu.Lock()
		b.s.looksAsFound("stopped")
		b.s.mu.Unlock()
		b.clock.set(t, instantAt(time.Duration(i+1)*100*time.Second))
		before := len(b.s.output())
		require.NoError(t, syscall.Kill(program, syscall.SIGCONT))
		b.s.sees([]string{"1:40 of 5:44", "3:20 of 5:44", "5:00 of 5:44"}[i])
		b.s.await(func(string) bool { return strings.Contains(b.s.raw.String()[before:], "\x1b[?1049h") }, "the other screen should be taken again")
	}
	b.s.press("space")
	b.s.await(func(shown string) bool {
		return !strings.Contains(shown, "the time runs") && strings.Contains(shown, "5:00 of")
	}, "keys should still be heard")
	assert.Len(t, b.underway().Deeds, 3)
}

// Where no shell could continue it, nothing stops it.
func TestNotStoppedWithoutAShell(t *testing.T) {
	s := start(t, setup{})
	s.sees("flow cap")
	require.NoError(t, s.cmd.Process.Signal(syscall.SIGTSTP))
	s.press("D")
	s.sees("easy: no face hurries")
}

// Line by line the terminal itself turns ctrl+z into a signal: the program stops with
// its question asked, and hears the answer when it is continued.
func TestStoppedAndContinuedLineByLine(t *testing.T) {
	b := newBay(t)
	b.s = start(t, setup{home: b.home, env: []string{inClockFile + "=" + b.clock.path, asShell + "=1"}, args: []string{"--plain"}})
	b.s.sees("or help:")
	program := childOf(t, b.s.cmd.Process.Pid)
	t.Cleanup(func() { _ = syscall.Kill(program, syscall.SIGKILL) })
	b.s.press("ctrl+z")
	becomes(t, program, "T")
	require.NoError(t, syscall.Kill(program, syscall.SIGCONT))
	b.s.press("quit\n")
	assert.Equal(t, done, b.s.ends())
}

// A window that has another size when the program goes on is drawn whole for that size,
// one that is too small among them.
func TestContinuedInAnotherWindow(t *testing.T) {
	b := newBay(t)
	s := start(t, setup{home: b.home, env: []string{inClockFile + "=" + b.clock.path, asShell + "=1"}, width: 80, height: 24, margin: 30})
	s.sees("The bed lasts this wash")
	program := childOf(t, s.cmd.Process.Pid)
	t.Cleanup(func() { _ = syscall.Kill(program, syscall.SIGKILL) })
	// At 62 columns no line of the notice is as wide as the window: such a line is not erased
	// behind its end, where the emulator's margin may hold what the last window drew.
	for _, size := range [][2]int{{62, 10}, {100, 30}, {80, 24}} {
		require.NoError(t, syscall.Kill(program, syscall.SIGTSTP))
		becomes(t, program, "T")
		drawn := len(s.output())
		s.resize(size[0], size[1])
		require.NoError(t, syscall.Kill(program, syscall.SIGCONT))
		text := "The bed lasts this wash"
		if size[0] < 80 {
			text = fmt.Sprintf("This window has %d x %d cells", size[0], size[1])
		}
		s.drawsAfter(drawn, text)
		s.fits(size[0], size[1])
		whole := s.text()
		drawn = len(s.output())
		require.NoError(t, syscall.Kill(program, syscall.SIGCONT))
		s.drawsAfter(drawn, text)
		assert.Equal(t, whole, s.text(), "drawn anew it is the same")
	}
}
