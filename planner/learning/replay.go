package learning

import (
	"math"

	"washeve/planner/bed"
)

// Replaying a fill for every capacity and contact would be slow. But in the
// depth y = e x (e the contact, x the depth over the whole) the equations of
// [bed.Column] hold e and the capacity r only as k = e/r, since with N = e n
//
//	c/c0 = exp(-n (y - s))      feed counted as k times stated capacities
//
// and e alone says at which y the bed ends. So one replay for each k, of a bed
// of perfect contact, gives the front s for all contacts at once, and the
// outlet is exp(-n (e - s)) (own derivation; the tests compare it with the
// column itself).

// fronts is how deep the front stands at each cut of a course, over ln k.
type fronts struct {
	low, step float64     // of ln k
	at        [][]float64 // by ln k, then by cut
}

// fronts replays the course at steps of ln k.
func (c course) fronts(low, high, step float64) fronts {
	n := int(math.Ceil((high-low)/step)) + 2
	f := fronts{low: low, step: (high - low) / float64(n-1), at: make([][]float64, n)}
	all := make([]float64, n*len(c.cuts))
	for i := range f.at {
		f.at[i] = all[i*len(c.cuts) : (i+1)*len(c.cuts)]
		c.walk(math.Exp(low+f.step*float64(i)), f.at[i])
	}
	return f
}

// replayDepth is a little more than any contact, so that a bed runs out past
// the last y that matters: there the front makes a jump.
const replayDepth = 1.1

// walk replays the course for one k.
func (c course) walk(k float64, front []float64) {
	var column bed.Column
	done := 0
	for i, cut := range c.cuts {
		for ; done < cut; done++ {
			column = column.Feed(replayDepth*c.uses[done].Units, k/replayDepth*c.uses[done].Capacities)
		}
		front[i] = replayDepth * column.Spent()
	}
}

// read gives the fronts at ln k = x.
func (f fronts) read(x float64, into []float64) {
	p := math.Min(math.Max((x-f.low)/f.step, 0), float64(len(f.at)-1))
	i := min(int(p), len(f.at)-2)
	part := p - float64(i)
	below, above := f.at[i], f.at[i+1]
	for j := range into {
		into[j] = below[j] + part*(above[j]-below[j])
	}
}

// column replays the whole course for a bed of capacity r and contact e.
func (c course) column(r, e float64) bed.Column {
	var column bed.Column
	for _, u := range c.uses {
		column = column.Feed(e*u.Units, u.Capacities/r)
	}
	return column
}
