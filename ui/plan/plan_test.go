package plan

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

var update = golden.Flag()

func TestFrames(t *testing.T) {
	hands.Frames(t, *update, func(th theme.Theme) screen.Screen {
		o := ours(t)
		o.Theme = th
		return New(o)
	}, layout.Least(), layout.Size{W: 100, H: 30}, layout.Size{W: 140, H: 40})
}

func TestFirstFrameHasTheWholeAnswer(t *testing.T) {
	seen := play(t, ours(t), "").Seen()
	for _, words := range []string{"Tight: the bed may not last", "about 7 in 10", "DI water", "60 gal", "2.5 gpm", "bound by contact time", "24 s", "open hose", "spent 62%", "! Over the cap of 2.5 gpm"} {
		assert.Contains(t, seen, words)
	}
}

func TestANearlySpentBedShowsNoCap(t *testing.T) {
	o := ours(t)
	real := o.Make
	o.Make = func(r model.Rig, p model.Places, w model.Wash) (planner.Plan, error) {
		plan, err := real(r, p, w)
		plan.Cap.Flow, plan.Cap.BoundBy = 0.026*quantity.GPM, planner.ByExchange
		return plan, err
	}
	p := play(t, o, "")
	assert.Contains(t, p.Seen(), "no flow keeps this bed on spec")
	assert.Regexp(t, `jug +-`, p.Seen())
	assert.NotContains(t, p.Seen(), "0.026")
	assert.NotContains(t, p.Seen(), "x the cap")
}

func TestPlaceTakesThreeKeys(t *testing.T) {
	for _, script := range []string{"p down enter", "p 2"} {
		o := ours(t)
		p := play(t, o, script)
		assert.Contains(t, p.Seen(), "Old Goose at Sand Hollow", script)
		assert.Equal(t, "Sand Hollow", o.Keeper.(*book).wash.Place)
	}
}

func TestAnswerMovesAsTheHandTypes(t *testing.T) {
	p := play(t, ours(t), "down down down enter")
	assert.Contains(t, p.Seen(), "DI water     60 gal")
	p.Keys("ctrl+u '20'")
	assert.Contains(t, p.Seen(), "needs its unit", "a bare number says what is missing")
	assert.Contains(t, p.Seen(), "DI water     60 gal", "what stays holds")
	p.Keys("' ft'")
	assert.Contains(t, p.Seen(), "29.6 gal", "before enter")
	p.Keys("'x'")
	assert.Contains(t, p.Seen(), "DI water     60 gal", "of what is said to stay")
	assert.Contains(t, p.Seen(), `has the unit "ftx"`)
	p.Keys("esc")
	assert.Contains(t, p.Seen(), "DI water     60 gal")
	assert.Contains(t, p.Seen(), "40 ft 6 in")
}

func TestDigitOvertypesAndEnterTakesTheOffer(t *testing.T) {
	o := ours(t)
	p := play(t, o, "down down down '33' enter")
	assert.Contains(t, p.Seen(), "33 ft")
	assert.Contains(t, p.Seen(), "Saved.")
	assert.Equal(t, "33 ft", o.Keeper.(*book).rig.Vehicles[0].Length.Words())
}

func TestWrongTextIsDroppedAndSaid(t *testing.T) {
	p := play(t, ours(t), "down down down enter ctrl+u 'long' enter")
	assert.Contains(t, p.Seen(), "Not taken:")
	assert.Contains(t, p.Seen(), "40 ft 6 in")
}

func TestUndoAndRedo(t *testing.T) {
	p := play(t, ours(t), "u")
	assert.Contains(t, p.Seen(), "Not now: there is nothing to undo.")
	first := p.M.now.rig.Vehicles[0].Length
	p.Keys("down down down '20 ft' enter '21 ft' enter u u")
	assert.Equal(t, first, p.M.now.rig.Vehicles[0].Length)
	p.Keys("r r r")
	assert.Equal(t, "21 ft", p.M.now.rig.Vehicles[0].Length.Words())
	assert.Contains(t, p.Seen(), "there is nothing to redo")
}

