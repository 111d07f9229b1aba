package reader

import (
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// Reasons writes where numbers come from: the formula in words, the inputs, the
// source.
func Reasons(th theme.Theme, sys quantity.System, all []planner.Reason, width int) []string {
	var lines []string
	for _, r := range all {
		lines = append(lines, th.Strong.On(r.Number)+"  "+th.Accent.On(report.Result(r, sys)))
		lines = append(lines, Hanging(th, "  how      ", r.Formula, width)...)
		for i, in := range r.Inputs {
			lines = append(lines, Hanging(th, inputHead(i), inputWords(in, sys), width)...)
		}
		source := string(r.Source.Tag)
		if r.Source.Text != "" {
			source += ": " + r.Source.Text
		}
		lines = append(append(lines, Hanging(th, "  source   ", source, width)...), "")
	}
	return lines
}

func inputHead(i int) string {
	if i == 0 {
		return "  from     "
	}
	return "           "
}

func inputWords(in planner.Assumption, sys quantity.System) string {
	text := in.Name + " " + report.Value(in, sys)
	if in.Source.Tag != "" {
		text += " (" + string(in.Source.Tag) + ")"
	}
	return text
}

// Tags says what the tags of sources mean.
const Tags = "PUBLISHED: in the source that is named. MEMORY: recalled from that source, not opened again. PRACTICE: of the trade, no source. YOURS: you stated it."

// Assumptions writes what numbers rest on, a line or a few each, its tag first.
func Assumptions(th theme.Theme, sys quantity.System, all []planner.Assumption, width int) []string {
	var lines []string
	for _, a := range all {
		text := a.Name + ": " + report.Value(a, sys)
		if a.Source.Text != "" {
			text += ". " + a.Source.Text
		}
		lines = append(lines, Hanging(th, cells.Fit(string(a.Source.Tag), 10), text, width)...)
	}
	return lines
}

// Hanging wraps text behind a head.
func Hanging(th theme.Theme, head, text string, width int) []string {
	var lines []string
	for i, part := range cells.Wrap(cells.Safe(text), max(width-cells.Width(head), 10)) {
		if i > 0 {
			head = cells.Blank(cells.Width(head))
		}
		lines = append(lines, th.Muted.On(head)+th.Text.On(part))
	}
	return lines
}
