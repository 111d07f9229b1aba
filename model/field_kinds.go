package model

import "washeve/model/quantity"

// field binds text to an optional value by a parser and a writer.
func field[T any](key, label, help, example string, at *quantity.Opt[T], parse func(string) (T, error), write func(T) string) Field {
	return Field{
		Key: key, Label: label, Help: help, Example: example,
		value: &stated[T, written[T]]{at, written[T]{parse, write}},
	}
}

// dayField is a field that holds a day to come.
func dayField(label, help, example string, at *quantity.Opt[Date]) Field {
	f := field("date", label, help, example, at, ParseDate, Date.String)
	f.Day = true
	return f
}

// measure is a field with a unit that must lie between two texts' values.
func measure[Q quantity.Quantity](key, label, help, example, low, high string, at *quantity.Opt[Q]) Field {
	return Field{
		Key: key, Label: label, Help: help, Example: example, kind: Q(0).Kind(),
		value: &stated[Q, measured[Q]]{at, measured[Q]{label, example, low, high}},
	}
}

// reading is a field that holds what a pen shows, up to most ppm.
func reading(key, label, help string, most float64, at *quantity.Opt[quantity.Reading]) Field {
	example := "240 ppm NaCl"
	if most < 240 {
		example = "10 ppm NaCl"
	}
	return Field{
		Key: key, Label: label, Help: help, Example: example,
		value: &stated[quantity.Reading, penned]{at, penned{label, example, most}},
	}
}

// number is a field without a unit.
func number(key, label, help, example string, low, high float64, at *quantity.Opt[float64]) Field {
	return Field{
		Key: key, Label: label, Help: help, Example: example, Scalar: true,
		value: &stated[float64, numbered]{at, numbered{label, example, low, high}},
	}
}

// count is a field that holds a whole number.
func count(key, label, help, example string, low, high int, at *quantity.Opt[int]) Field {
	return Field{
		Key: key, Label: label, Help: help, Example: example, Scalar: true,
		value: &stated[int, counted]{at, counted{label, example, low, high}},
	}
}

// name is a field of a few free words: shown, never obeyed.
func name(key, label, help, example string, at *string) Field {
	return words(key, label, help, example, 60, at)
}

// words is a field of free words, as many letters as most: shown, never obeyed.
func words(key, label, help, example string, most int, at *string) Field {
	return Field{Key: key, Label: label, Help: help, Example: example, value: &free{label, example, most, at}}
}

// choice is a field with a few words to choose from.
func choice[T ~string](key, label, help string, words []T, at *T) Field {
	choices := make([]string, len(words))
	for i, w := range words {
		choices[i] = string(w)
	}
	return Field{
		Key: key, Label: label, Help: help, Example: choices[0], Choices: choices,
		value: &chosen[T]{label, choices, at},
	}
}
