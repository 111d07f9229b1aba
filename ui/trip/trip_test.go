package trip

import (
	"errors"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

var update = golden.Flag()

func TestFrames(t *testing.T) {
	hands.Frames(t, *update, func(th theme.Theme) screen.Screen {
		o, _ := ours()
		o.Theme = th
		return play(t, o, "down down down").M
	}, layout.Least(), layout.Size{W: 140, H: 40})
}

// From nothing to the order-by date.
func TestATripFromNothing(t *testing.T) {
	o, k := ours()
	k.trips = nil
	p := play(t, o, "")
	assert.Contains(t, p.Seen(), "There is no trip yet")
	p.Keys("enter")
	require.Len(t, k.trips, 1)
	assert.Contains(t, p.Seen(), "2026-05-15")
	assert.Contains(t, p.Seen(), "Order resin")
	// A stop: its day, and what is known of its water.
	p.Keys("end o '2026-05-29' tab down down enter").Keys("ctrl+u '150' enter '450' enter esc")
	s := k.trips[0].Stops[2]
	assert.Equal(t, "2026-05-29", s.Date.Or(model.Date{}).String())
	assert.Equal(t, "450 ppm NaCl", s.HighTDS.Words())
	p.Keys("n")
	assert.Len(t, k.trips[0].Washes, 3)
	assert.Contains(t, p.Seen(), "like the wash")
	p.Keys("esc X u")
	assert.Len(t, k.trips[0].Washes, 3)
}

func TestTheAnswerMovesAsTheHandTypes(t *testing.T) {
	o, _ := ours()
	p := play(t, o, "down down enter")
	before := p.M.plan.Washes[0].Chance
	p.Keys("down down down down down '9' '0'") // gallons of DI: no unit yet
	assert.Contains(t, p.Seen(), "90 gal")
	p.Keys("tab")
	assert.Less(t, float64(p.M.plan.Washes[0].Chance), float64(before))
	assert.Empty(t, p.M.now.Washes[0].Like, "another user of the bed is like no wash")
	p.Keys("u")
	assert.Equal(t, before, p.M.plan.Washes[0].Chance)
	p.Keys("r")
	assert.Less(t, float64(p.M.plan.Washes[0].Chance), float64(before))
}

// A new stop leaves the one under the hand its washes.
func TestANewStopComesAfterTheOneUnderTheHand(t *testing.T) {
	o, k := ours()
	p := play(t, o, "")
	for _, l := range p.M.lines() {
		if l.kind == stopLine {
			washed := p.M.stopPlan(l.index) != nil
			p := hands.Play(t, p.M.onto(stopLine, l.index), "o")
			stops := k.trips[0].Stops
			next := stops[len(stops)-1].Date.Or(model.Date{})
			assert.Positive(t, next.Compare(l.date.Or(model.Date{})), "stop %d", l.index)
			assert.Equal(t, washed, p.M.stopPlan(l.index) != nil, "stop %d keeps its washes", l.index)
		}
	}
	hands.Play(t, p.M.onto(stopLine, 0), "o")
	stops := k.trips[0].Stops
	assert.Equal(t, "2026-06-07", stops[len(stops)-1].Date.Words(), "the wash of the sixth is the last one there")
}

func TestTheListSaysHowMuchIsOutOfSight(t *testing.T) {
	o, _ := ours()
	p := play(t, o, "n esc n esc n esc n esc home")
	assert.Regexp(t, `\d+ more below`, p.Seen())
	assert.NotContains(t, p.Seen(), "more above")
	p.Keys("end")
	assert.Regexp(t, `\d+ more above`, p.Seen())
	assert.NotContains(t, p.Seen(), "more below")
	assert.Contains(t, p.Seen(), "b another trip   ? all keys")
}

func TestAdviceIsTaken(t *testing.T) {
	o, k := ours()
	p := play(t, o, "")
	assert.Contains(t, p.Seen(), "Change advised 06-09")
	p.Keys("t")
	require.Len(t, k.trips[0].Changes, 1)
	assert.Contains(t, p.Seen(), "Change planned 06-09")
	assert.Contains(t, p.Seen(), "R change of resin")
	p.Keys("> X")
	assert.Empty(t, k.trips[0].Changes)
}

func TestLinesMove(t *testing.T) {
	o, k := ours()
	p := play(t, o, "down down . . <")
	assert.Equal(t, "2026-06-01", k.trips[0].Washes[0].Date.Or(model.Date{}).String())
	l, _ := p.M.here()
	assert.Equal(t, line{washLine, 0, k.trips[0].Washes[0].Date}, l, "the hand goes with the line")
}

func TestWrongTextIsNotTaken(t *testing.T) {
	o, k := ours()
	p := play(t, o, "down enter enter ctrl+u 'soon' enter")
	assert.Contains(t, p.Seen(), "Not taken")
	assert.Equal(t, "2026-06-01", k.trips[0].Stops[0].Date.Or(model.Date{}).String())
	p.Keys("esc esc end up up up enter down down down enter ctrl+u '900 ppm NaCl' enter")
	assert.Contains(t, p.Seen(), "Not taken")
	assert.Contains(t, p.Seen(), "is under tds_low")
}

func TestWhatCannotBeKeptStaysHere(t *testing.T) {
	o, k := ours()
	k.fails = errors.New("the disk is full")
	p := play(t, o, "down down .")
	assert.Contains(t, p.Seen(), "Not saved, but still here: the disk is full")
	require.Error(t, p.M.Leave())
	k.fails = nil
	require.NoError(t, p.M.Leave())
	assert.Equal(t, "2026-06-07", k.trips[0].Washes[0].Date.Or(model.Date{}).String())
}

// asks is an error that a yes settles.
type asks struct {
	error
	k *memory
}

func (a asks) TakesOut() bool { return false }

func (a asks) Rewrite() (string, error) {
	a.k.fails = nil
	return "trips/june.toml.bak-1", nil
}

func TestAFileThatWouldLoseSomethingIsAskedFor(t *testing.T) {
	o, k := ours()
	k.fails = asks{errors.New("a comment would be lost"), k}
	p := play(t, o, "down down X")
	assert.Contains(t, p.Seen(), "Not saved: a comment would be lost")
	assert.Contains(t, p.Seen(), "Write it anew, and keep the old file aside? y or n")
	p.Keys("n")
	assert.Contains(t, p.Seen(), "Not saved. It is as you see it here; s tries again, u takes the change back.")
	p.Keys("s y")
	assert.Contains(t, p.Seen(), "trips/june.toml.bak-1")
	assert.Len(t, k.trips[0].Washes, 4)
}

func TestTheExampleIsKeptNowhere(t *testing.T) {
	o, _ := ours()
	o.Example = true
	p := play(t, o, "down down .")
	assert.Contains(t, p.Seen(), "kept nowhere")
	assert.ErrorContains(t, p.M.Leave(), "on the plan, a makes it yours first")
}

func TestWithoutAVehicle(t *testing.T) {
	o, _ := ours()
	o.Rig.Vehicles = nil
	assert.Contains(t, play(t, o, "").Seen(), "There is no answer yet: there is no vehicle yet")
}

func TestNamesCannotCommandTheTerminal(t *testing.T) {
	o, k := ours()
	k.trips[0].Name, k.trips[0].Stops[2].Name, k.trips[0].Washes[0].Name = "漢字の旅 🚐", "\x1b[2Jx", "🧽🧽🧽🧽🧽🧽🧽🧽🧽🧽🧽🧽🧽🧽🧽 long"
	p := play(t, o, "down down")
	frame := p.M.View(layout.Size{W: 80, H: 24})
	assert.NotContains(t, frame, "\x1b[2J")
	hands.Fits(t, ansi.Strip(frame), p.S)
}

func states() map[string]string {
	return map[string]string{
		"at the start": "", "a wash": "down down", "moved": "down down . u", "sheet": "down enter", "typing": "down enter enter",
		"refused": "enter down 3", "list": "down enter down down enter", "advice": "down down down down", "two trips": "b",
	}
}

// Every key of every state does something or says why it does not.
func TestEveryKey(t *testing.T) {
	values := func(b keys.Binding, _ string) bool { return strings.HasPrefix(b.Help().Desc, "value") }
	hands.EveryKey(t, states(), again(t), values)
}

// again plays on a trip of its own each time.
func again(t *testing.T) func(script string) *player {
	return func(script string) *player {
		o, _ := ours()
		return play(t, o, script)
	}
}

func TestHelpNamesEveryKeyOnce(t *testing.T) { hands.KeysOnce(t, states(), again(t)) }

func TestPagesOpen(t *testing.T) {
	o, _ := ours()
	for key, title := range map[string]string{"f": "The trip in full", "y": "What the trip rests on"} {
		p := play(t, o, "")
		msg, ok := p.Send(hands.Key(key)).(screen.Go)
		require.True(t, ok)
		assert.Equal(t, title, msg.To.Title())
		assert.NotEmpty(t, msg.To.View(layout.Least()))
	}
}

func TestRandomKeysAndSizesFit(t *testing.T) {
	all := []string{"left", "right", "up", "down", "end", "enter", "esc", "delete", ",", ".", "<", ">", "n", "o", "c", "t", "X", "u", "r", "b", "tab", "9", "-", "é", "漢", "backspace", "ctrl+u", "y"}
	themes := []theme.Theme{theme.New(theme.Options{Plain: true}), theme.New(theme.Options{Profile: termenv.ANSI256})}
	rapid.Check(t, func(rt *rapid.T) {
		o, k := ours()
		if rapid.Bool().Draw(rt, "none") {
			k.trips = nil
		}
		o.Theme = themes[rapid.IntRange(0, 1).Draw(rt, "theme")]
		play(t, o, "").AnyKeys(rt, all, 12)
	})
}

// What a key sends at 80x24, as the terminal library sends it: every changed line
// anew.
func TestBytesPerKey(t *testing.T) {
	o, _ := ours()
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	p := play(t, o, "")
	frame := p.M.View(p.S)
	most := 0
	for _, key := range hands.Keys("down down down up end home down enter down down esc down . . u r , t u '1'") {
		p.Send(key)
		next := p.M.View(p.S)
		if n := hands.Sent(frame, next); n > most {
			most = n
		}
		assert.LessOrEqual(t, hands.Sent(frame, next), 3072, "%s", key)
		frame = next
	}
	t.Logf("%d bytes at most", most)
}

// BenchmarkKey is a key that moves a wash by a day, to the frame that it gives.
func BenchmarkKey(b *testing.B) {
	o, _ := ours()
	p := play(b, o, "down down")
	for i := 0; b.Loop(); i++ {
		p.Send(hands.Key([]string{".", ","}[i%2]))
		_ = p.M.View(p.S)
	}
}

// A trip whose days are past says so where its order stood, and what to do; the built-in
// one is the same on any day.
func TestATripThatIsOver(t *testing.T) {
	o, _ := ours()
	p := play(t, o, "")
	assert.NotContains(t, p.Seen(), "over.")
	assert.Contains(t, p.Seen(), "Order resin")
	o.Today = model.Date{Year: 2026, Month: 11, Day: 27}
	p = play(t, o, "")
	assert.Contains(t, p.Seen(), "This trip is over. b begins another; , . < > move the line under the hand.")
	assert.NotContains(t, p.Seen(), "Order resin")
	told := strings.Join(p.M.told(), " ")
	assert.Contains(t, told, "This trip is over: nothing is to be ordered for it.")
	assert.Contains(t, told, "begin starts another trip")
	assert.Contains(t, told, "First at risk, as planned: 2026-06-")
	assert.Contains(t, told, "No change of resin was planned.")
	assert.Contains(t, told, "As planned, it took ")
	assert.Contains(t, told, "Resin that the washes used up, as planned: $")
	assert.NotRegexp(t, "Order resin|advised|To buy|Carry ", told)
	assert.Contains(t, p.Seen(), "Took, as planned: ")
	assert.NotRegexp(t, "Change advised|to buy|plans it", p.Seen())
	p.Keys("t")
	assert.Contains(t, p.Seen(), "Not now: no change of resin is advised")
	for _, n := range p.M.numbers()[:4] {
		assert.NotRegexp(t, `order by: 2026|advised|Order resin`, n.Name+": "+n.Value)
	}
	o.Example = true
	assert.Contains(t, play(t, o, "").Seen(), "Order resin by 2026-05-2")
}
