package planner_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/planner"
)

// slowDay is a day on which all starts hurry someone, and the best is so late that the
// wash ends without the sun.
func slowDay(t require.TestingT) planner.Plan {
	rig, places, wash := aDay(t)
	set(t, &rig.Vehicles[0], "colour", "black")
	set(t, &wash, "heading", "north", "high", "70 F", "low", "20 F", "dew_point", "15 F", "wind", "12 mph")
	return mustMake(t, rig, places, wash)
}

func TestARecommendedWashThatEndsWithoutTheSunIsTold(t *testing.T) {
	p := slowDay(t)
	best, given := p.Day.Recommended.Get()
	require.True(t, given)
	require.True(t, best.End.After(p.Day.Sun.Set.Or(time.Time{})), "the day is made so: %s", best.Label)
	var words string
	for _, n := range p.Warnings {
		if n.Code == "ends-without-sun" {
			words = n.Format
		}
	}
	sunset := p.Day.Sun.Set.Or(time.Time{}).Format("15:04")
	assert.Contains(t, words, "The wash as recommended ends at "+best.End.Format("15:04")+", after sunset at "+sunset+", in ")
	why := slices.IndexFunc(p.Reasons, func(r planner.Reason) bool { return r.Number == "recommended start" })
	require.GreaterOrEqual(t, why, 0)
	assert.Contains(t, p.Reasons[why].Inputs[1].Words, "after sunset at "+sunset)
	rig, places, wash := aDay(t)
	assert.NotContains(t, codes(mustMake(t, rig, places, wash).Warnings), "ends-without-sun")
	set(t, &wash, "start", "20:30")
	p = mustMake(t, rig, places, wash)
	require.Contains(t, codes(p.Warnings), "ends-without-sun")
	for _, n := range p.Warnings {
		if n.Code == "ends-without-sun" {
			assert.True(t, strings.HasPrefix(n.Format, "The wash begun at 20:30 ends at "), n.Format)
		}
	}
}

// The order of the faces goes by the heading; how long they take together does not.
func TestAWashEndsAsLateWithoutAHeading(t *testing.T) {
	rig, places, wash := aDay(t)
	set(t, &wash, "start", "9:00")
	ordered := mustMake(t, rig, places, wash).Day.Start
	set(t, &wash, "heading", "")
	unknown := mustMake(t, rig, places, wash).Day.Start
	require.Less(t, len(unknown.Turns), len(ordered.Turns))
	assert.WithinDuration(t, ordered.End, unknown.End, time.Second)
}
