package safefile

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func listed(t *testing.T, dir string) []string {
	t.Helper()
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	return names
}

func requireHolds(t *testing.T, path, want string, mode os.FileMode) {
	t.Helper()
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, want, string(data))
	info, err := os.Stat(path)
	require.NoError(t, err)
	require.Equal(t, mode, info.Mode().Perm())
}

func TestReplaceMakesAPrivateFileAndKeepsTheRightsOfOneThatIsThere(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.toml")
	require.NoError(t, Replace(path, Bytes([]byte("one"))))
	requireHolds(t, path, "one", 0o600)
	require.NoError(t, os.Chmod(path, 0o640))
	require.NoError(t, Replace(path, Bytes([]byte("two"))))
	requireHolds(t, path, "two", 0o640)
}

func TestReplaceThatFailsHalfwayLeavesNothing(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.toml")
	require.NoError(t, Replace(path, Bytes([]byte("one"))))
	broken := errors.New("broken")
	err := Replace(path, func(w io.Writer) error {
		_, err := io.WriteString(w, "tw")
		return errors.Join(err, broken)
	})
	require.ErrorIs(t, err, broken)
	requireHolds(t, path, "one", 0o600)
	assert.Equal(t, []string{"a.toml"}, listed(t, filepath.Dir(path)))
}

func TestReplaceOfAFolderLeavesNothing(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.toml")
	require.NoError(t, os.Mkdir(path, 0o700))
	require.Error(t, Replace(path, Bytes([]byte("one"))))
	assert.Equal(t, []string{"a.toml"}, listed(t, filepath.Dir(path)))
}

// Names with letters that mean something in a pattern are names like others.
func TestSweepTakesOnlyWhatReplaceLeft(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a[1]*.toml")
	dir := filepath.Dir(path)
	left, err := os.CreateTemp(dir, tempStart(path)+"*"+tempEnd)
	require.NoError(t, err)
	require.NoError(t, left.Close())
	others := []string{".b.toml.1.tmp", "a[1]*.toml", "a[1]*.toml.1.tmp"}
	for _, name := range others {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), nil, FileMode))
	}
	Sweep(path)
	assert.Equal(t, others, listed(t, dir))
}

func TestTargetFollowsLinksAndMakesFolders(t *testing.T) {
	dir, err := filepath.EvalSymlinks(t.TempDir())
	require.NoError(t, err)
	far := filepath.Join(dir, "one", "two", "a.toml")
	target, err := Target(far)
	require.NoError(t, err)
	assert.Equal(t, far, target)
	info, err := os.Stat(filepath.Dir(far))
	require.NoError(t, err)
	assert.Equal(t, FolderMode, info.Mode().Perm())

	link := filepath.Join(dir, "link.toml")
	require.NoError(t, os.Symlink(far, link))
	_, err = Target(link)
	require.EqualError(t, err, "it is a link to "+far+", which is not there")
	require.NoError(t, Replace(far, Bytes(nil)))
	target, err = Target(link)
	require.NoError(t, err)
	assert.Equal(t, far, target)
}

func TestLockIsHeldByOne(t *testing.T) {
	path := filepath.Join(t.TempDir(), "lock")
	unlock, err := Lock(path, time.Second)
	require.NoError(t, err)
	_, err = Lock(path, time.Millisecond)
	require.ErrorIs(t, err, ErrBusy)
	require.NoError(t, unlock())
	unlock, err = Lock(path, time.Second)
	require.NoError(t, err)
	require.NoError(t, unlock())
	_, err = Lock(filepath.Join(path, "below a file"), time.Second)
	require.ErrorIs(t, err, syscall.ENOTDIR)
}

func TestRemedy(t *testing.T) {
	assert.Equal(t, "; the disk is full: make room and save again", Remedy(syscall.ENOSPC, "save again"))
	assert.Equal(t, "; the folder or file may not be written: give yourself the right to, or choose another with --dir", Remedy(syscall.EROFS, "save again"))
	assert.Empty(t, Remedy(io.EOF, "save again"))
}
