package store

import (
	"os"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"github.com/gofrs/flock"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
)

// names lists a folder, without the lock.
func listed(t testing.TB, dir string) []string {
	t.Helper()
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	var all []string
	for _, e := range entries {
		if e.Name() != lockFile {
			all = append(all, e.Name())
		}
	}
	return all
}

func TestRightsOfFilesAndFolders(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "a", "b")
	made, err := WriteExample(dir)
	require.NoError(t, err)
	assert.Equal(t, []string{"places.toml", "rig.toml", filepath.Join("trips", "example.toml"), filepath.Join("washes", "example.toml")}, made)
	for name, want := range map[string]os.FileMode{"": 0o700, "washes": 0o700, "rig.toml": 0o600, lockFile: 0o600} {
		info, err := os.Stat(filepath.Join(dir, name))
		require.NoError(t, err)
		assert.Equal(t, want, info.Mode().Perm(), name)
	}
	assert.Equal(t, []string{"places.toml", "rig.toml", "trips", "washes"}, listed(t, dir))
}

// The example's wash and trip name its vehicle and place: beside a rig or places of
// somebody's own they would be faults that keep everything from opening.
func TestExampleIsNotWrittenBesideOwnFiles(t *testing.T) {
	for _, file := range []string{"rig.toml", "places.toml"} {
		dir := t.TempDir()
		require.NoError(t, os.WriteFile(filepath.Join(dir, file), []byte("mine"), 0o640))
		made, err := WriteExample(dir)
		own := new(OwnFileError)
		require.ErrorAs(t, err, &own)
		assert.Equal(t, file, own.File)
		assert.Empty(t, made)
		assert.Equal(t, []string{file}, listed(t, dir))
		data, err := os.ReadFile(filepath.Join(dir, file))
		require.NoError(t, err)
		assert.Equal(t, "mine", string(data))
	}
}

func TestExampleHalfWrittenIsCompleted(t *testing.T) {
	dir := t.TempDir()
	_, err := WriteExample(dir)
	require.NoError(t, err)
	lost := []string{filepath.Join("trips", "example.toml"), filepath.Join("washes", "example.toml")}
	for _, file := range lost {
		require.NoError(t, os.Remove(filepath.Join(dir, file)))
	}
	require.NoError(t, os.Remove(filepath.Join(dir, "rig.toml")))
	made, err := WriteExample(dir)
	require.NoError(t, err)
	assert.Equal(t, append([]string{"rig.toml"}, lost...), made)
	_, faults := Open(dir).Load()
	assert.Empty(t, faults)
	made, err = WriteExample(dir)
	require.NoError(t, err)
	assert.Empty(t, made)
}

func TestLinksAreWrittenThrough(t *testing.T) {
	s, lib := written(t)
	home := t.TempDir()
	path, real := filepath.Join(s.Dir(), "rig.toml"), filepath.Join(home, "real.toml")
	require.NoError(t, os.Rename(path, real))
	require.NoError(t, os.Chmod(real, 0o640))
	require.NoError(t, os.Symlink(real, path))
	setField(t, lib.Rig.Vehicles[0].Fields(), "length", "38 ft")
	require.NoError(t, s.SaveRig(lib.Rig))
	info, err := os.Lstat(path)
	require.NoError(t, err)
	assert.NotZero(t, info.Mode()&os.ModeSymlink)
	info, err = os.Stat(real)
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o640), info.Mode().Perm(), "a file keeps its rights")
	assert.Contains(t, text(t, s, "rig.toml"), `length = "38 ft"`)
	assert.Equal(t, []string{"real.toml"}, listed(t, home))

	require.NoError(t, os.Remove(real))
	_, faults := s.Load()
	require.NotEmpty(t, faults)
	assert.Equal(t, "rig.toml: is not there", faults[0].Error())
	require.Error(t, s.SaveRig(lib.Rig))
}

