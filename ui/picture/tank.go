package picture

import (
	"fmt"
	"math"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// layer is one part of the bed's depth.
type layer struct {
	name        string
	mark        string
	ink         theme.Ink
	before, now quantity.Fraction
}

func layersOf(th theme.Theme, before, after planner.Layers) []layer {
	return []layer{
		{"spent", th.Marks.Spent, th.Raw, before.Spent, after.Spent},
		{"working", th.Marks.Working, th.Softened, before.Working, after.Working},
		{"fresh", th.Marks.Fresh, th.DI, before.Fresh, after.Fresh},
	}
}

// Tank draws the bed upright, the feed coming in at the top: before the wash,
// and after it. With 30 cells or more the layers are named beside it, otherwise
// below it.
func Tank(th theme.Theme, before, after planner.Layers, size layout.Size) []string {
	layers := layersOf(th, before, after)
	if th.Plain {
		return tankWords(layers, size)
	}
	if size.W < 13 || size.H < 5 {
		return nil
	}
	wide := size.W >= 30
	tankW, gap := 5, 1
	if wide {
		tankW, gap = 8, 2
	}
	s := newSheet(size)
	for i, name := range []string{"now", "after"} {
		r := layout.Rect{X: i * (tankW + gap), Y: 1, W: tankW, H: size.H - 1}
		s.centre(layout.Rect{X: r.X, W: r.W}, 0, name, th.Text)
		s.box(r, th.Marks, th.Edge, th.Edge, th.Edge, th.Edge)
		s.layers(th, layout.Rect{X: r.X, Y: 2, W: tankW, H: size.H - 3}, layers, i == 1)
	}
	if wide {
		s.beside(layout.Rect{X: 2*tankW + gap + 1, Y: 2, W: size.W - 2*tankW - gap - 1, H: size.H - 3}, layers)
	}
	return s.lines()
}

// layers fills the tank. Its wall has the colour of what is behind it.
func (s sheet) layers(th theme.Theme, r layout.Rect, layers []layer, after bool) {
	parts := make([]float64, len(layers))
	for i, l := range layers {
		parts[i] = float64(l.before)
		if after {
			parts[i] = float64(l.now)
		}
	}
	y := r.Y
	for i, n := range shareOut(parts, r.H) {
		s.fill(layout.Rect{X: r.X, Y: y, W: r.W, H: n}, th.Marks.Wall, layers[i].ink)
		s.fill(layout.Rect{X: r.X + 1, Y: y, W: r.W - 2, H: n}, layers[i].mark, layers[i].ink)
		y += n
	}
}

// beside names the layers, each at its own third of the height.
func (s sheet) beside(r layout.Rect, layers []layer) {
	for i, l := range layers {
		y := r.Y + i*max(r.H-1, 0)/2
		if r.H < 3 {
			y = r.Y + i
		}
		s.set(r.X, y, l.mark, l.ink)
		s.write(r.X+2, y, l.words(), l.ink)
	}
}

func (l layer) words() string {
	return fmt.Sprintf("%s %s to %s%%", l.name, percent(l.before), percent(l.now))
}

func percent(f quantity.Fraction) string { return fmt.Sprintf("%.0f", 100*tame(float64(f))) }

// TankLegend names the layers after the wash in one line, for where the tank is narrow,
// and says so where there is room.
func TankLegend(th theme.Theme, before, after planner.Layers, width int) string {
	line, used := "", 0
	for _, l := range layersOf(th, before, after) {
		words := l.name + " " + percent(l.now) + "%"
		if need := cells.Width(words) + 3; used+need <= width+1 {
			line += l.ink.On(l.mark) + " " + l.ink.On(words) + " "
			used += need
		}
	}
	if used+len(legendOf) <= width {
		line += th.Muted.On(legendOf)
	}
	return line
}

const legendOf = "after"

func tankWords(layers []layer, size layout.Size) []string {
	words := "bed:"
	for _, l := range layers {
		words += " " + l.words()
	}
	return cells.WrapMost(words, size.W, size.H, "...")
}

// shareOut gives n lines to parts by their size. A part that is there at all
// gets a line where there are enough of them.
func shareOut(parts []float64, n int) []int {
	lines := make([]int, len(parts))
	total := 0.0
	for _, p := range parts {
		total += math.Max(p, 0)
	}
	if !(total > 0) || math.IsInf(total, 0) || n <= 0 {
		return lines
	}
	left := n
	for i, p := range parts {
		if p > 0.005*total && left > 0 {
			lines[i], left = 1, left-1
		}
	}
	for ; left > 0; left-- {
		best, most := 0, math.Inf(-1)
		for i, p := range parts {
			if lack := math.Max(p, 0)/total*float64(n) - float64(lines[i]); lack > most {
				best, most = i, lack
			}
		}
		lines[best]++
	}
	return lines
}
