package store

import (
	"os"
	"os/signal"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/store/fault"
)

// asNobody runs do with the rights of nobody on files, so that rights count
// even where the tests are run by root. The thread is given up afterwards.
func asNobody(t *testing.T, do func()) {
	t.Helper()
	done := make(chan struct{})
	go func() {
		defer close(done)
		if os.Geteuid() == 0 {
			runtime.LockOSThread() // and never unlocked: the thread ends with this goroutine
			if _, _, errno := syscall.RawSyscall(syscall.SYS_SETFSUID, 65534, 0, 0); errno != 0 {
				t.Errorf("setfsuid: %v", errno)
				return
			}
		}
		do()
	}()
	<-done
}

func openFor(t *testing.T, dir string, mode os.FileMode) {
	t.Helper()
	for d := dir; d != os.TempDir() && len(d) > 1; d = filepath.Dir(d) {
		require.NoError(t, os.Chmod(d, 0o755))
	}
	require.NoError(t, os.Chmod(dir, mode))
	t.Cleanup(func() { _ = os.Chmod(dir, 0o700) })
}

func TestReadOnlyFolder(t *testing.T) {
	s, lib := written(t)
	before := text(t, s, "rig.toml")
	openFor(t, s.Dir(), 0o555)
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), "rig.toml"), 0o666))
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), lockFile), 0o666))
	setField(t, lib.Rig.Vehicles[0].Fields(), "length", "38 ft")
	var err error
	asNobody(t, func() { err = s.SaveRig(lib.Rig) })
	require.ErrorContains(t, err, filepath.Join(s.Dir(), "rig.toml")+" was not saved: ")
	require.ErrorContains(t, err, "permission denied; what was there is as it was; the folder or file may not be written: give yourself the right to, or choose another with --dir")
	assert.Equal(t, before, text(t, s, "rig.toml"))
	assert.Equal(t, []string{"places.toml", "rig.toml", "trips", "washes"}, listed(t, s.Dir()))
}

func TestNewFolderInAReadOnlyOne(t *testing.T) {
	dir := t.TempDir()
	openFor(t, dir, 0o555)
	var err error
	asNobody(t, func() { _, err = WriteExample(filepath.Join(dir, "data")) })
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
	openFor(t, s.Dir(), 0o755)
	path := filepath.Join(s.Dir(), "places.toml")
	require.NoError(t, os.Chmod(path, 0o600))
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), "rig.toml"), 0o000))
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), "washes"), 0o000))
	require.NoError(t, os.Chmod(filepath.Join(s.Dir(), "trips"), 0o000))
	var faults []fault.Fault
	if os.Geteuid() != 0 {
		require.NoError(t, os.Chmod(path, 0o000))
	}
	asNobody(t, func() { _, faults = s.Load() })
	var got []string
	for _, f := range faults {
		got = append(got, f.Error())
	}
	const why = ": may not be read: permission denied; give yourself the right to read it"
	assert.Equal(t, []string{"rig.toml" + why, "places.toml" + why, "washes" + why, "trips" + why}, got)
}

// TestFullDisk meets a real limit in the middle of a write.
func TestFullDisk(t *testing.T) {
	s, lib := written(t)
	before := text(t, s, "rig.toml")
	setField(t, lib.Rig.Vehicles[0].Fields(), "length", "38 ft")

	signal.Ignore(syscall.SIGXFSZ)
	defer signal.Reset(syscall.SIGXFSZ)
	var was syscall.Rlimit
	require.NoError(t, syscall.Getrlimit(syscall.RLIMIT_FSIZE, &was))
	require.NoError(t, syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: 1000, Max: was.Max}))
	err := s.SaveRig(lib.Rig)
	require.NoError(t, syscall.Setrlimit(syscall.RLIMIT_FSIZE, &was))

	require.ErrorIs(t, err, syscall.EFBIG)
	assert.True(t, strings.HasSuffix(err.Error(), "what was there is as it was; the disk is full: make room and save again"), err)
	assert.Equal(t, before, text(t, s, "rig.toml"))
	assert.Equal(t, []string{"places.toml", "rig.toml", "trips", "washes"}, listed(t, s.Dir()), "nothing is left behind")
	require.NoError(t, s.SaveRig(lib.Rig), "the work in hand can be saved once there is room")
}
