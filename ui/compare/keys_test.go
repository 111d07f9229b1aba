package compare

import (
	"strings"
	"testing"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model/quantity"
	"washeve/planner/compare"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// states are the ways the screen can stand, each with the keys that lead there.
func states() map[string]string {
	return map[string]string{
		"on the plan": "", "on the next way": "right", "at the end": "end", "asking": "l enter", "asking to buy": "right right right right right enter",
		"down the words": "right down", "turned": "end left left +",
	}
}

// Every key of every state does something or says why it does not.
func TestEveryKey(t *testing.T) { hands.EveryKey(t, states(), started(t), nil) }

// started plays on from one start: the ways are worked out once.
func started(t *testing.T) func(script string) *player {
	start := New(ours())
	return func(script string) *player { return hands.Play(t, start, script) }
}

func TestHelpNamesEveryKeyOnce(t *testing.T) { hands.KeysOnce(t, states(), started(t)) }

func TestRandomKeysAndSizesFit(t *testing.T) {
	all := []string{"left", "right", "up", "down", "home", "end", "enter", "esc", "y", "n", "+", "-", "m", "q", "x", "é", "漢"}
	themes := []theme.Theme{theme.New(theme.Options{Plain: true}), theme.New(theme.Options{Profile: termenv.ANSI256})}
	start := New(ours())
	rapid.Check(t, func(rt *rapid.T) {
		p := hands.Play(t, start, "")
		p.M.th = themes[rapid.IntRange(0, 1).Draw(rt, "theme")]
		p.AnyKeys(rt, all, 8)
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
	for _, key := range hands.Keys(strings.Repeat("right ", 11) + "+ - " + strings.Repeat("left down ", 11) + "end home m m") {
		p.Send(key)
		next := p.M.View(p.S)
		assert.LessOrEqual(t, hands.Sent(frame, next), 2048, "%s on %s", key, p.M.way().Key)
		most, frame = max(most, hands.Sent(frame, next)), next
	}
	t.Logf("%d bytes at most", most)
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
		p.Send(hands.Key(names[n%len(names)]))
		p.M.View(p.S)
	}
}

// taught answers otherwise when the log has taught something.
type taught struct {
	compare.Answerer
	lesson func(*compare.Figures)
}

func (a *taught) Answer(c compare.Case) (compare.Figures, error) {
	f, err := a.Answerer.Answer(c)
	if a.lesson != nil {
		a.lesson(&f)
	}
	return f, err
}

// What the log teaches may bring ways, or take them: the hand, and what is asked, stay
// with their way; of one that is gone nothing is asked.
func TestALessonLeavesTheHandOnItsWay(t *testing.T) {
	for _, gone := range []bool{false, true} {
		o, answers := ours(), &taught{Answerer: compare.NewOneWash(nil, compare.Yearly{})}
		o.Means = func() (compare.Answerer, compare.Yearly) { return answers, compare.Yearly{} }
		p := onto(hands.Play(t, New(o), ""), "double-tank").Keys("enter")
		at := p.M.hand
		answers.lesson = func(f *compare.Figures) {
			f.Plan.Bed.SoFar = 0 // new resin is no way then
			if gone {
				f.Plan.Bed.Resin = 9 * quantity.CubicFoot // nor is twice the tank
			}
		}
		p.Send(entry.Learned{})
		if gone {
			assert.False(t, p.M.ask)
			continue
		}
		assert.Less(t, p.M.hand, at)
		assert.Equal(t, "double-tank", p.Send(hands.Key("y")).(screen.Back).With.(Done).Way.Key)
	}
}
