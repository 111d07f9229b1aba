package ui

import (
	"fmt"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/store"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/plan"
	"washeve/ui/theme"
)

// whole is every screen behind the first, with the real planner, on the
// built-in example as one's own.
func whole(plain bool) tea.Model {
	lib := store.Example()
	th := theme.New(theme.Options{Profile: termenv.ANSI256, Plain: plain})
	log, memory, ids := &sample.Log{}, &planner.Memory{}, 0
	return NewApp(th, plan.New(plan.Options{
		Rig: lib.Rig, Places: lib.Places, Wash: lib.Washes[0].Wash, Keeper: &full{}, Theme: th,
		Make: memory.Make, Sharing: memory.Sharing,
		Book: entry.Book{
			Logger: log,
			Past: func(r model.Rig, ps model.Places) *planner.Past {
				memory.Past = planner.Recall(log.Kept, r, ps)
				return memory.Past
			},
			Clock: func() time.Time { return time.Date(2026, 5, 15, 21, 0, 0, 0, time.UTC) },
			NewID: func(model.Moment) (string, error) { ids++; return fmt.Sprintf("id-%d", ids), nil },
		},
	}))
}

// special are the keys that are no letters.
var special = [...]string{
	"up", "down", "left", "right", "enter", "esc", "tab", "shift+tab", "backspace", "delete", "home", "end", "pgup", "pgdown", "f1",
	"shift+left", "shift+right", "ctrl+u", "ctrl+w", "ctrl+z", "ctrl+y", " ",
}

// typist plays bytes as a hand at a terminal.
type typist struct {
	data []byte
	w, h int
}

func (t *typist) next() int {
	if len(t.data) == 0 {
		return 0
	}
	b := t.data[0]
	t.data = t.data[1:]
	return int(b)
}

// message is the next thing that comes from the terminal: mostly a letter or
// another key, now and then a new size, a paste, the mouse.
func (t *typist) message() tea.Msg {
	switch b := t.next(); {
	case b >= 0x20 && b < 0x7f:
		return hands.Key(string(rune(b)))
	case b < len(special):
		return hands.Key(special[b])
	case b < 0xa0:
		t.w, t.h = t.next(), t.next()
		return tea.WindowSizeMsg{Width: t.w, Height: t.h}
	case b < 0xc0:
		n := min(b-0xa0, len(t.data))
		text := string(t.data[:n])
		t.data = t.data[n:]
		return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(text), Paste: true}
	case b < 0xd0:
		button := []tea.MouseButton{tea.MouseButtonLeft, tea.MouseButtonWheelUp, tea.MouseButtonWheelDown}[b%3]
		return tea.MouseMsg{X: t.next(), Y: t.next(), Button: button, Action: tea.MouseActionPress}
	default:
		return hands.Key(string([]rune("é水🚐ß\u0301\u200d\u202e")[b%7]))
	}
}

// given is all that follows from a message, but what takes its time; it tells
// whether the program ends.
func given(a tea.Model, msg tea.Msg) (tea.Model, bool) {
	switch msg := msg.(type) {
	case nil:
		return a, false
	case tea.QuitMsg:
		return a, true
	case tea.BatchMsg:
		for _, cmd := range msg {
			var ends bool
			if a, ends = follows(a, cmd); ends {
				return a, true
			}
		}
		return a, false
	}
	a, cmd := a.Update(msg)
	return follows(a, cmd)
}

func follows(a tea.Model, cmd tea.Cmd) (tea.Model, bool) {
	if cmd == nil {
		return a, false
	}
	done := make(chan tea.Msg, 1)
	go func() { done <- cmd() }()
	select {
	case msg := <-done:
		return given(a, msg)
	case <-time.After(200 * time.Millisecond):
		return a, false // a clock that ticks
	}
}

// FuzzKeys plays anything at all on the whole program: it never panics, no frame
// is larger than the window, and there is always a way out.
func FuzzKeys(f *testing.F) {
	for _, seed := range []string{
		"bB\x04r" + "y3\x04\x05q", "D\x03\x03\x04\x05", "v\x01\x01\x01\x0440 ft\x04u", "S\x01\x04\x05C\x01\x04\x05", "?\x01\x05f\x05i\x05", "p\x01\x04", "wn\x04'\x04",
		"\x80\x0a\x05q\x80\x50\x18", "\x80\x00\x00\x80\xff\xff", "b\x04\xb0\x1b[2J\x1b]0;x\x07\u202e\u2028", "\xc0\x05\x05\xc1\x05\x05\xc2\x05\x05", "e40 ft\x0412 ft\x04.5 ft3\x04200 ppm\x04q",
		"Bc\x03\x03\x03\x03\x04w\x05\x05", "Bn\x01\x04w", "B/x\x04\x05", "é水🚐", "Bx\x04\x04y", "M", "mX", "x", "-", "+", "<>[]{}",
	} {
		f.Add([]byte(seed), false)
		f.Add([]byte(seed), true)
	}
	f.Fuzz(func(t *testing.T, data []byte, plain bool) {
		hand := &typist{data: data[:min(len(data), 48)], w: 80, h: 24}
		a, ends := given(whole(plain), tea.WindowSizeMsg{Width: 80, Height: 24})
		for len(hand.data) > 0 && !ends {
			before := fmt.Sprintf("%q", hand.data)
			a, ends = given(a, hand.message())
			fitsWindow(t, a.View(), hand.w, hand.h, before)
		}
		if !ends {
			waysOut(t, a)
		}
	})
}

func fitsWindow(t *testing.T, frame string, w, h int, at string) {
	t.Helper()
	lines := strings.Split(frame, "\n")
	require.LessOrEqual(t, len(lines), max(h, 1), "too high at %s", at)
	for _, line := range lines {
		require.LessOrEqual(t, ansi.StringWidth(line), w, "too wide at %s: %q", at, line)
	}
}

// waysOut leaves by ctrl+c, and by esc and q; where work would be lost, it is
// asked first.
func waysOut(t *testing.T, a tea.Model) {
	t.Helper()
	_, ends := pressed(a, "ctrl+c", "y")
	require.True(t, ends, "ctrl+c leads out of:\n%s", ansi.Strip(a.View()))
	_, ends = pressed(a, "esc", "esc", "esc", "esc", "esc", "esc", "esc", "esc", "q", "y")
	require.True(t, ends, "esc and q lead out of:\n%s", ansi.Strip(a.View()))
}

func pressed(a tea.Model, keys ...string) (tea.Model, bool) {
	ends := false
	for _, k := range keys {
		if a, ends = given(a, hands.Key(k)); ends {
			break
		}
	}
	return a, ends
}
