package planner_test

import (
	"math"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// drawnDay is a random situation on a random day.
func drawnDay(t *rapid.T) (model.Rig, model.Places, model.Wash) {
	rig, places, _ := drawn(t)
	_, where, when := aDay(t)
	where[0].TDS, where[0].Temperature = places[0].TDS, places[0].Temperature
	where[0].Latitude = quantity.Some(quantity.Angle(rapid.Float64Range(-66, 66).Draw(t, "latitude")) * quantity.Degree)
	when.Date = quantity.Some(model.Date{Year: 2026, Month: time.Month(rapid.IntRange(1, 12).Draw(t, "month")), Day: 15})
	when.Heading = quantity.Some(model.HeadingOf(quantity.Angle(rapid.Float64Range(0, 360).Draw(t, "heading")) * quantity.Degree))
	low := rapid.Float64Range(2, 25).Draw(t, "low")
	when.Low, when.High = quantity.Some(quantity.Celsius(low)), quantity.Some(quantity.Celsius(low+rapid.Float64Range(0, 18).Draw(t, "swing")))
	when.DewPoint = quantity.Some(quantity.Celsius(low - rapid.Float64Range(0, 15).Draw(t, "dry")))
	when.Start = quantity.Some(model.TimeOfDay{Hour: rapid.IntRange(6, 18).Draw(t, "hour")})
	rig.Vehicles[0].Colour = rapid.SampledFrom(model.Colours()).Draw(t, "colour")
	return rig, where, when
}

// The sides are alike, so that what was right of one is left of the other.
func TestTurningTheCoachRoundSwapsLeftAndRight(t *testing.T) {
	opposite := map[model.Side]model.Side{model.Left: model.Right, model.Right: model.Left, model.Front: model.Rear, model.Rear: model.Front, model.Roof: model.Roof}
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawnDay(t)
		there := dayOf(t, rig, places, wash)
		wash.Heading = quantity.Some(model.HeadingOf(wash.Heading.Or(0).Angle() + 180*quantity.Degree))
		back := dayOf(t, rig, places, wash)
		for i, m := range there.Steps {
			for _, x := range m.Faces {
				y, _ := back.Steps[i].Face(opposite[x.Side])
				require.InDelta(t, float64(x.Irradiance), float64(y.Irradiance), 1e-6)
				require.InDelta(t, rate(x.Dries), rate(y.Dries), 1e-9)
			}
		}
	})
}

// rate of drying, in films a second: zero where nothing dries.
func rate(dries quantity.Opt[quantity.Duration]) float64 { return 1 / float64(dries.Or(0)) }

// A section is soaped, washed and rinsed before it dries.
func TestASectionNeverTakesLongerThanItsDryingTime(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawnDay(t)
		p := mustMake(t, rig, places, wash)
		require.Len(t, p.Day.Start.Turns, 5)
		for _, turn := range p.Day.Start.Turns {
			seconds := 0.0
			for _, s := range p.Stages {
				if !s.Final && slices.Contains(s.Faces, turn.Side) {
					seconds += s.Passes * float64(turn.Section.Or(0)) / float64(s.Coverage)
				}
			}
			require.LessOrEqual(t, seconds, float64(turn.Dries.Or(0))*slack, string(turn.Side))
		}
	})
}

// A drip never takes more than its share of what the film lasts.
func TestADripNeverOutlastsTheFilm(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawnDay(t)
		wash.Pause = quantity.Some(quantity.Duration(rapid.Float64Range(0, 1800).Draw(t, "pause")))
		p := mustMake(t, rig, places, wash)
		require.False(t, math.IsNaN(float64(p.DI.Volume)))
		for _, f := range p.Faces {
			require.LessOrEqual(t, f.Pause, wash.Pause.Or(0))
			require.Positive(t, float64(f.Film))
		}
	})
}

// The memory gives the very plan that Make gives, whatever came before.
func TestMemoryChangesNothing(t *testing.T) {
	var memory planner.Memory
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawnDay(t)
		for range 2 {
			got, err := memory.Make(rig, places, wash)
			require.NoError(t, err)
			require.Equal(t, mustMake(t, rig, places, wash), got)
			wash.Start = quantity.Some(model.TimeOfDay{Hour: rapid.IntRange(0, 23).Draw(t, "another hour")})
		}
	})
}
