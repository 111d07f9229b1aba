package rig

import (
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

var update = golden.Flag()

func TestFrames(t *testing.T) {
	hands.Frames(t, *update, func(th theme.Theme) screen.Screen {
		o, _ := ours()
		o.Theme = th
		return play(t, o, "down enter down down").M
	}, layout.Least(), layout.Size{W: 140, H: 40})
}

// The ways through the screen, as they are seen.
func TestScenes(t *testing.T) {
	for name, script := range map[string]string{
		"add":      "n 'Tin Box'",
		"added":    "n 'Tin Box' enter",
		"wrong":    "enter down down '400'",
		"copied":   "c 'Marigold II' enter",
		"renamed":  "e 'Old Goose' enter",
		"asked":    "X",
		"clash":    "pgdown pgdown pgdown down e ctrl+u 'Small pressure WASHER'",
		"defaults": "end enter down down enter",
		"nothing":  "pgdown pgdown X",
	} {
		o, _ := ours()
		p := play(t, o, script)
		if name == "asked" {
			p = play(t, o, "c 'Tin Box' enter esc up X")
		}
		golden.Check(t, *update, "scene-"+name+".txt", p.Seen()+"\n")
	}
}

func TestPlainIsASCII(t *testing.T) {
	o, _ := ours()
	o.Theme = theme.New(theme.Options{Plain: true})
	for _, script := range []string{"", "n", "enter down '400'", "pgdown enter down down down enter", "X"} {
		for _, r := range play(t, o, script).Seen() {
			assert.Less(t, r, rune(0x7f), script)
		}
	}
}

func TestASecondVehicleIsAddedAndUsed(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "n 'Tin Box' enter")
	assert.Contains(t, p.Seen(), "› length                  needed", "the hand is on what is lacking")
	p.Keys("'24' enter")
	assert.Contains(t, p.Seen(), "› height                  needed", "and goes on to what else is")
	p.Keys("'10 ft' enter")
	assert.Contains(t, p.Seen(), "(8 ft 6 in) PUBLISHED", "what is assumed of it is shown as soon as it can be")
	p.Keys("t")
	assert.Contains(t, p.Says(), "● Tin Box 24 ft")
	assert.Equal(t, "Tin Box", kept.kept.Wash.Vehicle)
	assert.Len(t, kept.kept.Rig.Vehicles, 2)
	assert.Equal(t, "Tin Box", done(p.Keys("esc"), "esc").Stock.Wash.Vehicle)
}

// A position that is pasted on one line fills both, and one undo takes both back.
func TestAPastedPositionFillsBothLines(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "end pgup enter")
	for _, f, _ := p.M.target(); f.Key != model.LatitudeKey; _, f, _ = p.M.target() {
		hand := p.M.hand
		p.Keys("down")
		require.NotEqual(t, hand, p.M.hand, "there is a line for the latitude")
	}
	was := p.M.now.Clone()
	p.Keys("enter ctrl+u").Send(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("33° 27' N, 112° 4' W"), Paste: true})
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "33° 27' N, 112° 4' W")
	got := (*kept.kept.Places)[p.M.at.Index]
	assert.Equal(t, "33° 27' N", got.Latitude.Words())
	assert.Equal(t, "112° 4' W", got.Longitude.Words())
	p.Keys("u")
	assert.Equal(t, *was.Places, *kept.kept.Places)
}

// What is typed behind a new name is what the item is, not another name.
func TestANewItemIsNamedOnce(t *testing.T) {
	for script, want := range map[string]string{
		"pgdown pgdown pgdown n 'Mist' enter '1.3' enter":          "pressure",
		"pgdown pgdown pgdown pgdown n 'Red' enter '5/8 in' enter": "length",
		"pgdown n 'Spare' enter '0.4 ft3' enter":                   "gallons so far",
		"c 'Marigold II' enter '24 ft' enter":                      "length",
		"pgdown pgdown pgdown pgdown pgdown n 'Red' enter 2 enter": "scale",
	} {
		o, _ := ours()
		p := play(t, o, script)
		assert.Regexp(t, "› "+want+" ", p.Seen(), script)
		assert.NotContains(t, []string{"1.3", "5/8 in", "0.4 ft3", "24 ft"}, p.M.name(), script)
	}
}

