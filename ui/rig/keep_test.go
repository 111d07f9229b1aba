package rig

import (
	"errors"
	"fmt"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/form"
	"washeve/ui/internal/hands"
	"washeve/ui/keys"
	"washeve/ui/theme"
)

func TestFailedSaveKeepsTheWorkAndSaysSo(t *testing.T) {
	o, kept := ours()
	kept.fail = errors.New("rig.toml was not saved: no space left on the disk; make room and save again")
	p := play(t, o, "n 'Tin Box' enter")
	assert.Contains(t, p.Says(), "Not saved, but still here: rig.toml was not saved: no space left on the disk; make room and save again")
	assert.Contains(t, p.Seen(), "not saved\n")
	assert.Contains(t, p.Seen(), "s save again")
	assert.Contains(t, p.Seen(), "Tin Box")
	assert.Error(t, p.M.Leave())
	kept.fail = nil
	p.Keys("s")
	assert.Contains(t, p.Seen(), "Saved.")
	assert.Len(t, kept.kept.Rig.Vehicles, 2)
	assert.NoError(t, p.M.Leave())
}

func TestTakingOutNeedsNoSecondWord(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "pgdown pgdown pgdown pgdown")
	kept.fail = fmt.Errorf("save: %w", stubborn{kept, true})
	p.Keys("X")
	assert.Contains(t, p.Says(), "supply hose is taken out; u brings it back. The file as it was is in rig.toml.bak-1.")
	assert.Equal(t, 1, kept.saves)
}

func TestRewritingAFileIsAsked(t *testing.T) {
	o, kept := ours()
	kept.fail = fmt.Errorf("save: %w", stubborn{kept, false})
	p := play(t, o, "enter down down '41 ft' enter")
	assert.Contains(t, p.Says(), "Write it anew, and keep the old file aside? y or n. Not saved: save: rig.toml would have to be written anew.")
	p.Keys("n")
	assert.Contains(t, p.Says(), "Not saved. It is as you see it here; s tries again, u takes the change back.")
	assert.Error(t, p.M.Leave())
	p.Keys("s y")
	assert.Contains(t, p.Says(), "rig.toml.bak-1")
	assert.NoError(t, p.M.Leave())
}

func TestTheExampleIsKeptOnlyWhenAdopted(t *testing.T) {
	o, kept := ours()
	o.Example = true
	p := play(t, o, "")
	assert.NoError(t, p.M.Leave())
	p.Keys("n 'Tin Box' enter")
	assert.Zero(t, kept.saves)
	assert.Contains(t, p.Seen(), "built-in example")
	assert.ErrorContains(t, p.M.Leave(), "a makes it yours")
	done := done(p, "a")
	assert.True(t, done.Adopt)
	assert.Equal(t, Spot{"vehicle", 1}, done.At)
	assert.Len(t, done.Stock.Rig.Vehicles, 2)
}

// states are the ways the screen can stand, each with the keys that lead there.
func states() map[string]string {
	return map[string]string{
		"at the start": "", "on a length": "enter down down", "on a choice": "enter down", "on a face": "enter end", "in a bed": "pgdown enter down",
		"on a hose": "pgdown pgdown pgdown pgdown", "no softener": "pgdown pgdown X y", "on the defaults": "end", "in the defaults": "end enter down",
		"typing": "enter down down enter", "naming": "n", "refused": "enter down 3", "picking": "enter down enter", "asking": "pgdown pgdown X", "with history": "n enter u",
	}
}

// Every key of every state does something or says why it does not, and what is
// seen fits the screen.
func TestEveryKey(t *testing.T) {
	for _, example := range []bool{false, true} {
		stands := map[string]Model{} // each state is come to once
		from := func(script string) *player {
			if _, known := stands[script]; !known {
				o, _ := ours()
				o.Example = example
				stands[script] = play(t, o, script).M
			}
			return hands.Play(t, stands[script], "")
		}
		hands.EveryKey(t, states(), from, still)
	}
}

