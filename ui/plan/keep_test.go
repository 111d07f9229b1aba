package plan

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/form"
	"washeve/ui/internal/hands"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

func TestExampleIsKeptOnlyWhenAdopted(t *testing.T) {
	o := ours(t)
	o.Example = true
	kept := o.Keeper.(*book)
	p := play(t, o, "")
	assert.Contains(t, p.Seen(), "built-in example")
	assert.NoError(t, p.M.Leave(), "nothing was changed")
	p.Keys("p 2")
	assert.Zero(t, kept.saves)
	assert.ErrorContains(t, p.M.Leave(), "a makes it yours")
	p.Keys("a")
	assert.Equal(t, 1, kept.adopted)
	assert.Equal(t, "Sand Hollow", kept.wash.Place, "the change goes along")
	assert.NotContains(t, p.Seen(), "built-in example")
	assert.NoError(t, p.M.Leave())
	p.Keys("a")
	assert.Contains(t, p.Seen(), "this is your own already")
	p.Keys("u")
	assert.Equal(t, "Willow Bend", kept.wash.Place, "undo is saved as well")
}

// The days of the example are past some day: as a person's own it has the coming ones, a
// day that the person stated being kept.
func TestAnAdoptedExampleIsOfTheComingDays(t *testing.T) {
	o := ours(t)
	o.Example = true
	kept := o.Keeper.(*book)
	kept.was, kept.is = model.Date{Year: 2026, Month: 5, Day: 16}, model.Date{Year: 2026, Month: 11, Day: 28}
	o.Wash.Date = quantity.Some(kept.was)
	p := play(t, o, "p 2 a")
	assert.Contains(t, p.Says(), "It is yours now, on the coming days. Its weather is made up: d states yours.")
	assert.Equal(t, "2026-11-28", kept.wash.Date.Words())
	p.Keys("u")
	assert.Equal(t, "2026-11-28", kept.wash.Date.Words(), "what is taken back has that day, too")
	play(t, o, "d '2026-12-05' enter a")
	assert.Equal(t, "2026-12-05", kept.wash.Date.Words())
}

// A new user types four values, and has a plan that is saved. The planner is
// the real one.
func TestFromNothingByTheScreenAlone(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	p := play(t, o, "e")
	for _, words := range []string{"No plan yet", "vehicle length", "vehicle height", "bed resin volume", "water TDS"} {
		assert.Contains(t, p.Seen(), words)
	}
	p.Keys("'33' enter '11 ft 6 in' enter '0.5' enter '210' enter")
	seen := p.Seen()
	assert.NotContains(t, seen, "No plan yet")
	assert.Contains(t, seen, "DI water")
	assert.Contains(t, seen, "Saved.")
	kept := o.Keeper.(*book)
	assert.Equal(t, "33 ft", kept.rig.Vehicles[0].Length.Words())
	assert.Equal(t, "210 ppm", kept.places[0].TDS.Words(), "nobody said its scale")
	assert.NoError(t, p.M.Leave())
	p.Keys("u u u u u")
	assert.Contains(t, p.Seen(), "built-in example", "starting empty can be undone too")
}

func TestFailedSaveKeepsTheWorkAndSaysSo(t *testing.T) {
	o := ours(t)
	kept := o.Keeper.(*book)
	kept.fail = errors.New("no space left on the disk")
	p := play(t, o, "p 2")
	assert.Contains(t, p.Seen(), "no space left on the disk")
	assert.Contains(t, p.Seen(), "not saved")
	assert.Contains(t, p.Seen(), "Sand Hollow")
	assert.Error(t, p.M.Leave())
	kept.fail = nil
	p.Keys("s")
	assert.Contains(t, p.Seen(), "Saved.")
	assert.Equal(t, "Sand Hollow", kept.wash.Place)
	assert.NoError(t, p.M.Leave())
	p.Keys("s")
	assert.Contains(t, p.Seen(), "nothing is unsaved")
}

// stubborn is an error of saving that a yes settles.
type stubborn struct {
	kept *book
	out  bool // it is only about what was taken away
}

func (s stubborn) Error() string { return "places.toml would have to be written anew." }

func (s stubborn) Rewrite() (string, error) {
	s.kept.fail = nil
	return "places.toml.bak-1", nil
}

func (s stubborn) TakesOut() bool { return s.out }

// What is taken away here is asked for by what it is: the file loses nothing else.
func TestTakingOutOfAFileIsAskedPlainly(t *testing.T) {
	o := ours(t)
	kept := o.Keeper.(*book)
	kept.fail = fmt.Errorf("save: %w", stubborn{kept, true})
	p := play(t, o, "p 2")
	assert.Contains(t, p.Seen(), "Take it out of the file too, and keep a copy of the file as it was? y or n")
	assert.Contains(t, p.Keys("n").Says(), "Not saved. It is as you see it here; s tries again, u takes the change back.")
	p.Keys("s y")
	assert.NoError(t, p.M.Leave())
}