// What a wash with the other softener takes is nothing of the new one.
func TestANewSoftenerHasNothingOfTheOldOne(t *testing.T) {
	o, _ := ours()
	s := o.Stock.Rig.Softeners
	s[0].Resin, s[0].SoFar = quantity.Some(0.4*quantity.CubicFoot), quantity.Some(77*quantity.Gallon)
	p := play(t, o, "pgdown pgdown n 'Spare' enter")
	assert.Contains(t, p.Seen(), "› resin volume            needed")
	assert.NotContains(t, p.Seen(), "(0.4 ft3)")
	assert.NotContains(t, p.Seen(), "(77 gal)")
	p.Keys("'0.6 ft3' enter")
	assert.Contains(t, p.Seen(), "(0 gal)")
}

func TestANewItemIsThereOnlyWithItsName(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "pgdown n")
	assert.Contains(t, p.Seen(), "bed 2")
	p.Keys("'spare' esc")
	assert.NotContains(t, p.Seen(), "spare")
	assert.Contains(t, p.Seen(), "› ● half-foot tank")
	assert.Zero(t, kept.saves)
	p.Keys("n enter")
	assert.Equal(t, "bed 2", kept.kept.Rig.Beds[1].Name)
}

func TestEveryKindGrows(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "")
	for _, k := range kinds()[:7] {
		n := len(p.M.now.Names(k.section))
		p.Keys("n 'Ω 新' enter esc c '" + "second' enter esc pgdown")
		assert.Len(t, kept.kept.Names(k.section), n+2, k.section)
	}
	p.Keys("u u u u u u u u u u u u u u")
	assert.Equal(t, *o.Stock.Rig, *kept.kept.Rig)
	p.Keys("r r")
	assert.Len(t, kept.kept.Rig.Vehicles, 3)
}

func TestACopiedTankIsNotUsedUp(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "pgdown c 'spare' enter")
	bed := kept.kept.Rig.Beds[1]
	assert.Equal(t, "0.5 ft3", bed.Resin.Words())
	assert.False(t, bed.SoFar.Given())
	p.Keys("pgdown c 'second' enter")
	assert.False(t, kept.kept.Rig.Softeners[1].SoFar.Given())
	assert.True(t, kept.kept.Rig.Softeners[0].SoFar.Given())
}

func TestACopiedVehicleHasItsOwnFaces(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "c 'twin' enter f 1 '300 ft2' enter")
	assert.Len(t, kept.kept.Rig.Vehicles[0].Faces, 1)
	assert.Len(t, kept.kept.Rig.Vehicles[1].Faces, 2)
	assert.Equal(t, "300 ft2", kept.kept.Rig.Vehicles[1].Faces[1].Area.Words())
	assert.Contains(t, p.Seen(), "Face: roof")
	p.Keys("X")
	assert.Contains(t, p.Seen(), "face roof is taken away")
	assert.Len(t, kept.kept.Rig.Vehicles[1].Faces, 1)
	p.Keys("u")
	assert.Len(t, kept.kept.Rig.Vehicles[1].Faces, 2)
}

func TestRenamingFollowsInEveryWash(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "e ctrl+u 'Old Goose' enter")
	assert.Contains(t, p.Says(), "Renamed, and so in the defaults, the next wash, washes/may.toml and washes/june.toml.")
	assert.Contains(t, p.Says(), `The log keeps the old name in 1 entry: they count for "Marigold" alone.`)
	others := *kept.kept.Others
	assert.Equal(t, "Old Goose", others[0].Wash.Vehicle)
	assert.Equal(t, "Old Goose", others[1].Wash.Vehicle)
	assert.Equal(t, "marigold", (*o.Stock.Others)[1].Wash.Vehicle, "what was handed in is as it was")
	p.Keys("u")
	assert.Same(t, (*o.Stock.Others)[0], (*kept.kept.Others)[0], "undo brings the washes back")
}

func TestTakingOutAsksOnlyWhereSomethingNamesIt(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "pgdown pgdown pgdown X")
	assert.Contains(t, p.Says(), "small pressure washer is named in the defaults and the next wash. Take it out, and leave that to the default? y or n")
	p.Keys("n")
	assert.Zero(t, kept.saves)
	p.Keys("X y")
	assert.Len(t, kept.kept.Rig.Sprayers, 1)
	for _, s := range kept.kept.Wash.Stages {
		assert.NotEqual(t, "small pressure washer", s.Sprayer)
	}
	p.Keys("pgdown X")
	assert.Contains(t, p.Says(), "supply hose is taken out; u brings it back.")
	p.Keys("u u")
	assert.Equal(t, *o.Stock.Rig, *kept.kept.Rig)
	assert.Equal(t, *o.Stock.Wash, *kept.kept.Wash)
}

