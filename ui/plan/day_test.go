package plan

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/day"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
	"washeve/ui/screen"
)

// known is a wash of which the day is known.
func known(t testing.TB) Options {
	var kept planner.Memory
	o := ours(t)
	o.Rig, o.Places, o.Wash = sample.Day()
	o.Make = kept.Make
	return o
}

func TestDayIsALineOfTheAnswer(t *testing.T) {
	p := play(t, known(t), "")
	assert.Contains(t, p.Seen(), "d Day      best from 05:45")
	assert.Contains(t, p.Seen(), "begin         05:45  roof first, done 09:21")
	p.Keys("d down '11:00' enter")
	assert.Contains(t, p.Seen(), "begin         11:00  some hurry: see D")
	assert.Equal(t, model.TimeOfDay{Hour: 11}, p.M.now.wash.Start.Or(model.TimeOfDay{}))
	p.S = layout.Size{W: 140, H: 40}
	assert.Contains(t, p.Seen(), "dries in", "the faces tell when they dry")
	o := known(t)
	sample.Set(&o.Wash, map[string]string{"wind": ""})
	assert.Contains(t, play(t, o, "").Seen(), "needs wind: d")
	sample.Set(&o.Wash, map[string]string{"start": "14:15"})
	p = play(t, o, "")
	assert.Contains(t, p.Seen(), "begin         14:15  drying needs wind: d", "a hurry is not known where drying is not")
	assert.NotContains(t, p.Seen(), "hurry")
	sample.Set(&o.Wash, map[string]string{"start": ""})
	sample.Set(&o.Wash, map[string]string{"wind": "3 mph", "low": "-30 F", "high": "-20 F", "dew_point": "-40 F"})
	assert.Contains(t, play(t, o, "").Seen(), "no fit start: see D")
}

// What no day is told ahead without is named, in the walk and in the answer.
func TestADayThatIsNotToldNamesWhatItLacks(t *testing.T) {
	for lacks, takes := range map[string]func(*model.Wash, *model.Place){
		"the date": func(w *model.Wash, _ *model.Place) { w.Date = quantity.Opt[model.Date]{} },
		"the position": func(_ *model.Wash, p *model.Place) {
			p.Latitude, p.Longitude = quantity.Opt[quantity.Angle]{}, quantity.Opt[quantity.Angle]{}
		},
		"the time zone": func(_ *model.Wash, p *model.Place) { p.Zone = quantity.Opt[*time.Location]{} },
	} {
		o := known(t)
		takes(&o.Wash, &o.Places[0])
		p := play(t, o, "")
		assert.Contains(t, p.Seen(), "d Day      needs "+lacks)
		assert.Regexp(t, `begin +\?  needs `+lacks+": d", p.Seen())
	}
	o := known(t)
	sample.Set(&o.Wash, map[string]string{"low": "90 F", "high": "70 F"})
	assert.Contains(t, play(t, o, "").Seen(), "day not known: see d", "nothing lacks, and the warning says what is wrong")
}

func TestDayStep(t *testing.T) {
	p := play(t, known(t), "d")
	for _, words := range []string{"date", "(05:45)", "heading", "low of the day", "dew point", "humidity", "wind", "sky"} {
		assert.Contains(t, p.Seen(), words)
	}
	p.S = layout.Size{W: 140, H: 40}
	for _, words := range []string{"Where Willow Bend lies", "latitude", "time zone", "elevation"} {
		assert.Contains(t, p.Seen(), words)
	}
	assert.NotContains(t, p.Keys("w").Seen(), "latitude", "it is about the day, not the water")
	assert.Contains(t, p.Keys("d down down enter ctrl+u 'nose to the south' enter").Seen(), "nose to the south")
	assert.InDelta(t, 180, p.M.now.wash.Heading.Or(0).Angle().Degrees(), 1e-9)
}

func TestShades(t *testing.T) {
	o := known(t)
	p := play(t, o, "d n")
	assert.Contains(t, p.Seen(), "side", "the face is picked from a list")
	p.Keys("3 down '8:00' enter '11:30' enter enter 'the oak' enter")
	require.Len(t, p.M.now.wash.Shades, 1)
	assert.Equal(t, model.Right, p.M.now.wash.Shades[0].Side)
	assert.Equal(t, "the oak", p.M.now.wash.Shades[0].By)
	assert.Equal(t, "11:30", p.M.now.wash.Shades[0].To.Words())
	assert.Contains(t, p.Seen(), "Shade 1: right")
	assert.Len(t, o.Keeper.(*book).wash.Shades, 1)
	p.Keys("X")
	assert.Empty(t, p.M.now.wash.Shades)
	p.Keys("u")
	assert.Len(t, p.M.now.wash.Shades, 1)
}

func TestDayComesBackAsOneEdit(t *testing.T) {
	o := known(t)
	p := play(t, o, "")
	to, ok := p.Send(hands.Key("D")).(screen.Go)
	require.True(t, ok)
	page := to.To.(day.Model)
	for _, key := range hands.Keys("s '9:00' enter right .") {
		next, _ := page.Update(key)
		page = next.(day.Model)
	}
	_, cmd := page.Update(hands.Key("esc"))
	p.Send(cmd().(screen.Back).With)
	assert.Equal(t, "09:15", p.M.now.wash.Start.Or(model.TimeOfDay{}).String())
	assert.Equal(t, "ESE", o.Keeper.(*book).wash.Heading.Words(), "it is saved")
	p.Keys("u")
	assert.False(t, p.M.now.wash.Start.Given())
	assert.Equal(t, "east", p.M.now.wash.Heading.Words())
	assert.Contains(t, p.Keys("u").Seen(), "there is nothing to undo")
}

func TestQuittingOnTheDaySaves(t *testing.T) {
	for _, example := range []bool{false, true} {
		o := known(t)
		o.Example = example
		page := play(t, o, "").Send(hands.Key("D")).(screen.Go).To
		next, _ := page.Update(hands.Key("."))
		if example {
			assert.Error(t, next.Leave(), "the example is kept nowhere")
			continue
		}
		require.NoError(t, next.Leave())
		assert.Equal(t, "ESE", o.Keeper.(*book).wash.Heading.Words())
	}
}

// The step Day says once that D is where the sun is seen; the way back is told there.
func TestTheStepDayTellsOfTheDayScreen(t *testing.T) {
	o := ours(t)
	p := play(t, o, "d")
	assert.Contains(t, p.Says(), "The day is stated here; esc, then D shows its sun", "letters are text where no day is stated")
	set(t, &o.Wash, map[string]string{"date": "2026-06-12"})
	p = play(t, o, "d")
	assert.Contains(t, p.Seen(), "The day is stated here; D shows its sun and drying hour by hour.")
	assert.Contains(t, p.Seen(), "D the sun")
	p.Keys("down")
	assert.NotContains(t, p.Seen(), "The day is stated here")
	p.Keys("up shift+tab tab")
	assert.Contains(t, p.Seen(), "The day is stated here", "by tab as well")

	o.Example, o.Make = true, planner.Make
	assert.NotContains(t, play(t, o, "e d").Seen(), "hour by hour", "there is nothing to see before there is a plan")
}
