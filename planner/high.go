package planner

import (
	"math"

	"washeve/model/quantity"
	"washeve/planner/learning"
	"washeve/planner/water"
)

// UsualScale is that of a reading of which neither the pen nor the person says one.
func UsualScale() quantity.Scale { return water.DefaultScale() }

// nearZero is up to where a bed that holds shows next to nothing on a pen, in ppm. PRACTICE.
const nearZero = 1.0

// penError is what a pen usually errs near zero, in ppm.
const penError = learning.PenFloor * learning.PenSpread

// High is the last reading of the present fill where both a pen's error near zero and an
// older fill explain it: more than a pen usually errs, where next to nothing was expected.
// It is false for one that fits no bed, of which [learning.Suspect] tells more.
func (b *BedPast) High() (PastReading, bool) {
	if b == nil || len(b.Present().Readings) == 0 {
		return PastReading{}, false
	}
	all := b.Present().Readings
	r := all[len(all)-1]
	return r, r.Suspect == nil && r.high(r.Expected)
}

// high tells that a reading is more than a pen usually errs, where next to nothing was expected.
func (r *PastReading) high(expected float64) bool {
	return r.Counts && !math.IsNaN(expected) && expected <= nearZero && r.PPM-expected > penError
}

// Steady is the least and the most that the readings of the present fill show, where all of
// them are low and alike: a pen that shows so much too much explains them as well as a bed
// that leaks, which they are weighed for. There must be two. PRACTICE: up to 10 ppm, and
// within twice the pen's error near zero of each other.
func (b *BedPast) Steady() (least, most float64, told bool) {
	const low, alike = 10, 2 * penError
	if b == nil {
		return 0, 0, false
	}
	least, count := math.Inf(1), 0
	for _, r := range b.Present().Readings {
		if !r.Counts {
			continue
		}
		if r.Suspect != nil {
			return 0, 0, false
		}
		least, most = min(least, r.PPM), max(most, r.PPM)
		count++
	}
	return least, most, count > 1 && least > penError && most <= low && most-least <= alike
}
