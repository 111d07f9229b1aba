package ui

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/entry"
	"washeve/ui/screen"
)

// led goes to the screen that a key leads to before the next key is taken, which is
// meant for that screen; and tells every screen what one of them has for all. What takes
// longer comes when it is done.
func led(m tea.Model, cmd tea.Cmd) (tea.Model, tea.Cmd) {
	if cmd == nil {
		return m, nil
	}
	begun, brings := make(chan struct{}), make(chan tea.Msg, 1)
	go func() {
		close(begun)
		brings <- cmd()
	}()
	<-begun // on a busy machine this alone takes longer than what follows
	msg, come := atOnce(brings)
	if !come {
		return m, func() tea.Msg { return <-brings }
	}
	switch msg.(type) {
	case screen.Go, screen.Back, screen.Everyone:
		return led(m.(App).route(msg))
	}
	return m, func() tea.Msg { return msg }
}

// atOnce waits a little for a message.
func atOnce(brings <-chan tea.Msg) (msg tea.Msg, come bool) {
	const little = 2 * time.Millisecond
	select {
	case msg := <-brings:
		return msg, true
	case <-time.After(little):
	}
	select { // it came while this was not running
	case msg := <-brings:
		return msg, true
	default:
		return nil, false
	}
}

// open shows a screen that another one has made. What was learned since is handed on to
// it: nobody else would tell it.
func (a App) open(to screen.Go) (tea.Model, tea.Cmd) {
	next, cmd := a.show(to.To)
	if to.Knows == a.lessons {
		return next, cmd
	}
	next, learned := next.(App).pass(entry.Learned{})
	return next, tea.Batch(cmd, learned)
}

// counted tells of a screen that a command brings, how much was learned when it was made.
func (a App) counted(cmd tea.Cmd) tea.Cmd {
	if cmd == nil {
		return nil
	}
	return func() tea.Msg {
		msg := cmd()
		if to, ok := msg.(screen.Go); ok {
			to.Knows = a.lessons
			return to
		}
		return msg
	}
}

func (a App) show(s screen.Screen) (tea.Model, tea.Cmd) {
	a.screens = append(a.screens[:len(a.screens):len(a.screens)], s)
	return a, s.Init()
}

func (a App) back(with tea.Msg) (tea.Model, tea.Cmd) {
	if len(a.screens) > 1 {
		a.screens = a.screens[:len(a.screens)-1]
	}
	if with == nil {
		return a.pass(screen.Again{})
	}
	next, cmd := a.pass(with)
	next, again := next.(App).pass(screen.Again{})
	return next, tea.Batch(cmd, again)
}

func (a App) pass(msg tea.Msg) (tea.Model, tea.Cmd) {
	next, cmd := a.top().Update(msg)
	a.screens = append(append([]screen.Screen(nil), a.screens[:len(a.screens)-1]...), next)
	return a, a.counted(cmd)
}