// still tells the keys that may leave all as it is where the hand stands.
func still(b keys.Binding, _ string) bool {
	switch b.Does {
	case up, down, first, last, form.Number, form.AcceptUp, form.Accept:
		return true
	}
	return false
}

func TestHelpNamesEveryKeyOnce(t *testing.T) {
	o, _ := ours()
	hands.KeysOnce(t, states(), func(script string) *player { return play(t, o, script) })
}

func TestMouse(t *testing.T) {
	click := func(p *player, x, y int) {
		p.Send(tea.MouseMsg{X: x, Y: y, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	}
	o, _ := ours()
	p := play(t, o, "")
	click(p, 5, 4)
	assert.Equal(t, Spot{"bed", 0}, p.M.at)
	click(p, 40, 7)
	assert.True(t, p.M.inForm)
	assert.Equal(t, 4, p.M.hand)
	click(p, 40, 7)
	assert.NotNil(t, p.M.picker, "a second click opens it")
	p.Keys("esc")
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelDown})
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	assert.Equal(t, 4, p.M.hand)
	click(p, 5, 3)
	click(p, 500, 500)
	p.Seen()
}

func TestRandomKeysNeverPanicOrOverflow(t *testing.T) {
	all := []string{"up", "down", "left", "right", "enter", "esc", "tab", "backspace", "delete", " ", "0", "1", "2", ".", "f", "t", "x", "é", "漢", "👩‍🚀",
		"pgup", "pgdown", "home", "end", "n", "c", "e", "X", "y", "u", "r", "m", "s", "ctrl+u", "?"}
	themes := []theme.Theme{theme.New(theme.Options{Plain: true}), theme.New(theme.Options{Profile: termenv.ANSI256})}
	rapid.Check(t, func(rt *rapid.T) {
		o, kept := ours()
		o.Example = rapid.Bool().Draw(rt, "example")
		o.Theme = themes[rapid.IntRange(0, 1).Draw(rt, "theme")]
		if rapid.Bool().Draw(rt, "disk full") {
			kept.fail = stubborn{kept, rapid.Bool().Draw(rt, "takes out")}
		}
		play(t, o, "").AnyKeys(rt, all, 40)
	})
}

// What a key sends at 80x24, as the terminal library sends it: every changed
// line anew.
func TestBytesPerKey(t *testing.T) {
	o, _ := ours()
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	for _, script := range []string{"enter down down '33 ft 6 in' enter esc", "down down down down down down down down down", "pgdown pgdown pgdown pgdown n 'x' enter u r", "c 'twin' enter t X y u", "end enter down enter 2 m"} {
		p := play(t, o, "")
		frame := p.M.View(p.S)
		for _, key := range hands.Keys(script) {
			p.Send(key)
			next := p.M.View(p.S)
			assert.LessOrEqual(t, hands.Sent(frame, next), 2048, "%s in %q", key, script)
			frame = next
		}
	}
}

// A key of a value, beside ten years of washes.
func BenchmarkKeyToFrame(b *testing.B) {
	o, _ := ours()
	o = manyWashes(o, 1000)
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	p := play(b, o, "enter down down '30 ft'")
	key := []tea.KeyMsg{hands.Key("backspace"), hands.Key("t")}
	total, n := 0, 0
	frame := p.M.View(p.S)
	for b.Loop() {
		p.Send(key[n%2])
		next := p.M.View(p.S)
		total, n, frame = total+hands.Sent(frame, next), n+1, next
	}
	b.ReportMetric(float64(total)/float64(n), "bytes/key")
}

// A walk down the list, beside ten years of washes.
func BenchmarkWalk(b *testing.B) {
	o, _ := ours()
	p := play(b, manyWashes(o, 1000), "")
	key := []tea.KeyMsg{hands.Key("down"), hands.Key("up")}
	n := 0
	for b.Loop() {
		p.Send(key[n%2])
		p.M.View(p.S)
		n++
	}
}
