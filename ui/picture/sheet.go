// Package picture draws the coach, the tank, the flow caps and the outlet curve
// as lines of text. Every picture is a pure function of its arguments; no line
// is wider than the size it was given, and a size too small gives no lines.
package picture

import (
	"slices"
	"strings"
	"unicode/utf8"

	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// sheet is squared paper: a mark and an ink for every cell.
type sheet struct {
	size  layout.Size
	cells []cell       // row by row
	inks  *[]theme.Ink // that were used; the first one is none
}

// A cell is a letter one cell wide, and the place of its ink among those used.
type cell struct {
	mark rune
	ink  uint8
}

func newSheet(size layout.Size) sheet {
	s := sheet{size: size, cells: make([]cell, size.W*size.H), inks: &[]theme.Ink{{}}}
	for i := range s.cells {
		s.cells[i].mark = ' '
	}
	return s
}

// set puts a mark one cell wide; what lies outside is left out.
func (s sheet) set(x, y int, mark string, ink theme.Ink) {
	if x >= 0 && y >= 0 && x < s.size.W && y < s.size.H {
		letter, _ := utf8.DecodeRuneInString(mark)
		*s.at(x, y) = cell{letter, s.numberOf(ink)}
	}
}

func (s sheet) at(x, y int) *cell { return &s.cells[y*s.size.W+x] }

// mark is what stands in a cell.
func (s sheet) mark(x, y int) string { return string(s.at(x, y).mark) }

func (s sheet) blank(x, y int) bool { return s.at(x, y).mark == ' ' }

func (s sheet) numberOf(ink theme.Ink) uint8 {
	n := slices.Index(*s.inks, ink)
	if n < 0 {
		n = len(*s.inks)
		*s.inks = append(*s.inks, ink)
	}
	return uint8(n)
}

// fill puts a mark into every cell of a rectangle.
func (s sheet) fill(r layout.Rect, mark string, ink theme.Ink) {
	for y := r.Y; y < r.Y+r.H; y++ {
		for x := r.X; x < r.X+r.W; x++ {
			s.set(x, y, mark, ink)
		}
	}
}

// write puts plain ASCII words from x on.
func (s sheet) write(x, y int, words string, ink theme.Ink) {
	for _, r := range words {
		s.set(x, y, string(r), ink)
		x++
	}
}

// centre writes words in the middle of a row of a rectangle, where they fit.
func (s sheet) centre(r layout.Rect, y int, words string, ink theme.Ink) bool {
	n := cells.Width(words)
	if n > r.W {
		return false
	}
	s.write(r.X+(r.W-n)/2, y, words, ink)
	return true
}

// lines joins cells of the same ink, so that little is sent.
func (s sheet) lines() []string {
	out := make([]string, s.size.H)
	for y := range out {
		out[y] = s.line(s.cells[y*s.size.W : (y+1)*s.size.W])
	}
	return out
}

func (s sheet) line(row []cell) string {
	var line, run strings.Builder
	ink := uint8(0)
	for _, c := range row {
		if c.mark != ' ' && c.ink != ink {
			line.WriteString((*s.inks)[ink].On(run.String()))
			run.Reset()
			ink = c.ink
		}
		run.WriteRune(c.mark)
	}
	line.WriteString((*s.inks)[ink].On(strings.TrimRight(run.String(), " ")))
	return line.String()
}

// box draws an outline, each side in its own ink.
func (s sheet) box(r layout.Rect, m theme.Marks, top, right, low, left theme.Ink) {
	for x := r.X + 1; x < r.X+r.W-1; x++ {
		s.set(x, r.Y, m.Rule, top)
		s.set(x, r.Y+r.H-1, m.Rule, low)
	}
	for y := r.Y + 1; y < r.Y+r.H-1; y++ {
		s.set(r.X, y, m.Wall, left)
		s.set(r.X+r.W-1, y, m.Wall, right)
	}
	s.set(r.X, r.Y, m.TopLeft, top)
	s.set(r.X+r.W-1, r.Y, m.TopRight, top)
	s.set(r.X, r.Y+r.H-1, m.LowLeft, low)
	s.set(r.X+r.W-1, r.Y+r.H-1, m.LowRight, low)
}
