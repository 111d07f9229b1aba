package washday

import (
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// states are the ways in which the screen can stand.
func states(t testing.TB) map[string]func() *player {
	at := func(kind model.StepKind, script string) func() *player {
		return func() *player { return fresh(t, "").to(kind).keys(script) }
	}
	return map[string]func() *player{
		"start": at(model.SetUp, ""), "work": at(model.Work, ""), "runs": at(model.Work, "space 10s"), "drip": at(model.LetDry, ""),
		"read": at(model.Read, ""), "typing": at(model.Read, "r"), "slip": at(model.Read, "r '900 ppm NaCl' enter"), "no-go": at(model.Read, "r '14 ppm NaCl' enter esc"),
		"ways": at(model.Read, "r '14 ppm NaCl' enter"), "ending": at(model.Work, "x"), "last": at(model.PackUp, ""), "over": at(model.Work, "x y"),
		"offer": func() *player {
			p := fresh(t, "enter space 10s")
			return play(t, p.b, p.b.options(), "")
		},
	}
}

func TestEveryKeyDoesSomethingOrSaysWhyNot(t *testing.T) {
	for name, state := range states(t) {
		first := state()
		for _, b := range first.m.Keys() {
			assert.NotEmpty(t, b.Help().Key)
			for _, k := range b.Binding.Keys() {
				p := *first
				before := p.seen()
				cmd := p.send(hands.Key(k))
				after := p.seen()
				if b.Blocked != "" {
					assert.Contains(t, after, "Not now:", "%s: %s", name, k)
				} else if cmd == nil {
					assert.NotEqual(t, before, after, "%s: %s (%s) changes nothing", name, k, b.Help().Desc)
				}
			}
		}
	}
}

func TestHelpNamesEveryKeyOnce(t *testing.T) {
	for name, state := range states(t) {
		seen := map[string]string{}
		for _, b := range state().m.Keys() {
			for _, k := range b.Binding.Keys() {
				assert.Empty(t, seen[k], "%s: %s does two things", name, k)
				seen[k] = b.Help().Desc
			}
		}
	}
}

// Any keys on any size of screen, with any names, keep the frame whole, and what is kept
// can be gone on with.
func TestAnyKeys(t *testing.T) {
	all := []string{"space", "space", "enter", "enter", "s", "b", "r", "'14 ppm NaCl'", "'3'", "'900'", "f", "'50 s'", "w", "a", "1", "3", "x", "y", "n", "esc", "m", "up", "down", "90s", "'漢'", "backspace"}
	n, checks := 0, 30
	if testing.Short() {
		checks = 5
	}
	rapid.Check(t, func(rt *rapid.T) {
		if n++; n > checks {
			return
		}
		b := &bay{}
		o := b.options()
		o.Rig.Vehicles[0].Name, o.Wash.Vehicle, o.Rig.Defaults.Vehicle = "洗車 🚐 \x1b[2J", "", ""
		o.Theme = theme.New(theme.Options{Plain: rapid.Bool().Draw(rt, "plain"), Profile: termenv.ANSI256})
		p := &player{t: t, b: b, m: Open(o).(Model), s: layout.Least()}
		for _, k := range rapid.SliceOfN(rapid.SampledFrom(all), 1, 25).Draw(rt, "keys") {
			if rapid.IntRange(0, 9).Draw(rt, "full disk") == 0 {
				b.fail = errFull
			}
			p.keys(k)
			b.fail = nil
			size := layout.Size{W: rapid.IntRange(80, 160).Draw(rt, "w"), H: rapid.IntRange(24, 50).Draw(rt, "h")}
			frame := p.m.View(size)
			assert.NotContains(t, frame, "\x1b[2J")
			hands.Fits(rt, ansi.Strip(frame), size)
		}
		assert.Empty(rt, b.log.Faults())
		if b.kept != nil {
			u := *b.kept
			assert.Empty(rt, u.Faults())
		}
	})
}

func TestAKeyAndASecondSendLittle(t *testing.T) {
	for name, state := range states(t) {
		p := state()
		p.m.th = theme.New(theme.Options{Profile: termenv.ANSI256})
		frame := p.m.View(p.s)
		for _, k := range []string{"space", "1s", "b", "esc"} {
			p.keys(k)
			next := p.m.View(p.s)
			assert.LessOrEqual(t, hands.Sent(frame, next), 2048, "%s: %s", name, k)
			frame = next
		}
	}
}

func TestTheMouseIsNotNeeded(t *testing.T) {
	p := fresh(t, "enter")
	before := p.seen()
	p.send(tea.MouseMsg{Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	assert.Equal(t, before, p.seen())
}

// A look at the clock is what the screen does most.
func BenchmarkSecond(b *testing.B) {
	p := fresh(b, "enter space")
	p.m.th = theme.New(theme.Options{Profile: termenv.ANSI256})
	for b.Loop() {
		p.send(ticked{p.m.ticks})
		sink = p.m.View(p.s)
	}
}

// A reading works the bed and its ways out anew, with the log of a wash so far.
func BenchmarkReading(b *testing.B) {
	p := fresh(b, "").to(model.Read)
	var m planner.Memory
	p.m.o.Rest, p.m.o.Ways, p.m.o.Make = m.Rest, m.Shorten, m.Make // the log stays out of it
	for b.Loop() {
		q := *p
		q.keys("r '3 ppm NaCl' enter")
	}
}
