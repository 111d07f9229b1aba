package refill

import (
	"errors"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/keys"
	"washeve/ui/theme"
)

func states() map[string]string {
	return map[string]string{
		"start": "", "amounts": "right", "typing": "right enter", "drain": "right right", "form": "right right right right right right right right",
		"price": "right right right right right right right right enter", "last": "right right right right right right right right w right right", "reading": "right right right right right right right right w right r",
	}
}

func TestEveryKey(t *testing.T) {
	units := func(b keys.Binding, _ string) bool { return b.Does == "units" }
	hands.EveryKey(t, states(), season(t), units)
}

// season plays on the season's log.
func season(t *testing.T) func(script string) *player {
	return func(script string) *player { return play(t, desk(t), script) }
}

func TestHelpNamesEveryKeyOnce(t *testing.T) { hands.KeysOnce(t, states(), season(t)) }

func TestMouse(t *testing.T) {
	p := play(t, desk(t), "")
	p.Send(tea.MouseMsg{X: 5, Y: p.M.rects().steps.Y + 3, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	assert.Equal(t, 3, p.M.step)
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelDown})
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	p.Send(tea.WindowSizeMsg{Width: 100, Height: 30})
	assert.Equal(t, 100, p.M.size.W)
}

func TestRandomKeysNeverPanicOrOverflow(t *testing.T) {
	o := desk(t)
	all := []string{"up", "down", "left", "right", "right", "enter", "esc", "tab", "backspace", "delete", " ", "0", "1", ".", "漢", "r", "y", "n", "f", "w", "m", "j", "k", "pgup", "pgdown", "ctrl+u"}
	rapid.Check(t, func(rt *rapid.T) {
		b := &sample.Log{Kept: o.Logger.Log()}
		if rapid.Bool().Draw(rt, "disk full") {
			b.Fail = errors.New("no space left on the disk")
		}
		o := o
		o.Logger = b
		o.Theme = theme.New(theme.Options{Plain: rapid.Bool().Draw(rt, "plain"), Profile: termenv.ANSI256})
		play(t, o, "").AnyKeys(rt, all, 30)
	})
}
