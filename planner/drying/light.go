package drying

import (
	"time"

	"washeve/planner/drying/sun"
)

// Light is what there is to see by.
type Light string

// The lights: the sun, civil twilight, and less.
const (
	Daylight Light = "daylight"
	Twilight Light = "twilight"
	Dark     Light = "dark"
)

// LightAt is the light at an instant, of this day or of the night that follows, under a
// clear sky over a flat horizon. The sun of the next day counts, too: where nights are
// short, a wash that is begun in the evening may end in it.
func (f Forecast) LightAt(t time.Time) Light {
	const half = 12 * time.Hour
	switch {
	case f.place.Day(t.Add(-half), t.Add(half)).Up(t):
		return Daylight
	case f.place.At(t).Altitude > sun.Twilight:
		return Twilight
	}
	return Dark
}

// EndsWithoutSun says in words how a start ends while the sun is down, such as "after
// sunset at 19:34, in twilight"; "" where the sun is up at its end.
func (f Forecast) EndsWithoutSun(s Start) string {
	light := f.LightAt(s.End)
	if light == Daylight || !s.End.After(s.At) {
		return ""
	}
	seen := map[Light]string{Twilight: ", in twilight", Dark: ", in the dark"}[light]
	if set, sets := f.Sun.Set.Get(); sets && !s.End.Before(set) {
		return "after sunset at " + set.Format("15:04") + seen
	}
	if rise, rises := f.Sun.Rise.Get(); rises {
		return "before sunrise at " + rise.Format("15:04") + seen
	}
	return "without the sun, which does not rise" + seen
}
