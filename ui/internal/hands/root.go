package hands

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/screen"
)

// Root is a program of one screen, which ends where that is left.
type Root struct {
	Screen screen.Screen
	losing error
}

// Init starts nothing.
func (r Root) Init() tea.Cmd { return nil }

// View draws nothing.
func (r Root) View() string { return "" }

// Top is the screen.
func (r Root) Top() screen.Screen { return r.Screen }

// Put sets another screen in its place.
func (r Root) Put(s screen.Screen) tea.Model { return Root{Screen: s} }

// Trouble is never there.
func (r Root) Trouble() error { return nil }

// Losing is why quitting would lose work, while it asks.
func (r Root) Losing() error { return r.losing }

// Update takes a message.
func (r Root) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	if _, left := msg.(screen.Back); left {
		return r, tea.Quit
	}
	switch key, _ := msg.(tea.KeyMsg); {
	case r.losing != nil && key.String() == "n":
		return Root{Screen: r.Screen}, nil
	case key.Type == tea.KeyCtrlC:
		if r.losing = r.Screen.Leave(); r.losing == nil {
			return r, tea.Quit
		}
		return r, nil
	}
	next, cmd := r.Screen.Update(msg)
	return Root{Screen: next}, cmd
}
