package air

import (
	"math"
	"time"

	"washeve/model/quantity"
	"washeve/planner/drying/sun"
)

// Swing is the air's temperature through a day of a low and a high: half a
// sine from shortly after sunrise to sunset, then a fall that flattens toward
// the next sunrise.
//
// W. Parton and J. Logan, Agricultural Meteorology 23 (1981) 205, with their
// constants for air at 1.5 m: highest 1.86 h after noon, night decay 2.20,
// lowest 0.17 h before sunrise. PUBLISHED, as quoted in the documentation of an
// R package on microclimate. Their mean error was about 2 K on clear days.
// Two changes: the night's fall is stretched to end on the low where theirs
// stops a tenth short, and a day without sunrise or sunset gets a plain sine
// with its top at the same hour. Fronts, sea breeze and fog are not in it.
type Swing struct {
	low, high float64 // K
	lowest    time.Time
	dayTime   float64 // h from the lowest to sunset
	full      float64 // h of the whole sine: twice the time from low to high
	night     float64 // h from sunset to the next lowest
	plain     bool
	top       time.Time
}

const (
	highestAfterNoon = 1.86
	nightDecay       = 2.20
	lowestAfterRise  = -0.17
)

// NewSwing makes the day's curve. High below low is turned round.
func NewSwing(low, high quantity.Temperature, day sun.Day) Swing {
	s := Swing{low: float64(min(low, high)), high: float64(max(low, high))}
	s.top = day.Transit.Add(hours(highestAfterNoon + lowestAfterRise))
	rise, rises := day.Rise.Get()
	set, sets := day.Set.Get()
	if !rises || !sets {
		s.plain = true
		return s
	}
	s.lowest = rise.Add(hours(lowestAfterRise))
	s.dayTime = set.Sub(s.lowest).Hours()
	s.full = set.Sub(rise).Hours() + 2*highestAfterNoon
	s.night = 24 - s.dayTime
	return s
}

// At is the temperature at an instant; the day repeats before and after.
func (s Swing) At(t time.Time) quantity.Temperature {
	if s.plain {
		phase := 2 * math.Pi * t.Sub(s.top).Hours() / 24
		return quantity.Temperature((s.low+s.high)/2 + (s.high-s.low)/2*math.Cos(phase))
	}
	m := math.Mod(t.Sub(s.lowest).Hours(), 24)
	if m < 0 {
		m += 24
	}
	if m <= s.dayTime {
		return quantity.Temperature(s.low + (s.high-s.low)*s.sine(m))
	}
	fall := (math.Exp(-nightDecay*(m-s.dayTime)/s.night) - math.Exp(-nightDecay)) / (1 - math.Exp(-nightDecay))
	return quantity.Temperature(s.low + (s.high-s.low)*s.sine(s.dayTime)*fall)
}

func (s Swing) sine(m float64) float64 { return math.Sin(math.Pi * m / s.full) }

func hours(h float64) time.Duration { return time.Duration(h * float64(time.Hour)) }
