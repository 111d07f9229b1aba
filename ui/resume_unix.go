//go:build unix

package ui

import (
	"os"
	"os/signal"
	"syscall"

	tea "github.com/charmbracelet/bubbletea"
)

// whenContinued takes the terminal again when the program goes on after it was
// stopped: the shell has used it meanwhile. The result ends that.
func whenContinued(program *tea.Program) (end func()) {
	told := make(chan os.Signal, 1)
	signal.Notify(told, syscall.SIGCONT)
	over := make(chan struct{})
	go func() {
		for {
			select {
			case <-over:
				return
			case <-told:
				_ = program.ReleaseTerminal()
				_ = program.RestoreTerminal()
				program.Send(tea.EnableMouseCellMotion())
				program.Send(continued{})
			}
		}
	}()
	return func() {
		signal.Stop(told)
		close(over)
	}
}
