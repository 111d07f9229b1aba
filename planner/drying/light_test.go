package drying_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
)

// Civil twilight lasts about half an hour at this latitude: almanacs give 30 min at 35
// degrees in June.
func TestTheLightAfterSunset(t *testing.T) {
	f := day(t, coach())
	set := f.Sun.Set.Or(time.Time{})
	rise := f.Sun.Rise.Or(time.Time{})
	for _, c := range []struct {
		at    time.Time
		light drying.Light
	}{
		{rise.Add(-time.Hour), drying.Dark}, {rise.Add(-20 * time.Minute), drying.Twilight}, {rise, drying.Daylight},
		{set.Add(-time.Second), drying.Daylight}, {set, drying.Twilight}, {set.Add(28 * time.Minute), drying.Twilight},
		{set.Add(33 * time.Minute), drying.Dark}, {set.Add(5 * time.Hour), drying.Dark},
	} {
		assert.Equal(t, c.light, f.LightAt(c.at), c.at)
	}
}

// At 65 degrees in June the sun comes up again before the night has begun: what ends then
// ends in its light, though this day's sun has set.
func TestTheNextSunIsSeen(t *testing.T) {
	in := coach()
	in.Place.Latitude, in.Date = 65*deg, model.Date{Year: 2026, Month: 6, Day: 20}
	f := day(t, in)
	set := f.Sun.Set.Or(time.Time{})
	rise := in.Place.Day(set, set.Add(24*time.Hour)).Rise.Or(time.Time{})
	require.Less(t, rise.Sub(set), 2*time.Hour)
	assert.Equal(t, drying.Twilight, f.LightAt(set.Add(rise.Sub(set)/2)))
	assert.Equal(t, drying.Daylight, f.LightAt(rise.Add(time.Minute)))
	late := drying.Start{At: set.Add(-time.Minute), End: rise.Add(time.Minute)}
	assert.Empty(t, f.EndsWithoutSun(late))
	late.End = rise.Add(-time.Minute)
	assert.Equal(t, "after sunset at "+set.Format("15:04")+", in twilight", f.EndsWithoutSun(late))
}

func TestAStartTellsThatItEndsWithoutTheSun(t *testing.T) {
	f := day(t, coach())
	set := f.Sun.Set.Or(time.Time{})
	told := map[drying.Light]int{}
	for _, s := range f.Starts {
		words := f.EndsWithoutSun(s)
		light := f.LightAt(s.End)
		told[light]++
		switch {
		case f.Sun.Up(s.End):
			assert.Empty(t, words, s.Label)
		case s.End.Before(set):
			assert.Contains(t, words, "before sunrise at ", s.Label)
		default:
			assert.Contains(t, words, "after sunset at "+set.Format("15:04"), s.Label)
		}
		assert.Equal(t, light == drying.Twilight, words != "" && words[len(words)-len("twilight"):] == "twilight", words)
	}
	assert.Len(t, told, 3, "there is one of each")

	in := coach()
	in.Place.Latitude, in.Date = 69*deg, model.Date{Year: 2026, Month: 12, Day: 21}
	f = day(t, in)
	require.NotEmpty(t, f.Starts)
	assert.Equal(t, "without the sun, which does not rise, in twilight", f.EndsWithoutSun(f.Starts[0]))
}

// A longer drip makes the faces of a morning hurry by little. The evening, which is easy, is
// not recommended instead where it ends without the sun.
func TestNoStartThatEndsLateIsRecommended(t *testing.T) {
	in := coach()
	in.Date = model.Date{Year: 2026, Month: 11, Day: 29}
	in.Weather.Low, in.Weather.High = quantity.Some(quantity.Celsius(4)), quantity.Some(quantity.Celsius(10))
	in.Weather.DewPoint = quantity.Some(quantity.Celsius(0))
	for i := range in.Faces {
		in.Faces[i].Work = quantity.Some(20 * quantity.Minute)
		in.Faces[i].Rinse = quantity.Some(24 * quantity.Minute)
	}
	f := day(t, in)
	var easyLate bool
	for _, s := range f.Starts {
		easyLate = easyLate || s.Easy && s.EndsLate
		require.Equal(t, f.LightAt(s.End) != drying.Daylight, s.EndsLate, s.Label)
	}
	best, given := f.Recommended.Get()
	require.True(t, given && easyLate)
	require.False(t, best.EndsLate)
	require.Equal(t, "no easy start ends by daylight", f.NoneEasy())
}
