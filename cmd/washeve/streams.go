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
	screen  bool        // both ends are a terminal
	unread  func() bool // something was piped in that nobody has read; nil where nothing was
	columns int         // of the terminal, or a page's
	width   func() int  // of the terminal as it is now, 0 where that is not known; nil where there is none
	env     func(string) string
	clock   clock
}

const pageColumns = 80

func terminal() streams {
	s := streams{in: os.Stdin, out: os.Stdout, errs: os.Stderr, columns: pageColumns, env: os.Getenv, clock: systemClock{}}
	s.screen = term.IsTerminal(int(os.Stdin.Fd())) && term.IsTerminal(int(os.Stdout.Fd()))
	s.unread = func() bool { return unread(os.Stdin) }
	s.width = func() int {
		w, _, _ := term.GetSize(int(os.Stdout.Fd())) // none on an error
		return w
	}
	if w := s.width(); w > 0 {
		s.columns = min(w, 100)
	}
	return s
}

// unread tells that a pipe or a file holds something behind what was read of it.
func unread(in *os.File) bool {
	is, err := in.Stat()
	if err != nil {
		return false
	}
	switch mode := is.Mode(); {
	case mode.IsRegular():
		at, err := in.Seek(0, io.SeekCurrent)
		return err == nil && at < is.Size()
	case mode&os.ModeNamedPipe != 0:
		return waits(in)
	}
	return false
}

// harmless keeps a terminal from obeying what a file, a path or a flag holds.
func harmless(text string) string {
	lines := strings.Split(text, "\n")
	for i, line := range lines {
		lines[i] = cells.Safe(line)
	}
	return strings.Join(lines, "\n")
}
