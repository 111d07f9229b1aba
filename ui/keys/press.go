package keys

import tea "github.com/charmbracelet/bubbletea"

// named are the keys that are no letters.
func named() map[string]tea.KeyType {
	return map[string]tea.KeyType{
		"up": tea.KeyUp, "down": tea.KeyDown, "left": tea.KeyLeft, "right": tea.KeyRight, "enter": tea.KeyEnter, "esc": tea.KeyEsc,
		"tab": tea.KeyTab, "shift+tab": tea.KeyShiftTab, "backspace": tea.KeyBackspace, "delete": tea.KeyDelete, "home": tea.KeyHome,
		"end": tea.KeyEnd, "pgup": tea.KeyPgUp, "pgdown": tea.KeyPgDown, "f1": tea.KeyF1, "f2": tea.KeyF2, "ctrl+c": tea.KeyCtrlC, "ctrl+z": tea.KeyCtrlZ,
		"shift+left": tea.KeyShiftLeft, "shift+right": tea.KeyShiftRight,
		"ctrl+y": tea.KeyCtrlY, "ctrl+u": tea.KeyCtrlU, "ctrl+w": tea.KeyCtrlW,
	}
}

// Press is the message of one key, by the name that a binding gives it.
func Press(name string) tea.KeyMsg {
	if t, ok := named()[name]; ok {
		return tea.KeyMsg{Type: t}
	}
	if name == " " {
		return tea.KeyMsg{Type: tea.KeySpace, Runes: []rune{' '}}
	}
	return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(name)}
}
