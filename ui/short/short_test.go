package short

import (
	"slices"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/split"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

var update = golden.Flag()

func TestFrames(t *testing.T) {
	golden.Check(t, *update, "small.txt", play(t, ours(), "").Seen())
	p := play(t, ours(), "tab down")
	p.S = layout.Size{W: 140, H: 40}
	golden.Check(t, *update, "large.txt", p.Seen())
	o := ours()
	o.Theme = theme.New(theme.Options{Plain: true})
	golden.Check(t, *update, "plain.txt", play(t, o, "down o").Seen())
}

func TestFirstFrameStandsBeforeTheWays(t *testing.T) {
	p := unanswered(t, New(ours()))
	assert.Contains(t, p.Seen(), "being worked out")
	assert.Contains(t, p.Seen(), "front")
}

// on puts the hand on a face.
func on(p *player, side model.Side) *player {
	i := slices.IndexFunc(p.M.share.Faces, func(f planner.FaceShare) bool { return f.Name == side })
	require.GreaterOrEqual(p.T, i, 0)
	p.M = p.M.onto(i)
	return p
}

func TestPins(t *testing.T) {
	p := play(t, ours(), "")
	order := p.M.share.Order()
	require.NotEmpty(t, order)
	first := order[0]
	on(p, first)
	p.Send(hands.Key(" "))
	assert.Equal(t, []model.Side{first}, p.M.now.TowelFaces)
	assert.Contains(t, p.Seen(), "pinned out: spared")
	assert.Contains(t, p.Seen(), " out")
	f, _ := p.M.face()
	assert.Equal(t, first, f.Name, "the hand stays on its face")
	p.Keys("i")
	assert.Equal(t, []model.Side{first}, p.M.now.DIFaces)
	assert.Empty(t, p.M.now.TowelFaces)
	p.Keys("u")
	assert.Equal(t, []model.Side{first}, p.M.now.TowelFaces)
	p.Keys("r")
	assert.Equal(t, []model.Side{first}, p.M.now.DIFaces)
	p.Keys("x")
	assert.Empty(t, p.M.now.DIFaces)
	assert.Equal(t, order, p.M.share.Order())
}

// A bed that lasts since nothing is asked of it is not called lasting.
func TestAShareOfNothingSaysSo(t *testing.T) {
	o := ours()
	o.Rig.Beds[0].Resin = quantity.Some(0.02 * quantity.CubicFoot)
	p := play(t, o, "")
	assert.Empty(t, p.M.share.Order())
	assert.Contains(t, p.Seen(), "With this share no face gets DI water")
	assert.Contains(t, p.M.shareTold(), "With this share no face gets DI water.")
	assert.NotContains(t, p.Seen(), "lasts this wash")
}

func TestPinsThatDoNotFitSaySo(t *testing.T) {
	p := play(t, ours(), "")
	for _, side := range []model.Side{model.Left, model.Right, model.Front, model.Rear} {
		on(p, side)
		if f, _ := p.M.face(); f.Pin != split.In {
			p.Keys("i")
		}
	}
	assert.Contains(t, p.Seen(), "do not fit")
	assert.Contains(t, p.Seen(), "short")
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "Not now: the faces pinned in need more than the bed gives.")
}

func TestTakeAWay(t *testing.T) {
	p := play(t, ours(), "tab")
	w, ok := p.M.way()
	require.True(t, ok)
	require.Equal(t, planner.WaySplit, w.Code)
	done := p.Send(hands.Key("enter")).(screen.Back).With.(Done)
	assert.Equal(t, "DI where it shows most", done.Taken)
	assert.NotEmpty(t, done.Wash.TowelFaces)
	for i, w := range p.M.ways {
		if w.Code == planner.WayResin {
			p.M = p.M.onto(len(p.M.share.Faces) + i)
		}
	}
	_, isChange := p.Send(hands.Key("enter")).(screen.Back).With.(ChangeResin)
	assert.True(t, isChange)
	p.Keys("down enter")
	assert.Contains(t, p.Seen(), "Not now: ")
}

// Undo and redo say which faces they pin, which they free, and with what confidence the water
// is shared out again.
func TestUndoSaysWhichPinItTookBack(t *testing.T) {
	p := play(t, ours(), "")
	on(p, model.Left).Keys("o i")
	assert.Contains(t, p.Keys("u").Seen(), "Undone: left pinned out again.")
	assert.Contains(t, p.Keys("u").Seen(), "Undone: left free again.")
	assert.Contains(t, p.Keys("r").Seen(), "Done again: left pinned out.")
	on(p, model.Rear).Keys("i")
	on(p, model.Front).Keys("i x u")
	assert.Contains(t, p.Seen(), "Undone: front, rear pinned in, left pinned out again.")
	assert.Contains(t, p.Keys("- u").Seen(), "Undone: shared out with 90 % confidence again.")
	assert.Contains(t, p.Keys("r").Seen(), "Done again: shared out with 80 % confidence.")
}

