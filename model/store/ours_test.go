package store

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
)

// What the program put in since it was started is taken back without a question, and
// not a byte of the file has changed.
func TestWhatWasPutInIsTakenBackWithoutAQuestion(t *testing.T) {
	s, lib := written(t)
	before := text(t, s, "rig.toml")
	more := lib.Rig
	more.Sprayers = append(slices.Clone(lib.Rig.Sprayers), model.Sprayer{Name: "wand"}, model.Sprayer{Name: "mister"})
	for range 3 {
		require.NoError(t, s.SaveRig(more))
		require.NoError(t, s.SaveRig(lib.Rig))
		assert.Equal(t, before, text(t, s, "rig.toml"))
	}
}

func TestAChangeOfATripIsTakenBackWithoutAQuestion(t *testing.T) {
	s := Open(t.TempDir())
	trip := Example().Trips[0].Trip
	trip.Changes = nil
	require.NoError(t, s.SaveTrip("june.toml", trip))
	before := text(t, s, "trips/june.toml")
	more := trip.Clone()
	more.Changes = append(more.Changes, model.ResinChange{})
	setField(t, more.Changes[0].Fields(), "date", "2027-01-08")
	require.NoError(t, s.SaveTrip("june.toml", more))
	require.NotEqual(t, before, text(t, s, "trips/june.toml"))
	require.NoError(t, s.SaveTrip("june.toml", trip))
	assert.Equal(t, before, text(t, s, "trips/june.toml"))
}

// A file that the program has just begun is its own, line by line, also where the program
// has changed a line since: taking one out asks nothing and leaves no copy.
func TestALineOfANewTripIsTakenOutWithoutAQuestion(t *testing.T) {
	s, _ := written(t)
	require.NoError(t, os.RemoveAll(filepath.Join(s.Dir(), "trips")))
	trip := Example().Trips[0].Trip
	require.Greater(t, len(trip.Washes), 2)
	require.NoError(t, s.SaveTrip("june.toml", trip))
	moved := trip.Clone()
	setField(t, moved.Washes[1].Fields(), "date", "2027-01-08")
	require.NoError(t, s.SaveTrip("june.toml", moved))
	less := moved.Clone()
	less.Washes = slices.Delete(slices.Clone(less.Washes), 0, 2)
	require.NoError(t, s.SaveTrip("june.toml", less))
	assert.NotContains(t, text(t, s, "trips/june.toml"), "2027-01-08")
	require.NoError(t, s.SaveTrip("june.toml", moved), "and it is put back")
	files, err := os.ReadDir(filepath.Join(s.Dir(), "trips"))
	require.NoError(t, err)
	assert.Len(t, files, 1, "no copy is left")

	path := filepath.Join(s.Dir(), "trips", "june.toml")
	noted := strings.Replace(text(t, s, "trips/june.toml"), "2027-01-08\"", "2027-01-08\" # my birthday", 1)
	require.NoError(t, os.WriteFile(path, []byte(noted), 0o600))
	lib, faults := s.Load()
	require.Empty(t, faults)
	require.Len(t, lib.Trips, 1)
	var asks *NeedsRewrite
	require.ErrorAs(t, s.SaveTrip("june.toml", less), &asks, "what a person wrote is asked about")
}

// A comment or a value of a person in it, or a start of the program since, and the
// question is asked as for anything else.
func TestWhatAPersonTouchedIsNotTakenOutUnasked(t *testing.T) {
	for name, touch := range map[string]func(*testing.T, *Store, *model.Rig){
		"read anew": func(t *testing.T, s *Store, _ *model.Rig) {
			_, faults := s.Load()
			require.Empty(t, faults)
		},
		"a comment": func(t *testing.T, s *Store, _ *model.Rig) {
			path := filepath.Join(s.Dir(), "rig.toml")
			noted := strings.Replace(text(t, s, "rig.toml"), "name = \"wand\"", "name = \"wand\" # the green one", 1)
			require.NoError(t, os.WriteFile(path, []byte(noted), 0o600))
			_, faults := s.Load()
			require.Empty(t, faults)
		},
		"a value": func(t *testing.T, s *Store, r *model.Rig) {
			setField(t, r.Sprayers[len(r.Sprayers)-1].Fields(), "flow", "1.2 gpm")
			require.NoError(t, s.SaveRig(*r))
		},
	} {
		s, lib := written(t)
		more := lib.Rig
		more.Sprayers = append(slices.Clone(lib.Rig.Sprayers), model.Sprayer{Name: "wand"})
		require.NoError(t, s.SaveRig(more), name)
		touch(t, s, &more)
		var asks *NeedsRewrite
		require.ErrorAs(t, s.SaveRig(lib.Rig), &asks, name)
		assert.Equal(t, `sprayer "wand" would be taken out of it`, asks.Reason, name)
	}
}
