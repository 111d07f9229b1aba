package drying_test

import (
	"regexp"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
)

// The sun is on a face while it is up, and neither before sunrise nor after sunset: looks
// every quarter of an hour do not make the day longer.
func TestTheSunIsOnAFaceOnlyWhileItIsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := day(t, anyInput(t))
		for _, s := range f.Sunlit {
			at := f.Sun
			if s.From.Before(at.Transit.Add(-12 * time.Hour)) {
				continue // of the night's other end, by a sunset behind midnight
			}
			require.False(t, s.From.Before(at.Rise.Or(s.From)), "%s: sun from %s, sunrise %s", s.Side, s.From, at.Rise.Or(s.From))
			require.False(t, s.To.After(at.Set.Or(s.To)), "%s: sun to %s, sunset %s", s.Side, s.To, at.Set.Or(s.To))
		}
	})
}

var until = regexp.MustCompile(`^in the sun until (\d\d:\d\d)$`)

// The words of an order keep to it: an evening's sun lasts until sunset, told as the sun's
// hours tell it.
func TestAnEveningsSunIsToldUntilSunset(t *testing.T) {
	in := coach()
	in.Date = model.Date{Year: 2026, Month: time.November, Day: 30}
	in.Heading = quantity.Some(model.HeadingOf(0))
	f := day(t, in)
	set := f.Sun.Set.Or(time.Time{}).Format("15:04")
	told := map[string]bool{}
	for _, s := range f.Starts {
		for _, turn := range s.Turns {
			if m := until.FindStringSubmatch(turn.Why); m != nil {
				told[m[1]] = true
				require.LessOrEqual(t, m[1], set, turn.Why)
			}
		}
	}
	assert.True(t, told[set], "sunset at %s, told until %v", set, told)
}
