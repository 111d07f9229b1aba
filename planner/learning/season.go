package learning

import (
	"math"
	"slices"

	"washeve/planner/bed"
)

// Many is the states of the posterior finer than a plan needs them: [EvenStates] of
// one weight, spread evenly along the capacity, and along the contact in each
// stretch of it. It costs a replay of the fill for each.
func (p Posterior) Many() []State {
	if p.search == nil {
		return nil
	}
	if len(p.ages) > 0 {
		return ofAges(p.ages, EvenStates, Posterior.Many)
	}
	return p.search.evenly().states(p.fill.course())
}

// evenly draws the states.
func (s *search) evenly() draws {
	share, rest := s.part()
	contact, gallons := Evenly(1), Evenly(2)
	bands := s.bands()
	out, below, k := make(draws, EvenStates), 0.0, 0
	for j := range out {
		want := (float64(j) + 0.5) / EvenStates
		for k < len(bands)-1 && below+bands[k].mass < want {
			below += bands[k].mass
			k++
		}
		c, within := bands[k].at(contact[j])
		along := math.Min((want-below)/bands[k].mass, 1)
		r := math.Log(c.e) - c.high + along*(c.high-c.low)
		f := s.outset.median + share*(r-s.outset.median) + rest*normalAt(gallons[j])
		out[j] = drawn{factor: math.Exp(f), r: math.Exp(r), e: efficiencyAt(c.t + (within-0.5)*c.width)}
	}
	return out
}

// capacityBand is the cells at about one capacity, by their contact.
type capacityBand struct {
	cells []cell
	mass  float64 // of all
}

// bands sorts the cells into bands of capacity, each of a small part of the mass.
func (s *search) bands() []capacityBand {
	const least = 1.0 / 128
	order := slices.Clone(s.cells)
	slices.SortStableFunc(order, func(a, b cell) int { return ascending(a.capacity(), b.capacity()) })
	all := lnSum(order)
	var bands []capacityBand
	var b capacityBand
	for i, c := range order {
		c.ln = math.Exp(c.ln - all)
		b.cells, b.mass = append(b.cells, c), b.mass+c.ln
		last := i == len(order)-1
		if last || b.mass >= least && order[i+1].capacity() > c.capacity() {
			slices.SortStableFunc(b.cells, func(a, b cell) int { return ascending(a.e, b.e) })
			bands, b = append(bands, b), capacityBand{}
		}
	}
	return bands
}

// at is the cell at a part of the band's mass, and how far into it.
func (b capacityBand) at(u float64) (cell, float64) {
	want := u * b.mass
	for i, c := range b.cells {
		if want <= c.ln || i == len(b.cells)-1 {
			return c, math.Min(want/math.Max(c.ln, 1e-300), 1)
		}
		want -= c.ln
	}
	return cell{}, 0
}

// capacity is ln of the capacity, over the gallons' factor, in the middle of the
// cell.
func (c cell) capacity() float64 {
	const grain = 1e-6 // the lines of all contacts begin with cells at the same capacities
	return math.Round((math.Log(c.e)-(c.low+c.high)/2)/grain) * grain
}

// Outset is what was believed of the fill before any reading of it.
func (p Posterior) Outset() Outset { return p.outset }

// AtAnyAge gives [EvenStates] states of one weight for a fill of which only a flushed reading
// is known: every age from fresh to a little past spent is thought equally likely
// before it, as in [ByReading].
func (o Outset) AtAnyAge(e Evidence) []State {
	const (
		tries  = 8 // candidates for each state
		n      = EvenStates
		oldest = 1.25
	)
	contacts := o.efficiencies(contactTable)
	sight := Reading{Evidence: e}.sight(0, 0)
	candidates := make([]State, 0, n*tries)
	for j := range n * tries {
		h := Hypothesis{Factor: math.Exp(o.median + o.spread*evenNormal(j, 0)), Efficiency: contactOf(contacts, even(j, 1))}
		age := oldest * (float64(j) + 0.5) / float64(n*tries)
		s := State{Hypothesis: h, Column: bed.Column{}.Feed(h.Efficiency*e.Units, age)}
		s.Weight = sight.weight(shown(e.Feed * s.Column.Outlet(s.Efficiency*e.Units)))
		candidates = append(candidates, s)
	}
	return thin(candidates, n)
}

// contactTable is how finely the contact is told in a table of its quantiles.
const contactTable = 64

// contactOf reads a table of quantiles at the part u, 0 to 1.
func contactOf(table []float64, u float64) float64 {
	x := math.Min(math.Max(u*float64(len(table))-0.5, 0), float64(len(table)-1))
	i := min(int(x), len(table)-2)
	return table[i] + (x-float64(i))*(table[i+1]-table[i])
}

// Refills says how the fills that follow one another in a user's tank may be, given
// those before.
//
// The factors of a user's fills lie lognormally about that user's own median with
// [FillSpread], so fills that hold much let the next be thought better of: the
// conjugate rule of the normal distribution on the logarithms, as in [After]. Each
// filling lies anew, so the contact of the next does not depend on that of the last.
type Refills struct {
	median, precision float64 // of ln of the user's own median, before the fill in the tank
	contacts          []float64
}

// Refills of a user whose fills were thought of so.
func (o Outset) Refills() Refills {
	const least = 1e-6 // keeps a user whose fills are known for certain within numbers
	common := math.Max(o.spread*o.spread-FillSpread*FillSpread, least)
	return Refills{median: o.median, precision: 1 / common, contacts: o.efficiencies(contactTable)}
}

// Factor is the middle of ln of the next fill's factor, and its spread, after so
// many fills whose ln factors sum up so.
func (r Refills) Factor(fills int, sum float64) (middle, spread float64) {
	const each = 1 / (FillSpread * FillSpread)
	precision := r.precision + float64(fills)*each
	return (r.precision*r.median + each*sum) / precision, math.Sqrt(FillSpread*FillSpread + 1/precision)
}

// Fill is the next fill: u and v, 0 to 1, say which of those that it may be.
func (r Refills) Fill(fills int, sum, u, v float64) Hypothesis {
	middle, spread := r.Factor(fills, sum)
	return Hypothesis{Factor: math.Exp(middle + spread*normalAt(u)), Efficiency: r.Contact(v), Weight: 1}
}

// Contact is the contact below which a part u of all fills lies.
func (r Refills) Contact(u float64) float64 { return contactOf(r.contacts, u) }

// normalAt is the quantile of the standard normal distribution.
func normalAt(u float64) float64 { return math.Sqrt2 * math.Erfinv(2*u-1) }
