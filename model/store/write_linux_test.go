package store

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/store/disktest"
	"washeve/model/store/fault"
)

func TestReadOnlyFolder(t *testing.T) {
	s, lib := written(t)
	before := text(t, s, "rig.toml")
	disktest.OpenFor(t, s.Dir(), 0o555)
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), "rig.toml"), 0o666))
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), lockFile), 0o666))
	setField(t, lib.Rig.Vehicles[0].Fields(), "length", "38 ft")
	var err error
	disktest.AsNobody(t, func() { err = s.SaveRig(lib.Rig) })
	require.ErrorContains(t, err, filepath.Join(s.Dir(), "rig.toml")+" was not saved: ")
	require.ErrorContains(t, err, "permission denied; what was there is as it was; the folder or file may not be written: give yourself the right to, or choose another with --dir")
	assert.Equal(t, before, text(t, s, "rig.toml"))
	assert.Equal(t, []string{"places.toml", "rig.toml", "trips", "washes"}, listed(t, s.Dir()))
}

func TestNewFolderInAReadOnlyOne(t *testing.T) {
	dir := t.TempDir()
	disktest.OpenFor(t, dir, 0o555)
	var err error
	disktest.AsNobody(t, func() { _, err = WriteExample(filepath.Join(dir, "data")) })
	require.ErrorContains(t, err, filepath.Join(dir, "data")+" was not saved: ")
	assert.Empty(t, listed(t, dir))
}

func TestReadOnlyFile(t *testing.T) {
	s, lib := written(t)
	before := text(t, s, "rig.toml")
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), "rig.toml"), 0o444))
	setField(t, lib.Rig.Vehicles[0].Fields(), "length", "38 ft")
	require.ErrorContains(t, s.SaveRig(lib.Rig), "permission denied")
	assert.Equal(t, before, text(t, s, "rig.toml"))
}

func TestNoRightToRead(t *testing.T) {
	s, _ := written(t)
	disktest.OpenFor(t, s.Dir(), 0o755)
	path := filepath.Join(s.Dir(), "places.toml")
	require.NoError(t, os.Chmod(path, 0o600))
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), "rig.toml"), 0o000))
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), "washes"), 0o000))
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), "trips"), 0o000))
	var faults []fault.Fault
	if os.Geteuid() != 0 {
		require.NoError(t, os.Chmod(path, 0o000))
	}
	disktest.AsNobody(t, func() { _, faults = s.Load() })
	var got []string
	for _, f := range faults {
		got = append(got, f.Error())
	}
	const why = ": may not be read: permission denied; give yourself the right to read it"
	assert.Equal(t, []string{"rig.toml" + why, "places.toml" + why, "washes" + why, "trips" + why}, got)
}

// TestFullDisk meets a real limit in the middle of a write.
func TestFullDisk(t *testing.T) {
	if !disktest.InChild(t) {
		return
	}
	s, lib := written(t)
	before := text(t, s, "rig.toml")
	setField(t, lib.Rig.Vehicles[0].Fields(), "length", "38 ft")

	var err error
	disktest.WithRoom(t, 1000, func() { err = s.SaveRig(lib.Rig) })
	require.ErrorIs(t, err, syscall.EFBIG)
	assert.True(t, strings.HasSuffix(err.Error(), "what was there is as it was; the disk is full: make room and save again"), err)
	assert.Equal(t, before, text(t, s, "rig.toml"))
	assert.Equal(t, []string{"places.toml", "rig.toml", "trips", "washes"}, listed(t, s.Dir()), "nothing is left behind")
	require.NoError(t, s.SaveRig(lib.Rig), "the work in hand can be saved once there is room")
}
