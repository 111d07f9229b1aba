// Package ui is the screens in a terminal: its root, and the way in.
package ui

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/cells"
	"washeve/ui/entry"
	"washeve/ui/guide"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

const (
	quit  keys.Action = "quit"
	leave keys.Action = "leave"
	help  keys.Action = "help"
	stay  keys.Action = "stay"
)

// App is the root. It knows the size, the keys that work everywhere, the way
// from screen to screen, and errors; screens know the rest.
type App struct {
	th      theme.Theme
	size    layout.Size
	screens []screen.Screen // the last one is seen
	learn   func() tea.Cmd  // see [entry.Book]; nil where nothing is learned beside
	rest    func() tea.Msg  // see [Options]; nil where there is nothing to do
	reread  Reread          // see [Options]; nil where there are no files
	lessons int             // that were learned so far
	// readings is how often all files were read anew.
	readings int
	trouble  error
	losing   error // why quitting would lose work, while it asks
	unsized  bool  // the terminal has not told its size yet, so there is nothing to draw
	left     bool  // the work is kept, or the person lets it go
}

// NewApp starts at the last of some screens; leaving it shows the one before.
func NewApp(th theme.Theme, screens ...screen.Screen) App {
	return App{th: th, size: layout.Least(), screens: screens}
}

// continued tells that the program goes on after it was stopped.
type continued struct{}

// Init starts the first screen.
func (a App) Init() tea.Cmd { return tea.Batch(a.top().Init(), a.learns()) }

// learns begins what the last message made due.
func (a App) learns() tea.Cmd {
	if a.learn == nil {
		return nil
	}
	return a.learn()
}

func (a App) top() screen.Screen { return a.screens[len(a.screens)-1] }

// Update routes a message, and sees to what is to be learned after it.
func (a App) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	routed, cmd := a.route(msg)
	next := routed.(App)
	return next, tea.Batch(cmd, next.learns(), next.rests(msg))
}

// rested is what was found while the hand rested after a key, and of which reading of the
// files.
type rested struct {
	readings int
	told     tea.Msg
}

// rests does what is to be done while the hand rests after a key.
func (a App) rests(msg tea.Msg) tea.Cmd {
	const soon = 15 * time.Millisecond // the frame is sent by then
	if _, pressed := msg.(tea.KeyMsg); !pressed || a.rest == nil {
		return nil
	}
	return func() tea.Msg {
		time.Sleep(soon)
		if told := a.rest(); told != nil {
			return rested{a.readings, told}
		}
		return nil
	}
}

func (a App) route(msg tea.Msg) (tea.Model, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		a.size, a.unsized = layout.SizeOf(msg), false
		return a.passAll(msg)
	case entry.Learned:
		a.lessons++
		if msg.Err != nil {
			a.trouble = msg.Err
		}
		return a.passAll(msg)
	case tea.KeyMsg:
		return a.pressed(msg)
	case screen.Everyone:
		return a.passAll(msg.Msg)
	case screen.Go:
		return a.open(msg)
	case screen.Back:
		return a.back(msg.With)
	case screen.Anew:
		return a.anew(msg)
	case rested:
		if msg.readings != a.readings {
			return a, nil // of files that are read anew since
		}
		return a.route(msg.told)
	case continued:
		return a.pass(screen.Again{})
	}
	return a.pass(msg)
}

// passAll hands a message to every screen, seen or not.
func (a App) passAll(msg tea.Msg) (tea.Model, tea.Cmd) {
	next := make([]screen.Screen, len(a.screens))
	var all []tea.Cmd
	for i, s := range a.screens {
		var cmd tea.Cmd
		next[i], cmd = s.Update(msg)
		all = append(all, cmd)
	}
	a.screens = next
	return a, tea.Batch(all...)
}

// Title is what the page that is seen is called.
func (a App) Title() string { return a.top().Title() }

// Keys lists every key that does something as the program now stands: those of the
// screen, and those that work everywhere.
func (a App) Keys() []keys.Binding {
	if a.losing != nil || a.hidden() {
		return a.keys()
	}
	return append(a.top().Keys(), a.keys()...)
}

