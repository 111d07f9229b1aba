package talk

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/keys"
	"washeve/ui/screen"
)

// Unwrapped is a width, in cells, that no line reaches: what is said is broken once, by
// the width of the terminal that it comes to; see [Wrapped].
const Unwrapped = 10_000

// Root is the program's root, which knows the way from screen to screen.
type Root interface {
	tea.Model
	// Top is the screen that is seen.
	Top() screen.Screen
	// Put sets another screen in the place of the one that is seen.
	Put(screen.Screen) tea.Model
	// Trouble is an error to tell; Losing is why quitting would lose work, while it
	// asks.
	Trouble() error
	Losing() error
}

// talk is the talk as it stands.
type talk struct {
	root  Root
	lines <-chan line
	stop  <-chan struct{} // is closed when the program is to end
	out   io.Writer
	err   error    // of writing
	over  bool     // the program has ended
	acted bool     // something was done since the page was told last
	title string   // of the page that was told last
	after []string // what was told of it last
}

// Run talks until the person quits, or the input, the output or ctx ends. What could not
// be kept then is the error, with what became of the output.
func Run(ctx context.Context, root Root, in io.Reader, out io.Writer) error {
	done := make(chan struct{})
	defer close(done)
	t := &talk{root: root, lines: linesOf(in, done), stop: ctx.Done(), out: out}
	t.run(root.Init())
	for t.settle(); !t.over; {
		line, more := t.ask(t.prompt())
		if !more {
			return t.ended()
		}
		t.heed(line)
	}
	return t.err
}

// ended leaves where nobody can be asked any more: everything is kept that can be.
func (t *talk) ended() error {
	t.press("ctrl+c")
	why, signalled := t.root.Losing(), t.stopped()
	switch {
	case t.over && signalled: // whatever became of the terminal, all is kept
		return nil
	case t.over:
		return t.err
	case why != nil && signalled:
		return fmt.Errorf("the program was ended, and this is lost: %w", why)
	case why != nil:
		return errors.Join(fmt.Errorf("not all is kept: %w", why), t.err)
	}
	return errors.Join(errors.New("the program did not end"), t.err)
}

// stopped tells that the program is to end, whatever is said.
func (t *talk) stopped() bool {
	select {
	case <-t.stop:
		return true
	default:
		return false
	}
}

// page is what the screen says of itself now.
func (t *talk) page() Page {
	top := t.root.Top()
	if s, ok := top.(Speaker); ok {
		return s.Spoken()
	}
	return Page{Title: top.Title()}
}

func (t *talk) prompt() string {
	p := t.page()
	if p.Prompt != "" {
		return p.Prompt
	}
	return sentence(p.Title) + " A word, like " + p.Like + ", or help"
}

// press plays a key, and runs what follows from it to its end.
func (t *talk) press(name string) { t.tell(keys.Press(name)) }

func (t *talk) tell(msg tea.Msg) {
	t.acted = true
	next, cmd := t.root.Update(msg)
	t.root = next.(Root)
	if err := t.root.Trouble(); err != nil {
		t.say(strings.Split(err.Error(), "\n")...)
	}
	t.run(cmd)
}

func (t *talk) put(s screen.Screen) { t.root = t.root.Put(s).(Root) }

func (t *talk) run(cmd tea.Cmd) {
	if cmd == nil {
		return
	}
	switch msg := cmd().(type) {
	case nil:
	case tea.BatchMsg:
		for _, c := range msg {
			t.run(c)
		}
	case tea.QuitMsg:
		t.over = true
	default:
		t.tell(msg)
	}
}

// settle says what the last line led to: what became of it, then the page where it is
// another one, or else what has changed on it.
func (t *talk) settle() {
	if t.over {
		return
	}
	p := t.page()
	if t.acted || t.title == "" {
		t.say(p.Said)
	}
	var after []string
	if p.After != nil {
		after = p.After()
	}
	switch {
	case p.Title != t.title:
		t.say(sentence(p.Title))
		if p.Tell != nil {
			t.say(p.Tell()...)
		}
	case !slices.Equal(after, t.after):
		t.say(after...)
	}
	t.acted, t.title, t.after = false, p.Title, after
}
