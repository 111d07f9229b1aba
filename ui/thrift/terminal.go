package thrift

import (
	"bytes"
	"regexp"
	"strings"

	"github.com/charmbracelet/x/ansi"
	"github.com/charmbracelet/x/term"
)

// Terminal is a terminal that bubbletea writes its frames to. Of a line that has
// changed bubbletea sends all; the terminal gets only the cells that are others
// than before.
//
// What it does not understand it passes on as it is, and then takes nothing for
// known of what is shown: a frame that follows is sent whole.
type Terminal struct {
	term.File
	shown []shown
}

// shown is what is known of a line.
type shown struct {
	row   row
	known bool
}

// On is the terminal at a file.
func On(file term.File) *Terminal { return &Terminal{File: file} }

// Write sends what a frame changes, or whatever else it is given.
func (t *Terminal) Write(p []byte) (int, error) {
	if _, err := t.File.Write(squeeze(t.changes(p))); err != nil {
		t.shown = nil
		return 0, err
	}
	return len(p), nil
}

// frameEnd is how bubbletea ends a frame: it puts the cursor into the last line.
var frameEnd = regexp.MustCompile(`\x1b\[[0-9]*;?H$`)

// changes is what of a write has to be sent. A frame is the way home, a carriage
// return where nothing is taken for known, and the lines: an empty one is as it
// was, the others end in a carriage return.
func (t *Terminal) changes(p []byte) []byte {
	frame, home := strings.CutPrefix(string(p), ansi.CursorHomePosition)
	end := frameEnd.FindStringIndex(frame)
	if !home || end == nil || strings.Contains(frame, ansi.EraseScreenBelow) {
		t.shown = nil
		return p
	}
	lines := strings.Split(frame[:end[0]], "\n")
	if first, afresh := strings.CutPrefix(lines[0], "\r"); afresh {
		t.shown, lines[0] = nil, first
	}
	if len(t.shown) < len(lines) {
		t.shown = append(t.shown, make([]shown, len(lines)-len(t.shown))...)
	}
	var out bytes.Buffer
	for y, line := range lines {
		if line != "" {
			t.line(&out, y, strings.TrimSuffix(line, "\r"))
		}
	}
	out.WriteString(frame[end[0]:])
	return out.Bytes()
}

func (t *Terminal) line(out *bytes.Buffer, y int, line string) {
	now, known := parseRow(line)
	if was := t.shown[y]; known && was.known {
		patch(out, y, was.row, now)
	} else {
		out.WriteString(ansi.CursorPosition(1, y+1))
		out.WriteString(line)
	}
	t.shown[y] = shown{now, known}
}
