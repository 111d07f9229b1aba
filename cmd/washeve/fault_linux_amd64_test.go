package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/store"
	"washeve/model/store/disktest"
	"washeve/model/store/journal"
)

// roomFor limits the size of the files that the program may write, in bytes: a
// disk that is full where no small one can be mounted.
const roomFor = "WASHEVE_TEST_ROOM"

func init() {
	var room uint64
	if _, err := fmt.Sscan(os.Getenv(roomFor), &room); err == nil {
		signal.Ignore(syscall.SIGXFSZ)
		_ = syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: room, Max: room})
	}
}

// smallDisk is a folder on a disk that can be filled up, and what fills it: a
// small file system of its own, or else a limit on the size of files.
func smallDisk(t *testing.T) (dir string, fill func() (env []string), empty func()) {
	t.Helper()
	dir = t.TempDir()
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "size=96k,mode=0700"); err != nil {
		t.Logf("no file system can be mounted (%v): files are limited in size instead", err)
		return dir, func() []string { return []string{roomFor + "=64"} }, func() {}
	}
	t.Cleanup(func() { _ = syscall.Unmount(dir, syscall.MNT_DETACH) })
	filler := filepath.Join(dir, "filler")
	fill = func() []string {
		err := os.WriteFile(filler, bytes.Repeat([]byte("x"), 200<<10), 0o600)
		require.ErrorIs(t, err, syscall.ENOSPC)
		return nil
	}
	return dir, fill, func() { require.NoError(t, os.Remove(filler)) }
}

// asked runs the program as a process of its own.
func asked(dir string, env []string, args ...string) (out string, code int) {
	c := exec.Command(os.Args[0], append(args, "--dir", dir)...)
	c.Env = append([]string{asProgram + "=1", "HOME=" + dir}, env...)
	text, _ := c.CombinedOutput()
	return string(text), c.ProcessState.ExitCode()
}

// toTheBlock lengthens a log to a whole block, so that one more letter needs
// room on the disk.
func toTheBlock(t *testing.T, path string) {
	t.Helper()
	const block = 4096
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	pad := "#" + strings.Repeat("-", block-len(text)-2) + "\n"
	require.NoError(t, os.WriteFile(path, append([]byte(pad), text...), 0o600))
}

func contentsOf(t *testing.T, dir string) map[string]string {
	t.Helper()
	all := map[string]string{}
	for _, name := range []string{"rig.toml", "places.toml", logFile, "washes/example.toml"} {
		data, err := os.ReadFile(filepath.Join(dir, name))
		if err == nil {
			all[name] = string(data)
		}
	}
	return all
}

func TestAFullDiskIsToldAndNothingIsLost(t *testing.T) {
	dir, fill, empty := smallDisk(t)
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	_, err = journal.Open(filepath.Join(dir, logFile)).Append(regenerated("first"))
	require.NoError(t, err)
	toTheBlock(t, filepath.Join(dir, logFile))
	before := contentsOf(t, dir)
	env := fill()
	for _, d := range deeds() {
		if d.name == "init" || d.name == "import" {
			continue
		}
		said, code := asked(dir, env, d.args...)
		assert.Equal(t, couldNot, code, "%s: %s", d.name, said)
		assert.Contains(t, said, "the disk is full: make room", d.name)
		assert.Equal(t, before, contentsOf(t, dir), d.name)
	}
	empty()
	said, code := asked(dir, nil, "log", "wash", "--di", "30 gal")
	assert.Zero(t, code, said)
}

// The work in hand stays on the screen, and is saved once there is room.
func TestAFullDiskLeavesTheWorkOnTheScreen(t *testing.T) {
	dir, fill, empty := smallDisk(t)
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	before := contentsOf(t, dir)
	env := fill()
	s := start(t, setup{env: append(env, "WASHEVE_DIR="+dir)})
	s.sees("The bed lasts this wash")
	s.press("down", "down", "down", "enter", "ctrl+u", "38 ft", "enter")
	s.sees("Not saved, but still here", "38 ft")
	assert.Equal(t, before, contentsOf(t, dir))
	s.press("q")
	s.sees("This would be lost")
	s.press("n")
	if env == nil {
		empty()
		s.press("q")
		assert.Zero(t, s.ends())
		assert.Contains(t, contentsOf(t, dir)["rig.toml"], `length = "38 ft"`)
		return
	}
	s.press("q", "y")
	assert.Zero(t, s.ends())
}

func TestAReadOnlyFolderIsTold(t *testing.T) {
	dir := t.TempDir()
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	_, err = journal.Open(filepath.Join(dir, logFile)).Append(regenerated("first"))
	require.NoError(t, err)
	before := contentsOf(t, dir)
	for _, folder := range []string{"washes", "trips"} {
		require.NoError(t, os.Chmod(filepath.Join(dir, folder), 0o755))
		require.NoError(t, os.Chmod(filepath.Join(dir, folder, "example.toml"), 0o444))
	}
	for _, name := range []string{"rig.toml", "places.toml", logFile, "washes/example.toml"} {
		require.NoError(t, os.Chmod(filepath.Join(dir, name), 0o444))
	}
	disktest.OpenFor(t, dir, 0o555)
	disktest.AsNobody(t, func() {
		_, errs, code := ran(t, "log", "wash", "--di", "30 gal", "--dir", dir)
		assert.Equal(t, couldNot, code, errs)
		assert.Contains(t, errs, "permission denied; the log is as it was; the folder or file may not be written: give yourself the right to, or choose another with --dir")
		out, errs, code := ran(t, "plan", "--dir", dir)
		assert.Zero(t, code, errs)
		assert.Contains(t, out, "THE BED LASTS", "it can be read all the same")
		_, errs, code = ran(t, "init", "--dir", filepath.Join(dir, "new"))
		assert.Equal(t, couldNot, code)
		assert.Contains(t, errs, "give yourself the right to")
	})
	assert.Equal(t, before, contentsOf(t, dir))
}

