package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/store"
	"washeve/model/store/journal"
)

// A deed is a command that writes, in a folder that was made ready for it.
type deed struct {
	name  string
	ready func(t *testing.T, dir string)
	args  []string
}

func deeds() []deed {
	mine := func(t *testing.T, dir string) {
		_, err := store.WriteExample(dir)
		require.NoError(t, err)
	}
	begun := func(t *testing.T, dir string) {
		mine(t, dir)
		_, err := journal.Open(filepath.Join(dir, logFile)).Append(regenerated("first"))
		require.NoError(t, err)
	}
	torn := func(t *testing.T, dir string) {
		begun(t, dir)
		log, err := os.OpenFile(filepath.Join(dir, logFile), os.O_APPEND|os.O_WRONLY, 0)
		require.NoError(t, err)
		_, err = log.WriteString("\n[[entry]]\nkind = \"salt\"\n")
		require.NoError(t, err)
		require.NoError(t, log.Close())
	}
	table := func(t *testing.T, dir string) {
		begun(t, dir)
		text := "kind,at,softener,id\nsalt,2026-06-12T08:00:00-06:00,portable softener,second\nsalt,2026-06-13T08:00:00-06:00,portable softener,third\n"
		require.NoError(t, os.WriteFile(filepath.Join(dir, "table.csv"), []byte(text), 0o600))
	}
	return []deed{
		{"init", func(*testing.T, string) {}, []string{"init"}},
		{"first entry", mine, []string{"log", "salt", "--salt", "4 lb", "--softener", "portable softener"}},
		{"next entry", begun, []string{"log", "reading", "3 ppm NaCl", "--flushed", "yes"}},
		{"entry behind a torn one", torn, []string{"log", "resin", "--bed", "half-foot tank"}},
		{"wash", begun, []string{"log", "wash", "--di", "30 gal"}},
		{"strike", begun, []string{"log", "strike", "first"}},
		{"import", table, []string{"log", "import", "table.csv"}},
	}
}

func regenerated(id string) model.Entry {
	return model.Entry{ID: id, At: model.MomentOf(noon), Body: &model.Regeneration{Softener: "portable softener"}}
}

func (d deed) child(dir string) *exec.Cmd {
	c := exec.Command(os.Args[0], append(d.args, "--dir", dir)...)
	c.Dir = dir
	c.Env = []string{asProgram + "=1", "HOME=" + dir, "GOMAXPROCS=1"}
	return c
}

// sound checks what a killed program left: every file reads well, nothing that
// was there before is lost, and the same command works at the next start.
func (d deed) sound(t *testing.T, dir string, acknowledged bool) {
	t.Helper()
	_, faults := store.Open(dir).Load()
	if d.name != "init" {
		require.Empty(t, faults, d.name)
	}
	log, told := journal.Open(filepath.Join(dir, logFile)).Load()
	for _, f := range told {
		require.Contains(t, f.Problem, "was cut off", d.name)
	}
	if d.name != "init" && d.name != "first entry" {
		_, there := log.Find("first")
		require.True(t, there, "%s: an entry from before is lost", d.name)
	}
	if acknowledged && d.name != "init" {
		require.NotEmpty(t, log, "%s was acknowledged and is lost", d.name)
	}
	before := len(log)
	out, err := d.child(dir).CombinedOutput()
	require.NoError(t, err, "%s again: %s", d.name, out)
	log, _ = journal.Open(filepath.Join(dir, logFile)).Load()
	require.GreaterOrEqual(t, len(log), before)
	left, err := filepath.Glob(filepath.Join(dir, ".*.tmp"))
	require.NoError(t, err)
	if d.name != "init" {
		assert.Empty(t, left, "%s: nothing half written stays about", d.name)
	}
	modes(t, dir)
}

// modes checks that what the program wrote is for its user alone.
func modes(t *testing.T, dir string) {
	t.Helper()
	for _, name := range []string{"rig.toml", "places.toml", logFile, logFile + ".lock", "washes/example.toml"} {
		if info, err := os.Stat(filepath.Join(dir, name)); err == nil {
			require.Equal(t, os.FileMode(0o600), info.Mode().Perm(), name)
		}
	}
	if info, err := os.Stat(filepath.Join(dir, "washes")); err == nil {
		require.Equal(t, os.FileMode(0o700), info.Mode().Perm())
	}
}

