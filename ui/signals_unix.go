//go:build unix

package ui

import (
	"os"
	"os/signal"
	"syscall"
	"time"

	tea "github.com/charmbracelet/bubbletea"
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

// stop stops the program as if it had not caught the signal, and returns when it is
// continued, or at once where nobody could continue it: then the system does not stop it.
// It tells whether the terminal hung up meanwhile.
func stop(told chan os.Signal) (hungUp bool) {
	const atOnce = 100 * time.Millisecond
	signal.Reset(syscall.SIGTSTP)
	_ = syscall.Kill(os.Getpid(), syscall.SIGTSTP)
	late := time.After(atOnce)
	for waits := true; waits; {
		select {
		case s := <-told:
			waits, hungUp = s != syscall.SIGCONT, hungUp || s == syscall.SIGHUP
		case <-late:
			waits = false
		}
	}
	signal.Notify(told, syscall.SIGTSTP)
	return hungUp
}

// takeAgain takes the terminal again: the shell has used it meanwhile.
func takeAgain(program *tea.Program) {
	_ = program.RestoreTerminal()
	program.Send(tea.EnableMouseCellMotion())
	program.Send(continued{})
}
