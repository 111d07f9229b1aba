package planner

import (
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// DripShare is the part of a film's life that a drip may take: edges and thin
// places dry first. PRACTICE.
const DripShare = 0.5

// drip is a face whose drip before the final rinse is cut short.
type drip struct {
	side  model.Side
	most  quantity.Duration // what it may be
	dries quantity.Duration // how long the film of the stated drip lasts
}

// bound cuts the drips short that would let a face dry before its final rinse,
// with the film that the shorter one leaves.
func (d *DayPlan) bound(stages []model.Stage, faces []face) []drip {
	if d == nil {
		return nil
	}
	var cut []drip
	for i := range faces {
		f := &faces[i]
		turn, _ := d.Start.Turn(f.side)
		dries, given := turn.Dries.Get()
		if !given || !finallyRinsed(stages, f.side) {
			continue
		}
		lost := float64(d.faces[i].film) / float64(dries) // a second
		if most := f.longestDrip(lost); most < f.pause {
			cut = append(cut, drip{side: f.side, most: most, dries: quantity.Duration(float64(f.film) / lost)})
			f.pause, f.film = most, f.filmAt(most)
		}
	}
	return cut
}

// longestDrip is the longest drip, up to the face's own, in which no more than
// [DripShare] of the film dries, where so many metres of it are lost a second.
func (f face) longestDrip(lost float64) quantity.Duration {
	holds := func(p quantity.Duration) bool { return float64(p)*lost <= DripShare*float64(f.filmAt(p)) }
	if holds(f.pause) {
		return f.pause
	}
	low, high := quantity.Duration(0), f.pause
	for range 30 {
		if middle := (low + high) / 2; holds(middle) {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}

func finallyRinsed(stages []model.Stage, side model.Side) bool {
	return slices.ContainsFunc(stages, func(s model.Stage) bool { return s.Final && slices.Contains(s.Faces, side) })
}

// tellDrips warns of drips that are cut short.
func tellDrips(l *ledger, cut []drip) {
	if len(cut) == 0 {
		return
	}
	var parts []string
	var values []quantity.Value
	for _, c := range cut {
		parts = append(parts, "the "+string(c.side)+" lasts %s wet and gets %s")
		values = append(values, quantity.ValueOf(c.dries), quantity.ValueOf(c.most))
	}
	l.warn("drip-dries", "The drip before the final rinse is cut short, or the face dries first: "+strings.Join(parts, ", ")+".", values...)
}

// Drip is what a longer pause before the final rinse would save.
type Drip struct {
	Pause, Longer quantity.Duration
	Saves         quantity.Volume
}
