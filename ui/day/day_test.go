package day

import (
	"errors"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
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
	hands.Frames(t, *update, func(th theme.Theme) screen.Screen {
		o := ours()
		o.Theme = th
		return play(t, o, "left left").M
	}, layout.Least(), layout.Size{W: 140, H: 40})
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
		golden.Check(t, *update, name+".txt", play(t, o, "").Seen()+"\n")
	}
}

func TestStartMovesAndTheAnswerWithIt(t *testing.T) {
	p := play(t, ours(), "")
	d := p.M.plan.Day
	best := d.Recommended.Or(d.Start).Label
	assert.Empty(t, p.start())
	assert.Contains(t, p.Seen(), "› "+best+" to ")
	p.Keys("s ctrl+u '8:10' enter")
	assert.Equal(t, "8:10", p.start())
	p.Keys("right")
	assert.Equal(t, "08:15", p.start(), "to the next quarter")
	assert.Contains(t, p.Seen(), "› 08:15 to ")
	assert.Contains(t, p.Seen(), "dries before it can be rinsed whole")
	p.Keys("left left")
	assert.Equal(t, "07:45", p.start())
	p.Keys("pgdown shift+right")
	assert.Equal(t, "09:45", p.start())
	p.Keys("pgup shift+left")
	assert.Equal(t, "07:45", p.start())
	p.Keys("enter")
	assert.Equal(t, best, p.start())
	assert.Contains(t, p.Seen(), "The recommended start, "+best)
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "Not now: this is the recommended start.")
	p.Keys("delete")
	assert.Empty(t, p.start())
	assert.Contains(t, p.Seen(), "recommended, none chosen")
}

func TestStartStaysInTheLight(t *testing.T) {
	p := play(t, ours(), "right "+strings.Repeat("pgup ", 30))
	dawn, _ := p.M.bounds()
	assert.Equal(t, model.TimeOfDayAt(dawn).String(), p.start())
	p.Keys("left")
	assert.Contains(t, p.Seen(), "Not now: there is no earlier start with light.")
	p.Keys(strings.Repeat("pgdown ", 30))
	_, dusk := p.M.bounds()
	assert.Equal(t, model.TimeOfDayAt(dusk).String(), p.start())
	p.Keys("right")
	assert.Contains(t, p.Seen(), "Not now: there is no later start with light.")
}

// Where the clock shows an hour twice or skips one, the arrows still go through
// the whole day.
func TestStartPassesTheChangeOfTheClocks(t *testing.T) {
	for _, date := range []string{"2026-03-29", "2026-10-25"} {
		o := ours()
		sample.Set(&o.Wash, map[string]string{"date": date})
		sample.Set(&o.Places[0], map[string]string{"latitude": "89 N", "longitude": "16 E", "zone": "Arctic/Longyearbyen"})
		p := play(t, o, "s '0:00' enter")
		last := p.M.plan.Day.Start.At
		for range 110 {
			if _, late := p.M.ends(); late != "" {
				break
			}
			p.Keys("right")
			require.True(t, p.M.plan.Day.Start.At.After(last), "%s at %s", date, p.start())
			last = p.M.plan.Day.Start.At
		}
		_, dusk := p.M.bounds()
		assert.True(t, last.Equal(dusk), "%s ends at %s", date, p.start())
	}
}

func TestNoseTurns(t *testing.T) {
	p := play(t, ours(), ".")
	assert.Equal(t, "ESE", p.nose())
	assert.Contains(t, p.Seen(), "nose ESE")
	p.Keys(", ,")
	assert.Equal(t, "ENE", p.nose())
	p.Keys("n ctrl+u '50' enter")
	assert.Equal(t, "50", p.nose())
	p.Keys("]")
	assert.Equal(t, "ENE", p.nose(), "to the next point")
	p.Keys("n ctrl+u '50' enter [")
	assert.Equal(t, "NE", p.nose())
	p.Keys(", , ,")
	assert.Equal(t, "NNW", p.nose())
	o := ours()
	sample.Set(&o.Wash, map[string]string{"heading": ""})
	p = play(t, o, "")
	assert.Contains(t, p.Seen(), "Needed: heading, which n types here.")
	p.Keys(".")
	assert.Equal(t, "N", p.nose())
	assert.NotContains(t, p.Seen(), "Needed: heading")
}

func TestTypingIsChecked(t *testing.T) {
	p := play(t, ours(), "n ctrl+u 'north'")
	assert.True(t, p.M.Typing())
	assert.Contains(t, p.Seen(), "nose north,", "before enter")
	p.Keys("'x'")
	assert.Contains(t, p.Seen(), "is neither a compass word nor degrees")
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "Not taken:")
	assert.True(t, p.M.Typing(), "what is typed next is meant for it, too")
	p.Keys("backspace enter")
	assert.Equal(t, "north", p.nose())
	p.Keys("s '9:00' esc")
	assert.Empty(t, p.start())
}

