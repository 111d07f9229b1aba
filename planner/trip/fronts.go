package trip

import (
	"math"

	"washeve/planner/bed"
)

// Taking each of a thousand columns through sixty washes would be slow. But in the
// depth y = e x (e the contact, x the depth over the whole) the equations of
// [bed.Column] hold the contact and the capacity f only as k = e/f, and e alone says
// at which y the bed ends (the derivation is in planner/learning/replay.go). So a
// few columns, one for each of some k, stand for all of one water.
//
// The waters are not one: each state has its own loads. What moves the front is how
// much has been fed in all, and the order and the flows only shape the working layer
// before it. So a state whose washes took more than the middle ones by a factor
// stands where one of as much larger k stands. That is exact where the factor is the
// same for all washes; the tests compare it with columns marched one by one.

// depth is how deep the columns are taken, over the deepest bed, so that one that
// has run out is far past the end of any bed that matters.
const depth = 2.5

// fronts is a fill on its way, for some k.
type fronts struct {
	lnLow, step float64
	k           []float64
	columns     []bed.Column
	y           []float64
	fed         float64 // stated capacities, in the middle
}

const (
	nodeStep = 0.15 // of ln k
	beyond   = 1.0  // how far past the states' own k the columns go, in ln k
	fewTails = 4    // exponentials that tell the loading of a column on the way
)

// newFronts starts columns for ln k from low to high, which have been fed so much at
// so many units.
func newFronts(low, high, fed, units float64) *fronts {
	n := int(math.Ceil((high-low+2*beyond)/nodeStep)) + 2
	f := &fronts{lnLow: low - beyond, step: nodeStep, k: make([]float64, n), columns: make([]bed.Column, n), y: make([]float64, n)}
	for i := range f.k {
		f.k[i] = math.Exp(f.lnLow + float64(i)*f.step)
	}
	f.feed(units, fed)
	return f
}

// feed passes so many stated capacities at so many units.
func (f *fronts) feed(units, capacities float64) {
	f.fed += capacities
	for i, k := range f.k {
		f.columns[i] = f.columns[i].Feed(depth*units, k/depth*capacities).Thin(fewTails)
		f.y[i] = depth * f.columns[i].Spent()
	}
}

// at is the depth of the front for a k.
func (f *fronts) at(k float64) float64 {
	last := len(f.k) - 1
	switch {
	case k <= f.k[0]:
		return f.y[0] * k / f.k[0]
	case k >= f.k[last]:
		return f.y[last] + (k-f.k[last])*f.fed
	}
	i := min(int((math.Log(k)-f.lnLow)/f.step), last-1)
	return f.y[i] + (k-f.k[i])/(f.k[i+1]-f.k[i])*(f.y[i+1]-f.y[i])
}

// alike is what a fresh bed of k = e/f would have to be fed at so many units to
// stand as a column does, in stated capacities.
func alike(c bed.Column, factor, contact, units float64) float64 {
	n := contact * units
	if spent := c.Spent(); spent > 0 {
		return factor * (spent + 1/n)
	}
	return factor * c.Used() / -math.Expm1(-n)
}
