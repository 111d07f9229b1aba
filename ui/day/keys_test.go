package day

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// states are the ways the screen can stand, each with the keys that lead there.
func states() map[string]string {
	return map[string]string{"at the start": "", "chosen": "s '9:00' enter", "with history": "right . u", "typing": "n", "early": strings.Repeat("pgup ", 30)}
}

// Every key of every state does something or says why it does not.
func TestEveryKey(t *testing.T) {
	for name, script := range states() {
		for _, b := range play(t, ours(), script).m.Keys() {
			for _, k := range b.Binding.Keys() {
				p := play(t, ours(), script)
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
	for name, script := range states() {
		seen := map[string]keys.Action{}
		for _, b := range play(t, ours(), script).m.Keys() {
			assert.NotEmpty(t, b.Help().Desc, name)
			for _, k := range b.Binding.Keys() {
				assert.Empty(t, seen[k], "%s: %s does two things", name, k)
				seen[k] = b.Does
			}
		}
	}
}

func TestRandomKeysAndSizesFit(t *testing.T) {
	all := []string{"left", "right", "pgup", "pgdown", "enter", "esc", "delete", ",", ".", "[", "]", "n", "s", "u", "r", "t", "9", ":", "0", "é", "漢", "backspace", "ctrl+u", "q", "x"}
	days := []map[string]string{
		{}, {"heading": ""}, {"low": "", "wind": ""}, {"date": ""}, {"date": "2026-12-21", "low": "-20 F", "high": "30 F", "dew_point": ""},
		{"date": "2026-11-01"}, {"start": "3:00"}, {"high": "118 F", "low": "90 F"},
	}
	themes := []theme.Theme{theme.New(theme.Options{Plain: true}), theme.New(theme.Options{Profile: termenv.ANSI256})}
	rapid.Check(t, func(rt *rapid.T) {
		o := ours()
		sample.Set(&o.Wash, days[rapid.IntRange(0, len(days)-1).Draw(rt, "day")])
		sample.Set(&o.Places[0], map[string]string{"latitude": rapid.SampledFrom([]string{"38.5 N", "0 N", "69 N", "78 N", "33 S"}).Draw(rt, "latitude")})
		o.Theme = themes[rapid.IntRange(0, 1).Draw(rt, "theme")]
		p := &player{t: t, m: New(o), s: layout.Least()}
		for _, k := range rapid.SliceOfN(rapid.SampledFrom(all), 1, 15).Draw(rt, "keys") {
			p.send(hands.Key(k))
			size := layout.Size{W: rapid.IntRange(80, 220).Draw(rt, "w"), H: rapid.IntRange(24, 60).Draw(rt, "h")}
			hands.Fits(rt, ansi.Strip(p.m.View(size)), size)
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
	for _, key := range hands.Keys(strings.Repeat("right ", 60) + strings.Repeat("pgup ", 16) + strings.Repeat(". right ", 17) + " u r enter n 'orth' esc s '9' esc") {
		p.send(key)
		next := p.m.View(p.s)
		assert.LessOrEqual(t, sent(frame, next), 2048, "%s at %s, nose %s", key, p.start(), p.nose())
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

func BenchmarkMoveToFrame(b *testing.B) { benchmarkKeys(b, "right", "left") }

func BenchmarkTurnToFrame(b *testing.B) { benchmarkKeys(b, ".", ",") }

func benchmarkKeys(b *testing.B, names ...string) {
	o := ours()
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	p := play(b, o, "s '9:00' enter")
	total, n := 0, 0
	frame := p.m.View(p.s)
	for b.Loop() {
		p.send(hands.Key(names[n%2]))
		next := p.m.View(p.s)
		total, n, frame = total+sent(frame, next), n+1, next
	}
	b.ReportMetric(float64(total)/float64(n), "bytes/key")
}
