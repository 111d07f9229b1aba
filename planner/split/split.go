// Package split shares out what a short bed can give: which faces get DI water, so
// that the spots which would show most are spared.
package split

import (
	"cmp"
	"math"
	"math/bits"
	"slices"

	"washeve/model/quantity"
)

// Pin is what a person has decided of a face.
type Pin uint8

// A face is left to the split, or has DI water, or has none.
const (
	Free Pin = iota
	In
	Out
)

// Face is one candidate.
type Face struct {
	Needs quantity.Volume // DI water to rinse it, all of it or none
	Worth Worth           // of the spots that this spares
	Shows float64         // how much a spot shows on it, 0 to 1: for the order
	Pin   Pin
}

// Worth is what DI water spares: an area in square millimetres, times how much a
// spot shows on it in thousandths, times the bands of spots between softened
// water and DI. It is a whole number, so that sums of it are exact.
type Worth int64

// WorthOf is the worth of sparing an area some bands of spots. Shows is from 0 to
// 1. Nothing is spared where that is less than nothing.
func WorthOf(area quantity.Area, shows float64, bands int) Worth {
	const squareMillimetre, thousandth = 1e-6, 1e-3
	v := math.Round(float64(area)/squareMillimetre) * math.Round(shows/thousandth) * float64(bands)
	if !(v > 0) {
		return 0
	}
	return Worth(math.Min(v, math.MaxInt64/64))
}

// Choice is who gets DI water.
type Choice struct {
	In    []int           // faces, what shows most first; those that show alike as given
	Needs quantity.Volume // of them all
	Worth Worth
	Short quantity.Volume // that those pinned in need over the budget, else 0
}

// Best is the choice of most worth that the budget allows. Of choices of equal
// worth it is the one of least water, then the one that has the face first given.
//
// It is a 0-1 knapsack, solved exactly in whole microlitres and whole worths by
// branch and bound (Kolesar, Management Science 13 (1967) 723; the bound is
// Dantzig's, Operations Research 5 (1957) 266; MEMORY for both). Needs are rounded
// up, the budget down, so that a choice never takes more than there is. The faces
// pinned in are taken first; where they alone pass the budget, they are the choice
// and Short says by how much.
func Best(faces []Face, budget quantity.Volume) Choice {
	s := searchOf(faces, budget)
	if s.left >= 0 {
		s.try(0, s.left, 0, nil)
	}
	return s.choice(s.best.taken)
}

// whole is a face in whole numbers.
type whole struct{ needs, worth int64 }

// microlitres is the finest water that is told apart.
const microlitres = 1e9 // in a cubic metre

// most keeps sums of a few faces within bounds.
const most = math.MaxInt64 / 64

func wholeUp(v quantity.Volume) int64 {
	return int64(math.Min(math.Ceil(math.Max(float64(v)*microlitres, 0)), most))
}

func wholeDown(v quantity.Volume) int64 {
	if !(v > 0) {
		return 0
	}
	return int64(math.Min(math.Floor(float64(v)*microlitres), most))
}

// search is a branch and bound on its way.
type search struct {
	faces []Face
	whole []whole
	free  []int // worth something and fitting, the most worth a litre first
	left  int64 // of the budget, after those pinned in; below zero where they pass it
	best  found
}

type found struct {
	worth, needs int64
	taken        []int
	any          bool
}

func searchOf(faces []Face, budget quantity.Volume) *search {
	s := &search{faces: faces, left: wholeDown(budget)}
	for _, f := range faces {
		w := whole{wholeUp(f.Needs), max(int64(f.Worth), 0)}
		s.whole = append(s.whole, w)
		if f.Pin == In {
			s.left -= w.needs
		}
	}
	for i, f := range faces {
		if f.Pin == Free && s.whole[i].worth > 0 && s.whole[i].needs <= s.left {
			s.free = append(s.free, i)
		}
	}
	slices.SortStableFunc(s.free, func(a, b int) int { return s.denser(s.whole[a], s.whole[b]) })
	return s
}

// denser puts more worth a litre first.
func (s *search) denser(a, b whole) int {
	ah, al := bits.Mul64(uint64(a.worth), uint64(b.needs))
	bh, bl := bits.Mul64(uint64(b.worth), uint64(a.needs))
	if ah != bh {
		return cmp.Compare(bh, ah)
	}
	return cmp.Compare(bl, al)
}

// try goes on from the face at a place of the order.
func (s *search) try(at int, left, worth int64, taken []int) {
	if at == len(s.free) {
		s.note(s.left-left, worth, taken)
		return
	}
	if s.best.any && worth+s.bound(at, left) < s.best.worth {
		return
	}
	i := s.free[at]
	if w := s.whole[i]; w.needs <= left {
		s.try(at+1, left-w.needs, worth+w.worth, append(taken[:len(taken):len(taken)], i))
	}
	s.try(at+1, left, worth, taken)
}

// bound is what the faces from a place on can be worth at most: the densest that
// fit, and of the first that does not, the part that would.
func (s *search) bound(at int, left int64) int64 {
	sum := int64(0)
	for _, i := range s.free[at:] {
		w := s.whole[i]
		if w.needs > left {
			high, low := bits.Mul64(uint64(w.worth), uint64(left))
			part, _ := bits.Div64(high, low, uint64(w.needs))
			return sum + int64(part)
		}
		sum, left = sum+w.worth, left-w.needs
	}
	return sum
}

// note keeps a choice that is better than the best so far.
func (s *search) note(needs, worth int64, taken []int) {
	b := &s.best
	sorted := slices.Sorted(slices.Values(taken))
	order := cmp.Or(cmp.Compare(worth, b.worth), cmp.Compare(b.needs, needs), slices.Compare(b.taken, sorted))
	if !b.any || order > 0 {
		*b = found{worth: worth, needs: needs, taken: sorted, any: true}
	}
}

func (s *search) choice(free []int) Choice {
	all := slices.Clone(free)
	for i, f := range s.faces {
		if f.Pin == In {
			all = append(all, i)
		}
	}
	c := Choice{In: byShows(s.faces, all), Short: quantity.Volume(max(-s.left, 0)) / microlitres}
	for _, i := range c.In {
		c.Needs += s.faces[i].Needs
		c.Worth += Worth(s.whole[i].worth)
	}
	return c
}

// byShows puts what shows most first, and keeps the order given among equals.
func byShows(faces []Face, some []int) []int {
	out := slices.Sorted(slices.Values(some))
	slices.SortStableFunc(out, func(a, b int) int { return cmp.Compare(faces[b].Shows, faces[a].Shows) })
	return out
}
