package model

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
)

// june is a day of June.
func june(day int) quantity.Opt[Date] { return quantity.Some(Date{Year: 2026, Month: 6, Day: day}) }

// twoThatDay is a trip on which two stops begin on the eighth, one of a water of no place.
func twoThatDay() Trip {
	return Trip{Stops: []Stop{
		{Date: june(1), Place: "home"}, {Date: june(8), Name: "the ford"}, {Date: june(8), Place: "lake", Name: "the cove"}, {Place: "never"},
	}}
}

func TestStopsOfADay(t *testing.T) {
	trip := twoThatDay()
	for day, want := range map[int][]int{1: {0}, 7: {0}, 8: {0, 1, 2}, 9: {2}} {
		assert.Equal(t, want, trip.StopsOn(june(day).Or(Date{})), day)
		assert.Equal(t, want[len(want)-1], trip.StopOn(june(day).Or(Date{})), day)
	}
	assert.Empty(t, trip.StopsOn(Date{Year: 2026, Month: 5, Day: 31}))
}

func TestAWashIsAtTheStopThatItNames(t *testing.T) {
	trip := twoThatDay()
	for _, c := range []struct {
		day         int
		place       string
		stop        int
		named, told bool // that the last is taken for want of a name
		wrong       string
	}{
		{8, "", 2, false, true, ""},
		{8, "Home", 0, true, false, ""},
		{8, "the ford", 1, true, false, ""},
		{8, "lake", 2, true, false, ""},
		{8, "THE COVE", 2, true, false, ""},
		{8, "never", 2, false, false, `"never" is no stop of 2026-06-08: the vehicle stands at home and the ford and lake then, and lake is taken; name a stop of that day, or leave the place out`},
		{9, "home", 2, false, false, `"home" is no stop of 2026-06-09: the vehicle stands at lake then, and lake is taken; name a stop of that day, or leave the place out`},
		{9, "", 2, false, false, ""},
	} {
		w := TripWash{Date: june(c.day), Place: c.place}
		stop, named := trip.StopOf(&w)
		assert.Equal(t, c.stop, stop, c)
		assert.Equal(t, c.named, named, c)
		assert.Equal(t, c.told, trip.Assumed(&w), c)
		assert.Equal(t, c.wrong, trip.Elsewhere(&w), c)
		var told []string
		trip.Washes = []TripWash{w}
		for _, f := range trip.Faults(nil, Places{{Name: "home"}, {Name: "lake"}, {Name: "never"}}, nil) {
			if f.Section == "wash" {
				assert.True(t, f.Lacks, "a stop may have moved since")
				told = append(told, f.Key+" "+f.Problem)
			}
		}
		assert.Equal(t, c.wrong != "", len(told) == 1, "%v %v", c, told)
	}
}
