package planner_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
	"washeve/planner"
)

// A longitude without its letter is one of the east, and the zone knows better.
func TestALongitudeThatCannotBeInItsZoneIsToldFirst(t *testing.T) {
	for _, c := range []struct{ longitude, zone, want string }{
		{"112.07", "America/Phoenix", "Longitude 112.07 E cannot be in the zone America/Phoenix. Is 112.07 W meant? The sun would be highest at 21:31: every hour of this day is wrong."},
		{"73.98", "America/New_York", "Is 73.98 W meant?"},
		{"159.5", "Pacific/Honolulu", "Is 159.5 W meant?"},
		{"-151.2", "Australia/Sydney", "Longitude 151.2 W cannot be in the zone Australia/Sydney. Is 151.2 E meant?"},
		{"10.75", "America/Denver", "Longitude 10.75 E cannot be in the zone America/Denver. One of the two is wrong."},
	} {
		rig, places, wash := aDay(t)
		set(t, &places[0], "latitude", "33.45", "longitude", c.longitude, "zone", c.zone)
		p := mustMake(t, rig, places, wash)
		require.NotEmpty(t, p.Warnings)
		assert.Equal(t, planner.Misplaced, p.Warnings[0].Code)
		assert.Contains(t, p.Warnings[0].Text(quantity.US), c.want)
	}
}

// The widest that clocks of inhabited places are off the sun, by the borders of their zones,
// in summer time too; and both sides of the date line.
func TestNoRealPlaceIsMisplaced(t *testing.T) {
	for _, c := range []struct{ what, longitude, zone string }{
		{"the western border of China", "73.5 E", "Asia/Shanghai"},
		{"an island off western Alaska", "171.7 W", "America/Nome"},
		{"the last of the Aleutians", "172.9 E", "America/Adak"},
		{"the west of Spain", "9.3 W", "Europe/Madrid"},
		{"the west of the Yukon", "141 W", "America/Dawson"},
		{"the Line Islands", "157.4 W", "Pacific/Kiritimati"},
		{"Tonga", "175.2 W", "Pacific/Tongatapu"},
		{"Phoenix", "112.07 W", "America/Phoenix"},
		{"Greenwich", "0", "Europe/London"},
	} {
		rig, places, wash := aDay(t)
		set(t, &places[0], "longitude", c.longitude, "zone", c.zone)
		for _, n := range mustMake(t, rig, places, wash).Warnings {
			assert.NotEqual(t, planner.Misplaced, n.Code, c.what)
		}
	}
}

// A place is read back with its letters, whatever it was typed with.
func TestTheAssumptionsTellWhichSideOfTheWorld(t *testing.T) {
	rig, places, wash := aDay(t)
	set(t, &places[0], "latitude", "-33.45", "longitude", "112° 4' 12\" W")
	said := map[string]string{}
	for _, a := range mustMake(t, rig, places, wash).Assumptions {
		said[a.Name] = a.Words
	}
	assert.Equal(t, "33.45 S", said["latitude"])
	assert.Equal(t, "112.07 W", said["longitude"])
}
