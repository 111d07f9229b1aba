package planner_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/planner/tag"
)

// aDay is the least that tells a day ahead, with all that is asked of its
// weather: an invented coach in the dry west of June.
func aDay(t require.TestingT) (model.Rig, model.Places, model.Wash) {
	rig, places, wash := threeFacts()
	set(t, &rig.Vehicles[0], "colour", "mid")
	set(t, &places[0], "latitude", "38.5 N", "longitude", "109 W", "zone", "America/Denver", "elevation", "4000 ft")
	set(t, &wash, "date", "2026-06-12", "heading", "east", "low", "50 F", "high", "74 F", "dew_point", "44 F", "wind", "3 mph", "sky", "clear")
	return rig, places, wash
}

func set(t require.TestingT, item model.Item, pairs ...string) {
	for i := 0; i < len(pairs); i += 2 {
		at := slices.IndexFunc(item.Fields(), func(f model.Field) bool { return f.Key == pairs[i] })
		require.GreaterOrEqual(t, at, 0, pairs[i])
		require.NoError(t, item.Fields()[at].Set(pairs[i+1]))
	}
}

func dayOf(t require.TestingT, rig model.Rig, places model.Places, wash model.Wash) *planner.DayPlan {
	p := mustMake(t, rig, places, wash)
	require.NotNil(t, p.Day, p.DayNote.Format)
	return p.Day
}

func TestWithoutDateOrPlaceThereIsNoDayAndThePlanSaysWhy(t *testing.T) {
	rig, places, wash := threeFacts()
	p := mustMake(t, rig, places, wash)
	assert.Nil(t, p.Day)
	assert.Equal(t, "Not known for the day: the wash's date, the place's latitude, the place's longitude, the place's time zone. State them, and the plan says when to start and which side first.", p.DayNote.Text(quantity.US))
	for _, f := range p.Faces {
		assert.False(t, f.Dries.Given())
	}
}

// No weather is made up from the month: the sun is told, and what is not known.
func TestWithoutWeatherOnlyTheSunIsTold(t *testing.T) {
	rig, places, wash := aDay(t)
	wash.Low, wash.High, wash.DewPoint, wash.Wind, wash.Sky = model.Wash{}.Low, model.Wash{}.High, model.Wash{}.DewPoint, model.Wash{}.Wind, ""
	rig.Vehicles[0].Colour = ""
	p := mustMake(t, rig, places, wash)
	d := p.Day
	require.NotNil(t, d)
	assert.Empty(t, p.DayNote.Code)
	for _, word := range []string{"low and high", "humidity", "wind"} {
		assert.Contains(t, strings.Join(d.Unknown, "\n"), word)
	}
	assert.Len(t, d.Unknown, 3, "what is needed, and no more")
	assert.Equal(t, []string{"colour (mid)", "sky (clear)"}, d.Assumed)
	assert.Empty(t, d.Windows)
	assert.False(t, d.Recommended.Given() || d.Chosen.Given())
	assert.Len(t, d.Start.Turns, 5, "the order needs only the sun")
	assert.True(t, d.Start.FullHour)
	for _, f := range p.Faces {
		assert.False(t, f.Dries.Given())
	}
}

func TestTheDayIsInThePlan(t *testing.T) {
	rig, places, wash := aDay(t)
	p := mustMake(t, rig, places, wash)
	d := p.Day
	require.NotNil(t, d)
	assert.Empty(t, d.Unknown)
	best, given := d.Recommended.Get()
	require.True(t, given)
	assert.True(t, best.Easy, best.Why)
	assert.Equal(t, best, d.Start)
	assert.NotEmpty(t, d.Windows)
	for _, s := range p.Stages {
		var order []model.Side
		for _, turn := range d.Start.Turns {
			if slices.Contains(s.Faces, turn.Side) {
				order = append(order, turn.Side)
			}
		}
		assert.Equal(t, order, s.Faces, "%s goes in the day's order", s.Name)
	}
	for _, f := range p.Faces {
		turn, _ := d.Start.Turn(f.Name)
		assert.Equal(t, turn.Dries, f.Dries)
		assert.True(t, f.Dries.Given())
		assert.Equal(t, 60*quantity.Second, f.Pause)
	}
	assert.True(t, slices.ContainsFunc(p.Constants, func(a planner.Assumption) bool { return a.Name == "Linke turbidity" }))
	for _, name := range []string{"low of the day", "dew point", "wind", "heading", "vehicle colour", "latitude", "height of the wind"} {
		assert.True(t, slices.ContainsFunc(p.Assumptions, func(a planner.Assumption) bool { return a.Name == name }), name)
	}
	for _, name := range []string{"sunrise", "recommended start", "latest start", "left dries in", "left largest section"} {
		assert.True(t, slices.ContainsFunc(p.Reasons, func(r planner.Reason) bool { return r.Number == name }), name)
	}
}

// The start moves, and the order and the drying with it.
func TestTheChosenStartIsTheOneTold(t *testing.T) {
	rig, places, wash := aDay(t)
	set(t, &wash, "start", "14:10")
	p := mustMake(t, rig, places, wash)
	chosen, given := p.Day.Chosen.Get()
	require.True(t, given)
	assert.Equal(t, "14:10", chosen.Label)
	assert.Equal(t, chosen, p.Day.Start)
	assert.Contains(t, codes(p.Warnings), "start-hurries")
	early, _ := p.Day.Recommended.Get()
	for _, side := range []model.Side{model.Left, model.Right} {
		now, _ := chosen.Turn(side)
		then, _ := early.Turn(side)
		assert.Less(t, now.Dries.Or(0), then.Dries.Or(0), string(side))
	}
}

