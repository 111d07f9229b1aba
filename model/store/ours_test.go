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
