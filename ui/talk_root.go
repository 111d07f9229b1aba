package ui

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/screen"
)

// Top is the screen that is seen.
func (a App) Top() screen.Screen { return a.top() }

// Put sets another screen in the place of the one that is seen.
func (a App) Put(s screen.Screen) tea.Model {
	a.screens = append(append([]screen.Screen(nil), a.screens[:len(a.screens)-1]...), s)
	return a
}

// Trouble is an error that is shown until the next key.
func (a App) Trouble() error { return a.trouble }

// Losing is why quitting would lose work, while the root asks.
func (a App) Losing() error { return a.losing }
