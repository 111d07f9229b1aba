package main

import (
	"io"
	"os"
	"strings"

	"golang.org/x/term"
	"washeve/ui/cells"
)

// streams is what the program is connected to. Tests hand in their own.
type streams struct {
	in      io.Reader
	out     io.Writer
	errs    io.Writer
	screen  bool       // both ends are a terminal
	columns int        // of the terminal, or a page's
	width   func() int // of the terminal as it is now, 0 where that is not known; nil where there is none
	env     func(string) string
	clock   clock
}

const pageColumns = 80

func terminal() streams {
	s := streams{in: os.Stdin, out: os.Stdout, errs: os.Stderr, columns: pageColumns, env: os.Getenv, clock: systemClock{}}
	s.screen = term.IsTerminal(int(os.Stdin.Fd())) && term.IsTerminal(int(os.Stdout.Fd()))
	s.width = func() int {
		w, _, _ := term.GetSize(int(os.Stdout.Fd())) // none on an error
		return w
	}
	if w := s.width(); w > 0 {
		s.columns = min(w, 100)
	}
	return s
}

// harmless keeps a terminal from obeying what a file, a path or a flag holds.
func harmless(text string) string {
	lines := strings.Split(text, "\n")
	for i, line := range lines {
		lines[i] = cells.Safe(line)
	}
	return strings.Join(lines, "\n")
}
