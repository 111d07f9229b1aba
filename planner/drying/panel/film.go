package panel

import (
	"math"

	"washeve/model/quantity"
)

// DryTime is how long the film lasts at a rate of evaporation, as if it stayed
// even and whole to the end; a film that breaks into drops lasts longer. Where nothing
// evaporates it never ends (+Inf).
func DryTime(film quantity.Film, e quantity.Evaporation) quantity.Duration {
	if film <= 0 {
		return 0
	}
	if !(e > 0) {
		return quantity.Duration(math.Inf(1))
	}
	return quantity.Duration(waterDensity * float64(film) / float64(e))
}

// DryTimes is how long a film lasts that is put on at each of some moments, while the rate
// of evaporation goes on from one to the next in straight lines, and after the last stays
// as it is. Where dew falls the film stays: that it grows is left out, since dew runs off
// or is gone first. So what is wetted later never dries sooner. At an even rate it is
// [DryTime].
func DryTimes(film quantity.Film, rates []quantity.Evaporation, step quantity.Duration) []quantity.Duration {
	out := make([]quantity.Duration, len(rates))
	went := wentBy(rates, step)
	water := waterDensity * float64(film)
	for i, next := 0, 0; i < len(rates); i++ {
		for next = max(next, i); next+1 < len(rates) && went[next+1]-went[i] < water; {
			next++
		}
		rest := water - (went[next] - went[i])
		if next+1 == len(rates) {
			out[i] = quantity.Duration(next-i)*step + DryTime(quantity.Film(rest/waterDensity), rates[next])
			continue
		}
		out[i] = quantity.Duration(next-i)*step + within(rest, rates[next], rates[next+1], step)
	}
	return out
}

// wentBy is the water that has left a wet panel from the first moment to each, in kg/m2.
func wentBy(rates []quantity.Evaporation, step quantity.Duration) []float64 {
	out := make([]float64, len(rates))
	for i := 1; i < len(rates); i++ {
		out[i] = out[i-1] + float64((max(0, rates[i-1])+max(0, rates[i]))/2)*float64(step)
	}
	return out
}

// within is when water, in kg/m2, is gone between two moments: the root of
// water = now t + (then - now) t2 / (2 step).
func within(water float64, now, then quantity.Evaporation, step quantity.Duration) quantity.Duration {
	if water <= 0 {
		return 0
	}
	a, b := float64(max(0, now)), float64(max(0, then))
	return quantity.Duration(2 * water / (a + math.Sqrt(max(0, a*a+2*(b-a)/float64(step)*water))))
}
