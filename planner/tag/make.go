package tag

import "washeve/model/quantity"

// Quantity is an assumption that has a unit.
func Quantity[Q quantity.Quantity](name string, q Q, source Source) Assumption {
	return Assumption{Name: name, Value: quantity.ValueOf(q), Source: source}
}

// Text is an assumption without one.
func Text(name, words string, source Source) Assumption {
	return Assumption{Name: name, Words: words, Source: source}
}
