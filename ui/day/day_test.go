package day

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
	"washeve/planner"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
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
	for themeName, opt := range themes {
		for sizeName, size := range sizes {
			o := ours()
			o.Theme = theme.New(opt)
			frame := play(t, o, "left left").m.View(size)
			hands.Fits(t, frame, size)
			golden.Check(t, *update, themeName+"-"+sizeName+".txt", strings.ReplaceAll(frame, "\x1b", "^[")+"\n")
		}
	}
}

// The days that are unlike others, each as it is seen.
func TestOddDays(t *testing.T) {
	wash := map[string]map[string]string{
		"no-weather": {"low": "", "high": "", "wind": "", "sky": ""}, "no-heading": {"heading": ""}, "no-date": {"date": ""},
		"frost":            {"date": "2026-01-10", "low": "20 F", "high": "40 F", "dew_point": "15 F"},
		"clocks-back":      {"date": "2026-11-01", "start": "1:30"},
		"humidity":         {"dew_point": "", "humidity": "35 %", "sky": ""},
		"contradiction":    {"low": "60 F", "high": "50 F"},
		"midnight-sun":     {"date": "2026-06-21"},
		"polar-night":      {"date": "2026-12-21"},
		"polar-night-says": {"date": "2026-12-21", "start": "12:00"},
	}
	for name, values := range wash {
		o := ours()
		sample.Set(&o.Wash, values)
		if strings.HasPrefix(name, "midnight") || strings.HasPrefix(name, "polar") {
			sample.Set(&o.Places[0], map[string]string{"latitude": "78 N", "longitude": "16 E", "zone": "Arctic/Longyearbyen"})
		}
		golden.Check(t, *update, name+".txt", play(t, o, "").seen()+"\n")
	}
}

func TestColourIsOnlyAdded(t *testing.T) {
	o := ours()
	bare := New(o).View(layout.Size{W: 100, H: 30})
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	assert.Equal(t, bare, ansi.Strip(New(o).View(layout.Size{W: 100, H: 30})))
}

func TestStartMovesAndTheAnswerWithIt(t *testing.T) {
	p := play(t, ours(), "")
	d := p.m.plan.Day
	best := d.Recommended.Or(d.Start).Label
	assert.Empty(t, p.start())
	assert.Contains(t, p.seen(), "› "+best+" to ")
	p.keys("s ctrl+u '8:10' enter")
	assert.Equal(t, "8:10", p.start())
	p.keys("right")
	assert.Equal(t, "08:15", p.start(), "to the next quarter")
	assert.Contains(t, p.seen(), "› 08:15 to ")
	assert.Contains(t, p.seen(), "dries before it can be rinsed whole")
	p.keys("left left")
	assert.Equal(t, "07:45", p.start())
	p.keys("pgdown shift+right")
	assert.Equal(t, "09:45", p.start())
	p.keys("pgup shift+left")
	assert.Equal(t, "07:45", p.start())
	p.keys("enter")
	assert.Equal(t, best, p.start())
	assert.Contains(t, p.seen(), "The recommended start, "+best)
	p.keys("enter")
	assert.Contains(t, p.seen(), "Not now: this is the recommended start.")
	p.keys("delete")
	assert.Empty(t, p.start())
	assert.Contains(t, p.seen(), "recommended, none chosen")
}

func TestStartStaysInTheLight(t *testing.T) {
	p := play(t, ours(), strings.Repeat("pgup ", 30))
	dawn, _ := p.m.bounds()
	assert.Equal(t, model.TimeOfDayAt(dawn).String(), p.start())
	p.keys("left")
	assert.Contains(t, p.seen(), "Not now: there is no earlier start with light.")
	p.keys(strings.Repeat("pgdown ", 30))
	_, dusk := p.m.bounds()
	assert.Equal(t, model.TimeOfDayAt(dusk).String(), p.start())
	p.keys("right")
	assert.Contains(t, p.seen(), "Not now: there is no later start with light.")
}

// Where the clock shows an hour twice or skips one, the arrows still go through
// the whole day.
func TestStartPassesTheChangeOfTheClocks(t *testing.T) {
	for _, date := range []string{"2026-03-29", "2026-10-25"} {
		o := ours()
		sample.Set(&o.Wash, map[string]string{"date": date})
		sample.Set(&o.Places[0], map[string]string{"latitude": "89 N", "longitude": "16 E", "zone": "Arctic/Longyearbyen"})
		p := play(t, o, "s '0:00' enter")
		last := p.m.plan.Day.Start.At
		for range 110 {
			if _, late := p.m.ends(); late != "" {
				break
			}
			p.keys("right")
			require.True(t, p.m.plan.Day.Start.At.After(last), "%s at %s", date, p.start())
			last = p.m.plan.Day.Start.At
		}
		_, dusk := p.m.bounds()
		assert.True(t, last.Equal(dusk), "%s ends at %s", date, p.start())
	}
}

