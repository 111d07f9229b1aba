package picture

import (
	"math"

	"washeve/ui/cells"
	"washeve/ui/theme"
)

// Bar is one flow on a common scale.
type Bar struct {
	Label  string
	Value  float64 // in any unit, the same for all bars
	Number string  // the value in words
	Ink    theme.Ink
	Note   string // written behind the number where there is room
}

// Bars draws flows below each other. The scale ends at twice the limit (or a
// little past it for a sprayer over the limit), so that the limit can be read;
// a bar beyond the end is broken off and its number tells the rest. The limit is
// drawn across all bars.
func Bars(th theme.Theme, bars []Bar, limit float64, width int) []string {
	label, number, note := 0, 0, 0
	for _, b := range bars {
		note = max(note, cells.Width(b.Note))
		label = max(label, cells.Width(b.Label))
		number = max(number, cells.Width(b.Number))
	}
	label = min(label, width/3)
	room := width - label - number - 3
	if room-note-2 < 14 {
		note = 0
	} else if note > 0 {
		room -= note + 2
	}
	lines := make([]string, len(bars))
	for i, b := range bars {
		line := b.Ink.On(cells.Fit(b.Label, label)) + " "
		if room >= 6 && !th.Plain {
			line += bar(th, b, limit, room) + " "
		}
		line += b.Ink.On(cells.Right(b.Number, number))
		if note > 0 && b.Note != "" {
			line += "  " + th.Muted.On(b.Note)
		}
		lines[i] = line
	}
	return lines
}

// bar is one bar, of exactly width cells.
func bar(th theme.Theme, b Bar, limit float64, width int) string {
	end := 2 * limit
	if !(end > 0) || math.IsInf(end, 0) {
		return cells.Blank(width)
	}
	long := int(math.Round(b.Value / end * float64(width)))
	if b.Value > 0 {
		long = max(long, 1)
	}
	if b.Value > end {
		return b.Ink.On(cells.Repeat(th.Marks.Full, width-2) + th.Marks.Beyond + th.Marks.Beyond)
	}
	long = min(max(long, 0), width)
	at := width / 2
	if at < long || at >= width {
		return b.Ink.On(cells.Repeat(th.Marks.Full, long)) + cells.Blank(width-long)
	}
	return b.Ink.On(cells.Repeat(th.Marks.Full, long)+cells.Blank(at-long)+th.Marks.Edge) + cells.Blank(width-at-1)
}

// Meter draws a part of one as a bar of width cells.
func Meter(th theme.Theme, part float64, ink theme.Ink, width int) string {
	if th.Plain || width <= 0 || math.IsNaN(part) {
		return ""
	}
	long := int(math.Round(math.Min(math.Max(part, 0), 1) * float64(width)))
	return ink.On(cells.Repeat(th.Marks.Full, long)) + th.Edge.On(cells.Repeat(th.Marks.Rest, width-long))
}
