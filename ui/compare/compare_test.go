package compare

import (
	"errors"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/compare"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

var update = golden.Flag()

func TestFrames(t *testing.T) {
	themes := map[string]theme.Options{
		"dark": {Profile: termenv.ANSI256}, "light": {Profile: termenv.ANSI256, Ground: theme.Light},
		"nocolor": {Profile: termenv.Ascii}, "plain": {Plain: true},
	}
	sizes := map[string]layout.Size{"80x24": {W: 80, H: 24}, "140x40": {W: 140, H: 40}}
	start := New(ours())
	for themeName, opt := range themes {
		for sizeName, size := range sizes {
			p := from(t, start, "right right")
			p.m.th = theme.New(opt)
			frame := p.m.View(size)
			fits(t, frame, size)
			golden.Check(t, *update, themeName+"-"+sizeName+".txt", strings.ReplaceAll(frame, "\x1b", "^[")+"\n")
		}
	}
}

func TestColourIsOnlyAdded(t *testing.T) {
	o := ours()
	bare := New(o).View(layout.Size{W: 100, H: 30})
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	assert.Equal(t, bare, ansi.Strip(New(o).View(layout.Size{W: 100, H: 30})))
}

func TestTheHandGoesFromWayToWayAndThePlanStaysInSight(t *testing.T) {
	p := play(t, ours(), "")
	for range len(p.m.table.Ways) - 2 {
		p.keys("right")
		head := p.seen()
		assert.Contains(t, head, "as planned")
		assert.Contains(t, head, "›"+strings.Fields(p.m.way().Name)[0])
	}
	assert.Contains(t, p.keys("right").seen(), "Not now: this is the last way.")
	assert.Contains(t, p.keys("home").seen(), "›as planned")
	assert.Contains(t, p.seen(), "way 1 of 12")
	assert.Contains(t, p.keys("left").seen(), "Not now: this is the first way.")
	assert.Contains(t, p.keys("enter").seen(), "Not now: this is the plan.")
	assert.Contains(t, p.keys("down down down").seen(), "Not compared: DI last rinse only")
}

func TestAWayBecomesThePlan(t *testing.T) {
	p := play(t, ours(), "").onto("open-hose")
	back := p.send(hands.Key("enter")).(screen.Back)
	done := back.With.(Done)
	assert.Equal(t, "open-hose", done.Way.Key)
	assert.Equal(t, "open hose", done.Way.Case.Wash.Stages[4].Sprayer)
	assert.Len(t, done.Way.Case.Rig.Sprayers, 3)
}

// What the rig does not have is asked for; what no edit can bring says so.
func TestAWayThatTakesMoreThanTheRigHas(t *testing.T) {
	p := play(t, ours(), "").onto("double-tank")
	assert.Nil(t, p.send(hands.Key("enter")))
	assert.Contains(t, p.seen(), "Put a tank of 1 ft3 into your rig, and plan with it? y or n")
	assert.Contains(t, p.keys("n").seen(), "Left as it was.")
	p.keys("enter")
	done := p.send(hands.Key("y")).(screen.Back).With.(Done)
	assert.Equal(t, "twice half-foot tank", done.Way.Case.Wash.Bed)
	for key, why := range map[string]string{"series": "a plan and its log know one tank", "new-resin": "that goes into the log", "salted": "that goes into the log", "purified": "a rig has no membrane"} {
		p.onto(key)
		assert.Nil(t, p.send(hands.Key("enter")), key)
		assert.Contains(t, p.seen(), "Not now: "+why)
	}
}

func TestWaysAreTurned(t *testing.T) {
	p := play(t, ours(), "").onto("purified").keys("+ + +")
	assert.Equal(t, "93% purified", p.m.way().Name)
	assert.Contains(t, p.seen(), "›93%")
	p.onto("drip").keys("-")
	assert.Equal(t, "drip 90 s", strings.ReplaceAll(p.m.way().Name, "1.5 min", "90 s"))
	p.onto("target").keys("- - -")
	assert.Equal(t, "target 10 ppm", p.m.way().Name, "it stays in its place where it comes to the plan's own")
	p.keys("-")
	assert.Equal(t, "target 5 ppm", p.m.way().Name)
	assert.Contains(t, p.keys("-").seen(), "Not now: it cannot be turned further.")
	assert.Contains(t, p.onto("series").keys("+").seen(), "Not now: only a purified feed")
}

func TestWhereNumbersComeFrom(t *testing.T) {
	p := play(t, ours(), "").onto("series")
	page := ansi.Strip(p.send(hands.Key("y")).(screen.Go).To.View(layout.Size{W: 100, H: 250}))
	for _, words := range []string{"a fill gives", "Davis", "price of a fill", "$185.00", "not stated", "tanks 2", "PRACTICE", "MEMORY", "DI gallons"} {
		assert.Contains(t, page, words)
	}
}

func TestMetricTurnsAll(t *testing.T) {
	p := play(t, ours(), "m")
	assert.Contains(t, p.seen(), "Shown in metric units.")
	assert.NotContains(t, p.keys("left right").seen(), " gal")
}

type broken struct{}

func (broken) Answer(compare.Case) (compare.Figures, error) {
	return compare.Figures{}, errors.New("there is no bed yet: state one, and the plan follows")
}

func TestWhereNothingCanBeCompared(t *testing.T) {
	o := ours()
	o.Answer = broken{}
	p := play(t, o, "right enter y down +")
	assert.Contains(t, p.seen(), "Nothing can be compared: there is no bed yet")
	assert.Equal(t, screen.Back{}, p.send(hands.Key("esc")))
}

// Names from a file are shown, never obeyed, and never break a frame.
func TestOddNames(t *testing.T) {
	o := ours()
	o.Base.Rig.Sprayers = append([]model.Sprayer(nil), o.Base.Rig.Sprayers...)
	for _, name := range []string{"露营水枪喷头超长名字测试", "🚐🚐🚐🚐🚐🚐🚐 hose", "a\x1b[31mred", "averyveryverylongnamewithoutanyblanks", ""} {
		o.Base.Rig.Sprayers[1].Name = name
		p := play(t, o, "right right")
		assert.NotContains(t, p.m.View(p.s), "\x1b", name)
		p.seen()
		p.s = layout.Size{W: 140, H: 40}
		p.seen()
	}
}

func TestTheMousePutsTheHand(t *testing.T) {
	p := play(t, ours(), "")
	p.send(tea.MouseMsg{Button: tea.MouseButtonLeft, Action: tea.MouseActionPress, X: 60, Y: 5})
	assert.Equal(t, 3, p.m.hand)
	p.send(tea.MouseMsg{Button: tea.MouseButtonWheelDown})
	assert.Equal(t, 4, p.m.hand)
	p.send(tea.MouseMsg{Button: tea.MouseButtonLeft, Action: tea.MouseActionPress, X: 3, Y: 5})
	assert.Equal(t, 4, p.m.hand, "the labels are no way")
	p.send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	assert.Equal(t, 3, p.m.hand)
}

func TestLeavingHasNothingToLose(t *testing.T) {
	p := play(t, ours(), "")
	require.NoError(t, p.m.Leave())
	assert.False(t, p.m.Typing())
	assert.Equal(t, quantity.US, p.m.sys)
	assert.Equal(t, screen.Back{}, p.send(hands.Key("esc")))
}
