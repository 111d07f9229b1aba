package reader

import (
	"strings"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"

	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/mouse"
	"washeve/ui/screen"
)

// Update takes a message.
func (m Model) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		return m.sized(layout.SizeOf(msg)), nil
	case tea.MouseMsg:
		return m.mouse(msg), nil
	case tea.KeyMsg:
		return m.key(msg)
	}
	return m, nil
}

func (m Model) mouse(msg tea.MouseMsg) Model {
	switch mouse.Of(msg) {
	case mouse.Up:
		return m.scrolled(-3)
	case mouse.Down:
		return m.scrolled(3)
	}
	return m
}

func (m Model) key(msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	b, bound := keys.Find(m.Keys(), msg)
	if !bound && m.search.typing {
		return m.typed(msg), nil
	}
	if m.note = ""; !bound {
		return m, nil
	}
	if b.Blocked != "" {
		m.note = b.NotNow()
		return m, nil
	}
	switch b.Does {
	case up:
		return m.scrolled(-1), nil
	case down:
		return m.scrolled(1), nil
	case pageUp:
		return m.scrolled(-m.rows()), nil
	case pageDn:
		return m.scrolled(m.rows()), nil
	case home:
		return m.scrolled(-len(m.lines)), nil
	case end:
		return m.scrolled(len(m.lines)), nil
	case find:
		m.search = search{typing: true}
	case abandon:
		m.search = search{}
	case accept:
		m.search.typing = false
		return m.found(m.top), nil
	case again:
		return m.found(m.search.at + 1), nil
	case back:
		return m, func() tea.Msg { return screen.Back{} }
	}
	return m, nil
}

func (m Model) typed(msg tea.KeyMsg) Model {
	switch msg.Type {
	case tea.KeyRunes, tea.KeySpace:
		m.search.text += string(msg.Runes)
	case tea.KeyBackspace:
		if r := []rune(m.search.text); len(r) > 0 {
			m.search.text = string(r[:len(r)-1])
		}
	}
	return m
}

// found scrolls to the next line that holds the words, from a line on and then
// from the start.
func (m Model) found(from int) Model {
	m.search.missed = false
	wanted := strings.ToLower(m.search.text)
	if wanted == "" {
		return m
	}
	for i := range m.lines {
		at := (from + i) % len(m.lines)
		if strings.Contains(strings.ToLower(ansi.Strip(m.lines[at])), wanted) {
			m.search.at, m.top = at, min(at, m.last())
			return m
		}
	}
	m.search.missed = true
	return m
}
