package guide_test

import (
	"strings"
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

func opened() screen.Screen {
	return guide.New(theme.New(theme.Options{Plain: true}), "Plan", layout.Size{W: 80, H: 24},
		[]keys.Binding{keys.New("Walk", "down", "down", "line down", "down")})
}

func press(s screen.Screen, script string) (screen.Screen, tea.Cmd) {
	var cmd tea.Cmd
	for _, key := range hands.Keys(script) {
		s, cmd = s.Update(key)
	}
	return s, cmd
}

func see(s screen.Screen) string { return s.View(layout.Size{W: 80, H: 24}) }

func TestThePagesTurn(t *testing.T) {
	titles := []string{"Keys: Plan", "Terms of the trade", "When something goes wrong"}
	for script, title := range map[string]string{"": titles[0], "tab": titles[1], "?": titles[1], "tab tab": titles[2], "tab tab tab": titles[0], "shift+tab": titles[2]} {
		s, _ := press(opened(), script)
		assert.Equal(t, title, s.Title(), script)
		assert.Contains(t, see(s), title)
		assert.Contains(t, see(s), "tab ")
	}
	s, _ := press(opened(), "tab / 'hose?' enter")
	assert.Equal(t, titles[1], s.Title(), "letters are text while they are typed")
	s, _ = press(opened(), "tab / 'bypass' enter")
	assert.Contains(t, see(s), "A way around a unit")
	_, cmd := press(s, "esc")
	assert.IsType(t, screen.Back{}, cmd())
}

func TestAnySizeFits(t *testing.T) {
	for _, size := range []layout.Size{{W: 1, H: 1}, {W: 20, H: 3}, {W: 80, H: 24}, {W: 200, H: 90}} {
		s, _ := opened().Update(tea.WindowSizeMsg{Width: size.W, Height: size.H})
		for range 3 {
			lines := strings.Split(s.View(size), "\n")
			assert.LessOrEqual(t, len(lines), size.H)
			for _, line := range lines {
				assert.LessOrEqual(t, len(line), size.W)
			}
			s, _ = press(s, "tab")
		}
	}
}
