package learning

import "math"

// cell is a stretch of ln k at one contact, with how likely it is.
type cell struct {
	e         float64
	t, width  float64 // the contact's place along t, and the step it stands for
	low, high float64 // of ln k
	ln        float64 // of its mass
}

// search finds where the posterior is, without missing a narrow peak: along ln k
// the truth of each reading only rises, so the best that a stretch can hold is
// bounded by its two ends, and a stretch is dropped only where that bound is
// hopeless.
type search struct {
	outset Outset
	spread float64 // of ln r, gallons included
	sights []sight
	fronts fronts
	front  []float64
	best   float64 // ln of the highest density so far
	cells  []cell
}

// point is the posterior's density at one ln k.
type point struct {
	x, ln float64
	truth []float64 // of each sight
}

const (
	// hopeless is how far below the best, in ln, a stretch is dropped: 1 in 160 000.
	hopeless = 12
	// mostHalvings of a first step along ln k, down to 0.0002.
	mostHalvings = 8
	firstPoints  = 32
)

func newSearch(o Outset, c course, sights []sight, step float64) *search {
	s := &search{outset: o, spread: math.Hypot(o.spread, ThroughputSpread), sights: sights, best: math.Inf(-1)}
	reach := Reach * s.spread
	s.fronts = c.fronts(math.Log(LeastEfficiency)-o.median-reach, -o.median+reach, step)
	s.front = make([]float64, len(c.cuts))
	return s
}

// run walks the contacts twice: coarsely over all of them, then finely over
// those that are likely.
func (s *search) run(coarse, fine int) {
	low, high := s.likely(coarse)
	s.cells = make([]cell, 0, 2*fine*firstPoints) // what there are without readings
	step := (high - low) / float64(fine)
	lines := make([]line, fine)
	for i := range lines {
		lines[i] = s.first(low+(float64(i)+0.5)*step, step)
	}
	for _, l := range lines {
		s.refine(l)
	}
}

// likely is the range of t that holds all but a little of the posterior.
func (s *search) likely(coarse int) (low, high float64) {
	const little = 9 // ln: one in 8 000
	lines, mass := make([]line, coarse), make([]float64, coarse)
	for i := range lines {
		lines[i] = s.first((float64(i)+0.5)/float64(coarse), 1/float64(coarse))
	}
	most := math.Inf(-1)
	for i, l := range lines {
		s.cells = s.cells[:0]
		s.refine(l)
		mass[i] = lnSum(s.cells)
		most = math.Max(most, mass[i])
	}
	first, last := coarse, 0
	for i, m := range mass {
		if m > most-little {
			first, last = min(first, i), max(last, i)
		}
	}
	return math.Max(float64(first-1)/float64(coarse), 0), math.Min(float64(last+2)/float64(coarse), 1)
}

// lnSum is ln of the mass of all cells.
func lnSum(cells []cell) float64 {
	top := math.Inf(-1)
	for _, c := range cells {
		top = math.Max(top, c.ln)
	}
	if math.IsInf(top, -1) {
		return top
	}
	sum := 0.0
	for _, c := range cells {
		sum += math.Exp(c.ln - top)
	}
	return top + math.Log(sum)
}

// line is all ln k at one contact.
type line struct {
	e, weight float64 // weight: ln
	t, width  float64
	points    []point
}

func (s *search) first(t, step float64) line {
	l := line{e: efficiencyAt(t), weight: s.outset.lnContact(t) + math.Log(step), t: t, width: step, points: make([]point, firstPoints)}
	middle, reach := math.Log(l.e)-s.outset.median, Reach*s.spread
	for i := range l.points {
		x := middle + reach*(2*float64(i)/(firstPoints-1)-1)
		l.points[i] = s.look(l, x)
	}
	return l
}

// look works the density out at one point.
func (s *search) look(l line, x float64) point {
	s.fronts.read(x, s.front)
	p := point{x: x, truth: make([]float64, len(s.sights))}
	var all product
	for i, r := range s.sights {
		p.truth[i] = r.truth(l.e, s.front[r.cut])
		all.times(r.weight(p.truth[i]))
	}
	z := (math.Log(l.e) - x - s.outset.median) / s.spread
	p.ln = all.log() - z*z/2 + l.weight
	s.best = math.Max(s.best, p.ln)
	return p
}

// bound is the highest that the density can be between two points.
func (s *search) bound(l line, a, b point) float64 {
	var all product
	for i, r := range s.sights {
		all.times(r.best(a.truth[i], b.truth[i]))
	}
	middle := math.Log(l.e) - s.outset.median
	z := (math.Min(math.Max(middle, a.x), b.x) - middle) / s.spread
	return all.log() - z*z/2 + l.weight
}

func (s *search) refine(l line) {
	for i := 1; i < len(l.points); i++ {
		s.split(l, l.points[i-1], l.points[i], mostHalvings)
	}
}

// split halves a stretch until the density is near a straight line along it.
func (s *search) split(l line, a, b point, halvings int) {
	const smooth, level = 0.15, 1.2
	if math.Max(a.ln, b.ln) < s.best-hopeless && s.bound(l, a, b) < s.best-hopeless {
		return
	}
	m := s.look(l, (a.x+b.x)/2)
	flat := math.Abs(a.ln-b.ln) < level && math.Abs(m.ln-(a.ln+b.ln)/2) < smooth
	if flat || halvings == 0 {
		s.keep(l, a, m)
		s.keep(l, m, b)
		return
	}
	s.split(l, a, m, halvings-1)
	s.split(l, m, b, halvings-1)
}

func (s *search) keep(l line, a, b point) {
	top := math.Max(a.ln, b.ln)
	density := (math.Exp(a.ln-top) + math.Exp(b.ln-top)) / 2
	s.cells = append(s.cells, cell{e: l.e, t: l.t, width: l.width, low: a.x, high: b.x, ln: top + math.Log((b.x-a.x)*density)})
}
