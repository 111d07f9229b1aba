package guide

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/reader"
	"washeve/ui/screen"
)

// Update takes a message.
func (m Model) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.size = layout.SizeOf(msg)
	case tea.KeyMsg:
		if turned, ok := m.turned(msg); ok {
			return turned, nil
		}
	}
	read, cmd := m.reader.Update(msg)
	m.reader = read.(reader.Model)
	return m, cmd
}

func (m Model) turned(msg tea.KeyMsg) (Model, bool) {
	if m.Typing() {
		return m, false
	}
	switch b, _ := keys.Find(m.turnKeys(), msg); b.Does {
	case next:
		return m.onto(m.at + 1), true
	case before:
		return m.onto(m.at - 1), true
	}
	return m, false
}
