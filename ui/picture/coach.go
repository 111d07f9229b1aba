package picture

import (
	"math"
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// Face is what is drawn on one face of a vehicle.
type Face struct {
	Water model.Water
	Spots planner.Spots
	Dries quantity.Opt[quantity.Duration] // how long its film lasts while its turn comes
	// Unseen tells a face whose spots nobody sees, which is why it gets no better water.
	Unseen bool
}

// names are ways to write what is on a face, the longest first.
func (f Face) names(side model.Side) []string {
	water, spots := string(side)+" "+report.WaterName(f.Water), report.SpotWords(f.Spots)
	ways := [][]string{{water, spots}, {water}, {string(side) + " " + Letter(f.Water)}}
	if f.Unseen {
		ways = [][]string{{water, spots, outOfSight}, {water, outOfSight}, {string(side) + " " + outOfSight}, {water}, ways[2]}
	}
	if lasts, given := f.Dries.Get(); given {
		ways = append([][]string{append(slices.Clone(ways[0]), report.DriesIn(lasts))}, ways...)
	}
	names := make([]string, len(ways))
	for i, parts := range ways {
		names[i] = " " + strings.Join(parts, ", ") + " "
	}
	return names
}

// outOfSight is said of what is [Face.Unseen].
const outOfSight = "out of sight"

// Coach is a vehicle as it is drawn: to scale, with its faces.
type Coach struct {
	Length, Height, Width quantity.Length
	Faces                 map[model.Side]Face
}

// cellHeight is the height of a cell over its width, on common terminals.
const cellHeight = 2.0

// Side draws the vehicle from its left, the front at the left: the roof is the
// upper edge, front and rear are the walls.
func Side(th theme.Theme, c Coach, size layout.Size) []string {
	if th.Plain {
		return c.words(size, model.Sides()...)
	}
	across, down, ok := scaled(c.Length, c.Height, size, 4)
	if !ok {
		return nil
	}
	s := newSheet(layout.Size{W: across, H: down})
	whole := layout.Rect{W: across, H: down}
	body := layout.Rect{X: 1, Y: 1, W: across - 2, H: down - 2}
	s.cover(th, body, c.Faces[model.Left], model.Left)
	s.box(whole, th.Marks, c.ink(th, model.Roof), c.ink(th, model.Rear), th.Edge, c.ink(th, model.Front))
	s.edgeWords(th, whole, 0, model.Roof, c)
	for _, x := range []int{across / 6, across - 1 - across/6} {
		s.set(x, down-1, th.Marks.Wheel, th.Edge)
	}
	lines := s.lines()
	for _, line := range c.others(th, size.W) {
		if len(lines) < size.H {
			lines = append(lines, line)
		}
	}
	return lines
}

// others names the faces that are not seen from the left.
func (c Coach) others(th theme.Theme, width int) []string {
	line, used := "", 0
	for _, side := range []model.Side{model.Right, model.Front, model.Rear} {
		f, known := c.Faces[side]
		words := string(side) + " " + report.WaterName(f.Water)
		if known && used+cells.Width(words)+1 <= width {
			line += WaterInk(th, f.Water).On(words) + " "
			used += cells.Width(words) + 1
		}
	}
	return []string{line}
}

// Above draws the vehicle from above, the front at the left: the edges are the
// right side, the left side, the front and the rear. In words there is nothing
// more to tell than [Side] does.
func Above(th theme.Theme, c Coach, size layout.Size) []string {
	if th.Plain {
		return nil
	}
	across, down, ok := scaled(c.Length, c.Width, size, 3)
	if !ok {
		return nil
	}
	s := newSheet(layout.Size{W: across, H: down})
	whole := layout.Rect{W: across, H: down}
	s.cover(th, layout.Rect{X: 1, Y: 1, W: across - 2, H: down - 2}, c.Faces[model.Roof], model.Roof)
	s.box(whole, th.Marks, c.ink(th, model.Right), c.ink(th, model.Rear), c.ink(th, model.Left), c.ink(th, model.Front))
	s.edgeWords(th, whole, 0, model.Right, c)
	s.edgeWords(th, whole, down-1, model.Left, c)
	return s.lines()
}

// scaled finds how many cells a body takes, as large as fits.
func scaled(long, tall quantity.Length, size layout.Size, least int) (across, down int, ok bool) {
	l, t := long.Metres(), tall.Metres()
	if !(l > 0 && l < 1e3) || !(t > 0 && t < 1e3) || size.W < 12 || size.H < least {
		return 0, 0, false
	}
	perCell := math.Max(l/float64(size.W), t/(cellHeight*float64(size.H)))
	across = max(int(math.Round(l/perCell)), 12)
	down = max(int(math.Round(t/(cellHeight*perCell))), least)
	return min(across, size.W), min(down, size.H), true
}

// cover fills a face with the pattern of its water, strews the spots that would
// dry on it, and names it.
func (s sheet) cover(th theme.Theme, r layout.Rect, f Face, side model.Side) {
	ink := WaterInk(th, f.Water)
	s.fill(r, WaterFill(th, f.Water), ink)
	mark, every := spotMark(th, f.Spots)
	for y := r.Y; every > 0 && y < r.Y+r.H; y++ {
		for x := r.X; x < r.X+r.W; x++ {
			if strewn(x, y)%every == 0 {
				s.set(x, y, mark, SpotInk(th, f.Spots))
			}
		}
	}
	for _, words := range f.names(side) {
		if f.Water != "" && s.centre(r, r.Y+r.H/2, words, th.Strong) {
			return
		}
	}
}

// edgeWords names the face that an edge stands for.
func (s sheet) edgeWords(th theme.Theme, r layout.Rect, y int, side model.Side, c Coach) {
	f, known := c.Faces[side]
	if !known {
		return
	}
	inner := layout.Rect{X: r.X + 2, Y: y, W: r.W - 4, H: 1}
	ink := WaterInk(th, f.Water)
	for _, words := range f.names(side) {
		if s.centre(inner, y, words, ink) {
			return
		}
	}
}

func (c Coach) ink(th theme.Theme, side model.Side) theme.Ink {
	f, known := c.Faces[side]
	if !known {
		return th.Edge
	}
	return WaterInk(th, f.Water)
}

// words tells the faces, a line a face.
func (c Coach) words(size layout.Size, sides ...model.Side) []string {
	var lines []string
	for _, side := range sides {
		f, known := c.Faces[side]
		line := string(side) + ": " + report.WaterName(f.Water) + ", " + report.SpotWords(f.Spots)
		if f.Unseen {
			line += ", " + outOfSight
		}
		if known && len(lines) < size.H && len(line) <= size.W {
			lines = append(lines, line)
		}
	}
	return lines
}

// strewn is a fixed disorder: the same cell always gives the same number.
func strewn(x, y int) int {
	n := uint32(x)*2654435761 ^ uint32(y)*2246822519
	n ^= n >> 13
	n *= 3266489917
	return int((n >> 16) & 0x7fff)
}
