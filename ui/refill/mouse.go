package refill

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/mouse"
)

// mouse moves among the steps.
func (m Model) mouse(msg tea.MouseMsg) Model {
	switch does := mouse.Of(msg); {
	case m.edit != nil || m.reading != nil || m.inForm():
		return m
	case does == mouse.Up:
		return m.moved(-1)
	case does == mouse.Down:
		return m.moved(1)
	case does == mouse.Click:
		if at := m.rects().steps; at.Holds(msg.X, msg.Y) && msg.Y-at.Y < len(steps()) {
			return m.onto(msg.Y - at.Y)
		}
	}
	return m
}
