// Package model holds the nouns of the trade: what is in the rig, where the
// water comes from, what a wash is. Nothing here computes; package planner does.
package model

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"washeve/model/quantity"
)

// A Field is one thing that a person can state about a noun: the key in the
// file, the words on the screen, and the way in and out as text. Files, forms
// and checks all go through it, so a value is read in one way only.
type Field struct {
	Key      string
	Label    string
	Help     string
	Example  string
	Required bool
	Choices  []string // the only words allowed, where there are such
	Refers   string   // the section whose names this field holds: "vehicle", "bed", ...
	Scalar   bool     // in files a bare number or boolean, not a quoted quantity
	List     bool     // in files an array of words, or one text with commas
	text     func() string
	set      func(string) error
	clear    func()
	exact    func() string // the value in the program's own units, whatever was typed
	hold     func() func() // keeps the value of now, and gives what puts it back
}

// Text is the value as it was typed, or "" where it was not given.
func (f Field) Text() string { return f.text() }

// Brief is the text to be looked at: a measure whose number has more digits than
// anybody types, such as "322.99999999999994 ft2", is rounded to six of them.
func (f Field) Brief() string {
	const typed, kept = 9, 6
	text := f.text()
	if f.exact == nil {
		return text
	}
	number, unit, _ := strings.Cut(text, " ")
	v, err := strconv.ParseFloat(number, 64)
	if err != nil || len(number) <= typed || !strings.Contains(number, ".") {
		return text
	}
	v, _ = strconv.ParseFloat(strconv.FormatFloat(v, 'g', kept, 64), 64)
	return strings.TrimSpace(strconv.FormatFloat(v, 'f', -1, 64) + " " + unit)
}

// Exact is the value in one way of writing: equal values have equal texts,
// whatever unit they were typed in.
func (f Field) Exact() string {
	if f.exact == nil {
		return f.text()
	}
	return f.exact()
}

// ReadAs is the text with its decimal commas written as points, where it is a
// number and has any: what was read of "1,4 gpm".
func (f Field) ReadAs() (string, bool) {
	if f.exact == nil {
		return "", false
	}
	return quantity.Pointed(f.text())
}

// held is the hold of a field whose value lies at one place.
func held[T any](at *T) func() func() {
	return func() func() {
		v := *at
		return func() { *at = v }
	}
}

// Given tells whether there is a value.
func (f Field) Given() bool { return f.text() != "" }

// Set reads text into the noun. Empty text takes the value away. On error the
// noun is as it was, and the error tells what was read and what would be right.
func (f Field) Set(text string) error {
	if strings.TrimSpace(text) == "" {
		f.clear()
		return nil
	}
	return f.set(text)
}

func (f Field) required() Field { f.Required = true; return f }

func (f Field) refersTo(section string) Field { f.Refers = section; return f }

// field binds text to an optional value by a parser and a writer.
func field[T any](key, label, help, example string, at *quantity.Opt[T], parse func(string) (T, error), write func(T) string) Field {
	return Field{
		Key: key, Label: label, Help: help, Example: example,
		text: func() string {
			v, given := at.Get()
			if !given {
				return ""
			}
			if words := at.Words(); words != "" {
				return words
			}
			return write(v)
		},
		set: func(text string) error {
			v, err := parse(text)
			if err == nil {
				*at = quantity.Typed(v, tidy(text))
			}
			return err
		},
		clear: func() { *at = quantity.Opt[T]{} },
		exact: func() string {
			if v, given := at.Get(); given {
				return write(v)
			}
			return ""
		},
		hold: held(at),
	}
}

// tidy makes each run of spaces one.
func tidy(text string) string {
	if !strings.Contains(text, "  ") && !strings.ContainsFunc(text, func(r rune) bool { return r != ' ' && unicode.IsSpace(r) }) {
		return strings.Trim(text, " ")
	}
	return strings.Join(strings.Fields(text), " ")
}

// measure is a field with a unit that must lie between two texts' values.
func measure[Q quantity.Quantity](key, label, help, example, low, high string, at *quantity.Opt[Q]) Field {
	parse := func(text string) (Q, error) {
		q, err := quantity.Parse[Q](text)
		if wrong := new(quantity.ParseError); errors.As(err, &wrong) {
			wrong.Example = example
		}
		if err == nil && (q < quantity.Must[Q](low) || q > quantity.Must[Q](high)) {
			err = &quantity.ParseError{
				What: label, Text: text, Example: example,
				Reason: fmt.Sprintf("is outside %s to %s", low, high),
			}
		}
		return q, err
	}
	return field(key, label, help, example, at, parse, func(q Q) string { return quantity.Exact(q, quantity.US) })
}

