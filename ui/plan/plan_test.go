package plan

import (
	"errors"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/internal/golden"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

var update = golden.Flag()

func TestFrames(t *testing.T) {
	themes := map[string]theme.Options{
		"dark": {Profile: termenv.ANSI256}, "light": {Profile: termenv.ANSI256, Ground: theme.Light},
		"nocolor": {Profile: termenv.Ascii}, "plain": {Plain: true},
	}
	sizes := map[string]layout.Size{"80x24": {W: 80, H: 24}, "100x30": {W: 100, H: 30}, "140x40": {W: 140, H: 40}}
	for themeName, opt := range themes {
		for sizeName, size := range sizes {
			o := ours(t)
			o.Theme = theme.New(opt)
			m := New(o)
			frame := m.View(size)
			fits(t, frame, size)
			golden.Check(t, *update, themeName+"-"+sizeName+".txt", strings.ReplaceAll(frame, "\x1b", "^[")+"\n")
		}
	}
}

func TestColourIsOnlyAdded(t *testing.T) {
	o := ours(t)
	bare := New(o).View(layout.Size{W: 100, H: 30})
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	assert.Equal(t, bare, ansi.Strip(New(o).View(layout.Size{W: 100, H: 30})))
}

func TestFirstFrameHasTheWholeAnswer(t *testing.T) {
	seen := play(t, ours(t), "").seen()
	for _, words := range []string{"Tight: the bed may not last", "about 7 in 10", "DI water", "60 gal", "2.5 gpm", "bound by contact time", "24 s", "open hose", "spent 62%", "! An open hose"} {
		assert.Contains(t, seen, words)
	}
}

func TestPlaceTakesThreeKeys(t *testing.T) {
	for _, script := range []string{"p down enter", "p 2"} {
		o := ours(t)
		p := play(t, o, script)
		assert.Contains(t, p.seen(), "Old Goose at Sand Hollow", script)
		assert.Equal(t, "Sand Hollow", o.Keeper.(*book).wash.Place)
	}
}

func TestAnswerMovesAsTheHandTypes(t *testing.T) {
	p := play(t, ours(t), "down down down enter")
	assert.Contains(t, p.seen(), "DI water     60 gal")
	p.keys("ctrl+u '20'")
	assert.Contains(t, p.seen(), "needs its unit", "a bare number says what is missing")
	assert.Contains(t, p.seen(), "DI water     60 gal", "the last right value holds")
	p.keys("' ft'")
	assert.Contains(t, p.seen(), "29.6 gal", "before enter")
	p.keys("'x'")
	assert.Contains(t, p.seen(), "29.6 gal")
	assert.Contains(t, p.seen(), `has the unit "ftx"`)
	p.keys("esc")
	assert.Contains(t, p.seen(), "DI water     60 gal")
	assert.Contains(t, p.seen(), "40 ft 6 in")
}

func TestDigitOvertypesAndEnterTakesTheOffer(t *testing.T) {
	o := ours(t)
	p := play(t, o, "down down down '33' enter")
	assert.Contains(t, p.seen(), "33 ft")
	assert.Contains(t, p.seen(), "Saved.")
	assert.Equal(t, "33 ft", o.Keeper.(*book).rig.Vehicles[0].Length.Words())
}

func TestWrongTextIsDroppedAndSaid(t *testing.T) {
	p := play(t, ours(t), "down down down enter ctrl+u 'long' enter")
	assert.Contains(t, p.seen(), "Not taken:")
	assert.Contains(t, p.seen(), "40 ft 6 in")
}

func TestUndoAndRedo(t *testing.T) {
	p := play(t, ours(t), "u")
	assert.Contains(t, p.seen(), "Not now: there is nothing to undo.")
	first := p.m.now.rig.Vehicles[0].Length
	p.keys("down down down '20 ft' enter '21 ft' enter u u")
	assert.Equal(t, first, p.m.now.rig.Vehicles[0].Length)
	p.keys("r r r")
	assert.Equal(t, "21 ft", p.m.now.rig.Vehicles[0].Length.Words())
	assert.Contains(t, p.seen(), "there is nothing to redo")
}

func TestTakeAwayBringsTheAssumptionBack(t *testing.T) {
	p := play(t, ours(t), "down down down down down '8 ft' enter")
	assert.NotContains(t, p.seen(), "(8 ft 6 in)")
	p.keys("backspace")
	assert.Contains(t, p.seen(), "(8 ft 6 in) prac")
	p.keys("up backspace")
	assert.Contains(t, p.seen(), "height cannot be left out")
}

func TestChoices(t *testing.T) {
	p := play(t, ours(t), "down down right")
	assert.Equal(t, "trailer", string(p.m.now.rig.Vehicles[0].Shape))
	p.keys("left left")
	assert.Equal(t, "car", string(p.m.now.rig.Vehicles[0].Shape))
	p.keys("enter")
	assert.Contains(t, p.seen(), "not stated")
	p.keys("3")
	assert.Equal(t, "van", string(p.m.now.rig.Vehicles[0].Shape))
	p.keys("down right")
	assert.Contains(t, p.seen(), "Not now:")
}

func TestRenamingFollows(t *testing.T) {
	p := play(t, ours(t), "down enter ctrl+u 'Gander' enter")
	assert.Equal(t, "Gander", p.m.now.wash.Vehicle)
	p.keys("enter ctrl+u 'tin box' enter")
	assert.Contains(t, p.seen(), "name of another vehicle")
	assert.NotEqual(t, "tin box", p.m.now.rig.Vehicles[0].Name)
}

func TestNewAndTakenAway(t *testing.T) {
	for _, c := range []struct{ keys, section string }{
		{"v n", "vehicle"}, {"b n", "bed"}, {"w n", "place"}, {"g n", "softener"}, {"t n", "stage"}, {"p 3", "place"},
	} {
		p := play(t, ours(t), c.keys)
		before := len(ours(t).Rig.Vehicles)
		assert.True(t, p.m.Typing(), c.keys)
		p.keys("ctrl+u 'Fresh One' enter")
		assert.Contains(t, p.m.now.names(c.section), "Fresh One", c.keys)
		assert.Contains(t, p.seen(), "Fresh One")
		p.keys("u u")
		assert.NotContains(t, p.m.now.names(c.section), "Fresh One")
		assert.Len(t, p.m.now.rig.Vehicles, before)
	}
	p := play(t, ours(t), "X")
	assert.Equal(t, []string{"Tin Box"}, p.m.now.names("vehicle"))
	assert.Contains(t, p.seen(), "Taken away")
	p.keys("X")
	assert.Contains(t, p.seen(), "it is the only vehicle")
}

func TestStagesAreSpelledOutWhenOneIsAdded(t *testing.T) {
	p := play(t, ours(t), "t n esc")
	assert.Equal(t, []string{"pre-rinse", "contact wash", "final rinse", "stage 1"}, p.m.now.names("stage"))
	p.keys("u")
	assert.Empty(t, p.m.now.names("stage"))
}

func TestNewPlaceNeedsItsTDS(t *testing.T) {
	p := play(t, ours(t), "w n 'x' enter")
	assert.Contains(t, p.seen(), "needs TDS")
	assert.Contains(t, p.seen(), "› TDS", "the hand goes where something is needed")
	p.keys("'300' enter")
	assert.Contains(t, p.seen(), "300 ppm NaCl")
}

func TestWhyAndFull(t *testing.T) {
	p := play(t, ours(t), "")
	why := p.page("y")
	for _, words := range []string{"DI gallons  60 gal", "area x passes x flow / coverage rate", "area 484 ft2", "PRACTICE: a steady hand", "contact time  long enough", "What the plan rests on", "vehicle width: 8 ft 6 in", "What the formulas rest on"} {
		assert.Contains(t, why, words)
	}
	assert.Contains(t, p.page("f"), "TIGHT: THE BED MAY NOT LAST")
}

func TestUnitsTurnEverything(t *testing.T) {
	p := play(t, ours(t), "m")
	assert.Contains(t, p.seen(), "227 L")
	assert.Contains(t, p.seen(), "L/min")
	assert.NotContains(t, p.seen(), " gal")
	p.keys("m")
	assert.Equal(t, quantity.US, p.m.sys)
}

func TestPlanThatCannotBeMadeKeepsTheLastAnswer(t *testing.T) {
	o := ours(t)
	o.Make = func() Make {
		calls := 0
		real := o.Make
		return func(r model.Rig, p model.Places, w model.Wash) (planner.Plan, error) {
			if calls++; calls > 1 {
				return planner.Plan{}, errors.New("the pump is too weak")
			}
			return real(r, p, w)
		}
	}()
	p := play(t, o, "down down down '21 ft'")
	assert.Contains(t, p.seen(), "the pump is too weak")
	assert.Contains(t, p.seen(), "60 gal")
}

func TestEscapesInNamesAreShownNotSent(t *testing.T) {
	o := ours(t)
	o.Rig.Vehicles[0].Name, o.Wash.Vehicle = "\x1b[2Jbad\a", "\x1b[2Jbad\a"
	o.Wash.Name, o.Places[0].Name, o.Wash.Place = "\x1b]0;t\a", "a\nb\u202e", "a\nb\u202e"
	for _, script := range []string{"", "enter", "p", "down enter", "t", "w"} {
		p := play(t, o, script)
		frame := p.m.View(p.s)
		assert.NotContains(t, frame, "\x1b", script)
		assert.NotContains(t, frame, "\a", script)
		assert.NotContains(t, frame, "\u202e", script)
		p.seen()
	}
	require.Contains(t, play(t, o, "").seen(), `\x1b[2Jbad\a`)
}
