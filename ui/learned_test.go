package ui

import (
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"

	"washeve/ui/entry"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// pupil counts the lessons that it is told of, and opens another of its kind when it may.
type pupil struct {
	told *int
	may  chan struct{}
}

func (p pupil) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	switch msg.(type) {
	case entry.Learned:
		*p.told++
	case tea.KeyMsg:
		return p, func() tea.Msg { <-p.may; return screen.Go{To: pupil{told: new(int)}} }
	}
	return p, nil
}

func (p pupil) View(layout.Size) string { return "" }
func (p pupil) Title() string           { return "pupil" }
func (p pupil) Init() tea.Cmd           { return nil }
func (p pupil) Keys() []keys.Binding    { return nil }
func (p pupil) Typing() bool            { return false }
func (p pupil) Leave() error            { return nil }

// What is learned while a screen is on its way to be seen, it is told as well: else it
// would show the old answer for as long as it is there.
func TestAScreenOnItsWayIsToldWhatIsLearned(t *testing.T) {
	for _, late := range []bool{true, false} {
		may := make(chan struct{})
		var a tea.Model = NewApp(theme.Theme{}, pupil{new(int), may})
		if !late {
			a, _ = a.Update(entry.Learned{})
			close(may)
		}
		a, cmd := a.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune{'x'}})
		if late {
			a, _ = a.Update(entry.Learned{})
			close(may)
		}
		if cmd != nil {
			a, _ = a.Update(cmd())
		}
		opened := a.(App).top().(pupil)
		assert.Equal(t, late, *opened.told == 1)
	}
}