// reading is a field that holds what a pen shows, up to most ppm.
func reading(key, label, help string, most float64, at *quantity.Opt[quantity.Reading]) Field {
	example := "240 ppm NaCl"
	if most < 240 {
		example = "10 ppm NaCl"
	}
	parse := func(text string) (quantity.Reading, error) {
		r, err := quantity.ParseReading(text)
		limit, unit := most, "ppm"
		if r.Scale == quantity.ScaleConductivity {
			limit, unit = 2*most, "uS/cm"
		}
		if err == nil && r.Number > limit {
			err = &quantity.ParseError{
				What: label, Text: text, Example: example,
				Reason: fmt.Sprintf("is over %g %s, which is past what this program plans for", limit, unit),
			}
		}
		return r, err
	}
	return field(key, label, help, example, at, parse, quantity.Reading.String)
}

// number is a field without a unit.
func number(key, label, help, example string, low, high float64, at *quantity.Opt[float64]) Field {
	parse := func(text string) (float64, error) {
		pointed, _ := quantity.Pointed(text)
		v, err := strconv.ParseFloat(strings.TrimSpace(pointed), 64)
		if err != nil || !(v >= low && v <= high) {
			return 0, &quantity.ParseError{
				What: label, Text: text, Example: example,
				Reason: fmt.Sprintf("is not a number from %g to %g", low, high),
			}
		}
		return v, nil
	}
	f := field(key, label, help, example, at, parse, func(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) })
	f.Scalar = true
	return f
}

// count is a field that holds a whole number.
func count(key, label, help, example string, low, high int, at *quantity.Opt[int]) Field {
	parse := func(text string) (int, error) {
		v, err := strconv.Atoi(strings.TrimSpace(text))
		if err != nil || v < low || v > high {
			return 0, &quantity.ParseError{
				What: label, Text: text, Example: example,
				Reason: fmt.Sprintf("is not a whole number from %d to %d", low, high),
			}
		}
		return v, nil
	}
	f := field(key, label, help, example, at, parse, strconv.Itoa)
	f.Scalar = true
	return f
}

// name is a field of a few free words: shown, never obeyed.
func name(key, label, help, example string, at *string) Field {
	return words(key, label, help, example, 60, at)
}

// words is a field of free words, as many letters as most: shown, never obeyed.
func words(key, label, help, example string, most int, at *string) Field {
	return Field{
		Key: key, Label: label, Help: help, Example: example,
		text: func() string { return *at },
		set: func(text string) error {
			trimmed := strings.TrimSpace(text)
			if strings.ContainsFunc(trimmed, unshowable) || !utf8.ValidString(trimmed) {
				return &quantity.ParseError{What: label, Text: text, Reason: "has characters in it that cannot be shown", Example: example}
			}
			if len([]rune(trimmed)) > most {
				return &quantity.ParseError{What: label, Text: text, Reason: fmt.Sprintf("is longer than %d letters", most), Example: example}
			}
			*at = trimmed
			return nil
		},
		clear: func() { *at = "" },
		hold:  held(at),
	}
}

// unshowable tells the characters that a terminal would obey, or that turn the
// order of the letters about. The two joiners are part of ordinary writing.
func unshowable(r rune) bool {
	const nonJoiner, joiner = '\u200c', '\u200d'
	if r == nonJoiner || r == joiner {
		return false
	}
	return unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp)
}

// choice is a field with a few words to choose from.
func choice[T ~string](key, label, help string, words []T, at *T) Field {
	choices := make([]string, len(words))
	for i, w := range words {
		choices[i] = string(w)
	}
	return Field{
		Key: key, Label: label, Help: help, Example: choices[0], Choices: choices,
		text: func() string { return string(*at) },
		set: func(text string) error {
			word := strings.ToLower(strings.TrimSpace(text))
			for _, c := range choices {
				if strings.ToLower(c) == word {
					*at = T(c)
					return nil
				}
			}
			return &quantity.ParseError{What: label, Text: text, Reason: "is none of the choices", Example: strings.Join(choices, ", ")}
		},
		clear: func() { *at = "" },
		hold:  held(at),
	}
}

// A Fault is something wrong in a noun, at a key.
type Fault struct {
	Section string // "vehicle", "bed", ...; "" for the top of a file
	Index   int    // which of the section's entries, from 0
	Key     string
	Problem string // what is wrong and what would be right
	Face    int    // which face of the vehicle is meant, from 1; 0 where none is
	Lacks   bool   // nothing is wrong but that something needed is not stated yet
}

func (f Fault) Error() string {
	where := f.Key
	if f.Section != "" {
		where = fmt.Sprintf("%s %d, %s", f.Section, f.Index+1, f.Key)
	}
	return where + ": " + f.Problem
}