func TestBackKeepsThePins(t *testing.T) {
	p := play(t, ours(), "")
	assert.Nil(t, p.Send(hands.Key("esc")).(screen.Back).With)
	assert.NoError(t, p.M.Leave())
	p.Keys("o")
	assert.Error(t, p.M.Leave(), "the pins are saved where the program ends here")
	done := p.Send(hands.Key("esc")).(screen.Back).With.(Done)
	assert.Len(t, done.Wash.TowelFaces, 1)
	assert.Empty(t, done.Taken)
}

func TestConfidence(t *testing.T) {
	p := play(t, ours(), "")
	sure := p.M.share.Gives
	p.Keys("- - -")
	assert.Greater(t, p.M.share.Gives, sure)
	assert.Contains(t, p.Seen(), "wanted: 60 % sure")
	p.Keys("- -")
	assert.Contains(t, p.Seen(), "less would be a guess")
	p.Keys("+ + + + + + +")
	assert.Contains(t, p.Seen(), "no bed is surer")
}

// Ways whose message met another page are asked for again with the next key.
func TestLostWaysAreAskedForAgain(t *testing.T) {
	p := unanswered(t, New(ours()))
	next, cmd := p.M.Update(hands.Key("down"))
	p.M = next.(Model)
	require.NotNil(t, cmd)
	p.Send(cmd())
	assert.NotContains(t, p.Seen(), "being worked out")
	old := reckoned{turn: p.M.turn - 1}
	p.Send(old)
	assert.NotEmpty(t, p.M.ways, "ways of an older share are not taken")
}

func TestWhyAndUnits(t *testing.T) {
	p := play(t, ours(), "m")
	assert.Contains(t, p.Seen(), " L ")
	page := p.Send(hands.Key("y")).(screen.Go).To
	text := ansi.Strip(page.View(layout.Size{W: 80, H: 120}))
	assert.Contains(t, text, "the bed gives")
	assert.Contains(t, text, "knapsack")
}

func TestNoPlanIsTold(t *testing.T) {
	o := ours()
	o.Rig.Vehicles[0] = model.Vehicle{Name: "Old Goose"}
	p := play(t, o, "down enter space o tab y u + -")
	assert.Contains(t, p.Seen(), "has no length yet")
}

func TestEveryKeyIsListed(t *testing.T) {
	for _, k := range play(t, ours(), "").M.Keys() {
		assert.NotEmpty(t, k.Help().Key)
		assert.NotEmpty(t, k.Group)
	}
}

// Any keys on any size of screen keep the frame whole.
func TestAnyKeys(t *testing.T) {
	o := ours()
	o.Wash.Name = "洗車 🚐 \x1b[2J"
	start := New(o)
	n, checks := 0, 12
	if testing.Short() {
		checks = 3
	}
	all := []string{"up", "down", "tab", " ", "i", "o", "x", "+", "-", "u", "r", "m", "enter", "z", "pgdown"}
	rapid.Check(t, func(rt *rapid.T) {
		if n++; n > checks {
			return
		}
		p := unanswered(t, start)
		p.S = layout.Size{W: rapid.IntRange(80, 160).Draw(rt, "w"), H: rapid.IntRange(24, 60).Draw(rt, "h")}
		for range 8 {
			p.Send(hands.Key(rapid.SampledFrom(all).Draw(rt, "key")))
			assert.NotContains(t, p.M.View(p.S), "\x1b[2J")
			p.Seen()
		}
		p.Send(tea.MouseMsg{X: 3, Y: rapid.IntRange(0, 60).Draw(rt, "y"), Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
		p.Seen()
	})
}

func TestNoInkNeeded(t *testing.T) {
	o := ours()
	coloured := o
	coloured.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	assert.Equal(t, play(t, o, "").Seen(), play(t, coloured, "").Seen(), "colour says nothing alone")
}

func TestMouse(t *testing.T) {
	p := play(t, ours(), "")
	r, _ := p.M.rects()
	p.Send(tea.MouseMsg{X: 4, Y: r.Faces.Y + 2, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	assert.Equal(t, 1, p.M.hand)
	p.Send(tea.MouseMsg{X: 4, Y: r.Ways.Y + 3, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	assert.Equal(t, len(p.M.share.Faces)+2, p.M.hand)
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	assert.Equal(t, len(p.M.share.Faces)+1, p.M.hand)
}

// BenchmarkPin is a key that pins a face, with its frame.
func BenchmarkPin(b *testing.B) {
	m := New(ours())
	for b.Loop() {
		next, _ := m.Update(hands.Key("o"))
		next.View(layout.Least())
	}
}
