package mouse_test

import (
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"

	"washeve/ui/mouse"
)

func TestOf(t *testing.T) {
	for msg, want := range map[tea.MouseMsg]mouse.Does{
		{Button: tea.MouseButtonWheelUp}:                                   mouse.Up,
		{Button: tea.MouseButtonWheelDown}:                                 mouse.Down,
		{Button: tea.MouseButtonLeft}:                                      mouse.Click,
		{Button: tea.MouseButtonLeft, Action: tea.MouseActionRelease}:      mouse.Nothing,
		{Button: tea.MouseButtonLeft, Action: tea.MouseActionMotion}:       mouse.Nothing,
		{Button: tea.MouseButtonRight, Action: tea.MouseActionPress}:       mouse.Nothing,
		{Button: tea.MouseButtonNone, Action: tea.MouseActionMotion, X: 3}: mouse.Nothing,
	} {
		assert.Equal(t, want, mouse.Of(msg), msg.String())
	}
}
