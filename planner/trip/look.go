package trip

import (
	"math"

	"washeve/model/quantity"
)

// chance is that of the last wash alone.
func (w *walker) chance() quantity.Fraction {
	width, sum := bandwidth(w.margins), 0.0
	for _, m := range w.margins {
		sum += smooth(m / width)
	}
	return quantity.Fraction(sum / float64(len(w.margins)))
}

// look reads chances and, unless it is to be brief, bands off all states. worst is the
// least margin so far, in bandwidths.
func (w *walker) look(worst []float64, brief bool) seen {
	width := bandwidth(w.margins)
	var s seen
	chance, soFar := 0.0, 0.0
	for i, m := range w.margins {
		at := m / width
		worst[i] = min(worst[i], at)
		chance += smooth(at)
		soFar += smooth(worst[i])
	}
	n := float64(len(w.margins))
	s.chance, s.soFar = quantity.Fraction(chance/n), quantity.Fraction(soFar/n)
	if s.meanLife = w.meanLife(); brief {
		return s
	}
	s.life = w.lifeBand()
	ln := bandOf(w.outlets)
	s.outlet = Band[float64]{P10: math.Exp(ln.P10), P50: math.Exp(ln.P50), P90: math.Exp(ln.P90)}
	return s
}

// lifeNow is the life left before the first wash, and its mean.
func (w *walker) lifeNow() (Band[quantity.Fraction], float64) {
	for i := range w.lives {
		w.lives[i] = w.hardest.left(w.at(i))
	}
	return w.lifeBand(), w.meanLife()
}

// meanLife is what is left, on average, of the resin that the next change throws out.
func (w *walker) meanLife() float64 {
	if w.pairs != nil {
		return w.pairs.unused()
	}
	sum := 0.0
	for _, v := range w.lives {
		sum += v
	}
	return sum / float64(len(w.lives))
}

func (w *walker) lifeBand() Band[quantity.Fraction] {
	b := bandOf(w.lives)
	return Band[quantity.Fraction]{P10: quantity.Fraction(b.P10), P50: quantity.Fraction(b.P50), P90: quantity.Fraction(b.P90)}
}
