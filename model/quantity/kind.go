// Package quantity holds the physical quantities of the trade: one Go type per
// dimension, in SI inside, with the units that a person may write.
//
// A quantity enters as text with its unit ([Parse]) or as a constant times a
// number (1.4 * GPM), and leaves by a named method ([Flow.GPM]), by [Show] for
// people or by [Exact] for files.
package quantity

import "strings"

// System is the family of units that numbers are shown in.
type System uint8

// The two families. US customary is the zero value, and the default.
const (
	US System = iota
	Metric
)

// ParseSystem reads "us" or "metric".
func ParseSystem(text string) (System, error) {
	switch strings.ToLower(strings.TrimSpace(text)) {
	case "us":
		return US, nil
	case "metric":
		return Metric, nil
	}
	return US, &ParseError{What: "units", Text: text, Reason: "is no system of units", Example: "us or metric"}
}

func (s System) String() string {
	if s == Metric {
		return "metric"
	}
	return "us"
}

// Other is the other family.
func (s System) Other() System { return Metric - s }

// Words name the family in a sentence.
func (s System) Words() string {
	if s == Metric {
		return "metric units"
	}
	return "US units"
}

// A Unit is one way of writing a quantity.
type Unit struct {
	Symbol string   // as the program writes it
	Also   []string // other spellings that are read, lower case
	Factor float64  // SI units in one of these
	Zero   float64  // SI value at the zero of this unit (temperatures)
	Then   string   // the unit of a number that stands behind it, as in "40 ft 6"
}

// ToSI turns a number of this unit into SI, with the same bits on every machine:
// the conversion keeps the product from being fused with the sum.
func (u Unit) ToSI(v float64) float64 { return float64(v*u.Factor) + u.Zero }

// FromSI turns an SI value into a number of this unit.
func (u Unit) FromSI(si float64) float64 { return (si - u.Zero) / u.Factor }

// A Kind is a dimension: its name, its units and how people write it.
// The first unit is the SI one, with factor 1.
type Kind struct {
	Name     string
	Example  string
	Units    []Unit
	us       string // symbol shown in the US system
	metric   string
	compound bool // "40 ft 6 in"
	signed   bool // below zero makes sense
}

// Shown returns the unit in which sys shows this kind.
func (k *Kind) Shown(sys System) Unit {
	symbol := k.us
	if sys == Metric {
		symbol = k.metric
	}
	u, ok := k.unit(symbol)
	if !ok {
		return k.Units[0]
	}
	return u
}

// Symbols lists the units of this kind as the program writes them.
func (k *Kind) Symbols() []string {
	names := make([]string, len(k.Units))
	for i, u := range k.Units {
		names[i] = u.Symbol
	}
	return names
}

func (k *Kind) unit(name string) (Unit, bool) {
	for _, u := range k.Units {
		if u.Symbol == name { // as the program writes it, which is most often
			return u, true
		}
	}
	name = strings.ToLower(strings.Join(strings.Fields(name), " "))
	for _, u := range k.Units {
		if strings.ToLower(u.Symbol) == name {
			return u, true
		}
		for _, also := range u.Also {
			if also == name {
				return u, true
			}
		}
	}
	return Unit{}, false
}

// Quantity is any of this package's one-number types.
type Quantity interface {
	~float64
	Kind() *Kind
}

// A Value is a quantity whose kind is known only at run time: what the list
// of assumptions and the explanations carry.
type Value struct {
	Kind *Kind
	SI   float64

	bound bound
}

// ValueOf forgets the static type of q.
func ValueOf[Q Quantity](q Q) Value { return Value{Kind: q.Kind(), SI: float64(q)} }

// AsResin is a volume shown as the trade shows resin, in cubic feet.
func (v Volume) AsResin() Value { return Value{Kind: &resinKind, SI: float64(v)} }
