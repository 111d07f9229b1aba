package trip

import "math"

// An end is how a bed ends on one water, in depths: its front stands so far before its
// outlet when that passes the limit (a margin below zero), behind a layer at work that
// takes as much as so deep a bed holds before the front sets out ([bed.Column]).
type end struct{ margin, layer float64 }

// hardestEnd is the end on the water of the trip that allows least.
func hardestEnd(legs []leg) end {
	var hardest end
	for k := range legs {
		if l := &legs[k]; !l.barred && l.at().Main.Units > 0 {
			d := l.at()
			at := end{min(math.Log(d.Limit/d.Feed)/d.Main.Units, 0), 1 / d.Main.Units}
			if hardest.layer == 0 || at.margin < hardest.margin {
				hardest = at
			}
		}
	}
	return hardest
}

// left is the part of a bed's life that is left: what it may still be fed on the water
// of the end, over what a fresh one of its contact may be fed in all. It has been fed
// what a bed of the depth fed holds, and its front stands at the depth front.
func (e end) left(contact, fed, front float64) float64 {
	taken := min(fed, front+e.layer)
	return min(max(1-taken/max(contact+e.margin+e.layer, 1e-9), 0), 1)
}
