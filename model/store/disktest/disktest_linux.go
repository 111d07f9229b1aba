package disktest

import (
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"runtime"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// AsNobody runs do with the rights of nobody on files, so that rights count
// even where the tests are run by root. The thread is given up afterwards.
func AsNobody(t *testing.T, do func()) {
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

// OpenFor lets everybody into the folders above, and gives dir its rights until
// the test ends.
func OpenFor(t *testing.T, dir string, mode os.FileMode) {
	t.Helper()
	for d := dir; d != os.TempDir() && len(d) > 1; d = filepath.Dir(d) {
		require.NoError(t, os.Chmod(d, 0o755))
	}
	require.NoError(t, os.Chmod(dir, mode))
	t.Cleanup(func() { _ = os.Chmod(dir, 0o700) })
}

// InChild runs a test once more in a process of its own, and tells whether this is that
// one: [WithRoom] limits all files of a process, the test runner's own among them.
func InChild(t *testing.T) bool {
	t.Helper()
	const mark = "DISKTEST_IN_CHILD"
	if os.Getenv(mark) == t.Name() {
		return true
	}
	cmd := exec.Command(os.Args[0], "-test.run=^"+t.Name()+"$")
	cmd.Env = append(os.Environ(), mark+"="+t.Name())
	out, err := cmd.CombinedOutput()
	require.NoError(t, err, string(out))
	return false
}

// WithRoom runs do where no file may grow over a number of bytes: a full disk.
// The limit holds for all of the process, so a test asks [InChild] first.
func WithRoom(t *testing.T, bytes int, do func()) {
	t.Helper()
	signal.Ignore(syscall.SIGXFSZ)
	defer signal.Reset(syscall.SIGXFSZ)
	var was syscall.Rlimit
	require.NoError(t, syscall.Getrlimit(syscall.RLIMIT_FSIZE, &was))
	require.NoError(t, syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: uint64(bytes), Max: was.Max}))
	defer func() { require.NoError(t, syscall.Setrlimit(syscall.RLIMIT_FSIZE, &was)) }()
	do()
}
