package rig

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/stock"
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
	for themeName, opt := range themes {
		for sizeName, size := range map[string]layout.Size{"80x24": {W: 80, H: 24}, "140x40": {W: 140, H: 40}} {
			o, _ := ours()
			o.Theme = theme.New(opt)
			frame := play(t, o, "down enter down down").m.View(size)
			fits(t, frame, size)
			golden.Check(t, *update, themeName+"-"+sizeName+".txt", strings.ReplaceAll(frame, "\x1b", "^[")+"\n")
		}
	}
}

// The ways through the screen, as they are seen.
func TestScenes(t *testing.T) {
	for name, script := range map[string]string{
		"add":      "n 'Tin Box'",
		"added":    "n 'Tin Box' enter",
		"wrong":    "enter down down '400'",
		"copied":   "c 'Marigold II' enter",
		"renamed":  "e ctrl+u 'Old Goose' enter",
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
		golden.Check(t, *update, "scene-"+name+".txt", p.seen()+"\n")
	}
}

func TestColourIsOnlyAdded(t *testing.T) {
	o, _ := ours()
	bare := New(o).View(layout.Size{W: 100, H: 30})
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	assert.Equal(t, bare, ansi.Strip(New(o).View(layout.Size{W: 100, H: 30})))
}

func TestPlainIsASCII(t *testing.T) {
	o, _ := ours()
	o.Theme = theme.New(theme.Options{Plain: true})
	for _, script := range []string{"", "n", "enter down '400'", "pgdown enter down down down enter", "X"} {
		for _, r := range play(t, o, script).seen() {
			assert.Less(t, r, rune(0x7f), script)
		}
	}
}

func TestASecondVehicleIsAddedAndUsed(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "n 'Tin Box' enter")
	assert.Contains(t, p.seen(), "› length                  needed", "the hand is on what is lacking")
	p.keys("'24' enter down '10 ft' enter")
	assert.Contains(t, p.seen(), "(8 ft 6 in) PUBLISHED", "what is assumed of it is shown as soon as it can be")
	p.keys("t")
	assert.Contains(t, p.says(), "● Tin Box 24 ft")
	assert.Equal(t, "Tin Box", kept.kept.Wash.Vehicle)
	assert.Len(t, kept.kept.Rig.Vehicles, 2)
	assert.Equal(t, "Tin Box", p.keys("esc").done("esc").Stock.Wash.Vehicle)
}

func TestANewItemIsThereOnlyWithItsName(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "pgdown n")
	assert.Contains(t, p.seen(), "bed 2")
	p.keys("'spare' esc")
	assert.NotContains(t, p.seen(), "spare")
	assert.Contains(t, p.seen(), "› ● half-foot tank")
	assert.Zero(t, kept.saves)
	p.keys("n enter")
	assert.Equal(t, "bed 2", kept.kept.Rig.Beds[1].Name)
}

func TestEveryKindGrows(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "")
	for _, k := range kinds()[:7] {
		n := len(p.m.now.Names(k.section))
		p.keys("n 'Ω 新' enter esc c '" + "second' enter esc pgdown")
		assert.Len(t, kept.kept.Names(k.section), n+2, k.section)
	}
	p.keys("u u u u u u u u u u u u u u")
	assert.Equal(t, *o.Stock.Rig, *kept.kept.Rig)
	p.keys("r r")
	assert.Len(t, kept.kept.Rig.Vehicles, 3)
}

func TestACopiedTankIsNotUsedUp(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "pgdown c 'spare' enter")
	bed := kept.kept.Rig.Beds[1]
	assert.Equal(t, "0.5 ft3", bed.Resin.Words())
	assert.False(t, bed.SoFar.Given())
	p.keys("pgdown c 'second' enter")
	assert.False(t, kept.kept.Rig.Softeners[1].SoFar.Given())
	assert.True(t, kept.kept.Rig.Softeners[0].SoFar.Given())
}

func TestACopiedVehicleHasItsOwnFaces(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "c 'twin' enter f 1 '300 ft2' enter")
	assert.Len(t, kept.kept.Rig.Vehicles[0].Faces, 1)
	assert.Len(t, kept.kept.Rig.Vehicles[1].Faces, 2)
	assert.Equal(t, "300 ft2", kept.kept.Rig.Vehicles[1].Faces[1].Area.Words())
	assert.Contains(t, p.seen(), "Face: roof")
	p.keys("X")
	assert.Contains(t, p.seen(), "face roof is taken away")
	assert.Len(t, kept.kept.Rig.Vehicles[1].Faces, 1)
	p.keys("u")
	assert.Len(t, kept.kept.Rig.Vehicles[1].Faces, 2)
}