// Why a text is not taken is told whole, with what would be right, also where the line of
// the text has no room for it.
func TestWhyATextIsNotTakenIsToldWhole(t *testing.T) {
	p := play(t, ours(), "s ctrl+u '25:70' enter")
	assert.Contains(t, flat(p.Seen()), `Not taken: is past the end of the day; write it like "7:30", "7:30 pm" or "19:30".`)
	assert.Contains(t, p.Seen(), "start 25:70_\n")
	p.Keys("ctrl+u '7.30' enter")
	assert.Contains(t, p.Seen(), "› 07:30 to ")
	p.Keys("n ctrl+u 'nowhere'")
	assert.Regexp(t, `heading nowhere_  is neither a compass word nor degrees\.\n`, p.Seen(), "a whole clause while it is typed")
	p.Keys("enter")
	assert.Contains(t, flat(p.Seen()), `heading nowhere_ Not taken: is neither a compass word nor degrees; write it like "north-east", "NE", "45 deg" or "nose to the north-east"; east stays.`)
}

// flat is a screen as one line.
func flat(seen string) string { return strings.Join(strings.Fields(seen), " ") }

func TestUndoAndRedo(t *testing.T) {
	p := play(t, ours(), "u")
	assert.Contains(t, p.Seen(), "Not now: there is nothing to undo.")
	p.Keys("s '9:00' enter right . u")
	assert.Equal(t, "east", p.nose())
	p.Keys("u")
	assert.Equal(t, "9:00", p.start())
	p.Keys("u")
	assert.Empty(t, p.start())
	p.Keys("r r r")
	assert.Equal(t, "09:15", p.start())
	assert.Equal(t, "ESE", p.nose())
	p.Keys("r")
	assert.Contains(t, p.Seen(), "Not now: there is nothing to redo.")
}

func TestComesBackWithTheWash(t *testing.T) {
	p := play(t, ours(), "")
	assert.Equal(t, screen.Back{}, p.Send(hands.Key("esc")), "nothing was changed")
	p.Keys("s '9:00' enter .")
	back, ok := p.Send(hands.Key("esc")).(screen.Back)
	require.True(t, ok)
	done := back.With.(Done)
	assert.Equal(t, model.TimeOfDay{Hour: 9}, done.Wash.Start.Or(model.TimeOfDay{}))
	assert.Equal(t, "ESE", done.Wash.Heading.Words())
	p.Keys("u u")
	assert.Equal(t, screen.Back{}, p.Send(hands.Key("esc")), "undone again")
}

func TestLeavingSaves(t *testing.T) {
	o := ours()
	var kept model.Wash
	var fail error
	o.Save = func(w model.Wash) error { kept = w; return fail }
	require.NoError(t, play(t, o, "").M.Leave())
	assert.Empty(t, kept.Name, "nothing was changed")
	require.NoError(t, play(t, o, "s '9:00'").M.Leave())
	assert.Equal(t, model.TimeOfDay{Hour: 9}, kept.Start.Or(model.TimeOfDay{}), "what was being typed")
	assert.ErrorContains(t, play(t, o, "s '25:99'").M.Leave(), `"25:99"`, "a text that cannot be taken")
	fail = errors.New("no space left on the disk")
	assert.Error(t, play(t, o, ".").M.Leave())
}

func TestPlanThatCannotBeMadeIsSaid(t *testing.T) {
	o := ours()
	o.Make = func(model.Rig, model.Places, model.Wash) (planner.Plan, error) {
		return planner.Plan{}, errors.New("the pump is too weak")
	}
	assert.Contains(t, play(t, o, "").Seen(), "There is no plan of this wash yet")
	assert.Contains(t, play(t, o, "").Seen(), "the pump is too weak")
	assert.Contains(t, play(t, o, "right").Seen(), "Not now: the day is not known.")
}

func TestMouse(t *testing.T) {
	p := play(t, ours(), "")
	click := func(x, y int) {
		p.Send(tea.MouseMsg{X: x, Y: y, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	}
	lines := strings.Split(p.Seen(), "\n")
	click(strings.Index(lines[2], "10")-1, 5)
	assert.Equal(t, "10:00", p.start())
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelDown})
	assert.Equal(t, "10:15", p.start())
	p.Send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	assert.Equal(t, "10:00", p.start())
	click(2, 5)
	click(500, 500)
	assert.Equal(t, "10:00", p.start())
}

// Where no start is easy the answer says so beside the recommended one, in every form.
func TestADayWithoutAnEasyStartIsTold(t *testing.T) {
	o := ours()
	sample.Set(&o.Wash, map[string]string{"dew_point": "", "humidity": "35 %"})
	p := play(t, o, "")
	assert.Contains(t, p.Seen(), "too short for the whole wash")
	p.S = layout.Size{W: 140, H: 40}
	assert.Contains(t, p.Seen(), "no start is easy; recommended (R) 06:15: fewest faces hurry: left")
	assert.Contains(t, strings.Join(p.M.startTold(), "\n"), "no start is easy; recommended")
}

// After a text that was refused a new one takes its place.
func TestARefusedTextIsNoTrap(t *testing.T) {
	p := play(t, ours(), "n 'nowhere' enter 'east'")
	assert.Contains(t, p.Seen(), "heading east_")
	p.Keys("enter")
	assert.Equal(t, "east", p.nose())
	p.Keys("s '25:70' enter '9:00' enter")
	assert.Equal(t, "9:00", p.start())
}

// An hour alone is said back and kept as the time that it is.
func TestAnHourAloneIsATime(t *testing.T) {
	p := play(t, ours(), "s 0")
	assert.Contains(t, p.Seen(), "start 0_  00:00")
	p.Keys("enter s 9 enter")
	assert.Equal(t, "09:00", p.start())
}
