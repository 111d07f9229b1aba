package picture

import (
	"fmt"
	"math"
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/trip"
	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// Season is a trip as a line along its days: the bed's life drains from wash to
// wash, as a band with its middle, and a change of resin fills it up.
type Season struct {
	Plan trip.Plan
	Here model.Date // under the hand; zero for none
}

const (
	seasonMargin = 6 // "100 % "
	seasonBelow  = 2 // the line of washes, and the names of the stops
	leastSeason  = 5 // lines
)

// Draw draws it in words where the theme is plain, and not at all where there is
// nothing to show.
func (s Season) Draw(th theme.Theme, size layout.Size) []string {
	switch {
	case len(s.Plan.Washes) == 0:
		return nil
	case th.Plain:
		return s.words(size)
	case size.H < leastSeason || size.W < 40:
		return nil
	}
	sh := newSheet(size)
	s.scale(sh, th)
	for x := seasonMargin; x < size.W; x++ {
		s.column(sh, th, x)
	}
	s.changes(sh, th)
	s.axis(sh, th)
	s.names(sh, th)
	return sh.lines()
}

// day counts days from the first of the trip.
func (s Season) day(d model.Date) float64 {
	at := func(d model.Date) time.Time { return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC) }
	return at(d).Sub(at(s.Plan.First)).Hours() / 24
}

// span is how many days the line is long.
func (s Season) span() float64 { return s.day(s.Plan.Last) + 1 }

// x is the cell of the middle of a day.
func (s Season) x(d model.Date, width int) int {
	return seasonMargin + int((s.day(d)+0.5)/s.span()*float64(width-seasonMargin))
}

// row is the line of a part of the bed's life.
func row(part float64, height int) int {
	high := height - seasonBelow - 1
	return int(math.Round((1 - math.Min(math.Max(part, 0), 1)) * float64(high)))
}

func (s Season) scale(sh sheet, th theme.Theme) {
	for _, part := range []float64{0, 0.5, 1} {
		sh.write(0, row(part, sh.size.H), fmt.Sprintf("%3.0f %%", 100*part), th.Muted)
	}
}

// column draws the life that is left on the days of a cell.
func (s Season) column(sh sheet, th theme.Theme, x int) {
	life := s.at(x, sh.size.W)
	high, low := row(float64(life.P90), sh.size.H), row(float64(life.P10), sh.size.H)
	for y := high; y <= low; y++ {
		sh.set(x, y, th.Marks.Band, th.DI)
	}
	ink := th.Good
	if life.P50 < 0.15 {
		ink = th.Doubt
	}
	sh.set(x, row(float64(life.P50), sh.size.H), th.Marks.Median, ink)
}

// at is the life left behind a cell, by what came before it.
func (s Season) at(x, width int) trip.Band[quantity.Fraction] {
	life := s.Plan.Start
	for _, w := range s.Plan.Washes {
		if !w.Barred && s.x(w.Date, width) <= x {
			life = w.Life
		}
	}
	for _, c := range s.Plan.Changes {
		used := c.Before < len(s.Plan.Washes) && s.x(s.Plan.Washes[c.Before].Date, width) <= x
		if !c.Advised && !used && s.x(c.Date, width) <= x {
			life = trip.Band[quantity.Fraction]{P10: 1, P50: 1, P90: 1}
		}
	}
	return life
}

// changes draws an upright line for each change of resin: whole where it is planned,
// broken where it is advised.
func (s Season) changes(sh sheet, th theme.Theme) {
	for _, c := range s.Plan.Changes {
		mark, letter, ink := th.Marks.Wall, "R", th.Accent
		if c.Advised {
			mark, letter = th.Marks.Edge, "r"
		}
		x := s.x(c.Date, sh.size.W)
		for y := range sh.size.H - seasonBelow {
			sh.set(x, y, mark, ink)
		}
		sh.set(x, 0, letter, ink)
	}
}

// axis draws the days with the washes on them, each with its verdict's mark.
func (s Season) axis(sh sheet, th theme.Theme) {
	y := sh.size.H - seasonBelow
	for x := seasonMargin; x < sh.size.W; x++ {
		sh.set(x, y, th.Marks.Rule, th.Edge)
	}
	for _, w := range s.Plan.Washes {
		mark, ink := VerdictMark(th, w)
		sh.set(s.x(w.Date, sh.size.W), y, mark, ink)
	}
}

// VerdictMark is how a wash is marked by its chance.
func VerdictMark(th theme.Theme, w trip.WashPlan) (string, theme.Ink) {
	if w.Barred {
		return "x", th.Muted
	}
	return Verdict(th, w.Verdict)
}

// names writes the stops under their first days, as far as there is room, and where
// the hand is.
func (s Season) names(sh sheet, th theme.Theme) {
	y := sh.size.H - 1
	free := 0
	for i, stop := range s.Plan.Stops {
		x := s.x(stop.From, sh.size.W)
		end := sh.size.W
		if i+1 < len(s.Plan.Stops) {
			end = s.x(s.Plan.Stops[i+1].From, sh.size.W) - 1
		}
		name := cells.Safe(stop.Name)
		if stop.Unknown {
			name = "?" + name
		}
		if x < free || end-x < 3 || cells.Width(name) != len(name) {
			continue
		}
		sh.write(x, y, cells.Clip(name, end-x, ""), th.Muted)
		free = end
	}
	if s.Here != (model.Date{}) {
		if x := s.x(s.Here, sh.size.W); x >= seasonMargin && x < sh.size.W {
			mark := sh.mark(x, y)
			if mark == " " {
				mark = th.Marks.Up
			}
			sh.set(x, y, mark, th.Accent)
		}
	}
}

// words tells the life that is left after each wash, a few washes a line.
func (s Season) words(size layout.Size) []string {
	text := fmt.Sprintf("Life left in the bed: %.0f %% at the start", 100*s.Plan.Start.P50)
	for _, w := range s.Plan.Washes {
		if !w.Barred {
			text += fmt.Sprintf(", %02d-%02d %.0f %%", w.Date.Month, w.Date.Day, 100*w.Life.P50)
		}
	}
	return cells.WrapMost(text+".", size.W, size.H, "...")
}

// Legend explains the signs.
func (s Season) Legend(th theme.Theme, width int) string {
	if th.Plain || len(s.Plan.Washes) == 0 {
		return ""
	}
	parts := []struct {
		mark, words string
		ink         theme.Ink
	}{
		{th.Marks.Median, "life left", th.Good}, {th.Marks.Band, "8 in 10", th.DI},
		{th.Marks.Good, "on spec", th.Good}, {th.Marks.Doubt, "tight", th.Doubt}, {th.Marks.Bad, "not", th.Bad},
		{"R", "change", th.Accent}, {"r", "advised", th.Accent}, {"?", "water unknown", th.Muted},
	}
	line, used := "", 0
	for _, p := range parts {
		text := p.mark + " " + p.words
		if used += cells.Width(text) + 2; used > width {
			break
		}
		line += p.ink.On(text) + "  "
	}
	return line
}
