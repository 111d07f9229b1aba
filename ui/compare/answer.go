package compare

import (
	"strconv"
	"strings"

	"washeve/planner/compare"
	"washeve/ui/cells"
	"washeve/ui/reader"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// columns is how many ways stand side by side in a width.
func columns(width int) int { return max((width-report.CompareLabel)/report.CompareColumn, 2) }

// columnAt is the column at a cell of the table; below zero for the labels.
func columnAt(x int) int {
	if x < report.CompareLabel {
		return -1
	}
	return (x - report.CompareLabel) / report.CompareColumn
}

// tableLines are the heads and the figures.
func (m *Model) tableLines() []string {
	lines := []string{cells.Blank(report.CompareLabel), cells.Blank(report.CompareLabel)}
	for _, at := range m.seen() {
		head := report.Head(m.table.Ways[at], report.CompareColumn-2, m.th.Marks.More)
		ink := m.th.Strong
		if at == m.hand {
			head[0], ink = m.th.Marks.Here+head[0], m.th.Accent
		}
		for k, word := range head {
			lines[k] += " " + ink.On(cells.Right(word, report.CompareColumn-1))
		}
	}
	for _, r := range report.CompareRows(m.table) {
		line, best := cells.Fit(r.Label, report.CompareLabel), report.Best(r, m.sys)
		for _, at := range m.seen() {
			mark, ink := "", theme.Ink{}
			if best[at] {
				mark, ink = m.th.Marks.Best, m.th.Strong
			}
			line += ink.On(report.CompareText(r, at, m.sys, mark, m.th.Marks.More))
		}
		lines = append(lines, line)
	}
	return lines
}

// words is what there is to say of the way under the hand.
func (m *Model) words() []string {
	text := report.WayWords(m.table, m.hand, m.sys)
	if m.way().Only != "" { // to be read before the key is pressed
		text[0], text[1] = text[1], text[0]
	}
	if m.hand == 0 {
		text = append(text, report.CompareRest(m.table, m.sys)...)
	}
	var lines []string
	for _, t := range text {
		lines = append(lines, cells.Wrap(cells.Safe(t), m.size.W)...)
	}
	return lines
}

// footLine tells in words of what is out of sight.
func (m *Model) footLine() string {
	seen := m.seen()
	left, right := m.first-1, len(m.table.Ways)-1-seen[len(seen)-1]
	var parts []string
	if left > 0 {
		parts = append(parts, strconv.Itoa(left)+" to the left")
	}
	if right > 0 {
		parts = append(parts, strconv.Itoa(right)+" to the right")
	}
	var said []string
	if len(parts) > 0 {
		said = append(said, "More ways: "+strings.Join(parts, ", ")+".")
	}
	if m.way().Only != "" && m.top < m.lastTop() { // the status line is taken
		said = append(said, "More to read: down.")
	}
	return m.th.Muted.On(strings.Join(said, " "))
}

// lastTop is the furthest that the words scroll.
func (m *Model) lastTop() int {
	if m.err != nil {
		return 0
	}
	return max(len(m.words())-m.rects().Words.H, 0)
}

// wordLines are the words in sight.
func (m *Model) wordLines(height int) []string {
	all := m.words()
	top := min(m.top, max(len(all)-height, 0))
	lines := all[top:min(top+max(height, 0), len(all))]
	out := make([]string, len(lines))
	for i, line := range lines {
		out[i] = m.th.Text.On(line)
	}
	return out
}

// whyLines is where every number of the way comes from: its row, and then what
// its plan rests on.
func (m Model) whyLines(width int) []string {
	w := m.way()
	lines := []string{m.th.Strong.On(w.Name)}
	for _, text := range report.WayWords(m.table, m.hand, m.sys) {
		lines = append(lines, reader.Hanging(m.th, "  ", text, width)...)
	}
	lines = append(lines, "")
	lines = append(lines, reader.Reasons(m.th, m.sys, m.table.Reasons(m.hand, m.washes), width)...)
	lines = append(lines, m.th.Strong.On("What the comparison rests on"))
	lines = append(lines, reader.Assumptions(m.th, m.sys, compare.Constants(), width)...)
	behind := "The numbers of the plan behind it"
	if trip := w.Figures.Trip; trip != nil {
		lines = append(lines, reader.Assumptions(m.th, m.sys, trip.Assumptions, width)...)
		behind = "The numbers of its first wash"
	}
	lines = append(lines, "", m.th.Strong.On(behind), "")
	return append(lines, reader.Reasons(m.th, m.sys, w.Figures.Plan.Reasons, width)...)
}
