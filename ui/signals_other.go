//go:build !unix

package ui

import (
	"context"
	"os"
	"os/signal"

	tea "github.com/charmbracelet/bubbletea"
)

// heedSignals does nothing where programs are neither stopped nor hung up.
func heedSignals(*tea.Program) (end func()) { return func() {} }

// signalled gives a context that ends when the program is interrupted.
func signalled(ctx context.Context) (context.Context, context.CancelFunc) {
	return signal.NotifyContext(ctx, os.Interrupt)
}
