package bed

import (
	"fmt"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/form"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// states are the ways the screen can stand, each with the keys that lead there.
func states() map[string]string {
	return map[string]string{
		"at the start": "", "in the log": "down down down", "reading": "r", "number": "r 1 enter", "time": "r 1 enter w", "amount": "r 1 enter o 4", "wash": "w", "typing": "w enter",
		"kinds": "n", "searching": "/ 'x'", "found": "/ 'reading' enter", "asked": "x", "with something done": "r 3 enter y", "at the end": "end",
	}
}

// Every key of every state does something or says why it does not.
func TestEveryKey(t *testing.T) { hands.EveryKey(t, states(), season(t), still) }

// season plays on the season's log.
func season(t *testing.T) func(script string) *player {
	return func(script string) *player { return play(t, seasonOptions(t), script) }
}

// still tells the keys that may leave all as it is where the hand stands.
func still(b keys.Binding, state string) bool {
	return b.Does == form.Number || b.Does == up && (state == "wash" || state == "typing")
}

func TestHelpNamesEveryKeyOnce(t *testing.T) { hands.KeysOnce(t, states(), season(t)) }

func TestMouse(t *testing.T) {
	p := play(t, seasonOptions(t), "")
	at := p.M.rects().List
	p.Send(tea.MouseMsg{X: 4, Y: at.Y + 2, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	assert.Equal(t, 1, p.M.list.hand)
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelDown})
	assert.Equal(t, 2, p.M.list.hand)
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	p.Send(tea.MouseMsg{X: 400, Y: 400, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	assert.Equal(t, 1, p.M.list.hand)
	p.Send(tea.WindowSizeMsg{Width: 140, Height: 40})
	assert.Equal(t, 140, p.M.size.W)
}

func TestRandomKeysNeverPanicOrOverflow(t *testing.T) {
	log := seasonLog(t)
	all := []string{"up", "down", "left", "right", "enter", "esc", "tab", "shift+tab", "backspace", "delete", " ", "0", "1", "2", "5", ".", "é", "漢",
		"r", "y", "n", "f", "w", "s", "c", "x", "i", "u", "e", "m", "/", "j", "k", "g", "G", "pgup", "pgdown", "home", "end", "ctrl+u"}
	themes := []theme.Theme{theme.New(theme.Options{Plain: true}), theme.New(theme.Options{Profile: termenv.ANSI256})}
	rapid.Check(t, func(rt *rapid.T) {
		o := options(append(model.Log{}, log...))
		if rapid.Bool().Draw(rt, "empty") {
			o = options(nil)
		}
		o.Theme = themes[rapid.IntRange(0, 1).Draw(rt, "theme")]
		if rapid.Bool().Draw(rt, "disk full") {
			o.book().Fail = errFull
		}
		play(t, o, "").AnyKeys(rt, all, 25)
	})
}

func TestEscapesInTheLogAreShownNotSent(t *testing.T) {
	bad := model.Entry{ID: "zz", At: model.MomentOf(time.Date(2026, 9, 13, 0, 0, 0, 0, time.UTC)), Note: "\x1b]0;t\a", Body: &model.Refill{Bed: "half-foot tank", Lot: "\x1b[2J\u202e"}}
	p := play(t, options(model.Log{bad}), "")
	frame := p.M.View(layout.Size{W: 140, H: 40})
	for _, r := range []string{"\x1b", "\a", "\u202e"} {
		assert.NotContains(t, frame, r)
	}
	assert.Contains(t, frame, `\x1b[2J`)
}

// longLog is ten times ten years: a wash, a reading before and after it, over and
// over, with a change of resin now and then.
func longLog(n int) model.Log {
	log := make([]model.Entry, 0, n)
	start := time.Date(1995, 1, 1, 0, 0, 0, 0, time.UTC)
	for i := range n {
		e := model.Entry{ID: fmt.Sprintf("l%07d", i), At: model.MomentOf(start.Add(time.Duration(i) * 2 * time.Hour))}
		switch {
		case i%60 == 0:
			e.Body = &model.Refill{Bed: "half-foot tank", Resin: quantity.Some(0.5 * quantity.CubicFoot), Lot: "long"}
		case i%2 == 0:
			e.Body = &model.Sample{Point: model.AfterBed, Reading: quantity.Some(quantity.PPM(float64(i%60)/20, quantity.ScaleNaCl)), Place: "Juniper Flats", Bed: "half-foot tank", Flow: quantity.Some(1.3 * quantity.GPM), Flushed: model.Yes}
		default:
			e.Body = &model.WashDone{Place: "Juniper Flats", Bed: "half-foot tank", DI: quantity.Some(6 * quantity.Gallon), Flow: quantity.Some(1.3 * quantity.GPM)}
		}
		log = append(log, e)
	}
	return model.NewLog(log)
}

// A key costs what is seen, not what is in the log: neither Log nor the answer is
// asked for again.
func TestKeysDoNotWalkTheWholeLog(t *testing.T) {
	o := seasonOptions(t)
	asked := 0
	o.Answer = func() (planner.Plan, *planner.Past, error) {
		asked++
		return sample.Plan(), nil, nil
	}
	p := play(t, o, "down down / 'wash' enter down esc end home r 1 esc m e")
	assert.Equal(t, 1, asked)
	assert.Less(t, strings.Count(p.Seen(), "\n"), 24)
}

// What a key sends at 80x24, as the terminal library sends it: every changed
// line anew. A key that writes an entry may change every line of the answer.
func TestBytesPerKey(t *testing.T) {
	o := seasonOptions(t)
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	for script, most := range map[string]int{
		"down down pgdown end home": 2048, "/ 'wash' enter esc": 2048, "r 1 2 enter f": 2048, "w enter '30' enter esc": 2048, "n 3 esc": 2048, "m": 2048,
		"r 1 2 enter y": 3072,
	} {
		p := play(t, o, "")
		frame := p.M.View(p.S)
		for _, key := range hands.Keys(script) {
			p.Send(key)
			next := p.M.View(p.S)
			assert.LessOrEqual(t, hands.Sent(frame, next), most, "%s in %q", key, script)
			frame = next
		}
	}
}

func BenchmarkKeyToFrame(b *testing.B) {
	for _, n := range []int{62, 100_000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			o := options(longLog(n))
			o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
			past := planner.Recall(o.book().Kept[:min(n, 600)], o.Rig, o.Places)
			o.Answer = func() (planner.Plan, *planner.Past, error) { return sample.Plan(), past, nil }
			p := play(b, o, "end up up")
			presses := hands.Keys("up down pgup pgdown home end")
			i := 0
			for b.Loop() {
				p.Send(presses[i%len(presses)])
				p.M.View(p.S)
				i++
			}
		})
	}
}

// The first letter of a search looks through everything; the next ones only
// through what was found.
func BenchmarkSearch(b *testing.B) {
	o := options(longLog(100_000))
	o.Answer = func() (planner.Plan, *planner.Past, error) { return sample.Plan(), nil, nil }
	p := play(b, o, "/ 'a' backspace")
	presses := hands.Keys("'1.25 ppm' backspace backspace backspace backspace backspace backspace backspace backspace")
	i := 0
	for b.Loop() {
		p.Send(presses[i%len(presses)])
		p.M.View(p.S)
		i++
	}
}

func BenchmarkOpen(b *testing.B) {
	o := options(longLog(100_000))
	o.Answer = func() (planner.Plan, *planner.Past, error) { return sample.Plan(), nil, nil }
	for b.Loop() {
		New(o).View(layout.Size{W: 80, H: 24})
	}
}

// The first search makes the texts that are searched.
func BenchmarkFirstSearch(b *testing.B) {
	l := list{}.of(longLog(100_000))
	for b.Loop() {
		l.look("w")
	}
}
