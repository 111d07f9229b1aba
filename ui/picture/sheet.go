// Package picture draws the coach, the tank, the flow caps and the outlet curve
// as lines of text. Every picture is a pure function of its arguments; no line
// is wider than the size it was given, and a size too small gives no lines.
package picture

import (
	"strings"

	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// sheet is squared paper: a mark and an ink for every cell.
type sheet struct {
	size  layout.Size
	marks [][]string
	inks  [][]theme.Ink
}

func newSheet(size layout.Size) sheet {
	s := sheet{size: size, marks: make([][]string, size.H), inks: make([][]theme.Ink, size.H)}
	for y := range size.H {
		s.marks[y] = make([]string, size.W)
		s.inks[y] = make([]theme.Ink, size.W)
		for x := range size.W {
			s.marks[y][x] = " "
		}
	}
	return s
}

// set puts a mark one cell wide; what lies outside is left out.
func (s sheet) set(x, y int, mark string, ink theme.Ink) {
	if x >= 0 && y >= 0 && x < s.size.W && y < s.size.H {
		s.marks[y][x], s.inks[y][x] = mark, ink
	}
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
		var line, run strings.Builder
		var ink theme.Ink
		for x, mark := range s.marks[y] {
			if mark != " " && s.inks[y][x] != ink {
				line.WriteString(ink.On(run.String()))
				run.Reset()
				ink = s.inks[y][x]
			}
			run.WriteString(mark)
		}
		line.WriteString(ink.On(strings.TrimRight(run.String(), " ")))
		out[y] = line.String()
	}
	return out
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
