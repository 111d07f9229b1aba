package compare

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/internal/hands"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// states are the ways the screen can stand, each with the keys that lead there.
func states() map[string]string {
	return map[string]string{
		"at the start": "", "on the plan": "home", "at the end": "end", "asking": "right right right right right enter",
		"down the words": "right down", "turned": "end left left +",
	}
}

// Every key of every state does something or says why it does not.
func TestEveryKey(t *testing.T) {
	start := New(ours())
	for name, script := range states() {
		for _, b := range from(t, start, script).m.Keys() {
			for _, k := range b.Binding.Keys() {
				p := from(t, start, script)
				before := p.seen()
				msg := p.send(hands.Key(k))
				after := p.seen()
				if b.Blocked != "" {
					assert.Contains(t, after, "Not now: "+b.Blocked, "%s: %s", name, k)
				} else if msg == nil {
					assert.NotEqual(t, before, after, "%s: %s (%s) changes nothing", name, k, b.Help().Desc)
				}
			}
		}
	}
}

func TestHelpNamesEveryKeyOnce(t *testing.T) {
	start := New(ours())
	for name, script := range states() {
		seen := map[string]keys.Action{}
		for _, b := range from(t, start, script).m.Keys() {
			assert.NotEmpty(t, b.Help().Desc, name)
			for _, k := range b.Binding.Keys() {
				assert.Empty(t, seen[k], "%s: %s does two things", name, k)
				seen[k] = b.Does
			}
		}
	}
}

func TestRandomKeysAndSizesFit(t *testing.T) {
	all := []string{"left", "right", "up", "down", "home", "end", "enter", "esc", "y", "n", "+", "-", "m", "q", "x", "é", "漢"}
	themes := []theme.Theme{theme.New(theme.Options{Plain: true}), theme.New(theme.Options{Profile: termenv.ANSI256})}
	start := New(ours())
	rapid.Check(t, func(rt *rapid.T) {
		p := from(t, start, "")
		p.m.th = themes[rapid.IntRange(0, 1).Draw(rt, "theme")]
		for _, k := range rapid.SliceOfN(rapid.SampledFrom(all), 1, 8).Draw(rt, "keys") {
			p.send(hands.Key(k))
			size := layout.Size{W: rapid.IntRange(80, 260).Draw(rt, "w"), H: rapid.IntRange(24, 60).Draw(rt, "h")}
			fits(rt, ansi.Strip(p.m.View(size)), size)
		}
	})
}

// What a key sends at 80x24, as the terminal library sends it: every changed
// line anew.
func TestBytesPerKey(t *testing.T) {
	o := ours()
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	p := play(t, o, "")
	frame := p.m.View(p.s)
	most := 0
	for _, key := range hands.Keys(strings.Repeat("right ", 11) + "+ - " + strings.Repeat("left down ", 11) + "end home m m") {
		p.send(key)
		next := p.m.View(p.s)
		assert.LessOrEqual(t, sent(frame, next), 2048, "%s on %s", key, p.m.way().Key)
		most, frame = max(most, sent(frame, next)), next
	}
	t.Logf("%d bytes at most", most)
}

func sent(before, after string) int {
	a, b := strings.Split(before, "\n"), strings.Split(after, "\n")
	bytes := 0
	for i, line := range b {
		if i >= len(a) || a[i] != line {
			bytes += len(line) + len("\x1b[K\r\n")
		}
	}
	return bytes
}

// BenchmarkOpen is the screen with all its ways worked out.
func BenchmarkOpen(b *testing.B) {
	o := ours()
	for b.Loop() {
		New(o).View(layout.Least())
	}
}

func BenchmarkWalkToFrame(b *testing.B) {
	o := ours()
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	p := play(b, o, "")
	names := []string{"right", "right", "right", "right", "right", "home"}
	for n := 0; b.Loop(); n++ {
		p.send(hands.Key(names[n%len(names)]))
		p.m.View(p.s)
	}
}