// edited opens the screen on a rig, lets something happen to the files, and
// changes the length.
func edited(t *testing.T, happens func(dir string)) (*screen, string) {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "data")
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	s := start(t, setup{env: []string{"WASHEVE_DIR=" + dir}})
	s.sees("The bed lasts this wash")
	happens(dir)
	s.press("down", "down", "down", "enter", "ctrl+u", "38 ft", "enter")
	return s, dir
}

func TestAFileThatAnEditorChangedIsNotWrittenOver(t *testing.T) {
	const mine = "# a line of my own\n"
	s, dir := edited(t, func(dir string) {
		path := filepath.Join(dir, "rig.toml")
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		require.NoError(t, os.WriteFile(path, append([]byte(mine), data...), 0o600))
	})
	s.sees("Not saved, but still here", "was changed on the disk", "38 ft")
	assert.True(t, strings.HasPrefix(contentsOf(t, dir)["rig.toml"], mine))
	assert.NotContains(t, contentsOf(t, dir)["rig.toml"], "38 ft")
}

func TestAFolderThatVanishedIsTold(t *testing.T) {
	s, dir := edited(t, func(dir string) { require.NoError(t, os.RemoveAll(dir)) })
	s.sees("Not saved, but still here", "38 ft")
	assert.Empty(t, contentsOf(t, dir), "nothing is made up in its place")
	s.press("q")
	s.sees("This would be lost")
	s.press("y")
	assert.Zero(t, s.ends())
}

func TestALinkedRigStaysALink(t *testing.T) {
	elsewhere := filepath.Join(t.TempDir(), "kept.toml")
	dir := filepath.Join(t.TempDir(), "data")
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	path := filepath.Join(dir, "rig.toml")
	require.NoError(t, os.Rename(path, elsewhere))
	require.NoError(t, os.Symlink(elsewhere, path))
	s := start(t, setup{env: []string{"WASHEVE_DIR=" + dir}})
	s.sees("The bed lasts this wash")
	s.press("down", "down", "down", "enter", "ctrl+u", "38 ft", "enter")
	s.sees("Saved.")
	leads, err := os.Readlink(path)
	require.NoError(t, err)
	assert.Equal(t, elsewhere, leads)
	data, err := os.ReadFile(elsewhere)
	require.NoError(t, err)
	assert.Contains(t, string(data), `length = "38 ft"`)
}

// Two screens on one folder: the later one to save is told, and writes nothing
// over.
func TestTwoScreensAtOnce(t *testing.T) {
	s, dir := edited(t, func(dir string) {
		other := start(t, setup{env: []string{"WASHEVE_DIR=" + dir}})
		other.sees("The bed lasts this wash")
		other.press("down", "down", "down", "enter", "ctrl+u", "39 ft", "enter")
		other.sees("Saved.")
		other.press("q")
		require.Zero(t, other.ends())
	})
	s.sees("Not saved, but still here", "was changed on the disk")
	assert.Contains(t, contentsOf(t, dir)["rig.toml"], `length = "39 ft"`)
}

// What another program writes into the log counts on a screen that is open.
func TestAnOpenScreenSeesWhatIsLoggedElsewhere(t *testing.T) {
	dir := t.TempDir()
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	s := start(t, setup{env: []string{"WASHEVE_DIR=" + dir}})
	s.sees("The bed lasts this wash")
	said, code := asked(dir, nil, "log", "wash", "--di", "150 gal")
	require.Zero(t, code, said)
	s.press("down")
	s.sees("The bed will likely not last")
	s.press("q")
	require.Zero(t, s.ends())
}

// Programs that write in the log at once lose no entry of one another.
func TestManyProgramsWriteInTheLog(t *testing.T) {
	const programs = 8
	dir := t.TempDir()
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	var wait sync.WaitGroup
	for i := range programs {
		wait.Go(func() {
			said, code := asked(dir, nil, "log", "wash", "--di", fmt.Sprintf("%d gal", 20+i))
			assert.Zero(t, code, said)
		})
	}
	wait.Wait()
	log, faults := journal.Open(filepath.Join(dir, logFile)).Load()
	assert.Empty(t, faults)
	assert.Len(t, log, programs)
}

// The clock is set back: what is written then stands in the log beside the rest,
// and can be struck out.
func TestTheClockIsSetBack(t *testing.T) {
	dir := t.TempDir()
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	at := func(when time.Time, args ...string) string {
		var o, e bytes.Buffer
		s := streams{in: strings.NewReader(""), out: &o, errs: &e, columns: pageColumns, env: func(string) string { return "" }, clock: stopped{when}}
		require.Zero(t, run(append(args, "--dir", dir), s), e.String())
		return o.String()
	}
	at(noon, "log", "wash", "--di", "30 gal")
	at(noon.AddDate(-3, 0, 0), "log", "wash", "--di", "31 gal")
	log, faults := journal.Open(filepath.Join(dir, logFile)).Load()
	require.Empty(t, faults)
	require.Len(t, log, 2)
	at(noon.AddDate(-5, 0, 0), "log", "strike", log[1].ID)
	assert.Contains(t, at(noon.AddDate(-5, 0, 0), "log", "list"), "struck out: 30 gal DI")
	at(noon.AddDate(-5, 0, 0), "plan")
	at(noon.AddDate(-5, 0, 0), "bed")
}
