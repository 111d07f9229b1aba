package store

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What cannot be saved since the file has changed is kept beside it, once, and the file
// stays as the other hand left it. What is not edited gets no copy.
func TestWhatCannotBeSavedIsKeptBeside(t *testing.T) {
	s, lib := written(t)
	before := text(t, s, "rig.toml")
	path := filepath.Join(s.Dir(), "rig.toml")
	other := before + "# mine\n"
	require.NoError(t, os.WriteFile(path, []byte(other), 0o600))
	setField(t, lib.Rig.Vehicles[0].Fields(), "length", "38 ft")
	lib.Rig.Sprayers = lib.Rig.Sprayers[:1] // which a save would ask about
	for range 2 {
		beside := s.Beside()
		require.NoError(t, beside.SavePlaces(lib.Places))
		require.NoError(t, beside.SaveRig(lib.Rig))
		require.NoError(t, beside.SaveWash("new.toml", lib.Washes[0].Wash))
		assert.Equal(t, []string{"rig.toml.bak-1", "washes/new.toml.bak-1"}, beside.Copies())
	}
	assert.Equal(t, other, text(t, s, "rig.toml"))
	assert.NoFileExists(t, filepath.Join(s.Dir(), "places.toml.bak-1"))
	require.NoError(t, os.WriteFile(path, []byte(text(t, s, "rig.toml.bak-1")), 0o600))
	kept, faults := Open(s.Dir()).Load()
	assert.Empty(t, faults)
	assert.Equal(t, lib.Rig, kept.Rig)
	var asks *NeedsRewrite
	require.ErrorAs(t, s.SaveRig(lib.Rig), &asks, "the store itself has saved nothing")
}

func TestDiffersTellsWhatHasChanged(t *testing.T) {
	s, _ := written(t)
	again := func() *Store {
		o := Open(s.Dir())
		o.Load()
		return o
	}
	assert.Empty(t, s.Differs(again()))
	require.NoError(t, os.WriteFile(filepath.Join(s.Dir(), "rig.toml"), []byte(text(t, s, "rig.toml")+"# mine\n"), 0o600))
	require.NoError(t, os.WriteFile(filepath.Join(s.Dir(), "washes", "new.toml"), nil, 0o600))
	require.NoError(t, os.Remove(filepath.Join(s.Dir(), "washes", "example.toml")))
	assert.Equal(t, []string{"rig.toml", "washes/example.toml", "washes/new.toml"}, s.Differs(again()))
	assert.Equal(t, s.Differs(again()), again().Differs(s))
}

// A file that another hand has changed, or taken away, is told until it is read again; one
// that was saved here is not.
func TestChangedTellsOfOtherHands(t *testing.T) {
	s, lib := written(t)
	assert.Empty(t, s.Changed())
	setField(t, lib.Rig.Vehicles[0].Fields(), "length", "38 ft")
	require.NoError(t, s.SaveRig(lib.Rig))
	assert.Empty(t, s.Changed())
	path := filepath.Join(s.Dir(), "places.toml")
	require.NoError(t, os.WriteFile(path, []byte(text(t, s, "places.toml")+"# mine\n"), 0o600))
	require.NoError(t, os.Remove(filepath.Join(s.Dir(), "washes", "example.toml")))
	for range 2 {
		assert.Equal(t, []string{"places.toml", "washes/example.toml"}, s.Changed())
	}
	s.Load()
	assert.Empty(t, s.Changed())
}
