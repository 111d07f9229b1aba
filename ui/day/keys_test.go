package day

import (
	"strings"
	"testing"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/theme"
)

// states are the ways the screen can stand, each with the keys that lead there.
func states() map[string]string {
	return map[string]string{"at the start": "", "chosen": "s '9:00' enter", "with history": "right . u", "typing": "n", "early": strings.Repeat("pgup ", 30)}
}

// scripted plays a script on our day.
func scripted(t *testing.T) func(script string) *hands.Player[Model] {
	return func(script string) *hands.Player[Model] { return play(t, ours(), script).Player }
}

// Every key of every state does something or says why it does not.
func TestEveryKey(t *testing.T) { hands.EveryKey(t, states(), scripted(t), nil) }

func TestHelpNamesEveryKeyOnce(t *testing.T) { hands.KeysOnce(t, states(), scripted(t)) }

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
		play(t, o, "").AnyKeys(rt, all, 15)
	})
}

// What a key sends at 80x24, as the terminal library sends it: every changed
// line anew.
func TestBytesPerKey(t *testing.T) {
	o := ours()
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	p := play(t, o, "")
	frame := p.M.View(p.S)
	most := 0
	for _, key := range hands.Keys(strings.Repeat("right ", 60) + strings.Repeat("pgup ", 16) + strings.Repeat(". right ", 17) + " u r enter n 'orth' esc s '9' esc") {
		p.Send(key)
		next := p.M.View(p.S)
		assert.LessOrEqual(t, hands.Sent(frame, next), 2048, "%s at %s, nose %s", key, p.start(), p.nose())
		most, frame = max(most, hands.Sent(frame, next)), next
	}
	t.Logf("%d bytes at most", most)
}

func BenchmarkMoveToFrame(b *testing.B) { benchmarkKeys(b, "right", "left") }

func BenchmarkTurnToFrame(b *testing.B) { benchmarkKeys(b, ".", ",") }

func benchmarkKeys(b *testing.B, names ...string) {
	o := ours()
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	p := play(b, o, "s '9:00' enter")
	total, n := 0, 0
	frame := p.M.View(p.S)
	for b.Loop() {
		p.Send(hands.Key(names[n%2]))
		next := p.M.View(p.S)
		total, n, frame = total+hands.Sent(frame, next), n+1, next
	}
	b.ReportMetric(float64(total)/float64(n), "bytes/key")
}

// Of a day that is over the sun and the weather say nothing: that comes before all else
// that is odd about it, with what to do.
func TestADayThatIsPast(t *testing.T) {
	o := ours()
	var kept planner.Memory
	o.Make = func(r model.Rig, ps model.Places, w model.Wash) (planner.Plan, error) {
		p, err := kept.Make(r, ps, w)
		p.Seen(model.Date{Year: 2026, Month: 11, Day: 27})
		return p, err
	}
	assert.Contains(t, play(t, o, "").Seen(), "days ago. State the day of the wash: esc, then d.")
	assert.NotContains(t, play(t, ours(), "").Seen(), "days ago")
}
