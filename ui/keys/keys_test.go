package keys_test

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"

	"washeve/ui/keys"
	"washeve/ui/theme"
)

func bindings() []keys.Binding {
	return []keys.Binding{
		keys.New("Walk", "down", "down", "line down", "down", "j"),
		keys.New("Change", "undo", "u", "undo", "u").Unless("there is nothing to undo"),
		keys.New("Change", "why", "y", "where from", "y").Explained("where each number comes from"),
	}
}

func TestFind(t *testing.T) {
	b, ok := keys.Find(bindings(), tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("j")})
	assert.True(t, ok)
	assert.Equal(t, keys.Action("down"), b.Does)
	_, ok = keys.Find(bindings(), tea.KeyMsg{Type: tea.KeyEsc})
	assert.False(t, ok)
}

func TestHelpListsAllAndSaysWhyNot(t *testing.T) {
	got := strings.Join(keys.Help(bindings(), theme.New(theme.Options{Plain: true}), 60), "\n")
	assert.Equal(t, `Walk
  down  line down

Change
  u     undo (not now: there is nothing to undo)
  y     where each number comes from`, got)
}

func TestHintLeavesOutWhatCannotAct(t *testing.T) {
	th := theme.New(theme.Options{Plain: true})
	assert.Equal(t, "down line down   y where from", keys.Hint(bindings(), th, 60))
	assert.Equal(t, "down line down", keys.Hint(bindings(), th, 20))
}
