// Package bed computes how a mixed bed of resin is used up and how it lets go.
package bed

import "math"

// Column is the state of a bed: how far it is spent, and how the resin beyond
// is loaded. The zero value is a fresh bed.
//
// Film diffusion with a one-way isotherm (Wicke; Perry's Chemical Engineers'
// Handbook, constant patterns, external mass transfer; MEMORY): with x the
// depth from the inlet over the whole depth, s the end of the spent part and N
// the transfer units at the flow of the moment,
//
//	c/c0  = exp(-N (x - s))           for x > s
//	dq/dT = N exp(-N (x - s))         T: equivalents fed over capacity
//	q     = 1                         for x < s
//
// Every stretch of use at one N adds one exponential to the loading beyond s.
// So the loading is carried as that sum, which is exact for any history of
// flows and needs no grid:
//
//	q(x) = sum of b exp(-n (x - s))   for x > s
//
// The front sits still until the resin at s is full, (1 - q(s))/N; then it
// moves to the s' at which
//
//	T = integral of (1 - q) from s to s'  +  (1 - q(s'))/N
//
// which follows from the two lines above with the front's own equation
// (own derivation; checked against testdata/reference/bed-breakthrough.csv).
type Column struct {
	spent float64 // s, 0 to 1
	tails []tail
}

// A tail is one exponential of the loading: b at the front, falling with n.
type tail struct{ b, n float64 }

// mostTails bounds the work for a long history of changing flows. Past it the
// two tails of nearest n become one.
const mostTails = 48

// Spent is the part of the depth that is used up, 0 to 1.
func (c Column) Spent() float64 { return c.spent }

// Loading is q at the depth x (0 inlet, 1 outlet), 0 to 1.
func (c Column) Loading(x float64) float64 {
	if x < c.spent || c.spent >= 1 {
		return 1
	}
	q := 0.0
	for _, t := range c.tails {
		q += t.b * math.Exp(-t.n*(x-c.spent))
	}
	return math.Min(q, 1)
}

// Used is the part of the whole capacity that is taken, 0 to 1.
func (c Column) Used() float64 {
	if c.spent >= 1 {
		return 1
	}
	used := c.spent
	for _, t := range c.tails {
		used += t.b / t.n * -math.Expm1(-t.n*(1-c.spent))
	}
	return used
}

// Outlet is c/c0 at the outlet, with n transfer units at the flow of the
// moment.
func (c Column) Outlet(n float64) float64 {
	if c.spent >= 1 {
		return 1
	}
	return math.Exp(-n * (1 - c.spent))
}

// Until is how much more can be fed at n transfer units, in capacities, before
// the outlet passes the fraction c/c0 of the feed; 0 where it has passed.
func (c Column) Until(n, fraction float64) float64 {
	if fraction >= 1 {
		fraction = 1
	}
	at := 1 + math.Log(fraction)/n
	if at <= c.spent || c.spent >= 1 {
		return 0
	}
	return c.throughput(n, at)
}

// Feed passes t capacities of feed at n transfer units and gives the state
// after. Both must be above zero for anything to happen.
func (c Column) Feed(n, t float64) Column {
	if !(n > 0) || !(t > 0) || c.spent >= 1 {
		return c
	}
	deficit := 1 - c.atFront()
	if t*n <= deficit {
		return Column{spent: c.spent, tails: movedTails(c.tails, 0, tail{b: n * t, n: n})}
	}
	if t >= c.throughput(n, 1) {
		return Column{spent: 1}
	}
	front := c.frontAfter(n, t)
	q := c.Loading(front)
	return Column{spent: front, tails: movedTails(c.tails, front-c.spent, tail{b: 1 - q, n: n})}
}

func (c Column) atFront() float64 {
	sum := 0.0
	for _, t := range c.tails {
		sum += t.b
	}
	return math.Min(sum, 1)
}

// throughput is the feed at n transfer units that brings the front to x.
func (c Column) throughput(n, x float64) float64 {
	fed, _ := c.advance(n, x)
	return fed
}

// advance is [Column.throughput] and how it grows with x.
func (c Column) advance(n, x float64) (fed, slope float64) {
	q, taken, slope := 0.0, 0.0, 1.0
	for _, t := range c.tails {
		e := math.Exp(-t.n * (x - c.spent))
		q += t.b * e
		taken += t.b / t.n * (1 - e)
		slope += t.b * e * (t.n/n - 1)
	}
	return (x - c.spent) - taken + (1-math.Min(q, 1))/n, slope
}

// frontAfter solves throughput(n, x) = t for x by Newton's steps held in a
// bracket, from where a settled front would be. The left side only grows with x.
func (c Column) frontAfter(n, t float64) float64 {
	const close = 1e-12
	low, high := c.spent, 1.0
	x := math.Min(c.spent+math.Max(t-(1-c.atFront())/n, 0), 1)
	for range 60 {
		fed, slope := c.advance(n, x)
		miss := fed - t
		if math.Abs(miss) < close {
			return x
		}
		if miss > 0 {
			high = x
		} else {
			low = x
		}
		if x -= miss / slope; !(x > low && x < high) {
			x = (low + high) / 2
		}
	}
	return x
}

// movedTails takes the tails to a front that went d further, and adds one.
func movedTails(tails []tail, d float64, added tail) []tail {
	moved := make([]tail, 0, len(tails)+1)
	for _, t := range tails {
		t.b *= math.Exp(-t.n * d)
		if t.b > 1e-14 {
			moved = append(moved, t)
		}
	}
	return joinTail(moved, added)
}

// joinTail adds to the tail of the same n where there is one, and keeps the
// number of tails bounded.
func joinTail(tails []tail, added tail) []tail {
	for i := range tails {
		if math.Abs(tails[i].n-added.n) <= 1e-9*added.n {
			tails[i].b += added.b
			return tails
		}
	}
	tails = append(tails, added)
	if len(tails) > mostTails {
		tails = mergeNearest(tails)
	}
	return tails
}

// mergeNearest makes one tail of the two whose n are nearest: the same loading
// at the front and the same capacity taken by an endless column.
func mergeNearest(tails []tail) []tail {
	bi, bj, best := 0, 1, math.Inf(1)
	for i := range tails {
		for j := i + 1; j < len(tails); j++ {
			if d := math.Abs(math.Log(tails[i].n / tails[j].n)); d < best {
				bi, bj, best = i, j, d
			}
		}
	}
	a, b := tails[bi], tails[bj]
	sum := a.b + b.b
	tails[bi] = tail{b: sum, n: sum / (a.b/a.n + b.b/b.n)}
	return append(tails[:bj], tails[bj+1:]...)
}

// ClosedForm is the outlet of a fresh bed of n transfer units after t
// capacities at one flow (the formula at [Column], solved).
func ClosedForm(n, t float64) float64 { return math.Exp(LnClosedForm(n, t)) }

// LnClosedForm is the logarithm of [ClosedForm], for who compares many.
func LnClosedForm(n, t float64) float64 {
	switch {
	case t <= 1/n:
		return -n
	case t >= 1+1/n:
		return 0
	}
	return n*(t-1) - 1
}