func TestNoseTurns(t *testing.T) {
	p := play(t, ours(), ".")
	assert.Equal(t, "ESE", p.nose())
	assert.Contains(t, p.seen(), "nose ESE")
	p.keys(", ,")
	assert.Equal(t, "ENE", p.nose())
	p.keys("n ctrl+u '50' enter")
	assert.Equal(t, "50", p.nose())
	p.keys("]")
	assert.Equal(t, "ENE", p.nose(), "to the next point")
	p.keys("n ctrl+u '50' enter [")
	assert.Equal(t, "NE", p.nose())
	p.keys(", , ,")
	assert.Equal(t, "NNW", p.nose())
	o := ours()
	sample.Set(&o.Wash, map[string]string{"heading": ""})
	p = play(t, o, "")
	assert.Contains(t, p.seen(), "Not known: heading, which n types here.")
	p.keys(".")
	assert.Equal(t, "N", p.nose())
	assert.NotContains(t, p.seen(), "Not known: heading")
}

func TestTypingIsChecked(t *testing.T) {
	p := play(t, ours(), "n ctrl+u 'north'")
	assert.True(t, p.m.Typing())
	assert.Contains(t, p.seen(), "nose north,", "before enter")
	p.keys("'x'")
	assert.Contains(t, p.seen(), "is neither a compass word nor degrees")
	p.keys("enter")
	assert.Contains(t, p.seen(), "Not taken:")
	assert.Equal(t, "north", p.nose(), "the last right text holds")
	p.keys("s '9:00' esc")
	assert.Empty(t, p.start())
}

func TestUndoAndRedo(t *testing.T) {
	p := play(t, ours(), "u")
	assert.Contains(t, p.seen(), "Not now: there is nothing to undo.")
	p.keys("s '9:00' enter right . u")
	assert.Equal(t, "east", p.nose())
	p.keys("u")
	assert.Equal(t, "9:00", p.start())
	p.keys("u")
	assert.Empty(t, p.start())
	p.keys("r r r")
	assert.Equal(t, "09:15", p.start())
	assert.Equal(t, "ESE", p.nose())
	p.keys("r")
	assert.Contains(t, p.seen(), "Not now: there is nothing to redo.")
}

func TestComesBackWithTheWash(t *testing.T) {
	p := play(t, ours(), "")
	assert.Equal(t, screen.Back{}, p.send(hands.Key("esc")), "nothing was changed")
	p.keys("s '9:00' enter .")
	back, ok := p.send(hands.Key("esc")).(screen.Back)
	require.True(t, ok)
	done := back.With.(Done)
	assert.Equal(t, model.TimeOfDay{Hour: 9}, done.Wash.Start.Or(model.TimeOfDay{}))
	assert.Equal(t, "ESE", done.Wash.Heading.Words())
	p.keys("u u")
	assert.Equal(t, screen.Back{}, p.send(hands.Key("esc")), "undone again")
}

func TestLeavingSaves(t *testing.T) {
	o := ours()
	var kept model.Wash
	var fail error
	o.Save = func(w model.Wash) error { kept = w; return fail }
	require.NoError(t, play(t, o, "").m.Leave())
	assert.Empty(t, kept.Name, "nothing was changed")
	require.NoError(t, play(t, o, "s '9:00'").m.Leave())
	assert.Equal(t, model.TimeOfDay{Hour: 9}, kept.Start.Or(model.TimeOfDay{}), "what was being typed")
	fail = errors.New("no space left on the disk")
	assert.Error(t, play(t, o, ".").m.Leave())
}

func TestPlanThatCannotBeMadeIsSaid(t *testing.T) {
	o := ours()
	o.Make = func(model.Rig, model.Places, model.Wash) (planner.Plan, error) {
		return planner.Plan{}, errors.New("the pump is too weak")
	}
	assert.Contains(t, play(t, o, "").seen(), "There is no plan of this wash yet")
	assert.Contains(t, play(t, o, "").seen(), "the pump is too weak")
	assert.Contains(t, play(t, o, "right").seen(), "Not now: the day is not known.")
}

func TestMouse(t *testing.T) {
	p := play(t, ours(), "")
	click := func(x, y int) {
		p.send(tea.MouseMsg{X: x, Y: y, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	}
	lines := strings.Split(p.seen(), "\n")
	click(strings.Index(lines[2], "10")-1, 5)
	assert.Equal(t, "10:00", p.start())
	p.send(tea.MouseMsg{Button: tea.MouseButtonWheelDown})
	assert.Equal(t, "10:15", p.start())
	p.send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	assert.Equal(t, "10:00", p.start())
	click(2, 5)
	click(500, 500)
	assert.Equal(t, "10:00", p.start())
}
