package learning

import (
	"math"
	"slices"
)

// Evidence is one outlet reading.
type Evidence struct {
	Read, Feed float64 // ppm on one scale
	Units      float64 // of a perfect bed at the flow of the reading
}

// Sense says how a reading is meant.
type Sense uint8

// A pen shows a value. The end of a fill may say less: still at or under a
// limit, or over it.
const (
	Shown Sense = iota
	AtMost
	AtLeast
)

// Reading is an outlet reading at a point of a fill.
type Reading struct {
	Evidence
	After    int  // how many of the fill's uses came before it
	Standing bool // a first cup, not flushed: carried, not used
	Insisted bool // used all the same
	Sense    Sense
}

// Fill is what is known of one fill of resin, in the order of time. A wash in
// which a reading was taken is two uses.
type Fill struct {
	Uses     []Use
	Readings []Reading
}

// Ended adds what the end of a fill says where no reading was taken at it: the
// outlet was over the limit (spent), or still under it. limit.Read is the limit.
// It counts as the last of the readings.
func (f Fill) Ended(limit Evidence, spent bool) Fill {
	sense := AtMost
	if spent {
		sense = AtLeast
	}
	f.Readings = append(slices.Clone(f.Readings), Reading{Evidence: limit, After: len(f.Uses), Sense: sense})
	return f
}

// counts tells whether a reading is used.
func (r Reading) counts() bool { return r.sound() && (!r.Standing || r.Insisted) }

func (r Reading) sound() bool {
	return r.Read >= 0 && r.Feed > 0 && r.Units > 0 && !math.IsInf(r.Read+r.Feed+r.Units, 0)
}

// mostLevels is how many different flows a replay tells apart.
const mostLevels = 8

// levels rounds the transfer units of the uses to [mostLevels] values spread
// over their range, where they take more: the work of a replay grows with the
// number of different flows. On 300 random histories with N from 8 to 32 that
// moved ln(outlet) by 0.02 in the middle and by over 0.06 in one of 20 (own
// computation), against the pen's 0.25.
func levels(uses []Use) []Use {
	low, high := math.Inf(1), 0.0
	seen := map[float64]bool{}
	for _, u := range uses {
		low, high = math.Min(low, u.Units), math.Max(high, u.Units)
		seen[u.Units] = true
	}
	if len(seen) <= mostLevels {
		return uses
	}
	step := math.Log(high/low) / (mostLevels - 1)
	out := make([]Use, len(uses))
	for i, u := range uses {
		level := math.Round(math.Log(u.Units/low) / step)
		out[i] = Use{Capacities: u.Capacities, Units: low * math.Exp(level*step)}
	}
	return out
}

// course is a fill made ready for replay: sound uses, and the places along them
// at which something was read.
type course struct {
	uses  []Use
	cuts  []int // after so many uses, rising
	place []int // the cut that stands for "after so many of the fill's uses"
}

func (f Fill) course() course {
	at := make([]bool, len(f.Uses)+1)
	for _, r := range f.Readings {
		if r.sound() {
			at[f.place(r)] = true
		}
	}
	c := course{place: make([]int, len(f.Uses)+1)}
	sound := make([]Use, 0, len(f.Uses))
	ends := make([]int, 0, len(f.Uses)+1)
	for i := 0; ; i++ {
		if c.place[i] = len(ends); at[i] {
			ends = append(ends, len(sound))
		}
		if i == len(f.Uses) {
			break
		}
		if f.Uses[i].sound() {
			sound = append(sound, f.Uses[i])
		}
	}
	c.join(levels(sound), ends)
	return c
}

// join makes one use of neighbours at one flow that nothing was read between.
func (c *course) join(uses []Use, ends []int) {
	next := 0
	fresh := true
	for i := 0; ; i++ {
		for next < len(ends) && ends[next] == i {
			c.cuts = append(c.cuts, len(c.uses))
			fresh = true
			next++
		}
		if i == len(uses) {
			return
		}
		if n := len(c.uses); !fresh && c.uses[n-1].Units == uses[i].Units {
			c.uses[n-1].Capacities += uses[i].Capacities
			continue
		}
		c.uses = append(c.uses, uses[i])
		fresh = false
	}
}

func (f Fill) place(r Reading) int { return min(max(r.After, 0), len(f.Uses)) }