func TestRenamingFollowsInEveryWash(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "e ctrl+u 'Old Goose' enter")
	assert.Contains(t, p.says(), "Renamed, and so in the defaults, the next wash, washes/may.toml and washes/june.toml.")
	assert.Contains(t, p.says(), `The log keeps the old name in 1 entry: they count for "Marigold" alone.`)
	others := *kept.kept.Others
	assert.Equal(t, "Old Goose", others[0].Wash.Vehicle)
	assert.Equal(t, "Old Goose", others[1].Wash.Vehicle)
	assert.Equal(t, "marigold", (*o.Stock.Others)[1].Wash.Vehicle, "what was handed in is as it was")
	p.keys("u")
	assert.Same(t, (*o.Stock.Others)[0], (*kept.kept.Others)[0], "undo brings the washes back")
}

func TestTakingOutAsksOnlyWhereSomethingNamesIt(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "pgdown pgdown pgdown X")
	assert.Contains(t, p.says(), "small pressure washer is named in the defaults and the next wash. Take it out, and leave that to the default? y or n")
	p.keys("n")
	assert.Zero(t, kept.saves)
	p.keys("X y")
	assert.Len(t, kept.kept.Rig.Sprayers, 1)
	for _, s := range kept.kept.Wash.Stages {
		assert.NotEqual(t, "small pressure washer", s.Sprayer)
	}
	p.keys("pgdown X")
	assert.Contains(t, p.says(), "supply hose is taken out; u brings it back.")
	p.keys("u u")
	assert.Equal(t, *o.Stock.Rig, *kept.kept.Rig)
	assert.Equal(t, *o.Stock.Wash, *kept.kept.Wash)
}

func TestTheOnlyOneStays(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "X")
	assert.Contains(t, p.seen(), "Not now: it is the only vehicle.")
	p.keys("pgdown pgdown X y")
	assert.Empty(t, kept.kept.Rig.Softeners, "a softener may be missing")
	assert.Contains(t, p.seen(), "none yet")
	p.keys("enter")
	assert.Contains(t, p.seen(), "Not now: there is none yet; n makes one.")
	p.keys("n enter")
	assert.Len(t, kept.kept.Rig.Softeners, 1)
}

func TestWrongInputSaysWhatWouldBeRight(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "enter down down '400 ft'")
	assert.Contains(t, p.says(), "is outside 5 ft to 75 ft; right is 40 ft 6 in; 40 ft 6 in stays")
	p.keys("enter")
	assert.Contains(t, p.says(), "Not taken: is outside 5 ft to 75 ft")
	assert.Zero(t, kept.saves)
	p.keys("esc pgdown pgdown e ctrl+u 'none'")
	assert.Contains(t, p.says(), `"none" stands for no softener at all`)
	p.keys("esc pgdown down e ctrl+u 'small pressure washer'")
	assert.Contains(t, p.says(), `is the name of another sprayer already; give each its own`)
	p.keys("ctrl+u enter")
	assert.Contains(t, p.says(), "cannot be left out")
	assert.Equal(t, "garden nozzle", p.m.now.Rig.Sprayers[1].Name)
}

func TestDefaults(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "end enter down enter")
	assert.Contains(t, p.seen(), "not stated")
	p.keys("2")
	assert.Empty(t, kept.kept.Rig.Defaults.Vehicle)
	assert.Contains(t, p.seen(), "(Marigold)", "the first is taken")
	p.keys("n")
	assert.Contains(t, p.seen(), "the defaults are there once")
	p.keys("up right")
	assert.Equal(t, model.UnitsMetric, kept.kept.Rig.Defaults.Units)
}

func TestNothingChangedNothingHandedOver(t *testing.T) {
	o, _ := ours()
	back := play(t, o, "down enter down esc").send(hands.Key("esc")).(screen.Back)
	assert.Nil(t, back.With)
}

func TestEscapesInNamesAreShownNotSent(t *testing.T) {
	o, _ := ours()
	o.Stock.Rig.Vehicles[0].Name = "Evil\x1b[2J\a 漢字 👩‍🚀"
	p := play(t, o, "enter")
	frame := p.m.View(p.s)
	assert.NotContains(t, frame, "\x1b")
	fits(t, frame, p.s)
	p.keys("esc e").seen()
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
