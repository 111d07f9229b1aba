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
	"washeve/model/store/fault"
)

// takenOutBy saves a rig from which items are taken out, with the yes it asks for.
func takenOutBy(t *testing.T, s *Store, r model.Rig) string {
	err := s.SaveRig(r)
	var asks *NeedsRewrite
	require.ErrorAs(t, err, &asks)
	require.True(t, asks.TakesOut(), "nothing else is lost")
	backup, err := asks.Rewrite()
	require.NoError(t, err)
	return backup
}

func TestWhatIsBroughtBackHasItsComments(t *testing.T) {
	s, lib := written(t)
	before := text(t, s, "rig.toml")
	fewer := lib.Rig
	fewer.Sprayers = slices.Clone(lib.Rig.Sprayers[:1])
	backup := takenOutBy(t, s, fewer)
	after := text(t, s, "rig.toml")
	for range 3 {
		require.NoError(t, s.SaveRig(lib.Rig))
		assert.Equal(t, before, text(t, s, "rig.toml"), "byte for byte as it was")
		assert.Equal(t, backup, takenOutBy(t, s, fewer), "one copy of one file")
		assert.Equal(t, after, text(t, s, "rig.toml"))
	}
	assert.NoFileExists(t, filepath.Join(s.Dir(), "rig.toml.bak-2"))
}

func TestWhatAnotherProgramWroteIsNotBroughtBackOver(t *testing.T) {
	s, lib := written(t)
	fewer := lib.Rig
	fewer.Sprayers = slices.Clone(lib.Rig.Sprayers[:1])
	takenOutBy(t, s, fewer)
	changed := text(t, s, "rig.toml") + "# a note by hand\n"
	require.NoError(t, os.WriteFile(filepath.Join(s.Dir(), "rig.toml"), []byte(changed), 0o600))
	require.ErrorIs(t, s.SaveRig(lib.Rig), ErrChanged)
	assert.Equal(t, changed, text(t, s, "rig.toml"))
	_, faults := s.Load()
	require.False(t, fault.HasErrors(faults))
	require.NoError(t, s.SaveRig(lib.Rig))
	assert.Contains(t, text(t, s, "rig.toml"), "# a note by hand", "it is loaded, so it stays")
}

// Adding, renaming and taking out touch their own lines and no other.
func TestHandWrittenLinesSurviveChangesElsewhere(t *testing.T) {
	s, _ := written(t)
	own := strings.Replace(text(t, s, "rig.toml"), "name = \"garden nozzle\"", "  name   =  'garden nozzle'   # Oma's, the green one", 1)
	require.NoError(t, os.WriteFile(filepath.Join(s.Dir(), "rig.toml"), []byte(own), 0o600))
	lib, faults := s.Load()
	require.False(t, fault.HasErrors(faults))
	r := lib.Rig
	r.Vehicles = append(slices.Clone(r.Vehicles), model.Vehicle{Name: "Tin Box"})
	require.NoError(t, s.SaveRig(r))
	r.Vehicles = slices.Clone(r.Vehicles)
	r.Vehicles[1].Name = "Tin Box 24"
	require.NoError(t, s.SaveRig(r))
	added := "\n[[vehicle]]\nname = \"Tin Box 24\"\n"
	assert.Equal(t, own, strings.Replace(text(t, s, "rig.toml"), added, "", 1))
	r.Hoses = slices.Clone(r.Hoses[:1])
	takenOutBy(t, s, r)
	hose := own[strings.Index(own, "[[hose]]\nname = \"spray hose\""):strings.Index(own, "# ---- TDS pens")]
	assert.Equal(t, strings.Replace(own, hose, "", 1), strings.Replace(text(t, s, "rig.toml"), added, "", 1))
	r.Vehicles = r.Vehicles[:1]
	takenOutBy(t, s, r)
	got := text(t, s, "rig.toml")
	assert.Equal(t, strings.Join(strings.Fields(strings.Replace(own, hose, "", 1)), " "), strings.Join(strings.Fields(got), " "))
}
