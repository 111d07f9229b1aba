package picture

import (
	"math"

	"washeve/ui/layout"
	"washeve/ui/theme"
)

// dots is squared paper of a finer kind, two dots across and four down in each
// cell, which on common terminals makes them square. They are drawn with the
// Braille patterns.
type dots struct {
	size layout.Size // in cells
	bits [][]byte
	inks [][]theme.Ink
}

const (
	dotsAcross = 2
	dotsDown   = 4
)

func newDots(size layout.Size) dots {
	d := dots{size: size, bits: make([][]byte, size.H), inks: make([][]theme.Ink, size.H)}
	for y := range size.H {
		d.bits[y] = make([]byte, size.W)
		d.inks[y] = make([]theme.Ink, size.W)
	}
	return d
}

// bitOf is a dot's place in the number of its pattern. PUBLISHED: The Unicode
// Standard, block Braille Patterns.
func bitOf(x, y int) byte {
	return [dotsDown][dotsAcross]byte{{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}}[y][x]
}

// cell finds the cell of a dot.
func (d dots) cell(x, y float64) (col, row int, bit byte, ok bool) {
	if !(math.Abs(x) < 1e6 && math.Abs(y) < 1e6) {
		return 0, 0, 0, false
	}
	i, j := int(math.Round(x)), int(math.Round(y))
	if i < 0 || j < 0 || i >= d.size.W*dotsAcross || j >= d.size.H*dotsDown {
		return 0, 0, 0, false
	}
	return i / dotsAcross, j / dotsDown, bitOf(i%dotsAcross, j%dotsDown), true
}

// set makes the dot nearest to a point; what lies outside is left out. A cell
// has the ink of its last dot.
func (d dots) set(x, y float64, ink theme.Ink) {
	if col, row, bit, ok := d.cell(x, y); ok {
		d.bits[row][col] |= bit
		d.inks[row][col] = ink
	}
}

// clear takes the dot nearest to a point away.
func (d dots) clear(x, y float64) {
	if col, row, bit, ok := d.cell(x, y); ok {
		d.bits[row][col] &^= bit
	}
}

// line joins two points.
func (d dots) line(x0, y0, x1, y1 float64, ink theme.Ink) {
	n := math.Ceil(math.Max(math.Abs(x1-x0), math.Abs(y1-y0)))
	if !(n < 1e4) {
		return
	}
	for i := 0.0; i <= n; i++ {
		part := i / math.Max(n, 1)
		d.set(x0+part*(x1-x0), y0+part*(y1-y0), ink)
	}
}

// ring draws a circle with its dots a distance apart.
func (d dots) ring(x, y, radius, apart float64, ink theme.Ink) {
	n := math.Round(2 * math.Pi * radius / apart)
	for i := 0.0; i < n; i++ {
		sin, cos := math.Sincos(2 * math.Pi * i / n)
		d.set(x+radius*sin, y-radius*cos, ink)
	}
}

// onto draws the dots on a sheet, wherever it is blank.
func (d dots) onto(s sheet) {
	for y, row := range d.bits {
		for x, bits := range row {
			if bits != 0 && s.blank(x, y) {
				s.set(x, y, string(rune(0x2800)+rune(bits)), d.inks[y][x])
			}
		}
	}
}
