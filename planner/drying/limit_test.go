package drying_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
	"washeve/planner/drying/sun"
)

func clockTime(hour int) quantity.Opt[model.TimeOfDay] {
	return quantity.Some(model.TimeOfDay{Hour: hour})
}

func TestShadeKeepsTheSunOff(t *testing.T) {
	in := coach()
	open := at(t, day(t, in), 9, model.Right)
	in.Shades = []model.Shade{{Side: model.Right, From: clockTime(8), To: clockTime(11), By: "the oak"}}
	f := day(t, in)
	shaded := at(t, f, 9, model.Right)
	assert.True(t, shaded.Shaded)
	assert.False(t, shaded.Sunlit)
	assert.Less(t, shaded.Irradiance, open.Irradiance/3)
	assert.Greater(t, shaded.Dries.Or(0), open.Dries.Or(0))
	assert.True(t, at(t, f, 11, model.Right).Sunlit)
}

func TestShadePastMidnightAndAllDay(t *testing.T) {
	in := coach()
	in.Shades = []model.Shade{{Side: model.Right, From: clockTime(20), To: clockTime(9)}, {Side: model.Roof}}
	f := day(t, in)
	assert.True(t, at(t, f, 8, model.Right).Shaded)
	assert.False(t, at(t, f, 9, model.Right).Shaded)
	assert.False(t, at(t, f, 13, model.Roof).Sunlit)
}

func codes(f drying.Forecast) string {
	var out []string
	for _, l := range f.Limits {
		out = append(out, l.Note.Code)
	}
	for _, n := range f.Notes {
		out = append(out, n.Code)
	}
	return strings.Join(out, " ")
}

func TestLimits(t *testing.T) {
	in := coach()
	assert.Contains(t, codes(day(t, in)), "hot-panel")
	assert.NotContains(t, codes(day(t, in)), "freezing")
	in.TankLimit = quantity.Some(quantity.Celsius(30))
	hot := day(t, in)
	assert.Contains(t, codes(hot), "hot-tank")
	for _, l := range hot.Limits {
		assert.False(t, l.To.Before(l.From))
		assert.NotContains(t, l.Note.Text(quantity.US), "%!")
	}
	in = coach()
	in.Date = model.Date{Year: 2026, Month: 1, Day: 12}
	in.Weather.Low, in.Weather.High = quantity.Some(quantity.Celsius(-6)), quantity.Some(quantity.Celsius(5))
	in.Weather.DewPoint = quantity.Some(quantity.Celsius(-8))
	assert.Contains(t, codes(day(t, in)), "freezing")
}

func TestPolarDaysAndChangingClocks(t *testing.T) {
	in := coach()
	in.Place, in.Zone = sun.Place{Latitude: 71 * deg, Longitude: 25.8 * deg}, zone("Europe/Oslo")
	in.Date = model.Date{Year: 2026, Month: 6, Day: 21}
	assert.Contains(t, codes(day(t, in)), "polar-day")
	in.Date = model.Date{Year: 2026, Month: 12, Day: 21}
	assert.Contains(t, codes(day(t, in)), "polar-night")
	in.Date = model.Date{Year: 2026, Month: 3, Day: 29}
	f := day(t, in)
	assert.Contains(t, codes(f), "clocks-change")
	assert.Len(t, f.Steps, 92)
}
