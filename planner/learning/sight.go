package learning

import "math"

// OddShare is how many readings have a cause that no bed explains: an open
// bypass, an unflushed cup, a slip of the pen. PRACTICE: one in a hundred.
const OddShare = 0.01

// sight is a reading made ready for weighing.
type sight struct {
	index int // among the fill's readings
	cut   int
	units float64
	feed  float64
	z     float64 // of what was shown
	sense Sense
	zero  bool    // the pen showed nothing, which is all it can show below zero
	odd   float64 // weight of a cause that no bed explains
}

func (f Fill) sights(c course) []sight {
	var out []sight
	for i, r := range f.Readings {
		if r.counts() {
			out = append(out, r.sight(i, c.place[f.place(r)]))
		}
	}
	return out
}

// An odd reading may be anything from nothing to twice the feed, evenly in what
// the pen shows.
func (r Reading) sight(index, cut int) sight {
	s := sight{index: index, cut: cut, units: r.Units, feed: r.Feed, z: shown(r.Read), sense: r.Sense, zero: r.Read == 0}
	width := shown(2*r.Feed) - shown(0) + oddBelow
	switch {
	case r.Sense != Shown:
		s.odd = OddShare / 2
	case s.zero:
		s.odd = OddShare * oddBelow / width
	default:
		s.odd = OddShare / width
	}
	return s
}

// oddBelow is the part of the odd readings' range that a pen shows as zero.
const oddBelow = 2 * PenSpread

// Past this many units to go the outlet is nothing to a pen.
const nothing = 13

var shownNothing = shown(0)

// truth is what the pen would show without error, for a bed that ends at e with
// its front at s.
func (s sight) truth(e, front float64) float64 {
	ahead := s.units * (e - front)
	if ahead > nothing {
		return shownNothing
	}
	if ahead <= 0 {
		return shown(s.feed)
	}
	return shown(s.feed * math.Exp(-ahead))
}

// weight of the reading where m would be shown without error: the pen's normal
// error, or the odd cause.
func (s sight) weight(m float64) float64 {
	const peak = (1 - OddShare) / (PenSpread * 2.5066282746310002)
	miss := (s.z - m) / PenSpread
	switch {
	case s.sense == AtLeast:
		return s.odd + (1-OddShare)*normalBelow(-miss)
	case s.sense == AtMost || s.zero:
		return s.odd + (1-OddShare)*normalBelow(miss)
	}
	return s.odd + peak*math.Exp(-miss*miss/2)
}

// best is the most that the reading can weigh where m is between two values.
func (s sight) best(low, high float64) float64 {
	switch {
	case s.sense == AtLeast:
		return s.weight(high)
	case s.sense == AtMost || s.zero:
		return s.weight(low)
	}
	return s.weight(math.Min(math.Max(s.z, low), high))
}

// normalBelow is the normal distribution function.
func normalBelow(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

// product multiplies weights without running out of numbers.
type product struct {
	ln, part float64
	n        int
}

func (p *product) times(w float64) {
	if p.n == 0 {
		p.part = 1
	}
	p.part *= w
	if p.n++; p.n%24 == 0 {
		p.ln += math.Log(p.part)
		p.part = 1
	}
}

func (p *product) log() float64 {
	if p.n == 0 {
		return 0
	}
	return p.ln + math.Log(p.part)
}
