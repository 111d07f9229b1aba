// Package golden compares text with what a test stored, and stores it anew with
// the flag -update. Only tests import it.
package golden

import (
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Flag adds -update to a test binary's flags. Call it once, in a package
// variable of the test.
func Flag() *bool { return flag.Bool("update", false, "store what the tests see as right") }

// Check compares text with testdata/name.
func Check(t *testing.T, update bool, name, text string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if update {
		require.NoError(t, os.MkdirAll("testdata", 0o755))
		require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
	}
	want, err := os.ReadFile(path)
	require.NoError(t, err, "run with -update to store it")
	assert.Equal(t, string(want), text, name)
}