// Where an undo leaves less than a plan needs, no verdict of before stands, on the screen or
// in words; a redo brings it back.
func TestNoPlanStandsForAWorkThatLacks(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	p := play(t, o, firstFacts+"enter")
	assert.Contains(t, p.Says(), "The bed lasts this wash")
	for range 4 {
		p.Keys("u")
		for _, words := range []string{"No plan yet", "It needs from you:", "water TDS, like"} {
			assert.Contains(t, p.Says(), words)
		}
		assert.NotContains(t, p.Says(), "The bed lasts")
		assert.Contains(t, p.M.Spoken().Tell()[0], "No plan yet. It needs:")
	}
	p.Keys("W")
	assert.Contains(t, p.Says(), "Not now:")
	assert.Contains(t, p.Keys("r r r r").Says(), "The bed lasts this wash")
	p.Keys("u w down down '210 ppm NaCl'")
	assert.Contains(t, p.Says(), "The bed lasts this wash", "while it is typed")
	assert.Contains(t, p.Keys("esc").Says(), "No plan yet", "what was let go of has no plan")
}

func TestTakeAwayBringsTheAssumptionBack(t *testing.T) {
	p := play(t, ours(t), "down down down down down '8 ft' enter")
	assert.NotContains(t, p.Seen(), "(8 ft 6 in)")
	p.Keys("up backspace")
	assert.Contains(t, p.Seen(), "(8 ft 6 in) prac")
	p.Keys("up backspace")
	assert.Contains(t, p.Seen(), "height cannot be left out")
}

func TestChoices(t *testing.T) {
	p := play(t, ours(t), "down down right")
	assert.Equal(t, "trailer", string(p.M.now.rig.Vehicles[0].Shape))
	p.Keys("left left")
	assert.Equal(t, "car", string(p.M.now.rig.Vehicles[0].Shape))
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "not stated")
	p.Keys("3")
	assert.Equal(t, "van", string(p.M.now.rig.Vehicles[0].Shape))
	p.Keys("down right")
	assert.Contains(t, p.Seen(), "Not now:")
}

func TestRenamingFollows(t *testing.T) {
	p := play(t, ours(t), "down enter ctrl+u 'Gander' enter")
	assert.Equal(t, "Gander", p.M.now.wash.Vehicle)
	p.Keys("enter ctrl+u 'tin box' enter")
	assert.Contains(t, p.Seen(), "name of another vehicle")
	assert.NotEqual(t, "tin box", p.M.now.rig.Vehicles[0].Name)
}

func TestNewAndTakenAway(t *testing.T) {
	for _, c := range []struct{ keys, section string }{
		{"v n", "vehicle"}, {"b n", "bed"}, {"w n", "place"}, {"g n", "softener"}, {"t n", "stage"}, {"p 3", "place"},
	} {
		p := play(t, ours(t), c.keys)
		before := len(ours(t).Rig.Vehicles)
		assert.True(t, p.M.Typing(), c.keys)
		p.Keys("ctrl+u 'Fresh One' enter")
		assert.Contains(t, p.M.now.names(c.section), "Fresh One", c.keys)
		assert.Contains(t, p.Seen(), "Fresh One")
		p.Keys("u u")
		assert.NotContains(t, p.M.now.names(c.section), "Fresh One")
		assert.Len(t, p.M.now.rig.Vehicles, before)
	}
	p := play(t, ours(t), "X")
	assert.Equal(t, []string{"Tin Box"}, p.M.now.names("vehicle"))
	assert.Contains(t, p.Seen(), "Taken away")
	p.Keys("X")
	assert.Contains(t, p.Seen(), "it is the only vehicle")
}

func TestStagesAreSpelledOutWhenOneIsAdded(t *testing.T) {
	p := play(t, ours(t), "t n enter")
	assert.Equal(t, []string{"pre-rinse", "contact wash", "final rinse", "stage 1"}, p.M.now.names("stage"))
	p.Keys("u")
	assert.Empty(t, p.M.now.names("stage"))
}

// A new thing is there once it has its name: esc before that leaves all as it was.
func TestANewThingIsThereOnceItIsNamed(t *testing.T) {
	for way, named := range map[string]string{"b n": "'spare' enter", "w n": "enter", "t down n": "'wheels' enter", "d n": "enter", "p 3": "'Dock' enter"} {
		o := ours(t)
		set(t, &o.Wash, map[string]string{"date": "2026-06-12"}) // else d and u are letters of one
		p := play(t, o, "")
		before := p.M.now
		p.Keys(way)
		assert.Regexp(t, "esc leaves? it out", p.Seen(), way)
		p.Keys("esc")
		assert.Equal(t, before, p.M.now, way)
		assert.Zero(t, o.Keeper.(*book).saves, "%s: nothing is kept", way)
		assert.Contains(t, p.Keys("u").Seen(), "there is nothing to undo", way)
		p.Keys(way + " " + named)
		assert.NotEqual(t, before, p.M.now, way)
		assert.Equal(t, 1, o.Keeper.(*book).saves, way)
		p.Keys("u")
		assert.Equal(t, before.stock(), p.M.now.stock(), "%s: it is one edit", way)
	}
	p := play(t, ours(t), "b n 'ana' enter")
	assert.Equal(t, "ana", p.M.now.wash.Bed, "what is typed takes the place of the name that is offered")
}

