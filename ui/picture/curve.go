package picture

import (
	"math"
	"sort"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// Curve is the outlet over the water given since the fill.
type Curve struct {
	Points   []planner.CurvePoint // volumes rising
	From, To quantity.Volume      // tomorrow's job
	Limit    float64              // ppm
	System   quantity.System
}

// Draw plots the curve: the median, the band of eight in ten, the limit, and
// under the axis the job. The scale of ppm is by powers of ten.
func (c Curve) Draw(th theme.Theme, size layout.Size) []string {
	if th.Plain || size.W < 30 || size.H < 6 || len(c.Points) < 2 {
		return c.words(th, size)
	}
	s := newSheet(size)
	plot := layout.Rect{X: curveMargin, Y: 0, W: size.W - curveMargin, H: size.H - 2}
	low, high := c.range10()
	row := func(ppm float64) int {
		part := (math.Log10(math.Max(tame(ppm), 1e-3)) - low) / (high - low)
		return plot.H - 1 - int(math.Round(math.Min(math.Max(part, 0), 1)*float64(plot.H-1)))
	}
	s.scale(th, plot, low, high, row)
	limitRow := row(c.Limit)
	s.fill(layout.Rect{X: plot.X, Y: limitRow, W: plot.W, H: 1}, th.Marks.Limit, th.Bad)
	for x := range plot.W {
		c.column(th, s, plot, x, row)
	}
	s.write(plot.X+1, limitRow, " limit ", th.Bad)
	c.axis(th, s, plot)
	return s.lines()
}

// column draws the band and the median over one cell of the axis.
func (c Curve) column(th theme.Theme, s sheet, plot layout.Rect, x int, row func(float64) int) {
	b := c.at(c.volume(x, plot.W))
	ink := th.Edge
	if v := c.volume(x, plot.W); v >= c.From && v <= c.To {
		ink = th.Accent
	}
	for y := row(b.P90); y <= row(b.P10); y++ {
		s.set(plot.X+x, plot.Y+y, th.Marks.Band, ink)
	}
	s.set(plot.X+x, plot.Y+row(b.P50), th.Marks.Median, th.DI)
}

func (c Curve) axis(th theme.Theme, s sheet, plot layout.Rect) {
	y := plot.H
	for x := range plot.W {
		mark, ink := th.Marks.Rule, th.Edge
		if v := c.volume(x, plot.W); v >= c.From && v <= c.To {
			mark, ink = th.Marks.Full, th.Accent
		}
		s.set(plot.X+x, y, mark, ink)
	}
	first, last := c.Points[0].Volume, c.Points[len(c.Points)-1].Volume
	s.write(plot.X, y+1, quantity.Show(first, c.System), th.Muted)
	end := quantity.Show(last, c.System)
	s.write(plot.X+plot.W-len(end), y+1, end, th.Muted)
	wash := "next wash " + th.Marks.Full + th.Marks.Full
	middle := layout.Rect{X: plot.X + 6, W: plot.W - 6 - len(end)}
	s.centre(middle, y+1, wash, th.Accent)
	c.legend(th, s, y+1, plot.X+6, middle.X+(middle.W-cells.Width(wash))/2, cells.Width(wash), plot.X+plot.W-len(end))
}

// legend says under the axis what the line and the band are: left and right of the words
// about the next wash, which begin at a cell and are so wide.
func (c Curve) legend(th theme.Theme, s sheet, y, left, words, wide, right int) {
	const apart = 2
	s.centre(layout.Rect{X: left + 1, W: words - apart - left - 1}, y, th.Marks.Median+" middle", th.DI)
	s.centre(layout.Rect{X: words + wide + apart, W: right - words - wide - 2*apart}, y, th.Marks.Band+" 8 in 10", th.Muted)
}

// scale writes the powers of ten beside a plot, and over them what they count.
func (s sheet) scale(th theme.Theme, plot layout.Rect, low, high float64, row func(ppm float64) int) {
	free := 0
	for decade := math.Floor(high); decade >= math.Ceil(low); decade-- {
		y := row(math.Pow(10, decade))
		s.write(0, y, cells.Right(quantity.Round(math.Pow(10, decade)), curveMargin-1), th.Muted)
		if y == free {
			free++
		}
	}
	if free < plot.H {
		s.write(0, free, cells.Right("ppm", curveMargin-1), th.Muted)
	}
	for y := range plot.H {
		s.set(curveMargin-1, y, th.Marks.Wall, th.Edge)
	}
}

// volume is the volume that a cell of the axis stands for.
func (c Curve) volume(x, width int) quantity.Volume {
	first, last := c.Points[0].Volume, c.Points[len(c.Points)-1].Volume
	return first + (last-first)*quantity.Volume(float64(x)/float64(max(width-1, 1)))
}

// at reads the curve between its points.
func (c Curve) at(v quantity.Volume) planner.Band[float64] {
	i := sort.Search(len(c.Points), func(i int) bool { return c.Points[i].Volume >= v })
	if i == 0 {
		return c.Points[0].Outlet
	}
	if i == len(c.Points) {
		return c.Points[i-1].Outlet
	}
	a, b := c.Points[i-1], c.Points[i]
	part := float64((v - a.Volume) / (b.Volume - a.Volume))
	mix := func(p, q float64) float64 { return p + part*(q-p) }
	return planner.Band[float64]{
		P10: mix(a.Outlet.P10, b.Outlet.P10), P50: mix(a.Outlet.P50, b.Outlet.P50), P90: mix(a.Outlet.P90, b.Outlet.P90),
	}
}

// range10 is the range, in powers of ten, that holds the curve and its limit:
// from a tenth of a ppm at the lowest, since no pen reads below.
func (c Curve) range10() (low, high float64) {
	least, most := tame(c.Limit), tame(c.Limit)
	for _, p := range c.Points {
		least, most = math.Min(least, tame(p.Outlet.P50)), math.Max(most, tame(p.Outlet.P90))
	}
	low = math.Floor(math.Log10(math.Max(least, 0.1)))
	high = math.Log10(1.1 * math.Max(most, 1))
	return low, math.Max(high, low+1)
}

// tame makes any number one that can be drawn: none is 0, and no water has a
// million ppm.
func tame(v float64) float64 {
	if math.IsNaN(v) {
		return 0
	}
	return math.Min(math.Max(v, 0), 1e6)
}

func (c Curve) words(th theme.Theme, size layout.Size) []string {
	if len(c.Points) < 2 || size.H < 1 || !th.Plain {
		return nil
	}
	a, b := c.at(c.From), c.at(c.To)
	line := "outlet from " + quantity.Round(a.P50) + " to " + quantity.Round(b.P50) + " ppm in this wash"
	return []string{cells.Clip(line, size.W, "")}
}
