// Package mouse tells what a hand does with the mouse, where a screen heeds it.
package mouse

import tea "github.com/charmbracelet/bubbletea"

// Does is what the mouse does.
type Does int

// What screens heed: the wheel by one notch, and the left button as it goes down.
const (
	Nothing Does = iota
	Up
	Down
	Click
)

// Of tells what a message means.
func Of(msg tea.MouseMsg) Does {
	switch {
	case msg.Button == tea.MouseButtonWheelUp:
		return Up
	case msg.Button == tea.MouseButtonWheelDown:
		return Down
	case msg.Button == tea.MouseButtonLeft && msg.Action == tea.MouseActionPress:
		return Click
	}
	return Nothing
}