// What is typed behind a new name is what the item is, not another name.
func TestANewThingIsNamedOnce(t *testing.T) {
	p := play(t, ours(t), "g")
	_, p.M.hand, _ = p.M.now.stepOf(ref{section: "wash", key: "sprayer"})
	p.Keys("n 'Mist' enter")
	assert.Contains(t, p.Seen(), "› flow")
	p.Keys("'1.3' enter")
	assert.Equal(t, []string{"small pressure washer", "Mist"}, p.M.now.names("sprayer"))
	assert.Equal(t, "1.3 gpm", p.M.now.rig.Sprayers[1].Flow.Words())
	p = play(t, ours(t), "g n 'Spare' enter")
	assert.Contains(t, p.Seen(), "› resin volume", "what it needs goes first")
	p = play(t, ours(t), "t n 'Wheels' enter")
	assert.NotContains(t, p.Seen(), "› name", "else the next line")
}

// What the plan of the old softener was made with is nothing of the new one.
func TestANewSoftenerHasNothingOfTheOldOne(t *testing.T) {
	o := ours(t)
	o.Make = planner.Make
	set(t, &o.Rig.Softeners[0], map[string]string{"resin": "0.4 ft3", "gallons_so_far": "77 gal"})
	p := play(t, o, "g n 'Spare' enter")
	assert.Contains(t, p.Seen(), "› resin volume")
	assert.NotContains(t, p.Seen(), "0.4 ft3")
	assert.NotContains(t, p.Seen(), "77 gal")
	p.Keys("'0.6 ft3' enter")
	assert.Contains(t, p.Seen(), "(0 gal)", "what is assumed of it is shown as soon as it can be")
}

func TestNewPlaceNeedsItsTDS(t *testing.T) {
	p := play(t, ours(t), "w n 'x' enter")
	assert.Contains(t, p.Seen(), "needs TDS")
	assert.Contains(t, p.Seen(), "› TDS", "the hand goes where something is needed")
	p.Keys("'300' enter")
	assert.Contains(t, p.Seen(), "300 ppm")
}

func TestWhyAndFull(t *testing.T) {
	p := play(t, ours(t), "")
	why := p.Page("y")
	for _, words := range []string{"DI gallons  60 gal", "area x passes x flow / coverage rate", "area 484 ft2", "PRACTICE: a steady hand", "contact time  long enough", "What the plan rests on", "vehicle width: 8 ft 6 in", "What the formulas rest on"} {
		assert.Contains(t, why, words)
	}
	assert.Contains(t, p.Page("f"), "TIGHT: THE BED MAY NOT LAST")
}

func TestUnitsTurnEverything(t *testing.T) {
	p := play(t, ours(t), "m")
	assert.Contains(t, p.Seen(), "227 L")
	assert.Contains(t, p.Seen(), "L/min")
	assert.NotContains(t, p.Seen(), " gal")
	p.Keys("m")
	assert.Equal(t, quantity.US, p.M.sys)
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
	assert.Contains(t, p.Seen(), "the pump is too weak")
	assert.Contains(t, p.Seen(), "60 gal")
}

func TestEscapesInNamesAreShownNotSent(t *testing.T) {
	o := ours(t)
	o.Rig.Vehicles[0].Name, o.Wash.Vehicle = "\x1b[2Jbad\a", "\x1b[2Jbad\a"
	o.Wash.Name, o.Places[0].Name, o.Wash.Place = "\x1b]0;t\a", "a\nb\u202e", "a\nb\u202e"
	for _, script := range []string{"", "enter", "p", "down enter", "t", "w"} {
		p := play(t, o, script)
		frame := p.M.View(p.S)
		assert.NotContains(t, frame, "\x1b", script)
		assert.NotContains(t, frame, "\a", script)
		assert.NotContains(t, frame, "\u202e", script)
		p.Seen()
	}
	require.Contains(t, play(t, o, "").Seen(), `\x1b[2Jbad\a`)
}