func TestRewritingAFileIsAsked(t *testing.T) {
	o := ours(t)
	kept := o.Keeper.(*book)
	kept.fail = fmt.Errorf("save: %w", stubborn{kept, false})
	p := play(t, o, "p 2")
	assert.Contains(t, p.Seen(), "Write it anew, and keep the old file aside? y or n")
	for _, word := range strings.Fields("Not saved: save: places.toml would have to be written anew.") {
		assert.Contains(t, ansi.Strip(p.M.View(layout.Size{W: 80, H: 24})), word, "whole in the smallest window")
	}
	p.Keys("n")
	assert.Contains(t, p.Seen(), "not saved")
	assert.Error(t, p.M.Leave())
	p.Keys("s y")
	assert.Contains(t, p.Seen(), "places.toml.bak-1")
	assert.NoError(t, p.M.Leave())
	assert.Equal(t, 1, kept.saves)
}

// states are the ways the screen can stand, each with the keys that lead there.
func states() map[string]string {
	return map[string]string{
		"at the start": "", "picking a wash": "L", "naming a wash": "N", "on a length": "down down down", "on a choice": "down down", "in the bed": "b down down", "in the water": "w down down",
		"in the gear": "g", "in the stages": "t", "in a stage": "t n enter down down", "naming": "b n", "picking what is new": "d esc n", "in the day": "d down", "in a shade": "d esc n enter down", "on a day that is not stated": "d", "a letter is a key": "d esc", "picking": "p", "refused": "down down 3", "typing": "down down down enter", "with history": "p 2 u",
	}
}

// Every key of every state does something or says why it does not, and what is
// seen fits the screen.
func TestEveryKey(t *testing.T) {
	for _, example := range []bool{false, true} {
		from := func(script string) *player {
			o, _ := shelved(t)
			o.Example = example
			return play(t, o, script)
		}
		hands.EveryKey(t, states(), from, still)
	}
}

// still tells the keys that may leave all as it is where the hand stands.
func still(b keys.Binding, _ string) bool {
	switch b.Does {
	case up, down, openStep, form.Number, form.AcceptUp, form.Accept, takeAway:
		return true
	}
	return false
}

func TestHelpNamesEveryKeyOnce(t *testing.T) {
	hands.KeysOnce(t, states(), func(script string) *player { return play(t, ours(t), script) })
}

func TestMouse(t *testing.T) {
	click := func(p *player, x, y int) {
		p.Send(tea.MouseMsg{X: x, Y: y, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	}
	p := play(t, ours(t), "")
	click(p, 5, 9)
	assert.Contains(t, p.Seen(), "› shape")
	click(p, 5, 9)
	assert.NotNil(t, p.M.picker, "a second click opens it")
	click(p, 5, 9)
	assert.Equal(t, "trailer", string(p.M.now.rig.Vehicles[0].Shape))
	lines := strings.Split(p.Seen(), "\n")
	for y, line := range lines {
		if strings.HasPrefix(line, "w Water") {
			click(p, 2, y)
			break
		}
	}
	assert.Equal(t, "Water", p.M.step().name)
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelDown})
	assert.Contains(t, p.Seen(), "› name")
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	click(p, 70, 5)
	click(p, 500, 500)
	p.Seen()
}

func TestRandomKeysNeverPanicOrOverflow(t *testing.T) {
	o, _ := shelved(t)
	all := []string{"up", "down", "left", "right", "enter", "esc", "tab", "shift+tab", "backspace", "delete", " ", "0", "1", "2", "5", ".", "f", "t", "x", "é", "漢",
		"v", "b", "w", "g", "d", "D", "p", "n", "X", "u", "r", "y", "m", "a", "e", "s", "ctrl+u", "ctrl+w", "home", "end", "N", "L", "q", "?"}
	themes := []theme.Theme{theme.New(theme.Options{Plain: true}), theme.New(theme.Options{Profile: termenv.ANSI256})}
	rapid.Check(t, func(rt *rapid.T) {
		o := o
		o.Example = rapid.Bool().Draw(rt, "example")
		o.Theme = themes[rapid.IntRange(0, 1).Draw(rt, "theme")]
		kept := &book{}
		if rapid.Bool().Draw(rt, "disk full") {
			kept.fail = stubborn{kept, false}
		}
		o.Keeper = kept
		play(t, o, "").AnyKeys(rt, all, 40)
	})
}

// What a key sends at 80x24, as the terminal library sends it: every changed
// line anew.
func TestBytesPerKey(t *testing.T) {
	o := ours(t)
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	for _, made := range []Make{pretend, planner.Make} {
		o.Make = made
		walked(t, o)
	}
}

func walked(t *testing.T, o Options) {
	for _, script := range []string{"down down down enter ctrl+u '33 ft 6 in' enter", "p down enter", "tab tab tab tab", "b w g t v", "e '33' enter", "u r m"} {
		p := play(t, o, "down down down '30 ft' enter")
		frame := p.M.View(p.S)
		for _, key := range hands.Keys(script) {
			p.Send(key)
			next := p.M.View(p.S)
			assert.LessOrEqual(t, hands.Sent(frame, next), 2048, "%s in %q", key, script)
			frame = next
		}
	}
}

func BenchmarkFirstFrame(b *testing.B) {
	o := ours(b)
	o.Make = planner.Make
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	for b.Loop() {
		New(o).View(layout.Size{W: 80, H: 24})
	}
}

func BenchmarkKeyToFrame(b *testing.B) {
	o := ours(b)
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	p := play(b, o, "down down down '30 ft'")
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
