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
	"washeve/ui/tty"
)

// Options is what the screens are run with.
type Options struct {
	plan.Options
	In  io.Reader
	Out io.Writer
	// Columns is how wide the terminal is now, 0 where that is not known; it may be nil.
	Columns func() int
	// Rest is called when a key has been answered, beside all else, and may have something
	// to tell; it may be nil.
	Rest func() tea.Msg
	// Reread reads all files again; it may be nil.
	Reread Reread
}

// Reread reads all files again; first it keeps what could not be saved in copies beside
// them, where that is asked for. On error nothing has changed, and all goes on as it was.
type Reread func(aside bool) (Anew, error)

// Run shows the screens until the person quits or ctx ends. With a plain theme
// it asks one line at a time instead.
func Run(ctx context.Context, o Options) error {
	if o.Theme.Plain {
		return byLines(ctx, o)
	}
	app := Open(o)
	app.unsized = true
	program := tea.NewProgram(app,
		tea.WithContext(ctx), tea.WithInput(tty.Keys(o.In)), tea.WithOutput(thrifty(o.Out)),
		tea.WithAltScreen(), tea.WithMouseCellMotion(), tea.WithFPS(framesASecond))
	defer heedSignals(program)()
	last, err := program.Run()
	if err != nil && (errors.Is(err, tea.ErrProgramPanic) || !errors.Is(err, tea.ErrProgramKilled)) {
		return fmt.Errorf("run the screens: %w", err)
	}
	return keptAtLast(last)
}

// keptAtLast keeps the work of a program that was ended by a signal or whose terminal is
// gone. The error says what is lost: nobody can be asked.
func keptAtLast(last tea.Model) error {
	if app, ok := last.(App); ok && !app.left {
		if err := app.keep(); err != nil {
			return fmt.Errorf("the program was ended, and this is lost: %w", err)
		}
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
// looks at the clock. A signal ends it as the end of its input does.
func byLines(ctx context.Context, o Options) error {
	o.Means.Tick, o.Rest, o.Theme.Words = 0, nil, true
	ctx, done := signalled(ctx)
	defer done()
	if o.Columns != nil {
		o.Out = talk.Wrapped(o.Out, o.Columns)
	}
	return talk.Run(ctx, Open(o), o.In, o.Out)
}

// Open is the program as it opens.
func Open(o Options) App {
	app := NewApp(o.Theme, first(o)...)
	app.learn, app.rest = o.Book.Learn, o.Rest
	if o.Reread != nil {
		app.reread = o.again
	}
	return app
}

// again reads all files again, for the same terminal.
func (o Options) again(aside bool) (Anew, error) {
	now, err := o.Reread(aside)
	now.Options.Theme, now.Options.Means.Tick = o.Theme, o.Means.Tick
	if o.Rest == nil {
		now.Options.Rest = nil
	}
	return now, err
}

// first is the plan and, over it, a wash that is under way.
func first(o Options) []screen.Screen {
	home := plan.New(o.Options)
	if page, left := home.LeftWash(); left {
		return []screen.Screen{home, page}
	}
	return []screen.Screen{home}
}