// keys are those that work on every screen.
func (a App) keys() []keys.Binding {
	if a.losing != nil {
		return []keys.Binding{
			keys.New("Quit", leave, "y", "quit and lose it", "y", "Y", "ctrl+c"),
			keys.New("Quit", stay, "n", "stay", "n", "N", "esc", "enter"),
		}
	}
	if a.hidden() {
		return append(a.unseenKeys(), a.quitKey())
	}
	if _, reads := a.top().(guide.Model); reads && !a.top().Typing() {
		return []keys.Binding{a.quitKey()}
	}
	if s, can := a.top().(screen.Awaiting); can && s.Awaits() {
		return []keys.Binding{helpKey(), keys.New("Everywhere", quit, "ctrl+c", "quit; the work is kept", "ctrl+c")}
	}
	if a.top().Typing() {
		return []keys.Binding{keys.New("Everywhere", quit, "ctrl+c", "quit", "ctrl+c"), keys.New("Everywhere", help, "f1", "all keys", "f1")}
	}
	return []keys.Binding{helpKey(), a.quitKey()}
}

func helpKey() keys.Binding {
	return keys.New("Everywhere", help, "?", "all keys", "?", "f1").Explained("this page; tab turns to the terms of the trade, and to what to do when something goes wrong")
}

func (a App) quitKey() keys.Binding {
	return keys.New("Everywhere", quit, "q", "quit; the work is kept", "q", "ctrl+c")
}

// pressed takes letters one at a time: a quick hand or a slow link brings several
// in one message, and the first of them may change what the next ones mean.
func (a App) pressed(msg tea.KeyMsg) (tea.Model, tea.Cmd) {
	if len(msg.Runes) < 2 || msg.Paste || msg.Alt {
		return led(a.key(msg))
	}
	var all []tea.Cmd
	for _, r := range msg.Runes {
		next, cmd := led(a.key(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune{r}}))
		a = next.(App)
		all = append(all, cmd)
	}
	return a, tea.Batch(all...)
}

func (a App) key(msg tea.KeyMsg) (tea.Model, tea.Cmd) {
	a.trouble = nil
	b, ok := keys.Find(a.keys(), msg)
	if !ok && (a.losing != nil || a.hidden()) {
		return a, nil
	}
	if !ok {
		return a.pass(msg)
	}
	switch b.Does {
	case quit:
		return a.quit()
	case leave:
		return a.leave()
	case stay:
		a.losing = nil
		return a, nil
	case help:
		return a.help()
	}
	return a.unseen(b.Does)
}

// quit asks every screen to save, and asks the person where one cannot.
func (a App) quit() (tea.Model, tea.Cmd) {
	if a.losing = a.keep(); a.losing != nil {
		return a, nil
	}
	return a.leave()
}

func (a App) leave() (tea.Model, tea.Cmd) {
	a.left = true
	return a, tea.Quit
}

// keep lets every screen save what is unsaved. The error is the first that says what
// would be lost.
func (a App) keep() error {
	var lost error
	for _, s := range a.screens {
		if err := s.Leave(); lost == nil {
			lost = err
		}
	}
	return lost
}

func (a App) help() (tea.Model, tea.Cmd) {
	return a.show(guide.New(a.th, a.top().Title(), a.size, a.Keys()))
}

// View draws what is seen: a screen, or what stands in its way.
func (a App) View() string {
	switch {
	case a.unsized:
		return ""
	case a.losing != nil:
		return a.notice("This would be lost: "+a.losing.Error(), "y quits all the same; n stays and keeps it on the screen.")
	case a.trouble != nil:
		return a.notice(a.trouble.Error(), "Any key goes on.")
	case a.hidden():
		return a.tooSmall()
	}
	return a.top().View(a.size)
}

// notice is a few words on an otherwise empty screen, of any size.
func (a App) notice(what string, then ...string) string {
	var lines []string
	for _, line := range cells.Wrap(cells.Safe(what), a.size.W) {
		lines = append(lines, a.th.Doubt.On(line))
	}
	for _, words := range then {
		for _, line := range cells.Wrap(cells.Safe(words), a.size.W) {
			lines = append(lines, a.th.Text.On(line))
		}
	}
	return layout.Compose(a.size, []layout.Placed{{At: layout.Whole(a.size), Lines: lines}})
}
