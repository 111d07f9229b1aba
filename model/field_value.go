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

// A value is the way in and out of what a field holds.
type value interface {
	text() string
	set(text string) error // on error what is held is as it was
	clear()
}

// exact is a value that has one way of writing in the program's own units.
type exact interface{ exact() string }

// holder is a value that lies at one place: it keeps what is there now, and
// gives what puts it back.
type holder interface{ hold() func() }

// held gives what puts a value back. It is not taken into its callers: they are one a type,
// and each would carry the closure of its own.
//
//go:noinline
func held[T any](at *T) func() {
	v := *at
	return func() { *at = v }
}

// spoken is a value by three functions, for what lies at no one place.
type spoken struct {
	say  func() string
	hear func(string) error
	drop func()
}

func (v spoken) text() string          { return v.say() }
func (v spoken) set(text string) error { return v.hear(text) }
func (v spoken) clear()                { v.drop() }

// placed is a spoken value that does lie at one place.
type placed[T any] struct {
	at   *T
	say  func() string
	hear func(string) error
}

func (v placed[T]) text() string          { return v.say() }
func (v placed[T]) set(text string) error { return v.hear(text) }
func (v placed[T]) clear()                { *v.at = *new(T) }
func (v placed[T]) hold() func()          { return held(v.at) }

// A notation is how values of a kind are read and written.
type notation[T any] interface {
	parse(text string) (T, error)
	write(T) string
}

// stated is an optional value, with its text as it was typed.
type stated[T any, N notation[T]] struct {
	at *quantity.Opt[T]
	by N
}

func (v stated[T, N]) text() string {
	if words := v.at.Words(); words != "" {
		return words
	}
	return v.exact()
}

func (v stated[T, N]) exact() string {
	if value, given := v.at.Get(); given {
		return v.by.write(value)
	}
	return ""
}

func (v stated[T, N]) set(text string) error {
	value, err := v.by.parse(text)
	if err == nil {
		*v.at = quantity.Typed(value, tidy(text))
	}
	return err
}

func (v stated[T, N]) clear()       { *v.at = quantity.Opt[T]{} }
func (v stated[T, N]) hold() func() { return held(v.at) }

// tidy makes each run of spaces one.
func tidy(text string) string {
	if !strings.Contains(text, "  ") && !strings.ContainsFunc(text, func(r rune) bool { return r != ' ' && unicode.IsSpace(r) }) {
		return strings.Trim(text, " ")
	}
	return strings.Join(strings.Fields(text), " ")
}

// measured is the notation of a quantity between two texts' values.
type measured[Q quantity.Quantity] struct{ label, example, low, high string }

func (m measured[Q]) parse(text string) (Q, error) {
	q, err := quantity.Parse[Q](text)
	if wrong := new(quantity.ParseError); errors.As(err, &wrong) {
		wrong.Example = m.example
	}
	if err == nil && (q < quantity.Must[Q](m.low) || q > quantity.Must[Q](m.high)) {
		err = quantity.Outside(q.Kind(), quantity.Range{Low: m.low, High: m.high}, m.label, text, m.example)
	}
	return q, err
}

func (measured[Q]) write(q Q) string { return quantity.Exact(q, quantity.US) }

// penned is the notation of what a pen shows, up to most ppm.
type penned struct {
	label, example string
	most           float64
}

func (p penned) parse(text string) (quantity.Reading, error) {
	r, err := quantity.ParseReading(text)
	limit, unit := p.most, "ppm"
	if r.Scale == quantity.ScaleConductivity {
		limit, unit = 2*p.most, "uS/cm"
	}
	if err == nil && r.Number > limit {
		err = &quantity.ParseError{
			What: p.label, Text: text, Example: p.example,
			Reason: fmt.Sprintf("is over %g %s, which is past what this program plans for", limit, unit),
		}
	}
	return r, err
}

func (penned) write(r quantity.Reading) string { return r.String() }

// numbered is the notation of a number without a unit.
type numbered struct {
	label, example string
	low, high      float64
}

func (n numbered) parse(text string) (float64, error) {
	pointed, _ := quantity.Pointed(text)
	v, err := strconv.ParseFloat(strings.TrimSpace(pointed), 64)
	if err != nil || !(v >= n.low && v <= n.high) {
		return 0, &quantity.ParseError{
			What: n.label, Text: text, Example: n.example,
			Reason: fmt.Sprintf("is not a number from %g to %g", n.low, n.high),
		}
	}
	return v, nil
}

func (numbered) write(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }

// counted is the notation of a whole number.
type counted struct {
	label, example string
	low, high      int
}

func (c counted) parse(text string) (int, error) {
	v, err := strconv.Atoi(strings.TrimSpace(text))
	if err != nil || v < c.low || v > c.high {
		return 0, &quantity.ParseError{
			What: c.label, Text: text, Example: c.example,
			Reason: fmt.Sprintf("is not a whole number from %d to %d", c.low, c.high),
		}
	}
	return v, nil
}

func (counted) write(v int) string { return strconv.Itoa(v) }

// written is a notation by two functions.
type written[T any] struct {
	reads  func(string) (T, error)
	writes func(T) string
}

func (w written[T]) parse(text string) (T, error) { return w.reads(text) }
func (w written[T]) write(v T) string             { return w.writes(v) }

// free is a value of free words, as many letters as most: shown, never obeyed.
type free struct {
	label, example string
	most           int
	at             *string
}

func (v *free) text() string { return *v.at }

func (v *free) set(text string) error {
	trimmed := strings.TrimSpace(text)
	if strings.ContainsFunc(trimmed, unshowable) || !utf8.ValidString(trimmed) {
		return &quantity.ParseError{What: v.label, Text: text, Reason: "has characters in it that cannot be shown", Example: v.example}
	}
	if utf8.RuneCountInString(trimmed) > v.most {
		return &quantity.ParseError{What: v.label, Text: text, Reason: fmt.Sprintf("is longer than %d letters", v.most), Example: v.example}
	}
	*v.at = trimmed
	return nil
}

func (v *free) clear()       { *v.at = "" }
func (v *free) hold() func() { return held(v.at) }

// unshowable tells the characters that a terminal would obey, or that turn the
// order of the letters about. The two joiners are part of ordinary writing.
func unshowable(r rune) bool {
	const nonJoiner, joiner = '\u200c', '\u200d'
	if r == nonJoiner || r == joiner {
		return false
	}
	return unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp)
}

// chosen is a value out of a few words.
type chosen[T ~string] struct {
	label   string
	choices []string
	at      *T
}

func (v *chosen[T]) text() string { return string(*v.at) }

func (v *chosen[T]) set(text string) error {
	word := strings.TrimSpace(text)
	for _, c := range v.choices {
		if strings.EqualFold(c, word) {
			*v.at = T(c)
			return nil
		}
	}
	return &quantity.ParseError{What: v.label, Text: text, Reason: "is none of the choices", Choices: v.choices}
}

func (v *chosen[T]) clear()       { *v.at = "" }
func (v *chosen[T]) hold() func() { return held(v.at) }
