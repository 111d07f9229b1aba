package store_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/store"
)

func TestWriteOutsideIsWholeAndLeavesNothingBehind(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "sheet.txt")
	require.NoError(t, store.WriteOutside(path, []byte("one")))
	require.NoError(t, os.Chmod(path, 0o640))
	require.NoError(t, store.WriteOutside(path, []byte("two")))
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, "two", string(data))
	info, err := os.Stat(path)
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o640), info.Mode().Perm())
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	assert.Len(t, entries, 1)
}

func TestWriteOutsideSaysWhatItCouldNot(t *testing.T) {
	dir := t.TempDir()
	err := store.WriteOutside(filepath.Join(dir, "none", "sheet.txt"), nil)
	require.ErrorContains(t, err, "make the folder first")
	require.NoError(t, os.Mkdir(filepath.Join(dir, "taken"), 0o700))
	require.ErrorContains(t, store.WriteOutside(filepath.Join(dir, "taken"), nil), "what was there is as it was")
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	assert.Len(t, entries, 1)
}
