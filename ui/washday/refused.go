package washday

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/form"
	"washeve/ui/keys"
)

// refuse says why a key does nothing. Where it would have asked for a number, one that is
// typed behind it belongs to that, and none of it may act.
func (m Model) refuse(b keys.Binding) Model {
	m.refused, m.behind = b.Does == read || b.Does == check, false
	return m.warn(b.NotNow())
}

// beginsNumber tells that a number begins with a key, as every reading and every flow does.
func beginsNumber(msg tea.KeyMsg) bool {
	return msg.Type == tea.KeyRunes && len(msg.Runes) > 0 && (msg.Runes[0] >= '0' && msg.Runes[0] <= '9' || msg.Runes[0] == '.')
}

// letBy lets a number go by that was typed behind a refusal, and says so.
func (m Model) letBy() Model {
	m.behind = true
	return m.warn(m.status + " What is typed behind it is not taken, and no key acts, until enter or esc.")
}

// heeded lets all keys act again.
func (m Model) heeded() Model {
	m.refused, m.behind = false, false
	return m
}

// refusedKeys are those while a number that was refused is typed.
func refusedKeys() []keys.Binding {
	return []keys.Binding{
		keys.New("Not typed", form.Heed, "enter esc", "keys act again", "enter", "esc", "up", "down", "left", "right", "tab", "shift+tab").
			Explained("no number is typed in this step: what is typed is let go by until enter, esc or an arrow"),
	}
}