// A drip that outlasts the film is cut short, and the film that it leaves is
// thicker: it needs no less DI.
func TestADripIsNoLongerThanTheFilmLasts(t *testing.T) {
	rig, places, wash := aDay(t)
	set(t, &rig.Vehicles[0], "colour", "black")
	set(t, &wash, "high", "100 F", "low", "70 F", "start", "15:00", "pause", "10 min")
	p := mustMake(t, rig, places, wash)
	assert.Contains(t, codes(p.Warnings), "drip-dries")
	wash.Start, wash.Low, wash.High = quantity.Opt[model.TimeOfDay]{}, quantity.Opt[quantity.Temperature]{}, quantity.Opt[quantity.Temperature]{}
	free := mustMake(t, rig, places, wash)
	for i, f := range p.Faces {
		if f.Name == model.Roof {
			assert.Equal(t, 10*quantity.Minute, f.Pause, "no final rinse, no drip before it")
			continue
		}
		assert.Less(t, f.Pause, 10*quantity.Minute, string(f.Name))
		assert.Greater(t, f.Film, free.Faces[i].Film)
		assert.GreaterOrEqual(t, float64(f.DI)*slack, float64(free.Faces[i].DI))
		rate := float64(free.Faces[i].Film) / float64(f.Dries.Or(0))
		assert.InEpsilon(t, planner.DripShare*float64(f.Film), rate*float64(f.Pause), 1e-3)
	}
	for _, w := range p.Warnings {
		assert.NotContains(t, w.Text(quantity.US), "%!")
	}
}

func TestStatementsThatContradictAreTold(t *testing.T) {
	rig, places, wash := aDay(t)
	set(t, &wash, "low", "90 F")
	p := mustMake(t, rig, places, wash)
	assert.Nil(t, p.Day)
	assert.Equal(t, "day-unknown", p.DayNote.Code)
	assert.Contains(t, codes(p.Warnings), "day-contradicts")
	assert.Contains(t, wash.Contradictions()[0].Problem, "is above the high of the day")
}

func TestFrostIsNoTimeToWash(t *testing.T) {
	rig, places, wash := aDay(t)
	set(t, &wash, "date", "2026-01-12", "low", "5 F", "high", "28 F", "dew_point", "0 F")
	p := mustMake(t, rig, places, wash)
	assert.False(t, p.Day.Recommended.Given())
	assert.Contains(t, codes(p.Warnings), "no-start")
	assert.Contains(t, codes(p.Warnings), "freezing")
}

// A wash that is not to be planned for some face leaves it out of the day.
func TestOnlyWhatIsWashedIsInTheDay(t *testing.T) {
	rig, places, wash := aDay(t)
	wash.Stages = []model.Stage{{Name: "rinse", Water: model.Raw, Faces: []model.Side{model.Left, model.Front}}}
	d := dayOf(t, rig, places, wash)
	assert.Len(t, d.Start.Turns, 2)
	assert.Len(t, d.Steps[0].Faces, 2)
}

// On a day without an easy start the recommended one is not called bad when it is chosen,
// and any other is told which is better.
func TestTheRecommendedStartIsNotWarnedAgainst(t *testing.T) {
	rig, places, wash := aDay(t)
	set(t, &rig.Vehicles[0], "colour", "black")
	set(t, &wash, "high", "95 F", "low", "70 F", "dew_point", "30 F", "wind", "12 mph")
	p := mustMake(t, rig, places, wash)
	best, given := p.Day.Recommended.Get()
	require.True(t, given)
	require.False(t, best.Easy)
	said := func(at time.Time) string {
		wash.Start = quantity.Some(model.TimeOfDayAt(at))
		var words []string
		for _, n := range mustMake(t, rig, places, wash).Warnings {
			if n.Code == "start-hurries" || n.Code == "no-easy-start" {
				words = append(words, n.Format)
			}
		}
		return strings.Join(words, "\n")
	}
	assert.Contains(t, said(best.At), "On this day no start is easy: at "+best.Label+", the best,")
	assert.NotContains(t, said(best.At), "not good")
	for _, s := range p.Day.Starts {
		if best.Better(s) {
			assert.Contains(t, said(s.At), "A start at "+s.Label+" is not good:")
			assert.Contains(t, said(s.At), best.Label+" is the best:")
			break
		}
	}
}

// A vehicle of no stated colour is taken for a mid one, and the plan says so.
func TestAColourThatIsNotStatedIsMid(t *testing.T) {
	rig, places, wash := aDay(t)
	rig.Vehicles[0].Colour = ""
	p := mustMake(t, rig, places, wash)
	assert.Empty(t, p.Day.Unknown)
	assert.Equal(t, []string{"colour (mid)"}, p.Day.Assumed)
	require.True(t, slices.ContainsFunc(p.Assumptions, func(a planner.Assumption) bool {
		return a.Name == "vehicle colour" && a.Words == "mid" && a.Source.Tag == tag.Practice
	}))
	rig.Vehicles[0].Colour = model.MidColour
	assert.Equal(t, dayOf(t, rig, places, wash).Start, p.Day.Start)
}

// The built-in example shows a day with a good start.
func TestTheExampleHasADay(t *testing.T) {
	lib := store.Example()
	d := dayOf(t, lib.Rig, lib.Places, lib.Washes[0].Wash)
	assert.Empty(t, d.Unknown)
	assert.True(t, d.Start.Easy, d.Start.Why)
	assert.True(t, d.NotAfter.Given())
}
