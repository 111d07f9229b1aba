package picture

import (
	"strconv"
	"time"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/drying"
	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// Strip is a day: the hours with light across, the faces down.
type Strip struct {
	Day    *planner.DayPlan
	System quantity.System
}

const (
	// stripMargin is how many cells the names of the rows take.
	stripMargin = 6
	// leastCell holds a mark, two figures and a flag.
	leastCell = 4
	mostCell  = 6
	// stripAbove is the lines above the faces: hours, easy, wash.
	stripAbove = 3
)

// Height is how many lines the strip takes.
func (s Strip) Height() int {
	if len(s.Day.Steps) == 0 {
		return 0
	}
	return stripAbove + len(s.Day.Steps[0].Faces) + 1
}

// columns is how the day lies across the strip.
type columns struct {
	steps []drying.Moment // those with light, from a full hour to a full hour
	per   int             // steps in a column
	wide  int             // cells of a column
}

// columns finds the shortest columns that fit: a quarter of an hour to two
// hours.
func (s Strip) columns(width int) (columns, bool) {
	steps := s.lit()
	for _, per := range []int{1, 2, 4, 8} {
		n := (len(steps) + per - 1) / per
		if n > 0 && n*leastCell <= width-stripMargin {
			return columns{steps: steps, per: per, wide: min((width-stripMargin)/n, mostCell)}, true
		}
	}
	return columns{}, false
}

// lit are the steps with light, made up to full hours. On a day without light
// they are all.
func (s Strip) lit() []drying.Moment {
	all := s.Day.Steps
	first, last := -1, -1
	for i := range all {
		if all[i].Light {
			last = i
			if first < 0 {
				first = i
			}
		}
	}
	if first < 0 {
		return all
	}
	for first > 0 && !all[first].FullHour {
		first--
	}
	for last++; last < len(all) && !all[last].FullHour; {
		last++
	}
	return all[first:last]
}

// x is the cell of an instant, which may lie outside the strip.
func (c columns) x(t time.Time) int {
	long := time.Duration(c.per) * time.Duration(drying.Step) * time.Second
	past := t.Sub(c.steps[0].At)
	return stripMargin + int(past*time.Duration(c.wide)/long)
}

// end is the cell behind the last column.
func (c columns) end() int {
	return stripMargin + (len(c.steps)+c.per-1)/c.per*c.wide
}

// each goes through the columns: the cell where each starts, and the moment it
// shows, the first one with light in it.
func (c columns) each(do func(x int, head, shown *drying.Moment)) {
	for i := 0; i < len(c.steps); i += c.per {
		shown := i
		for j := i; j < min(i+c.per, len(c.steps)); j++ {
			if c.steps[j].Light {
				shown = j
				break
			}
		}
		do(stripMargin+i/c.per*c.wide, &c.steps[i], &c.steps[shown])
	}
}

// Draw makes the rows: the hours, the easy hours with R at
// the recommended start, the wash with the number of each face where its turn
// begins, the faces, and the air.
func (s Strip) Draw(th theme.Theme, size layout.Size) []string {
	c, ok := s.columns(size.W)
	if !ok {
		return nil
	}
	paper := newSheet(layout.Size{W: c.end(), H: s.Height()})
	s.hours(th, paper, c)
	s.easy(th, paper, c)
	s.wash(th, paper, c)
	for i, f := range s.Day.Steps[0].Faces {
		paper.write(0, stripAbove+i, string(f.Side), th.Text)
	}
	c.each(func(x int, _, shown *drying.Moment) { s.column(th, paper, x, shown) })
	lines := paper.lines()
	return lines[:min(len(lines), max(size.H, 0))]
}

func (s Strip) hours(th theme.Theme, paper sheet, c columns) {
	c.each(func(x int, head, _ *drying.Moment) {
		words := head.Label[:2]
		if !head.FullHour {
			words = head.Label[2:min(5, len(head.Label))]
		}
		ink := th.Muted
		if head.FullHour {
			ink = th.Text
		}
		paper.write(x+1, 0, words, ink)
	})
}

// easy marks the easy hours: no face hurries. Beside them stands what they are, and
// whether a wash fits into them.
func (s Strip) easy(th theme.Theme, paper sheet, c columns) {
	const row = 1
	paper.write(0, row, "easy", th.Muted)
	for _, w := range s.Day.Windows {
		from, to := max(c.x(w.From), stripMargin), min(c.x(w.To), c.end()-1)
		paper.fill(layout.Rect{X: from, Y: row, W: to - from + 1, H: 1}, th.Marks.Full, th.Good)
	}
	from := stripMargin + 1
	if best, given := s.Day.Recommended.Get(); given {
		x := min(max(c.x(best.At), stripMargin), c.end()-1)
		paper.write(x, row, "R", th.Strong)
		from = x + 2
	}
	if len(s.Day.Windows) == 0 {
		paper.write(from, row, cells.Clip(s.noWindow(), c.end()-from, th.Marks.More), th.Muted)
		return
	}
	gap := widest(paper, row, stripMargin, c.end())
	for _, words := range s.windowWords() {
		if cells.Width(words)+4 <= gap.W {
			paper.write(gap.X+2, row, words, th.Muted)
			break
		}
	}
}

// windowWords tell what the easy hours are, the longest words first.
func (s Strip) windowWords() []string {
	if s.Day.NotAfter.Given() {
		return []string{"hours in which no face hurries", "no face hurries", "hours"}
	}
	return []string{"easy hours, too short for the whole wash", "too short for the whole wash", "too short"}
}

// widest is the widest blank stretch of a row.
func widest(paper sheet, row, from, end int) layout.Rect {
	best := layout.Rect{X: from, Y: row, H: 1}
	for x := from; x < end; x++ {
		first := x
		for x < end && paper.blank(x, row) {
			x++
		}
		if x-first > best.W {
			best.X, best.W = first, x-first
		}
	}
	return best
}

// noWindow says why there is no easy hour.
func (s Strip) noWindow() string {
	switch {
	case !s.Day.Dawn.Given():
		return "dark all day"
	case !report.Foreseen(s.Day):
		return "not known: see below"
	}
	return "no hour is easy for all faces"
}

// wash draws the turns of the faces, each with its number.
func (s Strip) wash(th theme.Theme, paper sheet, c columns) {
	const row = 2
	paper.write(0, row, "wash", th.Accent)
	start := s.Day.Start
	from, to := c.x(start.At), c.x(start.End)
	if len(start.Turns) == 0 {
		return
	}
	if to < stripMargin || from >= c.end() {
		paper.write(stripMargin+1, row, start.Label+" is outside the light", th.Accent)
		return
	}
	left, right := max(from, stripMargin), min(to, c.end()-1)
	paper.fill(layout.Rect{X: left, Y: row, W: right - left + 1, H: 1}, th.Marks.Rule, th.Accent)
	for i, t := range start.Turns {
		if x := c.x(t.From); x >= stripMargin && x < c.end() {
			paper.write(x, row, strconv.Itoa(i+1), th.Accent)
		}
	}
	if from > stripMargin {
		paper.set(from-1, row, th.Marks.Here, th.Accent)
	}
	if to >= c.end() {
		paper.set(c.end()-1, row, th.Marks.Beyond, th.Accent)
	}
}

// At is the instant that a cell of the strip stands for.
func (s Strip) At(x, width int) (time.Time, bool) {
	c, ok := s.columns(width)
	if !ok || x < stripMargin || x >= c.end() {
		return time.Time{}, false
	}
	long := time.Duration(c.per) * time.Duration(drying.Step) * time.Second
	return c.steps[0].At.Add(long * time.Duration(x-stripMargin) / time.Duration(c.wide)), true
}
