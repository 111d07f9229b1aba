package quantity

import "math"

// bound says of a value that it is a limit, which no rounding may loosen.
type bound int8

const (
	most  bound = iota + 1 // shown no greater than it is
	least                  // shown no less
)

// AtMost is a limit from above, such as a cap: it is shown rounded down.
func AtMost[Q Quantity](q Q) Value { return Value{Kind: q.Kind(), SI: float64(q), bound: most} }

// AtLeast is a limit from below, such as the time that a jug must take: it is shown rounded
// up. A length of time is shown in whole seconds up to ten minutes, under ten seconds in
// tenths; of a whole second up to a tenth is let go, which nobody stops a watch to.
func AtLeast[Q Quantity](q Q) Value { return Value{Kind: q.Kind(), SI: float64(q), bound: least} }

// watched is the least time as it is held with a watch.
func watched(d Duration) Duration {
	const finest, noise = 0.1, 1e-6
	s := d.Seconds()
	if s > 9.9 {
		return Duration(math.Ceil(s-finest)) * Second
	}
	return Duration(math.Ceil(10*s-noise)/10) * Second
}

// within rounds a number as [Round] does, to the side that the bound allows.
func (b bound) within(v float64) float64 {
	const noise = 1e-6 // of the last digit: what sums in floating point leave
	if b == 0 || math.IsNaN(v) || math.IsInf(v, 0) {
		return v
	}
	scale := math.Pow(10, float64(decimals(v)))
	if b == most {
		return math.Floor(v*scale+noise) / scale
	}
	return math.Ceil(v*scale-noise) / scale
}
