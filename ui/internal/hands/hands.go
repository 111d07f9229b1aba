// Package hands presses keys on a screen by their names. Only tests import it.
package hands

import (
	"strings"

	tea "github.com/charmbracelet/bubbletea"
)

// named are the keys that are no letters.
func named() map[string]tea.KeyType {
	return map[string]tea.KeyType{
		"up": tea.KeyUp, "down": tea.KeyDown, "left": tea.KeyLeft, "right": tea.KeyRight, "enter": tea.KeyEnter, "esc": tea.KeyEsc,
		"tab": tea.KeyTab, "shift+tab": tea.KeyShiftTab, "backspace": tea.KeyBackspace, "delete": tea.KeyDelete, "home": tea.KeyHome,
		"end": tea.KeyEnd, "pgup": tea.KeyPgUp, "pgdown": tea.KeyPgDown, "f1": tea.KeyF1, "ctrl+c": tea.KeyCtrlC, "ctrl+z": tea.KeyCtrlZ,
		"shift+left": tea.KeyShiftLeft, "shift+right": tea.KeyShiftRight,
		"ctrl+y": tea.KeyCtrlY, "ctrl+u": tea.KeyCtrlU, "ctrl+w": tea.KeyCtrlW,
	}
}

// Key is the message of one key, by the name that a binding gives it.
func Key(name string) tea.KeyMsg {
	if t, ok := named()[name]; ok {
		return tea.KeyMsg{Type: t}
	}
	if name == " " {
		return tea.KeyMsg{Type: tea.KeySpace, Runes: []rune{' '}}
	}
	return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(name)}
}

// Keys reads "down down enter": names apart by blanks. What stands in single
// quotes is typed letter by letter.
func Keys(script string) []tea.KeyMsg {
	var out []tea.KeyMsg
	for i, part := range strings.Split(script, "'") {
		if i%2 == 1 {
			for _, r := range part {
				out = append(out, Key(string(r)))
			}
			continue
		}
		for _, name := range strings.Fields(part) {
			out = append(out, Key(name))
		}
	}
	return out
}
