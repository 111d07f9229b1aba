package picture

import (
	"math"

	"washeve/model/quantity"
	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// DotKind says how a reading stands.
type DotKind uint8

// The kinds of reading.
const (
	Flushed     DotKind = iota // it counts
	FirstCup                   // not flushed: shown, not used
	Unexplained                // no bed gives it
)

// Dot is a reading where it was taken.
type Dot struct {
	Volume quantity.Volume // the fill had given
	PPM    float64
	Kind   DotKind
}

// Fill is a fill's life: the curve with the readings on it, and the readings of
// fills before it, faint.
type Fill struct {
	Curve
	Readings []Dot
	Past     [][]Dot
}

// Draw plots the fill as [Curve.Draw] does, with the readings as dots.
func (f Fill) Draw(th theme.Theme, size layout.Size) []string {
	if th.Plain || size.W < 30 || size.H < 6 || len(f.Points) < 2 {
		return f.words(th, size)
	}
	s := newSheet(size)
	plot := layout.Rect{X: curveMargin, Y: 0, W: size.W - curveMargin, H: size.H - 2}
	row := f.frame(th, s, plot)
	for x := range plot.W {
		f.column(th, s, plot, x, row)
	}
	for _, past := range f.Past {
		for _, d := range past {
			if x, y, ok := f.place(plot, d, row); ok && s.mark(x, y) != th.Marks.Median {
				s.set(x, y, th.Marks.Dot, th.Muted)
			}
		}
	}
	for _, d := range f.Readings {
		if x, y, ok := f.place(plot, d, row); ok {
			mark, ink := DotMark(th, d.Kind)
			s.set(x, y, mark, ink)
		}
	}
	f.axis(th, s, plot)
	return s.lines()
}

// curveMargin is the room for the scale of ppm.
const curveMargin = 6

// frame draws the scale and the limit, and gives the row of a ppm.
func (f Fill) frame(th theme.Theme, s sheet, plot layout.Rect) func(ppm float64) int {
	low, high := f.span10()
	row := func(ppm float64) int {
		part := (math.Log10(math.Max(tame(ppm), 1e-3)) - low) / (high - low)
		return plot.H - 1 - int(math.Round(math.Min(math.Max(part, 0), 1)*float64(plot.H-1)))
	}
	s.scale(th, plot, low, high, row)
	limit := row(f.Limit)
	s.fill(layout.Rect{X: plot.X, Y: limit, W: plot.W, H: 1}, th.Marks.Limit, th.Bad)
	s.write(plot.X+1, limit, " limit ", th.Bad)
	return row
}

// span10 is the curve's range in powers of ten, with its readings.
func (f Fill) span10() (low, high float64) {
	low, high = f.range10()
	for _, d := range f.Readings {
		high = math.Max(high, math.Log10(1.1*math.Max(tame(d.PPM), 1)))
	}
	return low, high
}

// place is where a reading stands; false where that is off the plot.
func (f Fill) place(plot layout.Rect, d Dot, row func(float64) int) (x, y int, ok bool) {
	first, last := f.Points[0].Volume, f.Points[len(f.Points)-1].Volume
	part := float64((d.Volume - first) / (last - first))
	if !(part >= 0 && part <= 1) {
		return 0, 0, false
	}
	return plot.X + int(math.Round(part*float64(plot.W-1))), plot.Y + row(d.PPM), true
}

// DotMark is how a reading is drawn. Most have one ink, whatever their mark: many
// first cups among many readings would send a change of colour for each.
func DotMark(th theme.Theme, k DotKind) (string, theme.Ink) {
	switch k {
	case FirstCup:
		return th.Marks.Bad, th.Strong
	case Unexplained:
		return "?", th.Bad
	}
	return th.Marks.Towel, th.Strong
}

// DotLegend says what the dots mean, for the kinds that are there.
func DotLegend(th theme.Theme, f Fill, width int) string {
	line, used := "", 0
	add := func(mark string, ink theme.Ink, words string) {
		gap := min(used, 1)
		if need := gap + cells.Width(mark+" "+words); used+need <= width {
			line += cells.Blank(gap) + ink.On(mark+" "+words)
			used += need
		}
	}
	there := map[DotKind]bool{}
	for _, d := range f.Readings {
		there[d.Kind] = true
	}
	for _, k := range []DotKind{Unexplained, Flushed, FirstCup} {
		mark, ink := DotMark(th, k)
		if there[k] {
			add(mark, ink, [...]string{"reading", "first cup, not used", "fits no bed"}[k])
		}
	}
	if len(f.Past) > 0 {
		add(th.Marks.Dot, th.Muted, "fills before")
	}
	return line
}
