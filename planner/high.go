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
	const usual = learning.PenFloor * learning.PenSpread
	return r.Counts && !math.IsNaN(expected) && expected <= nearZero && r.PPM-expected > usual
}
