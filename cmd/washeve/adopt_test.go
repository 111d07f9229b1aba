package main

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/store"
)

// An example that was written out in part on another day keeps the days that it has, and
// these are told.
func TestAnExampleHalfWrittenKeepsItsDays(t *testing.T) {
	dir := t.TempDir()
	_, err := store.WriteExampleOn(dir, model.Date{Year: 2026, Month: time.July, Day: 1})
	require.NoError(t, err)
	require.NoError(t, os.RemoveAll(filepath.Join(dir, "trips")))
	later := model.Date{Year: 2026, Month: time.November, Day: 28}
	k := keeper{store: store.Open(dir), book: &book{today: func() model.Date { return later }}}
	was, is, err := k.Adopt()
	require.NoError(t, err)
	assert.Equal(t, "2026-05-16", was.String())
	assert.Equal(t, "2026-07-04", is.String())
}
