// Package model holds the nouns of the trade: what is in the rig, where the
// water comes from, what a wash is. Nothing here computes; package planner does.
package model

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

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
	Units    quantity.System // of the example, where it was made to suit the one that is shown
	Required bool
	Instead  string         // a line of a file that does as well as a required field; "" for none
	Choices  []string       // the only words allowed, where there are such
	Refers   string         // the section whose names this field holds: "vehicle", "bed", ...
	Scalar   bool           // in files a bare number or boolean, not a quoted quantity
	List     bool           // in files an array of words, or one text with commas
	Day      bool           // a day to come: a person may type it as [ComingDay] reads it
	Sides    string         // of degrees, the letters of their two sides, the positive one first: "NS" or "EW"
	Moment   bool           // of what was done: a person may type it as [PastMoment] reads it
	kind     *quantity.Kind // of what has units; nil where it has none
	value    value
}

// Text is the value as it was typed, or "" where it was not given.
func (f Field) Text() string { return f.value.text() }

// Brief is the text to be looked at: a measure whose number has more digits than
// anybody types, such as "322.99999999999994 ft2", is rounded to six of them.
func (f Field) Brief() string {
	const typed, kept = 9, 6
	text := f.Text()
	if _, measured := f.value.(exact); !measured {
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
	if v, measured := f.value.(exact); measured {
		return v.exact()
	}
	return f.Text()
}

// OfPen tells that the field holds what a pen shows: ppm on a scale, or a conductivity.
func (f Field) OfPen() bool {
	_, reads := f.value.(*stated[quantity.Reading, penned])
	return reads
}

// ReadAs is the text with its decimal commas written as points, where it is a
// number and has any: what was read of "1,4 gpm".
func (f Field) ReadAs() (string, bool) {
	if _, measured := f.value.(exact); !measured {
		return "", false
	}
	return quantity.Pointed(f.Text())
}

// In is the field with its example in the units of sys.
func (f Field) In(sys quantity.System) Field {
	if f.Units = sys; f.kind != nil {
		f.Example = f.kind.Like(f.Example, sys)
	}
	return f
}

// Suited is the field with its example in the units in which it is to be stated, where sys
// is shown, among the fields of the same noun: with US units shown, metric ones where the
// field itself was stated so, or else the nearest other one of its kind.
func (f Field) Suited(among []Field, sys quantity.System) Field {
	if stated, ok := f.statedIn(among); sys == quantity.US && ok {
		sys = stated
	}
	return f.In(sys)
}

// statedIn is the family of units in which the field was stated, or else the nearest other
// one of its kind.
func (f Field) statedIn(among []Field) (sys quantity.System, ok bool) {
	if f.kind == nil {
		return quantity.US, false
	}
	at := slices.IndexFunc(among, func(other Field) bool { return other.Key == f.Key })
	if at < 0 {
		return quantity.US, false
	}
	for away := range among {
		for _, i := range []int{at - away, at + away} {
			if i < 0 || i >= len(among) || among[i].kind != f.kind {
				continue
			}
			if sys, ok = f.kind.SystemOf(among[i].Text()); ok {
				return sys, true
			}
		}
	}
	return quantity.US, false
}

// Given tells whether there is a value.
func (f Field) Given() bool { return f.Text() != "" }

// Set reads text into the noun. Empty text takes the value away. On error the
// noun is as it was, and the error tells what was read and what would be right.
func (f Field) Set(text string) error {
	if strings.TrimSpace(text) == "" {
		f.value.clear()
		return nil
	}
	return f.value.set(text)
}

func (f Field) required() Field { f.Required = true; return f }

func (f Field) onSides(letters string) Field { f.Sides = letters; return f }

func (f Field) refersTo(section string) Field { f.Refers = section; return f }

// A Fault is something wrong in a noun, at a key.
type Fault struct {
	Section string // "vehicle", "bed", ...; "" for the top of a file
	Index   int    // which of the section's entries, from 0
	Key     string
	Problem string // what is wrong and what would be right
	Face    int    // which face of the vehicle is meant, from 1; 0 where none is
	Lacks   bool   // nothing is wrong but that something needed is not stated yet
	Unused  bool   // all else stands: what is stated of the key is kept and not used
}

func (f Fault) Error() string {
	where := f.Key
	if f.Section != "" {
		where = fmt.Sprintf("%s %d, %s", f.Section, f.Index+1, f.Key)
	}
	return where + ": " + f.Problem
}
