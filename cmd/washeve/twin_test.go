//go:build unix

package main

import (
	"io"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/require"

	"washeve/ui"
	"washeve/ui/keys"
	"washeve/ui/theme"
)

// twin is the same program in this process, at a station: it knows which keys the
// program says it has.
func (st station) twin(t *testing.T) ui.App {
	t.Helper()
	return st.goes(t, st.home(t))
}

// goes takes the twin along the way to the station.
func (st station) goes(t *testing.T, home string) ui.App {
	t.Helper()
	dir := filepath.Join(home, "data", "washeve")
	p := &program{streams: streams{out: io.Discard, errs: io.Discard, env: func(string) string { return "" }, clock: systemClock{}}, dir: dir}
	lib, err := p.load()
	require.NoError(t, err)
	wash, err := p.wash(lib, nil)
	require.NoError(t, err)
	book, err := p.openBook()
	require.NoError(t, err)
	o := p.options(lib, wash, book)
	o.Means.Tick, o.Book.Learn = 0, nil
	if !st.edited() {
		o.Rest = nil // which takes its time
	}
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	a := given(ui.Open(o), tea.WindowSizeMsg{Width: 80, Height: 24})
	for _, h := range st.way {
		for _, key := range strings.Fields(h.keys) {
			if !edits(t, home, key) {
				a = given(a, keys.Press(key))
			}
		}
		require.Contains(t, ansi.Strip(a.View()), h.sees, st.name)
	}
	return a.(ui.App)
}

// edited tells that an editor changes files on the way, which is told while the hand rests.
func (st station) edited() bool {
	return slices.ContainsFunc(st.way, func(h hop) bool { return strings.Contains(h.keys, editor) })
}

// ends tells that a key ends the program.
func ends(b keys.Binding) bool { return b.Does == "quit" || b.Group == "Quit" && b.Does == "leave" }

// quits are the keys that end the program here.
func quits(a ui.App) []string {
	var names []string
	for _, b := range a.Keys() {
		if ends(b) {
			names = append(names, b.Keys()...)
		}
	}
	return names
}
