//go:build unix

package ui

import (
	"context"
	"os"
	"os/signal"
	"syscall"

	tea "github.com/charmbracelet/bubbletea"
	"golang.org/x/sys/unix"
)

// heedSignals sees to the signals that the runtime leaves alone: it ends the program
// when the terminal hangs up, gives the terminal back before the program is stopped, and
// takes it again when the program goes on. The result ends that.
func heedSignals(program *tea.Program) (end func()) {
	told, over := make(chan os.Signal, 4), make(chan struct{})
	heeded := []os.Signal{syscall.SIGTSTP, syscall.SIGCONT}
	if !signal.Ignored(syscall.SIGHUP) { // nohup
		heeded = append(heeded, syscall.SIGHUP)
	}
	signal.Notify(told, heeded...)
	go func() {
		for {
			select {
			case <-over:
				return
			case s := <-told:
				switch s {
				case syscall.SIGHUP:
					program.Quit()
				case syscall.SIGTSTP:
					if !continues() {
						continue
					}
					_ = program.ReleaseTerminal()
					hungUp := stop(told)
					takeAgain(program)
					if hungUp {
						program.Quit()
					}
				case syscall.SIGCONT: // after a stop that could not be caught
					_ = program.ReleaseTerminal()
					takeAgain(program)
				}
			}
		}
	}()
	return func() {
		signal.Stop(told)
		close(over)
	}
}

// signalled gives a context that ends with the first signal to end the program. The next
// one ends it at once.
func signalled(ctx context.Context) (context.Context, context.CancelFunc) {
	heeded := []os.Signal{os.Interrupt, syscall.SIGTERM}
	if !signal.Ignored(syscall.SIGHUP) { // nohup
		heeded = append(heeded, syscall.SIGHUP)
	}
	ctx, done := signal.NotifyContext(ctx, heeded...)
	context.AfterFunc(ctx, done)
	return ctx, done
}

// continues tells that there is a shell which can continue the program when it is stopped:
// where there is none the system does not let a terminal stop it, and nor do we.
func continues() bool {
	mine, err := unix.Getsid(0)
	parents, parentErr := unix.Getsid(os.Getppid())
	return err == nil && parentErr == nil && mine == parents
}

// stop stops the program, and returns when it is continued. It tells whether the
// terminal hung up meanwhile. (Go does not give the signal that was caught its own
// effect back, so it is another one that stops it.)
func stop(told <-chan os.Signal) (hungUp bool) {
	_ = syscall.Kill(os.Getpid(), syscall.SIGSTOP)
	for s := range told {
		if s == syscall.SIGCONT {
			break
		}
		hungUp = hungUp || s == syscall.SIGHUP
	}
	return hungUp
}

// takeAgain takes the terminal again: the shell has used it meanwhile.
func takeAgain(program *tea.Program) {
	_ = program.RestoreTerminal()
	program.Send(tea.EnableMouseCellMotion())
	program.Send(continued{})
}
