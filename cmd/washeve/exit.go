package main

import (
	"errors"
	"fmt"

	"washeve/planner"
)

// The exit codes.
const (
	done      = 0
	couldNot  = 1
	wrongUse  = 2 // wrong use or wrong input
	shortBed  = 3 // plan --strict: the bed will not last
	toolsName = "washeve"
)

// wrong is an error of use or input; told has been told already.
type (
	wrong struct{ error }
	told  struct{ code int }
)

func (told) Error() string { return "" }

func wrongf(format string, args ...any) error { return wrong{fmt.Errorf(format, args...)} }

// codeOf turns an error into an exit code.
func codeOf(err error) int {
	var t told
	var w wrong
	var m *planner.Missing
	switch {
	case err == nil:
		return done
	case errors.As(err, &t):
		return t.code
	case errors.As(err, &w), errors.As(err, &m):
		return wrongUse
	}
	return couldNot
}
