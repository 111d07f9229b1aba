package learning

import (
	"math"

	"washeve/model/quantity"
)

// How a hand goes over a body.
const (
	// PaceSpread is how far a user's own coverage rate may be from the usual one,
	// as the standard deviation of its logarithm. PRACTICE.
	PaceSpread = 0.3
	// HandSpread is how far one wash may be from the user's own rate. PRACTICE.
	HandSpread = 0.2
)

// Covered is one stage of a wash as it was done, with one sprayer and film.
type Covered struct {
	Area     quantity.Area
	Passes   float64 // once over where zero
	Duration quantity.Duration
}

// CoveredBy is a stage of which gallons and flow are known, not the minutes.
func CoveredBy(area quantity.Area, passes float64, v quantity.Volume, f quantity.Flow) Covered {
	return Covered{Area: area, Passes: passes, Duration: f.Time(v)}
}

// rate is area times passes over time; false where that is no rate.
func (c Covered) rate() (float64, bool) {
	passes := c.Passes
	if passes == 0 {
		passes = 1
	}
	rate := float64(c.Area) * passes / float64(c.Duration)
	return rate, rate > 0 && !math.IsInf(rate, 0)
}

// Pace is how fast the user goes over a body with one sprayer, for one kind of
// stage.
type Pace struct {
	P10, P50, P90 quantity.Coverage // of the next wash
	Count         int               // washes that it rests on
	SetAside      int               // washes too far off to be a pace
}

// IsPace tells whether a rate may be a hand's own: within three standard deviations of
// the usual one, which is about three times as fast or as slow.
func IsPace(done, usual quantity.Coverage) bool {
	return math.Abs(math.Log(float64(done/usual))) <= 3*math.Hypot(PaceSpread, HandSpread)
}

// LearnPace sharpens the usual rate by the washes as they were done.
//
// The user's own rate is lognormal about the usual one with [PaceSpread], a wash
// lognormal about the user's own with [HandSpread]: the conjugate rule of the
// normal distribution on the logarithms. A wash further than three standard
// deviations from the usual rate (a stage left running, a slip in the minutes)
// is set aside. Without a usual rate above zero there is no pace: all zero.
func LearnPace(usual quantity.Coverage, done []Covered) Pace {
	if !(usual > 0) || math.IsInf(float64(usual), 0) {
		return Pace{}
	}
	var p Pace
	precision, sum := 1/(PaceSpread*PaceSpread), 0.0
	for _, c := range done {
		rate, sound := c.rate()
		off := math.Log(rate / float64(usual))
		if !sound || !IsPace(quantity.Coverage(rate), usual) {
			p.SetAside++
			continue
		}
		p.Count++
		precision += 1 / (HandSpread * HandSpread)
		sum += off / (HandSpread * HandSpread)
	}
	const oneInTen = 1.2815515655446004 // normal quantile
	spread := math.Sqrt(1/precision + HandSpread*HandSpread)
	at := func(z float64) quantity.Coverage { return usual * quantity.Coverage(math.Exp(sum/precision+z*spread)) }
	p.P10, p.P50, p.P90 = at(-oneInTen), at(0), at(oneInTen)
	return p
}
