package journal

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
)

// Severity tells whether anything is left out because of a fault.
type Severity int

// The severities. After an Error the entry is not in what was read; a Notice is
// told and nothing is lost by it.
const (
	Error Severity = iota
	Notice
)

// A Fault is something wrong in a file, and where.
type Fault struct {
	File     string // the file's name, without its folder
	Line     int    // from 1, in a CSV file the row; 0 where the whole file is meant
	Key      string // of the field, or the name of the column; "" where none is meant
	Problem  string // what was read and what would be right
	Severity Severity
}

func (f Fault) Error() string {
	var b strings.Builder
	b.WriteString(f.File)
	if f.Line > 0 {
		fmt.Fprintf(&b, ":%d", f.Line)
	}
	if f.Key != "" {
		b.WriteString(": " + f.Key)
	}
	return b.String() + ": " + f.Problem
}

// HasErrors tells whether any of the faults is more than a notice.
func HasErrors(faults []Fault) bool {
	return slices.ContainsFunc(faults, func(f Fault) bool { return f.Severity == Error })
}

// mostFaults is how many faults of one file are told: past it the file is of
// another kind, and more words do not help.
const mostFaults = 100

// faults gathers what is wrong in one file.
type faults struct {
	file string
	all  []Fault
}

func (f *faults) add(severity Severity, line int, key, problem string) {
	switch {
	case len(f.all) > mostFaults:
		return
	case len(f.all) == mostFaults:
		severity, key, problem = Error, "", "and more; is this the right file?"
	}
	f.all = append(f.all, Fault{f.file, line, tame(key, mostKey), tame(problem, mostProblem), severity})
}

const mostKey, mostProblem = 60, 600 // letters

// tame keeps what a file holds from being obeyed by a terminal, and short.
func tame(text string, most int) string {
	text = strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return unicode.ReplacementChar
		}
		return r
	}, text)
	if letters := []rune(text); len(letters) > most {
		return string(letters[:most]) + "..."
	}
	return text
}
