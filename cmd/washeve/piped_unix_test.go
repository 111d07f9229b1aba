//go:build unix

package main

import (
	"io"
	"os"
	"os/exec"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What is in a pipe before the program starts is told to be unread; an empty one is not.
func TestWordsThroughAPipeAreToldToBeUnread(t *testing.T) {
	for words, want := range map[string]bool{"change vehicle length\n42 ft\n": true, "": false} {
		out, in, err := os.Pipe()
		require.NoError(t, err)
		_, err = io.WriteString(in, words)
		require.NoError(t, err)
		require.NoError(t, in.Close())
		self, err := os.Executable()
		require.NoError(t, err)
		var errs strings.Builder
		c := exec.Command(self, "--plain", "--dir", t.TempDir())
		c.Stdin, c.Stderr, c.Env = out, &errs, append(os.Environ(), asProgram+"=1")
		require.NoError(t, c.Run())
		require.NoError(t, out.Close())
		assert.Equal(t, want, strings.Contains(errs.String(), "what was piped in is not read"), errs.String())
	}
}