func TestWaitForAnotherWriter(t *testing.T) {
	s, lib := written(t)
	other := flock.New(filepath.Join(s.Dir(), lockFile))
	require.NoError(t, other.Lock())
	go func() {
		time.Sleep(100 * time.Millisecond)
		_ = other.Unlock()
	}()
	setField(t, lib.Rig.Vehicles[0].Fields(), "length", "38 ft")
	require.NoError(t, s.SaveRig(lib.Rig))
}

// TestTwoWriters: of two programs that change the same file, the later one is
// told; what was written stays whole.
func TestTwoWriters(t *testing.T) {
	s, _ := written(t)
	var wait sync.WaitGroup
	saved := make([]int, 4)
	for i := range saved {
		wait.Go(func() {
			mine := Open(s.Dir())
			for range 10 {
				lib, faults := mine.Load()
				if len(faults) > 0 {
					t.Errorf("read while it was written: %v", faults)
				}
				lib.Places = append(lib.Places, model.Place{Name: string(rune('a'+i)) + time.Now().Format("150405.000000000")})
				f, _ := find(lib.Places[len(lib.Places)-1].Fields(), "tds")
				if err := f.Set("100 ppm NaCl"); err != nil {
					t.Error(err)
				}
				if mine.SavePlaces(lib.Places) == nil {
					saved[i]++
				}
			}
		})
	}
	wait.Wait()
	lib, faults := s.Load()
	assert.Empty(t, faults)
	total := 0
	for _, n := range saved {
		total += n
	}
	assert.Len(t, lib.Places, 3+total, "every save that was acknowledged is there")
	assert.Equal(t, []string{"places.toml", "rig.toml", "trips", "washes"}, listed(t, s.Dir()))
}

func TestLocate(t *testing.T) {
	assert.Equal(t, "flag", Locate("flag", "env"))
	assert.Equal(t, "env", Locate("", "env"))
	assert.Equal(t, "washeve", filepath.Base(Locate("", "")))
	assert.True(t, filepath.IsAbs(Locate("", "")))
}

func TestWashesLatestFirst(t *testing.T) {
	s, lib := written(t)
	wash := lib.Washes[0].Wash
	for file, date := range map[string]string{"old.toml": "2020-05-01", "next.toml": "2100-05-01"} {
		setField(t, wash.Fields(), "date", date)
		require.NoError(t, s.SaveWash(file, wash))
	}
	require.NoError(t, os.WriteFile(filepath.Join(s.Dir(), "washes", "note.txt"), []byte("\x00"), 0o600))
	lib, faults := s.Load()
	assert.Empty(t, faults)
	require.Len(t, lib.Washes, 3)
	assert.Equal(t, []string{"next.toml", "example.toml", "old.toml"}, []string{lib.Washes[0].File, lib.Washes[1].File, lib.Washes[2].File})
}

func TestFaultsOfOneFileDoNotSpoilAnother(t *testing.T) {
	s, _ := written(t)
	require.NoError(t, os.WriteFile(filepath.Join(s.Dir(), "rig.toml"), []byte("\x00"), 0o600))
	lib, faults := s.Load()
	require.Len(t, faults, 1, "the names in the wash are not called missing")
	assert.Equal(t, "rig.toml:1: is not text in UTF-8; save the file as plain text in UTF-8", faults[0].Error())
	assert.True(t, lib.HasRig)
	assert.Len(t, lib.Places, 3)
	require.ErrorContains(t, s.SaveRig(lib.Rig), "nothing was saved: rig.toml:1: is not text in UTF-8")
}

func BenchmarkLoad(b *testing.B) {
	s, _ := written(b)
	for b.Loop() {
		s.Load()
	}
}

func BenchmarkSave(b *testing.B) {
	s, lib := written(b)
	lengths := []string{"38 ft", "39 ft"}
	for i := 0; b.Loop(); i++ {
		setField(b, lib.Rig.Vehicles[0].Fields(), "length", lengths[i%2])
		if err := s.SaveRig(lib.Rig); err != nil {
			b.Fatal(err)
		}
	}
}
