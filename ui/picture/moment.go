package picture

import (
	"fmt"
	"math"
	"strconv"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
	"washeve/ui/cells"
	"washeve/ui/theme"
)

// spoken is what a cell of the strip says about a face at a moment.
type spoken struct {
	mark string // the sun, or a blank
	word string // minutes until it dries, or what else holds
	flag string // "!" where it dries before it is rinsed
}

// The words that stand in place of minutes, at most three letters.
const (
	saysIce     = "ice"
	saysHot     = "hot"
	saysWet     = "wet"
	saysUnknown = "?"
)

// column writes the faces and the air of a moment.
func (s Strip) column(th theme.Theme, paper sheet, x int, m *drying.Moment) {
	for i := range m.Faces {
		says := s.says(th, m, &m.Faces[i])
		ink := says.ink(th, &m.Faces[i], m.Light)
		paper.set(x, stripAbove+i, says.mark, ink)
		paper.write(x+3-max(len(says.word), 2), stripAbove+i, fmt.Sprintf("%2s", says.word)+says.flag, ink)
	}
	row := stripAbove + len(m.Faces)
	air, given := m.Air.Get()
	if !given {
		return
	}
	number, unit := quantity.ValueOf(air).Number(s.System)
	paper.write(0, row, "air "+unit, th.Muted)
	paper.write(x, row, cells.Right(fmt.Sprintf("%.0f", number), 3), th.Muted)
}

func (s Strip) says(th theme.Theme, m *drying.Moment, f *drying.FaceMoment) spoken {
	out := spoken{mark: " ", word: saysUnknown}
	if f.Sunlit {
		out.mark = th.Marks.Sun
	}
	lasts, given := f.Dries.Get()
	switch {
	case s.limited("freezing", m, ""):
		out.word = saysIce
	case s.limited("hot-panel", m, f.Side):
		out.word = saysHot
	case f.Known && given:
		out.word = shortTime(lasts)
		if f.Hurries {
			out.flag = "!"
		}
	}
	if len(out.word) > 2 {
		out.mark = " "
	}
	return out
}

// limited tells whether a limit holds at a moment.
func (s Strip) limited(code string, m *drying.Moment, side model.Side) bool {
	for _, l := range s.Day.Limits {
		if l.Note.Code == code && l.Side == side && !m.At.Before(l.From) && !m.At.After(l.To) {
			return true
		}
	}
	return false
}

func (p spoken) ink(th theme.Theme, f *drying.FaceMoment, light bool) theme.Ink {
	switch {
	case p.word == saysHot || p.word == saysIce || p.flag != "":
		return th.Bad
	case !light || p.word == saysUnknown && !f.Sunlit:
		return th.Muted
	case f.Sunlit:
		return th.Sun
	}
	return th.Text
}

// shortTime writes how long a film lasts in two figures: minutes, cut to be on the safe
// side, or from 100 minutes on, where nothing hurries, the nearest hours.
func shortTime(lasts quantity.Duration) string {
	minutes := lasts.Minutes()
	switch {
	case math.IsNaN(minutes):
		return saysUnknown
	case minutes >= 570: // ten hours, to the nearest
		return saysWet
	case minutes >= 100:
		return strconv.Itoa(int(math.Round(minutes/60))) + "h"
	case minutes < 1:
		return "<1"
	}
	return strconv.Itoa(int(minutes))
}

// Legend explains, in one line, the signs that are on the strip, as many as fit.
func (s Strip) Legend(th theme.Theme, width int) string {
	seen := map[string]bool{"": true}
	if c, ok := s.columns(width); ok {
		c.each(func(_ int, _, m *drying.Moment) {
			for i := range m.Faces {
				says := s.says(th, m, &m.Faces[i])
				seen[says.mark], seen[says.word], seen[says.flag] = true, true, true
			}
		})
	}
	line, used := "", 0
	for _, l := range []struct{ sign, shown, words string }{
		{th.Marks.Sun, th.Marks.Sun, "sun"}, {"", "25", "minutes to dry"}, {"!", "!", "dries too soon"},
		{saysHot, saysHot, "too hot"}, {saysIce, saysIce, "freezes"}, {saysWet, saysWet, "stays wet"}, {saysUnknown, saysUnknown, "not known"},
	} {
		if need := cells.Width(l.shown+l.words) + 4; seen[l.sign] && used+need <= width+3 {
			line += th.Text.On(l.shown) + " " + th.Muted.On(l.words) + "   "
			used += need
		}
	}
	return line
}
