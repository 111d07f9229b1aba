package ui

import (
	"context"
	"errors"
	"fmt"
	"io"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/term"

	"washeve/ui/plan"
	"washeve/ui/screen"
	"washeve/ui/talk"
	"washeve/ui/thrift"
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
		return byLines(o)
	}
	app := NewApp(o.Theme, first(o)...)
	app.learn, app.unsized = o.Book.Learn, true
	program := tea.NewProgram(app,
		tea.WithContext(ctx), tea.WithInput(o.In), tea.WithOutput(thrifty(o.Out)),
		tea.WithAltScreen(), tea.WithMouseCellMotion(), tea.WithFPS(framesASecond))
	defer whenContinued(program)()
	if _, err := program.Run(); err != nil && !errors.Is(err, tea.ErrProgramKilled) {
		return fmt.Errorf("run the screens: %w", err)
	}
	return nil
}

// framesASecond is how often the screen may change. At twice what is usual a key
// waits 4 ms less for its answer, and the first frame 8 ms.
const framesASecond = 120

// thrifty is a terminal that gets only what changes; anything else is left as it
// is.
func thrifty(out io.Writer) io.Writer {
	if file, is := out.(term.File); is {
		return thrift.On(file)
	}
	return out
}

// byLines does all that the screens do one line at a time. Nothing ticks: every line
// looks at the clock.
func byLines(o Options) error {
	o.Means.Tick = 0
	app := NewApp(o.Theme, first(o)...)
	app.learn = o.Book.Learn
	return talk.Run(app, o.In, o.Out)
}

// first is the plan and, over it, a wash that is under way.
func first(o Options) []screen.Screen {
	home := plan.New(o.Options)
	if page, left := home.LeftWash(); left {
		return []screen.Screen{home, page}
	}
	return []screen.Screen{home}
}