func TestTheOnlyOneStays(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "X")
	assert.Contains(t, p.Seen(), "Not now: it is the only vehicle.")
	p.Keys("pgdown pgdown X y")
	assert.Empty(t, kept.kept.Rig.Softeners, "a softener may be missing")
	assert.Contains(t, p.Seen(), "none yet")
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "Not now: there is none yet; n makes one.")
	p.Keys("n enter")
	assert.Len(t, kept.kept.Rig.Softeners, 1)
}

func TestWrongInputSaysWhatWouldBeRight(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "enter down down '400 ft'")
	assert.Contains(t, p.Says(), "is outside 5 ft to 75 ft; write it like 40 ft 6 in; 40 ft 6 in stays")
	p.Keys("enter")
	assert.Contains(t, p.Says(), `Not taken: length "400 ft" is outside 5 ft to 75 ft`)
	assert.Zero(t, kept.saves)
	p.Keys("esc esc pgdown pgdown e ctrl+u 'none'")
	assert.Contains(t, p.Says(), `"none" stands for no softener at all`)
	p.Keys("esc pgdown down e ctrl+u 'small pressure washer'")
	assert.Contains(t, p.Says(), `is the name of another sprayer already; give each its own`)
	p.Keys("ctrl+u enter")
	assert.Contains(t, p.Says(), "cannot be left out")
	assert.Equal(t, "garden nozzle", p.M.now.Rig.Sprayers[1].Name)
}

func TestDefaults(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "end enter down enter")
	assert.Contains(t, p.Seen(), "not stated")
	p.Keys("2")
	assert.Empty(t, kept.kept.Rig.Defaults.Vehicle)
	assert.Contains(t, p.Seen(), "(Marigold)", "the first is taken")
	p.Keys("n")
	assert.Contains(t, p.Seen(), "the defaults are there once")
	p.Keys("up right right")
	assert.Equal(t, model.UnitsMetric, kept.kept.Rig.Defaults.Units)
}

func TestNothingChangedNothingHandedOver(t *testing.T) {
	o, _ := ours()
	back := play(t, o, "down enter down esc").Send(hands.Key("esc")).(screen.Back)
	assert.Nil(t, back.With)
}

func TestEscapesInNamesAreShownNotSent(t *testing.T) {
	o, _ := ours()
	o.Stock.Rig.Vehicles[0].Name = "Evil\x1b[2J\a 漢字 👩‍🚀"
	p := play(t, o, "enter")
	frame := p.M.View(p.S)
	assert.NotContains(t, frame, "\x1b")
	hands.Fits(t, frame, p.S)
	p.Keys("esc e").Seen()
}

func TestLookedUpNamesCoverEveryField(t *testing.T) {
	wash := model.Wash{Stages: []model.Stage{{}}}
	rig := model.Rig{}
	items := []model.Item{&rig.Defaults, &wash, &wash.Stages[0]}
	for _, item := range items {
		for _, f := range item.Fields() {
			if f.Refers == "" {
				continue
			}
			s := stock.Stock{Rig: &rig, Places: &model.Places{}, Wash: &wash, Others: &[]*stock.Kept{}}
			assert.NoError(t, f.Set("x"))
			assert.NotEmpty(t, s.Namers(f.Refers, "X"), "%s of %T is not looked at", f.Key, item)
			assert.NoError(t, f.Set(""))
		}
	}
}

// A text meant for a field, typed where no text goes, is no string of commands.
func TestTextOnALineOfWordsDoesNothing(t *testing.T) {
	o, _ := ours()
	for _, way := range []string{"", "enter down"} { // in the list, and on a line of words
		p := play(t, o, way)
		before := p.M.now
		p.Keys("3 '20 Xnctea' enter")
		assert.Equal(t, before, p.M.now)
		assert.Nil(t, p.M.typing)
		assert.False(t, p.M.Typing())
		assert.Equal(t, way != "", p.M.picker != nil, "enter opens the list of a line, and takes nothing")
		p.Keys("esc n")
		assert.NotNil(t, p.M.typing, "letters act again")
	}
}
