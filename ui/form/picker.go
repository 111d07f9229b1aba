package form

import (
	"strconv"

	"washeve/ui/cells"
	"washeve/ui/theme"
)

// Option is one thing to pick.
type Option struct {
	Text string // what it is called
	Note string // what tells it from the others
	Pick string // the text that is set; "" for nothing stated
	New  bool   // not in the list yet: make it
}

// Picker is a list to pick one thing from. The first nine have a number.
type Picker struct {
	Title   string
	Options []Option
	At      int
	typed   string // letters of a line that is looked for
	from    int    // where the hand was before them
}

// Open starts a picker on the option that holds now.
func Open(title string, options []Option, now string) Picker {
	p := Picker{Title: title, Options: options}
	for i, o := range options {
		if o.Pick == now && !o.New {
			p.At = i
		}
	}
	return p
}

// Move goes up or down, round the ends.
func (p Picker) Move(by int) Picker {
	p.typed = ""
	if n := len(p.Options); n > 0 {
		p.At = ((p.At+by)%n + n) % n
	}
	return p
}

// Onto is the list with the hand on an option, as by the mouse.
func (p Picker) Onto(at int) Picker {
	p.typed, p.At = "", at
	return p
}

// Numbered gives the option behind a digit key.
func (p Picker) Numbered(digit string) (Option, bool) {
	n, err := strconv.Atoi(digit)
	if err != nil || n < 1 || n > min(len(p.Options), 9) {
		return Option{}, false
	}
	return p.Options[n-1], true
}

// Chosen is the option under the hand.
func (p Picker) Chosen() (Option, bool) {
	if p.At < 0 || p.At >= len(p.Options) {
		return Option{}, false
	}
	return p.Options[p.At], true
}

// Lines draws the list in at most height lines, the option under the hand
// among them.
func (p Picker) Lines(th theme.Theme, width, height int) []string {
	title := cells.Clip(cells.Safe(p.Title), width, th.Marks.More)
	lines := []string{th.Strong.On(title) + p.typedTold(th, width-cells.Width(title))}
	rows := height - 1
	from := p.First(height)
	for i := from; i < len(p.Options) && i-from < rows; i++ {
		lines = append(lines, p.line(th, i, width))
	}
	return lines
}

// First is the index of the first option that [Picker.Lines] draws.
func (p Picker) First(height int) int {
	return min(max(p.At-height+2, 0), max(len(p.Options)-height+1, 0))
}

func (p Picker) line(th theme.Theme, i, width int) string {
	o := p.Options[i]
	mark, ink, number := " ", th.Text, " "
	if i == p.At {
		mark, ink = th.Marks.Here, th.Accent
	}
	if i < 9 {
		number = strconv.Itoa(i + 1)
	}
	text := cells.Clip(mark+" "+number+" "+cells.Safe(o.Text), width, th.Marks.More)
	line := ink.On(text)
	if room := width - cells.Width(text) - 2; o.Note != "" && room >= 6 {
		line += "  " + th.Muted.On(cells.Clip(cells.Safe(o.Note), room, th.Marks.More))
	}
	return line
}
