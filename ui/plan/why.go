package plan

import (
	"strings"

	tea "github.com/charmbracelet/bubbletea"

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
	lines = append(lines, reader.Reasons(m.th, m.sys, m.plan.Reasons, width)...)
	lines = append(lines, m.th.Strong.On("What the plan rests on"))
	lines = append(lines, reader.Hanging(m.th, "", reader.Tags, width)...)
	lines = append(lines, reader.Assumptions(m.th, m.sys, m.plan.Assumptions, width)...)
	if len(m.plan.Constants) > 0 {
		lines = append(lines, "", m.th.Strong.On("What the formulas rest on"))
	}
	return append(lines, reader.Assumptions(m.th, m.sys, m.plan.Constants, width)...)
}
