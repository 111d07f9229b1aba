package ui

import (
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"

	"washeve/ui/guide"
	"washeve/ui/internal/hands"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// pump is a screen on which water runs.
type pump struct {
	pupil
	runs bool
}

func (p pump) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	if b, ok := msg.(screen.Blindly); ok && b.Does == "stop" {
		p.runs = false
	}
	return p, nil
}

func (p pump) UnseenWords() string { return map[bool]string{true: "It runs."}[p.runs] }

func (p pump) UnseenKeys() []keys.Binding {
	if !p.runs {
		return nil
	}
	return []keys.Binding{keys.New("", "stop", "space", "stop", " ")}
}

// What runs is stopped in a window that is too small to draw it, the page of keys over it
// or not, and the notice says so; any other key does nothing.
func TestWhatRunsIsStoppedInASmallWindow(t *testing.T) {
	th := theme.New(theme.Options{Plain: true})
	help := guide.New(th, "keys", layout.Least(), nil)
	for _, over := range [][]screen.Screen{{pump{runs: true}}, {pump{runs: true}, help}} {
		var a tea.Model = NewApp(th, over...)
		for _, size := range []tea.WindowSizeMsg{{Width: 79, Height: 24}, {Width: 20, Height: 3}} {
			a, _ = a.Update(size)
			assert.Contains(t, see(a), "space: stop. It")
		}
		a, _ = a.Update(hands.Key("x"))
		assert.True(t, a.(App).screens[0].(pump).runs)
		a, _ = a.Update(hands.Key(" "))
		assert.False(t, a.(App).screens[0].(pump).runs)
		assert.NotContains(t, see(a), "space")
		a, quits := press(a, "space")
		assert.False(t, quits)
		_, quits = press(a, "q")
		assert.True(t, quits)
	}
}
