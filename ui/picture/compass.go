package picture

import (
	"fmt"
	"math"
	"sort"
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// Compass is the sun's way over the sky as on a map, north at the top, and the
// vehicle in the middle. The rim is the horizon, the middle straight overhead;
// the rings between stand for 30 and, where there is room, 60 degrees.
type Compass struct {
	Heading quantity.Opt[model.Heading]
	Steps   []drying.Moment // of the day; none where it is not known
	From    time.Time       // when the wash begins
	To      time.Time       // and ends
}

// dial is where things lie on a drawn compass, in dots.
type dial struct {
	dots
	x, y, radius float64
}

// Draw needs 14 cells and 7 lines. The sun's way is dotted, and solid while the
// wash goes on; the sun itself stands where it is at the start.
func (c Compass) Draw(th theme.Theme, size layout.Size) []string {
	if th.Plain {
		return c.words(size)
	}
	size.W = min(size.W, 2*size.H+1)
	if size.W < 14 || size.H < 7 {
		return nil
	}
	wide, tall := float64(size.W*dotsAcross), float64(size.H*dotsDown)
	d := dial{dots: newDots(size), x: (wide - 1) / 2, y: (tall - 1) / 2, radius: math.Min(wide, tall)/2 - 1}
	apart := 6.0
	if d.radius >= roomy {
		apart = 4
		d.ring(d.x, d.y, d.radius/3, apart, th.Edge)
	}
	d.ring(d.x, d.y, d.radius*2/3, apart, th.Edge)
	d.ring(d.x, d.y, d.radius, 2, th.Edge)
	h, headed := c.Heading.Get()
	if headed && d.radius >= roomy {
		d.coach(h, c.inkOf(th))
	}
	c.way(th, d)
	if headed && d.radius < roomy {
		d.coach(h, func(model.Side) theme.Ink { return th.Text })
	}
	s := newSheet(size)
	c.letters(th, s, d)
	d.onto(s)
	return s.lines()
}

// at is where a direction lies.
func (d dial) at(altitude, azimuth quantity.Angle) (x, y float64) {
	out := d.radius * (1 - float64(altitude/(90*quantity.Degree)))
	sin, cos := math.Sincos(float64(azimuth))
	return d.x + out*sin, d.y - out*cos
}

// coach draws a vehicle seen from above, its nose pointed, each side in its own
// ink; a small one is filled and lies over all else, to be seen at all. It is not
// to scale.
func (d dial) coach(h model.Heading, ink func(model.Side) theme.Ink) {
	half := 0.45 * d.radius
	side := half / 3
	sin, cos := math.Sincos(float64(h))
	at := func(along, across float64) (x, y float64) {
		return d.x + along*sin + across*cos, d.y - along*cos + across*sin
	}
	for along := -half; along <= half; along += 0.4 {
		for across := -min(side, half-along); across <= min(side, half-along); across += 0.4 {
			x, y := at(along, across)
			d.clear(x, y)
			if d.radius < roomy {
				d.set(x, y, ink(model.Roof))
			}
		}
	}
	line := func(along0, across0, along1, across1 float64, of model.Side) {
		x0, y0 := at(along0, across0)
		x1, y1 := at(along1, across1)
		d.line(x0, y0, x1, y1, ink(of))
	}
	line(-half, -side, -half, side, model.Rear)
	line(-half, -side, half-side, -side, model.Left)
	line(-half, side, half-side, side, model.Right)
	line(half-side, -side, half, 0, model.Front)
	line(half, 0, half-side, side, model.Front)
}

// roomy is a radius, in dots, from which there is room for all.
const roomy = 30

// inkOf tells the sides that stand in the sun at the start.
func (c Compass) inkOf(th theme.Theme) func(model.Side) theme.Ink {
	m, ok := c.moment(c.From)
	return func(side model.Side) theme.Ink {
		if f, known := m.Face(side); ok && known && f.Sunlit && side != model.Roof {
			return th.Sun
		}
		return th.Text
	}
}

// up tells the moments at which the sun is drawn.
func up(m *drying.Moment) bool { return m.Up && m.Sun.Apparent() >= 0 }

// way draws the sun's way through the day.
func (c Compass) way(th theme.Theme, d dial) {
	lastX, lastY := math.Inf(-1), 0.0
	for i := range c.Steps {
		m := &c.Steps[i]
		if !up(m) {
			continue
		}
		x, y := d.at(m.Sun.Apparent(), m.Sun.Azimuth)
		if i > 0 && up(&c.Steps[i-1]) && m.At.After(c.From) && !m.At.After(c.To) {
			before := &c.Steps[i-1]
			fromX, fromY := d.at(before.Sun.Apparent(), before.Sun.Azimuth)
			d.line(fromX, fromY, x, y, th.Sun)
		}
		if math.Hypot(x-lastX, y-lastY) >= 2 {
			d.set(x, y, th.Sun)
			lastX, lastY = x, y
		}
	}
}

// letters writes what has to be read: the sun at the start, the points of the
// compass, and the hours, the more the larger it is.
func (c Compass) letters(th theme.Theme, s sheet, d dial) {
	put := func(x, y float64, words string, ink theme.Ink) {
		col, row, _, ok := d.cell(x, y)
		if ok && s.free(col, row, len(words)) {
			s.write(col, row, words, ink)
		}
	}
	if m, ok := c.moment(c.From); ok && up(&m) {
		x, y := d.at(m.Sun.Apparent(), m.Sun.Azimuth)
		if col, row, _, ok := d.cell(x, y); ok {
			s.set(col, row, th.Marks.Sun, th.Strong)
		}
	}
	for i, word := range []string{"N", "E", "S", "W"} {
		x, y := d.at(0, quantity.Angle(i)*90*quantity.Degree)
		put(x, y, word, th.Strong)
	}
	every := 3
	if d.radius >= roomy {
		every = 1
	}
	for _, step := range []int{6, 3, 2, 1} {
		for i := range c.Steps {
			m := &c.Steps[i]
			if step >= every && m.FullHour && m.At.Hour()%step == 0 && up(m) {
				x, y := d.at(m.Sun.Apparent(), m.Sun.Azimuth)
				put(x-1, y, fmt.Sprintf("%02d", m.At.Hour()), th.Sun)
			}
		}
	}
}

// free tells that words would stand apart from others in a row.
func (s sheet) free(x, y, n int) bool {
	for i := x - 1; i <= x+n; i++ {
		if i >= 0 && i < s.size.W && !s.blank(i, y) {
			return false
		}
	}
	return x >= 0 && x+n <= s.size.W
}

// moment is the last step not after an instant.
func (c Compass) moment(t time.Time) (drying.Moment, bool) {
	found := sort.Search(len(c.Steps), func(i int) bool { return c.Steps[i].At.After(t) })
	if found == 0 {
		return drying.Moment{}, false
	}
	return c.Steps[found-1], true
}

// words tells the same in a few lines.
func (c Compass) words(size layout.Size) []string {
	all := []string{"nose: not stated"}
	if h, given := c.Heading.Get(); given {
		all[0] = "nose: " + h.Word() + ", " + degrees(h.Angle())
	}
	for _, at := range []time.Time{c.From, c.To} {
		m, ok := c.moment(at)
		words := "sun " + report.Clock(at) + ": "
		switch {
		case !ok:
		case !up(&m):
			all = append(all, words+"not up")
		default:
			all = append(all, words+model.HeadingOf(m.Sun.Azimuth).Word()+", "+degrees(m.Sun.Apparent()))
		}
	}
	var lines []string
	for _, line := range all[:min(len(all), max(size.H, 0))] {
		lines = append(lines, cells.Clip(line, size.W, ""))
	}
	return lines
}

func degrees(a quantity.Angle) string { return fmt.Sprintf("%.0f deg", a.Degrees()) }
