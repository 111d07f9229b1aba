package ui

import (
	"context"
	"errors"
	"fmt"
	"io"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/plan"
)

// Options is what the screens are run with.
type Options struct {
	plan.Options
	In  io.Reader
	Out io.Writer
}

// Run shows the screens until the person quits or ctx ends. With a plain theme
// it asks one line at a time instead.
func Run(ctx context.Context, o Options) error {
	if o.Theme.Plain {
		return plan.Prompt(o.Options, o.In, o.Out)
	}
	app := NewApp(o.Theme, plan.New(o.Options))
	program := tea.NewProgram(app,
		tea.WithContext(ctx), tea.WithInput(o.In), tea.WithOutput(o.Out),
		tea.WithAltScreen(), tea.WithMouseCellMotion())
	if _, err := program.Run(); err != nil && !errors.Is(err, tea.ErrProgramKilled) {
		return fmt.Errorf("run the screens: %w", err)
	}
	return nil
}
