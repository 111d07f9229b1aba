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

// Line draws the row in width cells.
func (r Row) Line(th theme.Theme, width int) string {
	label := labelWidth(width)
	mark, ink := " ", th.Text
	if r.Here {
		mark, ink = th.Marks.Here, th.Accent
	}
	head := ink.On(mark + " " + cells.Fit(cells.Clip(cells.Safe(r.Label), label-1, th.Marks.More), label))
	return head + r.value(th, width-label-2)
}

func (r Row) value(th theme.Theme, width int) string {
	clip := func(text string) string { return cells.Clip(cells.Safe(text), width, th.Marks.More) }
	switch {
	case r.Edit != nil:
		return r.Edit.View(th, width)
	case r.Value != "" && r.Faulty:
		return th.Doubt.On(clip(r.Value + " ?"))
	case r.Value != "" && r.Here:
		return th.Strong.On(clip(r.Value))
	case r.Value != "":
		return th.Text.On(clip(r.Value))
	case r.Must:
		return th.Doubt.On(clip("needed"))
	case r.Assumed != "":
		return r.assumed(th, width)
	}
	return "-"
}

// assumed writes the default muted, with its tag, cut short where there is
// little room.
func (r Row) assumed(th theme.Theme, width int) string {
	text := "(" + cells.Safe(r.Assumed) + ")"
	for _, tag := range []string{r.Tag, strings.ToLower(r.Tag[:min(len(r.Tag), 4)])} {
		if tag != "" && cells.Width(text)+1+len(tag) <= width {
			text += " " + tag
			break
		}
	}
	return th.Muted.On(cells.Clip(text, width, th.Marks.More))
}