// Each writing command is killed at its system calls that change a file or a
// folder, before some and after others. With a step of 1 it is every one of them.
func TestKilledAtItsSystemCalls(t *testing.T) {
	kills, step := 0, 3
	if testing.Short() {
		step = 13
	}
	for _, d := range deeds() {
		for n := 1; ; n += step {
			dir := t.TempDir()
			d.ready(t, dir)
			code, killed, err := killedAt(d.child(dir), n)
			require.NoError(t, err)
			d.sound(t, dir, !killed && code == 0)
			if !killed {
				require.Greater(t, n, step, "%s writes by system calls", d.name)
				break
			}
			kills++
		}
	}
	t.Logf("%d commands, killed at %d points, nothing lost", len(deeds()), kills)
}

// changing tells the system calls that change files or folders.
func changing(call uint64) bool {
	switch call {
	case syscall.SYS_OPENAT, syscall.SYS_WRITE, syscall.SYS_PWRITE64, syscall.SYS_FSYNC, syscall.SYS_FTRUNCATE, syscall.SYS_RENAMEAT,
		syscall.SYS_UNLINKAT, syscall.SYS_MKDIRAT, syscall.SYS_FCHMOD, syscall.SYS_FLOCK, syscall.SYS_CLOSE:
		return true
	}
	return call == renameat2
}

const renameat2 = 316

// killedAt runs a program under trace and kills it at its n-th stop at a call
// that changes something, once the program has opened the data folder's lock.
// It tells whether the program got so far.
func killedAt(c *exec.Cmd, n int) (code int, killed bool, err error) {
	runtime.LockOSThread()
	defer runtime.UnlockOSThread()
	c.SysProcAttr = &syscall.SysProcAttr{Ptrace: true}
	if err := c.Start(); err != nil {
		return 0, false, err
	}
	pid := c.Process.Pid
	var status syscall.WaitStatus
	if _, err := syscall.Wait4(pid, &status, syscall.WALL, nil); err != nil {
		return 0, false, err
	}
	const options = syscall.PTRACE_O_TRACECLONE | syscall.PTRACE_O_TRACESYSGOOD | 0x100000 // and it dies with us
	if err := syscall.PtraceSetOptions(pid, options); err != nil {
		return 0, false, err
	}
	return follow(pid, n)
}

// follow lets all threads of a stopped program run from call to call.
func follow(pid, n int) (code int, killed bool, err error) {
	at, begun := pid, false
	signal := 0
	for {
		if err := syscall.PtraceSyscall(at, signal); err != nil && err != syscall.ESRCH {
			return 0, false, err
		}
		var status syscall.WaitStatus
		if at, err = syscall.Wait4(-1, &status, syscall.WALL, nil); err != nil {
			return 0, false, err
		}
		signal = 0
		switch {
		case at == pid && (status.Exited() || status.Signaled()):
			return status.ExitStatus(), killed, nil
		case status.Stopped() && status.StopSignal() == syscall.SIGTRAP|0x80:
			var regs syscall.PtraceRegs
			if syscall.PtraceGetRegs(at, &regs) == nil && changing(regs.Orig_rax) {
				begun = begun || regs.Orig_rax == syscall.SYS_FLOCK || regs.Orig_rax == syscall.SYS_MKDIRAT
				if begun {
					n--
				}
			}
			if n == 0 && !killed {
				killed = true
				_ = syscall.Kill(pid, syscall.SIGKILL)
			}
		case status.Stopped() && status.StopSignal() != syscall.SIGTRAP && status.StopSignal() != syscall.SIGSTOP:
			signal = int(status.StopSignal())
		}
	}
}

// The same at moments of chance, without looking inside.
func TestKilledAtAnyMoment(t *testing.T) {
	rounds := 6
	if testing.Short() {
		rounds = 1
	}
	for _, d := range deeds() {
		for i := range rounds {
			dir := t.TempDir()
			d.ready(t, dir)
			c := d.child(dir)
			require.NoError(t, c.Start())
			timer := time.AfterFunc(time.Duration(5+i*6)*time.Millisecond, func() { _ = c.Process.Kill() })
			err := c.Wait()
			timer.Stop()
			d.sound(t, dir, err == nil)
		}
	}
}
