package learning

import (
	"slices"
	"sort"
)

// otherScale is what readings show when the pen is on another scale than said.
type otherScale struct {
	ratio    float64 // shown over what the scale said would show
	readings []int   // those that it matters to
}

// scaleRatios are how far the scales of pens lie apart: a pen that shows uS/cm
// or 442 read as NaCl and the other way round. PUBLISHED: the pairs of
// conductivity and ppm of the pens' standard solutions (447 uS/cm is 215.5 ppm as
// NaCl and 300 as 442).
func scaleRatios() []float64 {
	const as442, asConductivity = 300 / 215.5, 447 / 215.5
	return []float64{1 / asConductivity, 1 / as442, as442, asConductivity}
}

const (
	// fewest readings over nothing that a scale is judged by.
	fewestScaled = 3
	// sureOfScale is how much better, in ln, another scale must foresee all
	// readings: 150 to 1, since it is a rare fault.
	sureOfScale = 5
	// tellingPPM is the least reading in which a scale shows.
	tellingPPM = 5
)

// otherScale looks for one ratio that explains all readings together, where one
// by one they fit badly.
func (o Outset) otherScale(f Fill, p Posterior) (otherScale, bool) {
	var telling []int
	for i, r := range f.Readings {
		if r.counts() && r.Sense == Shown && r.Read >= tellingPPM {
			telling = append(telling, i)
		}
	}
	if len(telling) < fewestScaled || !p.badly(telling) {
		return otherScale{}, false
	}
	best, plain := otherScale{readings: telling}, p.mass
	most := plain + sureOfScale
	for _, ratio := range scaleRatios() {
		if mass := o.massOf(f.rescaled(telling, ratio)); mass > most {
			best.ratio, most = ratio, mass
		}
	}
	return best, best.ratio > 0
}

// badly tells whether most of some readings lie further from what they should be
// than a pen errs. A single odd one is no scale.
func (p Posterior) badly(readings []int) bool {
	const worse = 1.5 // times the pen's variance; by chance one reading in five
	misses := make([]float64, len(readings))
	for k, i := range readings {
		miss := (shown(p.fill.Readings[i].Read) - shown(p.Expected[i][1])) / PenSpread
		misses[k] = miss * miss
	}
	slices.Sort(misses)
	return misses[len(misses)/2] > worse
}

// massOf is ln of how well an outset foresees the readings of a fill.
func (o Outset) massOf(f Fill) float64 {
	c := f.course()
	s := newSearch(o, c, f.sights(c), coarseFronts)
	s.run(coarseContacts, coarseContacts)
	return lnSum(s.cells)
}

func (f Fill) rescaled(readings []int, ratio float64) Fill {
	f.Readings = slices.Clone(f.Readings)
	for _, i := range readings {
		f.Readings[i].Read /= ratio
	}
	return f
}

// suspects lists the readings of a pen on another scale, and what was suspect
// beside.
func (s otherScale) suspects(f Fill, plain []Suspect) []Suspect {
	var out []Suspect
	for _, i := range s.readings {
		r := f.Readings[i]
		at := Suspect{ReadingIndex: i, Odd: 1, Expected: r.Read / s.ratio}
		c := circumstances{Reading: r, share: r.Read / r.Feed, expected: at.Expected, ratio: s.ratio}
		for _, k := range causes() {
			if k.code == OtherScale || k.code == OtherFeed {
				at.Causes = append(at.Causes, Cause{k.code, k.note(c)})
			}
		}
		out = append(out, at)
	}
	for _, other := range plain {
		if !slices.Contains(s.readings, other.ReadingIndex) {
			out = append(out, other)
		}
	}
	sort.Slice(out, func(i, j int) bool { return out[i].ReadingIndex < out[j].ReadingIndex })
	return out
}
