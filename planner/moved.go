package planner

import (
	"math"

	"washeve/model/quantity"
)

// Moved is what the last reading of a fill did to the answer.
type Moved struct {
	Given           quantity.Volume   // by the fill, at the reading
	PPM, Expected   float64           // as it was, and by what was believed before it
	Before, After   quantity.Fraction // chance that the bed lasts, without it and with it
	Factor, Contact Change            // middle of what is believed
}

// Change is a number before and after.
type Change struct{ Before, After float64 }

// Falls tells that the number is clearly lower than it was.
func (c Change) Falls() bool { return c.After < c.Before*(1-0.03) }

// muchMoved is how much a chance must move to be worth a word. PRACTICE.
const muchMoved = 0.05

// moved tells what the last reading that counts did to the chance; false where that is
// little, or where a reading fits no bed.
func (f *FillPast) moved(r *resin, a asked, now quantity.Fraction) (Moved, bool) {
	last := len(f.Readings) - 1
	for last >= 0 && !f.Readings[last].Counts {
		last--
	}
	if last < 0 || len(f.posterior.Unexplained) > 0 || a.needless() {
		return Moved{}, false
	}
	q := f.posterior.Without(last)
	at := f.Readings[last]
	before := FillPast{Gallons: f.Gallons, posterior: q}
	before.settle()
	m := Moved{
		Given: at.Gallons, PPM: at.PPM, Expected: q.Expected[last][1],
		Before: r.foresee(before.stand, a).ChanceLasts, After: now,
		Factor:  Change{q.Factor[1], f.posterior.Factor[1]},
		Contact: Change{q.Contact[1], f.posterior.Contact[1]},
	}
	return m, !math.IsNaN(m.Expected) && math.Abs(float64(m.After-m.Before)) >= muchMoved
}
