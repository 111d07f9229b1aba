package store

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
)

// Written out on a day, the example has the coming days, as far apart and of the same
// weekdays; all else is as it is built in.
func TestTheExampleIsWrittenForTheComingDays(t *testing.T) {
	built := Example()
	for today, want := range map[string]string{
		"2026-01-01": "2026-05-16", "2026-05-16": "2026-05-16", "2026-05-17": "2026-05-23",
		"2026-11-27": "2026-11-28", "2026-11-28": "2026-11-28", "2026-11-29": "2026-12-05", "2028-02-29": "2028-03-04",
	} {
		day, err := model.ParseDate(today)
		require.NoError(t, err)
		was, is := ExampleOn(day)
		assert.Equal(t, "2026-05-16", was.String())
		assert.Equal(t, want, is.String(), today)
		dir := t.TempDir()
		_, err = WriteExampleOn(dir, day)
		require.NoError(t, err)
		lib, faults := Open(dir).Load()
		assert.Empty(t, faults)
		assert.Equal(t, want, lib.Washes[0].Wash.Date.Words(), today)
		days := noon(is).Sub(noon(was))
		trip := lib.Trips[0].Trip
		for i, w := range built.Trips[0].Trip.Washes {
			old, now := w.Date.Or(model.Date{}), trip.Washes[i].Date.Or(model.Date{})
			assert.Equal(t, days, noon(now).Sub(noon(old)), today)
			assert.Equal(t, noon(old).Weekday(), noon(now).Weekday())
		}
		first, _, _ := trip.Days()
		assert.Equal(t, first.Month.String()+" loop", trip.Name)
		assert.Equal(t, built.Rig, lib.Rig)
	}
	assert.Equal(t, built, Example(), "the built-in one stays")
	dir := t.TempDir()
	_, err := WriteExample(dir)
	require.NoError(t, err)
	data, err := os.ReadFile(filepath.Join(dir, "trips", "example.toml"))
	require.NoError(t, err)
	assert.Contains(t, string(data), `name = "June loop"`)
}
