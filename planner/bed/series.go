package bed

import "math"

// Series is two beds one behind the other: what leaves the lead is the feed of
// the lag. The zero value but for Ratio is two fresh beds.
//
// In the lag the lines of [Column] hold, with what leaves the lead, c1, in the
// place of the feed and E, the equivalents that have come in over its capacity,
// in the place of T:
//
//	c     = c1 exp(-N (x - s))              for x > s
//	dq/dE = N exp(-N (x - s))
//
// The one-way isotherm takes up to the full capacity from any water, so neither
// the loading nor the front asks how strong the water is: time enters only
// through E. So the lag is as after the same equivalents at full strength, which
// [Column.Feed] gives without error, and those equivalents are what was fed less
// what the lead took up. The pair is as exact as one bed, for any history of
// flows (own derivation; the check: two like beds, never swapped, are one bed of
// their depth together).
type Series struct {
	Lead, Lag Column
	Ratio     float64 // capacity of the lag over that of the lead; above zero
}

// Feed passes t capacities of the lead, at so many transfer units in each bed,
// and gives the state after. All must be above zero for anything to happen.
func (s Series) Feed(lead, lag, t float64) Series {
	if !(lead > 0) || !(lag > 0) || !(t > 0) || !(s.Ratio > 0) {
		return s
	}
	after := s.Lead.Feed(lead, t)
	passed := math.Max(t-(after.Used()-s.Lead.Used()), 0)
	return Series{Lead: after, Lag: s.Lag.Feed(lag, passed/s.Ratio), Ratio: s.Ratio}
}

// Outlet is c/c0 after the lag. What leaves the lead alone is
// [Column.Outlet] of Lead.
func (s Series) Outlet(lead, lag float64) float64 { return s.Lead.Outlet(lead) * s.Lag.Outlet(lag) }

// Until is how much more can be fed, in capacities of the lead, before the
// outlet of the pair passes the fraction c/c0 of the feed; 0 where it has
// passed.
func (s Series) Until(lead, lag, fraction float64) float64 {
	if s.Outlet(lead, lag) >= math.Min(fraction, 1) {
		return 0
	}
	worn := s
	toWear := 0.0
	if s.Lead.spent < 1 {
		toWear = s.Lead.throughput(lead, 1)
		worn = s.Feed(lead, lag, toWear)
	}
	if worn.Outlet(lead, lag) <= fraction {
		return toWear + s.Ratio*worn.Lag.Until(lag, fraction)
	}
	low, high := 0.0, toWear
	for range 52 {
		if middle := (low + high) / 2; s.Feed(lead, lag, middle).Outlet(lead, lag) > fraction {
			high = middle
		} else {
			low = middle
		}
	}
	return low
}

// Swap takes the lead out, moves the lag to its place and puts a fresh bed last,
// of so many capacities of the moved one.
func (s Series) Swap(ratio float64) Series { return Series{Lead: s.Lag, Ratio: ratio} }

// settling is how many swaps are more than enough for one to be like the next.
const settling = 8

// Round is one turn from swap to swap when one has become like the next: Fed is
// the feed, in capacities of one bed, and Used the part of the lead's capacity
// that is taken when it leaves.
type Round struct{ Fed, Used float64 }

// Rounds is the turn of like beds of so many transfer units each, swapped when
// the outlet of the pair passes the fraction of the feed.
func Rounds(units, fraction float64) Round {
	s := Series{Ratio: 1}
	var r Round
	for range settling {
		r.Fed = s.Until(units, units, fraction)
		s = s.Feed(units, units, r.Fed)
		r.Used = s.Lead.Used()
		s = s.Swap(1)
	}
	return r
}
