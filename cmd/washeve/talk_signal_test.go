//go:build unix

package main

import (
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A signal ends the talk as it ends the screens: what can be kept is kept, and what is
// lost is told.
func TestASignalEndsTheTalkAndItsWorkIsKept(t *testing.T) {
	for _, signal := range []syscall.Signal{syscall.SIGTERM, syscall.SIGHUP, syscall.SIGINT} {
		t.Run(signal.String(), func(t *testing.T) {
			t.Parallel()
			dir := mine(t)
			s := start(t, setup{args: []string{"--plain", "--dir", dir}})
			s.sees("or help:")
			s.press("day\n")
			s.sees("Day. A word")
			s.press("start 8:15\n")
			s.sees("08:15 to")
			s.settles()
			require.NoError(t, s.cmd.Process.Signal(signal))
			assert.Equal(t, done, s.ends())
			assert.Contains(t, said(kept(t, dir)), `start = "8:15"`)
		})
	}
	t.Run("what is lost", func(t *testing.T) {
		t.Parallel()
		s := start(t, setup{args: []string{"--plain"}})
		s.sees("or help:")
		s.press("change vehicle length 33\n")
		s.sees("33 ft.")
		s.settles()
		require.NoError(t, s.cmd.Process.Signal(syscall.SIGTERM))
		assert.Equal(t, couldNot, s.ends())
		s.sees("the program was ended, and this is lost: you changed the example")
	})
}

// said is all text of some files.
func said(files map[string]string) (all string) {
	for _, text := range files {
		all += text
	}
	return all
}
