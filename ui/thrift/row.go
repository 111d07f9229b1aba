package thrift

import (
	"bytes"
	"strings"
	"unicode/utf8"

	"github.com/charmbracelet/x/ansi"

	"washeve/ui/cells"
)

// A cell is a letter one cell wide and the code of its colour.
type cell struct {
	letter rune
	ink    string
}

var blank = cell{letter: ' '}

// A row is what a line of the terminal shows; all that follows is blank.
type row []cell

func (r row) at(x int) cell {
	if x < len(r) {
		return r[x]
	}
	return blank
}

const eraseRight = csi + "K"

// parseRow reads a line that ends with its erasure or at the edge. It is no row
// where a letter is not one cell wide, since terminals do not agree on the width
// of such, or where the line holds other codes than those of [Line].
func parseRow(line string) (row, bool) {
	line = strings.TrimSuffix(line, eraseRight)
	now := make(row, 0, len(line))
	ink := ""
	for line != "" {
		if code, rest, is := cutCode(line); is {
			next, known := turned(ink, code)
			if !known {
				return nil, false
			}
			ink, line = next, rest
			continue
		}
		letter, n := utf8.DecodeRuneInString(line)
		if letter < ' ' || letter == utf8.RuneError || letter >= utf8.RuneSelf && cells.Width(line[:n]) != 1 {
			return nil, false
		}
		c := cell{letter, ink}
		if letter == ' ' && ink != reverse {
			c = blank
		}
		now, line = append(now, c), line[n:]
	}
	return now, true
}

func cutCode(line string) (code, rest string, is bool) {
	after, is := strings.CutPrefix(line, csi)
	if !is {
		return "", "", false
	}
	code, rest, is = strings.Cut(after, "m")
	return code, rest, is
}

// turned is the code in force after another: the way back from [turn].
func turned(ink, code string) (string, bool) {
	if after, ended := strings.CutPrefix(code, "0;"); ended {
		ink, code = "", after
	}
	known := code == "" || ink == "" || isColour(ink) && isColour(code)
	return code, known && strings.Trim(code, "0123456789;") == ""
}

// enoughAlike is how many cells in a row have to be as they were before they are
// passed over: that takes a code, and another for the colour behind it.
const enoughAlike = 12

// patch writes what turns one row into another, y lines from the top.
func patch(out *bytes.Buffer, y int, was, now row) {
	end := max(len(was), len(now))
	for x := 0; x < end; x++ {
		if was.at(x) == now.at(x) {
			continue
		}
		to, alike := x+1, 0
		for i := to; i < end && alike < enoughAlike; i++ {
			if alike++; was.at(i) != now.at(i) {
				to, alike = i+1, 0
			}
		}
		out.WriteString(ansi.CursorPosition(x+1, y+1))
		now.write(out, x, to)
		x = to
	}
}

// write sends the cells from one to another; the blanks behind the last letter
// are erased.
func (r row) write(out *bytes.Buffer, from, to int) {
	ink := ""
	for x := from; x < min(to, len(r)); x++ {
		c := r[x]
		if c.ink != ink && (c != blank || ink == reverse) {
			out.WriteString(turn(ink, c.ink))
			ink = c.ink
		}
		out.WriteRune(c.letter)
	}
	if ink != "" {
		out.WriteString(csi + "m")
	}
	if to > len(r) {
		out.WriteString(eraseRight)
	}
}
