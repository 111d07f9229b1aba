// Package fault says what is wrong in a file that a person may mend.
package fault

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
)

// Severity tells whether a file can be used in spite of a fault.
type Severity int

// The severities. After an Error the value or the entry at that place is not in
// what was read; a Lack is something needed that nobody has stated yet; what is Unread is
// not understood, such as a mistyped key: all else is as it was read without it; a Notice
// is told and nothing is lost by it.
const (
	Error Severity = iota
	Lack
	Unread
	Notice
)

func (s Severity) String() string {
	switch s {
	case Lack:
		return "missing"
	case Unread:
		return "not read"
	case Notice:
		return "note"
	}
	return "error"
}

// A Fault is something wrong in a file, and where.
type Fault struct {
	File     string // as it was named to the reader, or relative to the data folder
	Line     int    // from 1, in a table the row; 0 where the whole file is meant
	Key      string // or the name of a table's column; "" where no single one is meant
	Problem  string // what was read and what would be right
	Severity Severity
}

func (f Fault) Error() string {
	var b strings.Builder
	b.WriteString(shownPath(f.File))
	if f.Line > 0 {
		fmt.Fprintf(&b, ":%d", f.Line)
	}
	if f.Key != "" {
		b.WriteString(": " + f.Key)
	}
	return b.String() + ": " + f.Problem
}

// shownPath keeps what a terminal would obey out of a message.
func shownPath(path string) string {
	if strings.ContainsFunc(path, func(r rune) bool { return !unicode.IsPrint(r) }) {
		return strconv.Quote(path)
	}
	return path
}

// HasErrors tells whether something in the files is wrong.
func HasErrors(faults []Fault) bool {
	return slices.ContainsFunc(faults, func(f Fault) bool { return f.Severity == Error })
}

// HasUnread tells whether something in the files is not understood.
func HasUnread(faults []Fault) bool {
	return slices.ContainsFunc(faults, func(f Fault) bool { return f.Severity == Unread })
}

// Stands tells that all of a file is in what was read, but for what is not understood.
func (s Severity) Stands() bool { return s >= Unread }

// HasLacks tells whether something needed is not stated yet.
func HasLacks(faults []Fault) bool {
	return slices.ContainsFunc(faults, func(f Fault) bool { return f.Severity == Lack })
}
