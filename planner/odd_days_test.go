package planner_test

import (
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
)

// Where the sun is odd: a place, a date, and what is right or said of it.
func TestOddDays(t *testing.T) {
	for _, c := range []struct {
		name, latitude, longitude, zone, date string
		steps                                 int
		note                                  string // code among the notes
	}{
		{"polar day", "71 N", "25.8 E", "Europe/Oslo", "2026-06-21", 96, "polar-day"},
		{"polar night", "71 N", "25.8 E", "Europe/Oslo", "2026-12-21", 96, "polar-night"},
		{"pole", "90 S", "0 E", "Antarctica/McMurdo", "2026-12-21", 96, "polar-day"},
		{"date line, west of it", "1.9 N", "157.4 W", "Pacific/Kiritimati", "2026-06-12", 96, ""},
		{"date line, east of it", "14.3 S", "170.7 W", "Pacific/Pago_Pago", "2026-06-12", 96, ""},
		{"southern summer", "36.9 S", "174.8 E", "Pacific/Auckland", "2026-01-12", 96, ""},
		{"leap day", "38.5 N", "109 W", "America/Denver", "2028-02-29", 96, ""},
		{"hour that does not exist", "38.5 N", "109 W", "America/Denver", "2026-03-08", 92, "clocks-change"},
		{"hour that comes twice", "38.5 N", "109 W", "America/Denver", "2026-11-01", 100, "clocks-change"},
	} {
		rig, places, wash := aDay(t)
		set(t, &places[0], "latitude", c.latitude, "longitude", c.longitude, "zone", c.zone)
		set(t, &wash, "date", c.date)
		d := dayOf(t, rig, places, wash)
		assert.Len(t, d.Steps, c.steps, c.name)
		assert.Equal(t, c.date, d.Date.String(), c.name)
		assert.Equal(t, c.date, d.Sun.Transit.Format(time.DateOnly), c.name)
		if c.note != "" {
			assert.Contains(t, codes(d.Notes), c.note, c.name)
		} else {
			assert.Empty(t, d.Notes, c.name)
			rise, set := d.Sun.Rise.Or(time.Time{}), d.Sun.Set.Or(time.Time{})
			assert.True(t, rise.Before(d.Sun.Transit) && d.Sun.Transit.Before(set), c.name)
		}
	}
}

// At noon the sun stands north of a southern place, and shines on the nose of
// a coach that points there.
func TestSouthernNoon(t *testing.T) {
	rig, places, wash := aDay(t)
	set(t, &places[0], "latitude", "36.9 S", "longitude", "174.8 E", "zone", "Pacific/Auckland")
	set(t, &wash, "heading", "north")
	d := dayOf(t, rig, places, wash)
	m, _ := d.At(d.Sun.Transit)
	front, _ := m.Face(model.Front)
	rear, _ := m.Face(model.Rear)
	assert.True(t, front.Sunlit)
	assert.False(t, rear.Sunlit)
}

func TestStartsThatTheClockSkipsOrShowsTwice(t *testing.T) {
	rig, places, wash := aDay(t)
	set(t, &wash, "date", "2026-03-08", "start", "2:30")
	p := mustMake(t, rig, places, wash)
	assert.False(t, p.Day.Chosen.Given())
	i := slices.Index(codes(p.Warnings), "start-skipped")
	require.GreaterOrEqual(t, i, 0)
	assert.Contains(t, p.Warnings[i].Text(quantity.US), "02:30 does not exist on 2026-03-08 in America/Denver")

	set(t, &wash, "date", "2026-11-01", "start", "1:30")
	d := dayOf(t, rig, places, wash)
	assert.Equal(t, "01:30 MDT", d.Start.Label)
	assert.Contains(t, codes(d.Notes), "start-twice")
}
