package ui

import (
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"

	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// bought tells all screens of a purchase.
type bought struct{ what string }

// buyer comes back from a shop, and tells all screens what it has bought.
type buyer struct {
	seen []string
	shop bool
}

func (b buyer) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	brings := func(msg tea.Msg) tea.Cmd { return func() tea.Msg { return msg } }
	switch msg := msg.(type) {
	case tea.KeyMsg:
		if b.shop {
			return b, brings(screen.Back{With: bought{"in the shop"}})
		}
		b.seen = append(b.seen, msg.String())
	case bought:
		if msg.what == "in the shop" {
			return b, brings(screen.Everyone{Msg: bought{"a tank"}})
		}
		b.seen = append(b.seen, msg.what)
	}
	return b, nil
}

func (b buyer) View(layout.Size) string { return "" }
func (b buyer) Title() string           { return "buyer" }
func (b buyer) Init() tea.Cmd           { return nil }
func (b buyer) Keys() []keys.Binding    { return nil }
func (b buyer) Typing() bool            { return false }
func (b buyer) Leave() error            { return nil }

// What a key brings for all screens they know before the next key: it may be the one
// that quits, and then they are asked to keep it.
func TestEveryScreenKnowsBeforeTheNextKey(t *testing.T) {
	next, _ := NewApp(theme.Theme{}, buyer{}, buyer{shop: true}).Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("yx")})
	assert.Equal(t, []string{"a tank", "x"}, next.(App).top().(buyer).seen)
}
