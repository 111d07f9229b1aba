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
	golden.Check(t, *update, "small.txt", play(t, ours(), "").seen())
	p := play(t, ours(), "tab down")
	p.s = layout.Size{W: 140, H: 40}
	golden.Check(t, *update, "large.txt", p.seen())
	o := ours()
	o.Theme = theme.New(theme.Options{Plain: true})
	golden.Check(t, *update, "plain.txt", play(t, o, "down o").seen())
}

func TestFirstFrameStandsBeforeTheWays(t *testing.T) {
	p := &player{t: t, m: New(ours()), s: layout.Least()}
	assert.Contains(t, p.seen(), "being worked out")
	assert.Contains(t, p.seen(), "front")
}

// on puts the hand on a face.
func on(p *player, side model.Side) *player {
	i := slices.IndexFunc(p.m.share.Faces, func(f planner.FaceShare) bool { return f.Name == side })
	require.GreaterOrEqual(p.t, i, 0)
	p.m = p.m.onto(i)
	return p
}

func TestPins(t *testing.T) {
	p := play(t, ours(), "")
	order := p.m.share.Order()
	require.NotEmpty(t, order)
	first := order[0]
	on(p, first)
	p.send(hands.Key(" "))
	assert.Equal(t, []model.Side{first}, p.m.now.TowelFaces)
	assert.Contains(t, p.seen(), "pinned out: spared")
	assert.Contains(t, p.seen(), " out")
	f, _ := p.m.face()
	assert.Equal(t, first, f.Name, "the hand stays on its face")
	p.keys("i")
	assert.Equal(t, []model.Side{first}, p.m.now.DIFaces)
	assert.Empty(t, p.m.now.TowelFaces)
	p.keys("u")
	assert.Equal(t, []model.Side{first}, p.m.now.TowelFaces)
	p.keys("r")
	assert.Equal(t, []model.Side{first}, p.m.now.DIFaces)
	p.keys("x")
	assert.Empty(t, p.m.now.DIFaces)
	assert.Equal(t, order, p.m.share.Order())
}

func TestPinsThatDoNotFitSaySo(t *testing.T) {
	p := play(t, ours(), "")
	for _, side := range []model.Side{model.Left, model.Right, model.Front, model.Rear} {
		on(p, side)
		if f, _ := p.m.face(); f.Pin != split.In {
			p.keys("i")
		}
	}
	assert.Contains(t, p.seen(), "do not fit")
	assert.Contains(t, p.seen(), "short")
	p.keys("enter")
	assert.Contains(t, p.seen(), "Not now: the faces pinned in need more than the bed gives.")
}

func TestTakeAWay(t *testing.T) {
	p := play(t, ours(), "tab")
	w, ok := p.m.way()
	require.True(t, ok)
	require.Equal(t, planner.WaySplit, w.Code)
	done := p.send(hands.Key("enter")).(screen.Back).With.(Done)
	assert.Equal(t, "DI where it shows most", done.Taken)
	assert.NotEmpty(t, done.Wash.TowelFaces)
	for i, w := range p.m.ways {
		if w.Code == planner.WayResin {
			p.m = p.m.onto(len(p.m.share.Faces) + i)
		}
	}
	_, isChange := p.send(hands.Key("enter")).(screen.Back).With.(ChangeResin)
	assert.True(t, isChange)
	p.keys("down enter")
	assert.Contains(t, p.seen(), "Not now: ")
}

func TestBackKeepsThePins(t *testing.T) {
	p := play(t, ours(), "")
	assert.Nil(t, p.send(hands.Key("esc")).(screen.Back).With)
	assert.NoError(t, p.m.Leave())
	p.keys("o")
	assert.Error(t, p.m.Leave(), "the pins are saved where the program ends here")
	done := p.send(hands.Key("esc")).(screen.Back).With.(Done)
	assert.Len(t, done.Wash.TowelFaces, 1)
	assert.Empty(t, done.Taken)
}

func TestConfidence(t *testing.T) {
	p := play(t, ours(), "")
	sure := p.m.share.Gives
	p.keys("- - -")
	assert.Greater(t, p.m.share.Gives, sure)
	assert.Contains(t, p.seen(), "wanted: 60 % sure")
	p.keys("- -")
	assert.Contains(t, p.seen(), "less would be a guess")
	p.keys("+ + + + + + +")
	assert.Contains(t, p.seen(), "no bed is surer")
}

// Ways whose message met another page are asked for again with the next key.
func TestLostWaysAreAskedForAgain(t *testing.T) {
	p := &player{t: t, m: New(ours()), s: layout.Least()}
	next, cmd := p.m.Update(hands.Key("down"))
	p.m = next.(Model)
	require.NotNil(t, cmd)
	p.send(cmd())
	assert.NotContains(t, p.seen(), "being worked out")
	old := reckoned{turn: p.m.turn - 1}
	p.send(old)
	assert.NotEmpty(t, p.m.ways, "ways of an older share are not taken")
}

func TestWhyAndUnits(t *testing.T) {
	p := play(t, ours(), "m")
	assert.Contains(t, p.seen(), " L ")
	page := p.send(hands.Key("y")).(screen.Go).To
	text := ansi.Strip(page.View(layout.Size{W: 80, H: 120}))
	assert.Contains(t, text, "the bed gives")
	assert.Contains(t, text, "knapsack")
}

func TestNoPlanIsTold(t *testing.T) {
	o := ours()
	o.Rig.Vehicles[0] = model.Vehicle{Name: "Old Goose"}
	p := play(t, o, "down enter space o tab y u + -")
	assert.Contains(t, p.seen(), "has no length yet")
}

func TestEveryKeyIsListed(t *testing.T) {
	for _, k := range play(t, ours(), "").m.Keys() {
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
		p := &player{t: t, m: start, s: layout.Size{W: rapid.IntRange(80, 160).Draw(rt, "w"), H: rapid.IntRange(24, 60).Draw(rt, "h")}}
		for range 8 {
			p.send(hands.Key(rapid.SampledFrom(all).Draw(rt, "key")))
			assert.NotContains(t, p.m.View(p.s), "\x1b[2J")
			p.seen()
		}
		p.send(tea.MouseMsg{X: 3, Y: rapid.IntRange(0, 60).Draw(rt, "y"), Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
		p.seen()
	})
}

func TestNoInkNeeded(t *testing.T) {
	o := ours()
	coloured := o
	coloured.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	assert.Equal(t, play(t, o, "").seen(), play(t, coloured, "").seen(), "colour says nothing alone")
}

func TestMouse(t *testing.T) {
	p := play(t, ours(), "")
	r, _ := p.m.rects()
	p.send(tea.MouseMsg{X: 4, Y: r.Faces.Y + 2, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	assert.Equal(t, 1, p.m.hand)
	p.send(tea.MouseMsg{X: 4, Y: r.Ways.Y + 3, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	assert.Equal(t, len(p.m.share.Faces)+2, p.m.hand)
	p.send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	assert.Equal(t, len(p.m.share.Faces)+1, p.m.hand)
}

// BenchmarkPin is a key that pins a face, with its frame.
func BenchmarkPin(b *testing.B) {
	m := New(ours())
	for b.Loop() {
		next, _ := m.Update(hands.Key("o"))
		next.View(layout.Least())
	}
}
