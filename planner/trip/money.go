package trip

import (
	"math"
	"strings"

	"washeve/model/quantity"
)

// Sum is money that adds up without rounding: hundredths by currency, as typed,
// and how many parts of it have no price. A part without a price is not free of
// cost: it makes the sum "at least".
type Sum struct {
	Parts   []quantity.Money // one for each currency, in the order met
	Unknown int
}

// add puts a part in; one that is not known is counted.
func (s Sum) add(part quantity.Opt[quantity.Money]) Sum {
	m, known := part.Get()
	if !known {
		s.Unknown++
		return s
	}
	parts := append([]quantity.Money(nil), s.Parts...)
	for i := range parts {
		if parts[i].Currency == m.Currency {
			parts[i].Hundredths += m.Hundredths
			s.Parts = parts
			return s
		}
	}
	parts = append(parts, m)
	s.Parts = parts
	return s
}

// plus adds two sums.
func (s Sum) plus(other Sum) Sum {
	for _, m := range other.Parts {
		s = s.add(quantity.Some(m))
	}
	s.Unknown += other.Unknown
	return s
}

// Known tells that every part has its price.
func (s Sum) Known() bool { return s.Unknown == 0 }

// Nothing tells that there are no parts at all, known or not.
func (s Sum) Nothing() bool { return s.Unknown == 0 && len(s.Parts) == 0 }

// String is the sum in words: "$12.40", "at least $12.40 and 3.00 EUR", or "not
// known".
func (s Sum) String() string {
	switch {
	case s.Nothing():
		return "nothing"
	case len(s.Parts) == 0:
		return "not known"
	}
	texts := make([]string, len(s.Parts))
	for i, m := range s.Parts {
		texts[i] = m.String()
	}
	text := strings.Join(texts, " and ")
	if s.Unknown > 0 {
		return "at least " + text
	}
	return text
}

// meter shares the price of one fill out over the washes that use it. It rounds
// the running total, not the parts, so that the parts add up to the total however
// many there are.
type meter struct {
	price quantity.Opt[quantity.Money]
	used  float64 // fills so far
	told  int64   // hundredths so far
}

// share is the price of a further part of the fill.
func (m *meter) share(part float64) quantity.Opt[quantity.Money] {
	price, known := m.price.Get()
	if !known || math.IsInf(part, 0) || math.IsNaN(part) {
		return quantity.Opt[quantity.Money]{}
	}
	m.used += part
	total := int64(math.Round(m.used * float64(price.Hundredths)))
	now := total - m.told
	m.told = total
	return quantity.Some(quantity.Money{Hundredths: now, Currency: price.Currency})
}
