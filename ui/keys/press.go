package keys

import tea "github.com/charmbracelet/bubbletea"

// Press is the message of one key, by the name that a binding gives it.
func Press(name string) tea.KeyMsg {
	if name == " " || name == "space" {
		return tea.KeyMsg{Type: tea.KeySpace, Runes: []rune{' '}}
	}
	const fewest, most = -100, 128 // of bubbletea's numbers of keys
	for number := tea.KeyType(fewest); number < most; number++ {
		key := tea.KeyMsg{Type: number}
		if number != tea.KeyRunes && number != tea.KeySpace && key.String() == name {
			return key
		}
	}
	return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(name)}
}
