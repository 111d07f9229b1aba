package form

import (
	"strings"

	"washeve/ui/cells"
	"washeve/ui/theme"
)

// Row is one line of a form.
type Row struct {
	Label   string
	Value   string // as stated; "" where nothing was
	Assumed string // what is in force where nothing was stated
	Tag     string // how well that is founded
	Must    bool   // the plan cannot do without it
	Faulty  bool   // it contradicts something
	Here    bool   // the hand is on it
	Edit    *Edit  // while it is typed
}

// labelWidth is how much of a row the label takes.
func labelWidth(width int) int { return min(max(width/2, 12), 24) }

// labelRoom is the same of this row: a label that is longer takes the room that the value
// leaves, and gives way to a value that is longer as far as it can.
func (r Row) labelRoom(width int) int {
	usual, needs := labelWidth(width), cells.Width(cells.Safe(r.Label))+1
	value := max(cells.Width(cells.Safe(r.words())), leastValue)
	if r.Edit != nil {
		value = leastTyped
	}
	if needs > usual {
		return max(min(needs, width-2-value), usual)
	}
	return min(max(width-2-value, needs), usual)
}

const (
	leastValue = 6  // cells of a value
	leastTyped = 10 // while it is typed
)

// Line draws the row in width cells.
func (r Row) Line(th theme.Theme, width int) string {
	label := r.labelRoom(width)
	mark, ink := " ", th.Text
	if r.Here {
		mark, ink = th.Marks.Here, th.Accent
	}
	head := ink.On(mark + " " + cells.Fit(cells.Clip(cells.Safe(r.Label), label-1, th.Marks.More), label))
	return head + r.value(th, width-label-2)
}

// words is the value as it is shown, but for the tag of what is assumed.
func (r Row) words() string {
	switch {
	case r.Value != "" && r.Faulty:
		return r.Value + " ?"
	case r.Value != "":
		return r.Value
	case r.Must:
		return "needed"
	case r.Assumed != "":
		return "(" + r.Assumed + ")"
	}
	return "-"
}

func (r Row) value(th theme.Theme, width int) string {
	clip := func(text string) string { return cells.Clip(cells.Safe(text), width, th.Marks.More) }
	switch {
	case r.Edit != nil:
		return r.Edit.View(th, width)
	case r.Value != "" && r.Faulty:
		return th.Doubt.On(clip(r.words()))
	case r.Value != "" && r.Here:
		return th.Strong.On(clip(r.words()))
	case r.Value != "":
		return th.Text.On(clip(r.words()))
	case r.Must:
		return th.Doubt.On(clip(r.words()))
	case r.Assumed != "":
		return r.assumed(th, width)
	}
	return r.words()
}

// assumed writes the default muted, with its tag, cut short where there is
// little room.
func (r Row) assumed(th theme.Theme, width int) string {
	text := cells.Safe(r.words())
	for _, tag := range []string{r.Tag, strings.ToLower(r.Tag[:min(len(r.Tag), 4)])} {
		if tag != "" && cells.Width(text)+1+len(tag) <= width {
			text += " " + tag
			break
		}
	}
	return th.Muted.On(cells.Clip(text, width, th.Marks.More))
}
