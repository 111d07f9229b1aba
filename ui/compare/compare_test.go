package compare

import (
	"errors"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/compare"
	"washeve/ui/cells"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/report"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

var update = golden.Flag()

func TestFrames(t *testing.T) {
	start := New(ours())
	hands.Frames(t, *update, func(th theme.Theme) screen.Screen {
		m := hands.Play(t, start, "right right right").M
		m.th = th
		return m
	}, layout.Least(), layout.Size{W: 140, H: 40})
}

func TestTheHandGoesFromWayToWayAndThePlanStaysInSight(t *testing.T) {
	p := play(t, ours(), "")
	for range len(p.M.table.Ways) - 1 {
		p.Keys("right")
		head := p.Seen()
		assert.Contains(t, head, "as planned")
		assert.Contains(t, head, "›"+strings.Fields(p.M.way().Name)[0])
	}
	assert.Contains(t, p.Keys("right").Seen(), "Not now: this is the last way.")
	assert.Contains(t, p.Keys("home").Seen(), "›as planned")
	assert.Contains(t, p.Seen(), "way 1 of 12")
	assert.Contains(t, p.Keys("left").Seen(), "Not now: this is the first way.")
	assert.Contains(t, p.Keys("enter").Seen(), "Not now: this is the plan as it is; right goes to another way.")
	assert.Contains(t, p.Keys(strings.Repeat("down ", 9)).Seen(), "Not compared: DI last rinse only")
}

func TestAWayBecomesThePlan(t *testing.T) {
	p := onto(play(t, ours(), ""), "open-hose")
	done := p.Send(hands.Key("enter")).(screen.Back).With.(Done)
	assert.Equal(t, "open-hose", done.Way.Key)
	assert.Equal(t, "open hose", done.Way.Case.Wash.Stages[4].Sprayer)
	assert.Len(t, done.Way.Case.Rig.Sprayers, 3)
}

// The page opens with the hand on the plan as it is, where enter changes nothing.
func TestTheHandBeginsOnThePlan(t *testing.T) {
	p := play(t, ours(), "")
	assert.Contains(t, p.Seen(), "›as planned")
	assert.Contains(t, p.Seen(), "The plan as it is; right: another way.")
	assert.Nil(t, p.Send(hands.Key("enter")))
	assert.Contains(t, p.Seen(), "Not now: this is the plan as it is; right goes to another way.")
	assert.False(t, p.M.ask)
}

// A way that letters alone have come to is asked about: they may have been meant for a
// field.
func TestAWayThatLettersCameToIsAskedAbout(t *testing.T) {
	p := play(t, ours(), "l")
	assert.Nil(t, p.Send(hands.Key("enter")))
	assert.Contains(t, p.Seen(), "Make '"+p.M.way().Name+"' the plan? y or n")
	assert.Contains(t, p.Seen(), "y make it the plan")
	assert.Contains(t, p.Keys("n").Seen(), "Left as it was.")
	p.Keys("enter")
	assert.Equal(t, "di-all", p.Send(hands.Key("y")).(screen.Back).With.(Done).Way.Key)
}

// What the rig does not have is named in the question; what no edit can bring says so.
func TestAWayThatTakesMoreThanTheRigHas(t *testing.T) {
	p := onto(play(t, ours(), ""), "double-tank")
	assert.Nil(t, p.Send(hands.Key("enter")))
	assert.Contains(t, p.Seen(), "Put a tank of 1 ft3 into your rig, and plan with it? y or n")
	assert.Contains(t, p.Keys("n").Seen(), "Left as it was.")
	p.Keys("enter")
	done := p.Send(hands.Key("y")).(screen.Back).With.(Done)
	assert.Equal(t, "twice half-foot tank", done.Way.Case.Wash.Bed)
	for key, why := range map[string]string{"series": "a plan and its log know one tank", "new-resin": "new resin goes into the log", "salted": "salt goes into the log", "purified": "a rig has no membrane"} {
		onto(p, key)
		assert.Nil(t, p.Send(hands.Key("enter")), key)
		assert.Contains(t, p.Seen(), "Not now: "+why)
	}
}

func TestWaysAreTurned(t *testing.T) {
	p := onto(play(t, ours(), ""), "purified").Keys("+ + +")
	assert.Equal(t, "93% purified", p.M.way().Name)
	assert.Contains(t, p.Seen(), "›93%")
	onto(p, "drip").Keys("-")
	assert.Equal(t, "drip 90 s", strings.ReplaceAll(p.M.way().Name, "1.5 min", "90 s"))
	onto(p, "target").Keys("- - -")
	assert.Equal(t, "target 10 ppm", p.M.way().Name, "it stays in its place where it comes to the plan's own")
	p.Keys("-")
	assert.Equal(t, "target 5 ppm", p.M.way().Name)
	assert.Contains(t, p.Keys("-").Seen(), "Not now: it cannot be turned further.")
	assert.Contains(t, onto(p, "series").Keys("+").Seen(), "Not now: only a purified feed")
}

func TestWhereNumbersComeFrom(t *testing.T) {
	p := onto(play(t, ours(), ""), "series")
	page := ansi.Strip(p.Send(hands.Key("y")).(screen.Go).To.View(layout.Size{W: 100, H: 250}))
	for _, words := range []string{"a fill gives", "bed left before", "soft left after", "in the softener after the wash", "feed 316 ppm NaCl", "half of such beds have less", "Davis", "price of a fill", "$185.00", "not stated", "tanks 2", "PRACTICE", "MEMORY", "DI gallons"} {
		assert.Contains(t, page, words)
	}
}

// No label is cut.
func TestEveryLabelFitsItsColumn(t *testing.T) {
	for _, r := range play(t, ours(), "").M.table.Rows {
		assert.LessOrEqual(t, cells.Width(r.Label), report.CompareLabel, r.Label)
	}
}

func TestMetricTurnsAll(t *testing.T) {
	p := play(t, ours(), "m")
	assert.Contains(t, p.Seen(), "Shown in metric units.")
	assert.NotContains(t, p.Keys("left right").Seen(), " gal")
}

type broken struct{}

func (broken) Answer(compare.Case) (compare.Figures, error) {
	return compare.Figures{}, errors.New("there is no bed yet: state one, and the plan follows")
}

func TestWhereNothingCanBeCompared(t *testing.T) {
	o := ours()
	o.Means = func() (compare.Answerer, compare.Yearly) { return broken{}, compare.Yearly{} }
	p := play(t, o, "right enter y down +")
	assert.Contains(t, p.Seen(), "Nothing can be compared: there is no bed yet")
	assert.Equal(t, screen.Back{}, p.Send(hands.Key("esc")))
}

// Names from a file are shown, never obeyed, and never break a frame.
func TestOddNames(t *testing.T) {
	o := ours()
	o.Base.Rig.Sprayers = append([]model.Sprayer(nil), o.Base.Rig.Sprayers...)
	for _, name := range []string{"露营水枪喷头超长名字测试", "🚐🚐🚐🚐🚐🚐🚐 hose", "a\x1b[31mred", "averyveryverylongnamewithoutanyblanks", ""} {
		o.Base.Rig.Sprayers[1].Name = name
		p := play(t, o, "right right")
		assert.NotContains(t, p.M.View(p.S), "\x1b", name)
		p.Seen()
		p.S = layout.Size{W: 140, H: 40}
		p.Seen()
	}
}

func TestTheMousePutsTheHand(t *testing.T) {
	p := play(t, ours(), "")
	p.Send(tea.MouseMsg{Button: tea.MouseButtonLeft, Action: tea.MouseActionPress, X: 60, Y: 5})
	assert.Equal(t, 3, p.M.hand)
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelDown})
	assert.Equal(t, 4, p.M.hand)
	p.Send(tea.MouseMsg{Button: tea.MouseButtonLeft, Action: tea.MouseActionPress, X: 3, Y: 5})
	assert.Equal(t, 4, p.M.hand, "the labels are no way")
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	assert.Equal(t, 3, p.M.hand)
}

func TestLeavingHasNothingToLose(t *testing.T) {
	p := play(t, ours(), "")
	require.NoError(t, p.M.Leave())
	assert.False(t, p.M.Typing())
	assert.Equal(t, quantity.US, p.M.sys)
	assert.Equal(t, screen.Back{}, p.Send(hands.Key("esc")))
}

// A row that is unknown of every way, for the reason of the row above it, takes no line
// of the screen; the page of numbers has it all the same.
func TestARowThatSaysNothingMoreIsNotShown(t *testing.T) {
	o := ours()
	p := play(t, o, "")
	assert.Contains(t, p.Seen(), "fills a year")
	assert.NotContains(t, p.Seen(), "resin a year")
	page := ansi.Strip(p.Send(hands.Key("y")).(screen.Go).To.View(layout.Size{W: 100, H: 250}))
	assert.Contains(t, page, "resin a year")
	o.Means = func() (compare.Answerer, compare.Yearly) {
		yearly := compare.Yearly{Number: quantity.Some(20.0)}
		return compare.NewOneWash(nil, yearly), yearly
	}
	assert.Contains(t, play(t, o, "").Seen(), "resin a year")
}
