package plan

import (
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/reader"
	"washeve/ui/report"
	"washeve/ui/screen"
)

// read opens a page to read.
func (m Model) read(title string, lines reader.Lines) tea.Cmd {
	page := reader.New(m.th, title, m.size, lines)
	return func() tea.Msg { return screen.Go{To: page} }
}

// fullLines is the plan as it is printed.
func (m Model) fullLines(width int) []string {
	text := report.Text(m.plan, m.sys, m.th.Plain, width)
	return strings.Split(strings.TrimRight(text, "\n"), "\n")
}

// whyLines is every number with its formula in words, its inputs and its
// source, and then everything that the plan rests on.
func (m Model) whyLines(width int) []string {
	var lines []string
	if !m.planned {
		return []string{"There is no plan yet, so no number to explain."}
	}
	for _, r := range m.plan.Reasons {
		lines = append(lines, m.reasonLines(r, width)...)
	}
	lines = append(lines, m.th.Strong.On("What the plan rests on"))
	lines = append(lines, m.assumptionLines(m.plan.Assumptions, width)...)
	if len(m.plan.Constants) > 0 {
		lines = append(lines, "", m.th.Strong.On("What the formulas rest on"))
	}
	return append(lines, m.assumptionLines(m.plan.Constants, width)...)
}

func (m Model) assumptionLines(all []planner.Assumption, width int) []string {
	var lines []string
	for _, a := range all {
		head := cells.Fit(string(a.Source.Tag), 10)
		text := a.Name + ": " + report.Value(a, m.sys)
		if a.Source.Text != "" {
			text += ". " + a.Source.Text
		}
		lines = append(lines, m.hanging(head, text, width)...)
	}
	return lines
}

func (m Model) reasonLines(r planner.Reason, width int) []string {
	value := r.Result
	if r.Value.Kind != nil {
		value = r.Value.Show(m.sys)
	}
	lines := []string{m.th.Strong.On(r.Number) + "  " + m.th.Accent.On(value)}
	lines = append(lines, m.hanging("  how      ", r.Formula, width)...)
	for i, in := range r.Inputs {
		head := "           "
		if i == 0 {
			head = "  from     "
		}
		text := in.Name + " " + report.Value(in, m.sys)
		if in.Source.Tag != "" {
			text += " (" + string(in.Source.Tag) + ")"
		}
		lines = append(lines, m.hanging(head, text, width)...)
	}
	source := string(r.Source.Tag)
	if r.Source.Text != "" {
		source += ": " + r.Source.Text
	}
	return append(append(lines, m.hanging("  source   ", source, width)...), "")
}

// hanging wraps text behind a head.
func (m Model) hanging(head, text string, width int) []string {
	var lines []string
	for i, part := range cells.Wrap(cells.Safe(text), max(width-cells.Width(head), 10)) {
		if i > 0 {
			head = cells.Blank(cells.Width(head))
		}
		lines = append(lines, m.th.Muted.On(head)+m.th.Text.On(part))
	}
	return lines
}
