package journal

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/store/disktest"
	"washeve/model/store/fault"
)

// The disk fills up in the middle of an entry, at several places.
func TestFullDisk(t *testing.T) {
	if !disktest.InChild(t) {
		return
	}
	path := newPath(t)
	appendTold(t, path, sample(t, "one"))
	before := read(t, path)
	for _, entries := range [][]model.Entry{{sample(t, "two")}, {sample(t, "two"), sample(t, "three")}} {
		for _, room := range []int{0, 1, 20, 100, 190} {
			var err error
			disktest.WithRoom(t, len(before)+room, func() { _, err = Open(path).Append(entries...) })
			require.ErrorIs(t, err, syscall.EFBIG)
			require.ErrorContains(t, err, path+": nothing was written: ")
			require.ErrorContains(t, err, "; the log is as it was; the disk is full: make room and try again")
			assert.Equal(t, before, read(t, path), "what was written is taken back")
			assert.Equal(t, []string{"log.toml", "log.toml.lock"}, listed(t, path), "nothing is left behind")
		}
	}
	assert.Empty(t, appendTold(t, path, sample(t, "two")), "the entry can be written once there is room")
	assert.Len(t, loadWhole(t, path), 2)
}

func TestFullDiskFromTheFirst(t *testing.T) {
	if !disktest.InChild(t) {
		return
	}
	path := newPath(t)
	var err error
	disktest.WithRoom(t, 50, func() { _, err = Open(path).Append(sample(t, "one")) })
	require.ErrorContains(t, err, "the disk is full")
	assert.Empty(t, loadWhole(t, path))
	assert.Equal(t, []string{"log.toml.lock"}, listed(t, path))
}

// A torn end that there is no room to set aside stays, and is told.
func TestFullDiskWithATornEnd(t *testing.T) {
	if !disktest.InChild(t) {
		return
	}
	path := newPath(t)
	text := header + "\n" + encode(sample(t, "one")) + "\n[[entry]]\nkind = \"reading\"\n"
	write(t, path, text)
	var log model.Log
	var faults []fault.Fault
	disktest.WithRoom(t, 5, func() { log, faults = Open(path).Load() })
	assert.Len(t, log, 1)
	require.Len(t, faults, 1)
	assert.Contains(t, faults[0].Error(), "it could not be moved out of the way")
	assert.Equal(t, text, read(t, path))
	assert.NotContains(t, listed(t, path), "log.torn-1.toml")
}

func TestReadOnlyFolder(t *testing.T) {
	path := newPath(t)
	text := header + "\n" + encode(sample(t, "one"))
	require.NoError(t, os.WriteFile(path, []byte(text+"\n[[entry]]\n"), 0o444))
	require.NoError(t, os.Chmod(path, 0o444))
	disktest.OpenFor(t, filepath.Dir(path), 0o555)
	var log model.Log
	var faults []fault.Fault
	var err error
	disktest.AsNobody(t, func() {
		log, faults = Open(path).Load()
		_, err = Open(path).Append(sample(t, "two"))
	})
	assert.Len(t, log, 1, "it can be read all the same")
	require.Len(t, faults, 1)
	assert.Contains(t, faults[0].Error(), "it could not be moved out of the way: ")
	require.ErrorContains(t, err, path+": nothing was written: ")
	require.ErrorContains(t, err, "permission denied; the log is as it was; the folder or file may not be written: give yourself the right to, or choose another with --dir")
	assert.Equal(t, []string{"log.toml"}, listed(t, path))
}

func TestNoRightToRead(t *testing.T) {
	path := newPath(t)
	write(t, path, header)
	require.NoError(t, os.Chmod(path, 0o000))
	disktest.OpenFor(t, filepath.Dir(path), 0o755)
	var faults []fault.Fault
	disktest.AsNobody(t, func() { _, faults = Open(path).Load() })
	assert.Equal(t, []string{"log.toml: may not be read: permission denied; give yourself the right to read it"}, said(faults))
}
