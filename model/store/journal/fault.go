package journal

import (
	"strings"
	"unicode"

	"washeve/model/store/fault"
)

// mostFaults is how many faults of one file are told: past it the file is of
// another kind, and more words do not help.
const mostFaults = 100

// faults gathers what is wrong in one file.
type faults struct {
	file string
	all  []fault.Fault
}

func (f *faults) add(severity fault.Severity, line int, key, problem string) {
	switch {
	case len(f.all) > mostFaults:
		return
	case len(f.all) == mostFaults:
		severity, key, problem = fault.Error, "", "and more; is this the right file?"
	}
	f.all = append(f.all, fault.Fault{File: f.file, Line: line, Key: tame(key, mostKey), Problem: tame(problem, mostProblem), Severity: severity})
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
