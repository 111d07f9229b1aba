package learning

import (
	"math"

	"washeve/planner/bed"
)

// fresh is one way in which a fresh fill may let go, at one flow.
type fresh struct {
	units, factor float64
	ln            weighted // of outlet over feed
}

// Curve is outlet over feed after each number of capacities fed at units, from
// fresh. Between two ways the logarithm goes in a straight line.
func Curve(b Belief, units float64, capacities []float64) []Quantiles {
	curve := make([]Quantiles, len(capacities))
	ways, sorted := make([]fresh, len(b)), make([]weighted, len(b))
	for i, h := range b {
		ways[i] = fresh{units: h.Efficiency * units, factor: h.Factor, ln: weighted{weight: h.Weight}}
	}
	for k, fed := range capacities {
		for i := range ways {
			w := &ways[i]
			w.ln.value = bed.LnClosedForm(w.units, fed/w.factor)
		}
		settle(ways)
		for i := range ways {
			sorted[i] = ways[i].ln
		}
		for p, ln := range quantilesOfSorted(sorted) {
			curve[k][p] = math.Exp(ln)
		}
	}
	return curve
}

// settle sorts by insertion: from one point of the curve to the next few ways
// change places, and this curve is drawn at every key.
func settle(ways []fresh) {
	for i := 1; i < len(ways); i++ {
		w, j := ways[i], i
		for ; j > 0 && ways[j-1].ln.value > w.ln.value; j-- {
			ways[j] = ways[j-1]
		}
		ways[j] = w
	}
}
