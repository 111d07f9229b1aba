package store

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
)

// Severity tells whether a file can be used in spite of a fault.
type Severity int

// The severities. After an Error the value at that place is not in what was
// read; a Notice is told and nothing is lost by it.
const (
	Error Severity = iota
	Notice
)

// A Fault is something wrong in a file, and where.
type Fault struct {
	File     string // as it was named to the reader, or relative to the data folder
	Line     int    // from 1; 0 where the whole file is meant
	Key      string // "" where no single key is meant
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

// HasErrors tells whether any of the faults is more than a notice.
func HasErrors(faults []Fault) bool {
	return slices.ContainsFunc(faults, func(f Fault) bool { return f.Severity == Error })
}

// byLine puts faults in the order of the file, the first found first.
func byLine(faults []Fault) []Fault {
	slices.SortStableFunc(faults, func(a, b Fault) int { return a.Line - b.Line })
	return faults
}
