package plan

import (
	"fmt"
	"strings"

	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// noteLines is the warnings, then the cautions, as many as there is room for.
func (m *Model) noteLines(at layout.Rect) []string {
	var lines []string
	left := 0
	add := func(mark string, ink theme.Ink, text string, last bool) {
		parts := cells.Wrap(cells.Safe(text), at.W-2)
		room := at.H - len(lines)
		if !last {
			room--
		}
		if len(lines) == 0 {
			parts = cells.Clauses(cells.Safe(text), at.W-2, room, m.th.Marks.More)
		}
		cut := len(parts) > 0 && strings.HasSuffix(parts[len(parts)-1], m.th.Marks.More)
		if left > 0 || len(parts) > room || cut {
			left++
			return
		}
		for i, part := range parts {
			if i > 0 {
				mark = " "
			}
			lines = append(lines, ink.On(mark+" "+part))
		}
	}
	all := len(m.plan.Warnings) + len(m.plan.Cautions)
	for i, n := range m.plan.Warnings {
		add("!", m.th.Doubt, n.Text(m.sys), i == all-1)
	}
	for i, n := range m.plan.Cautions {
		add(m.th.Marks.Dot, m.th.Muted, n.Text(m.sys), len(m.plan.Warnings)+i == all-1)
	}
	if left > 0 {
		more := "%d more to heed: f shows all"
		if len(lines) == 0 {
			more = "%d to heed: f shows all"
		}
		lines = append(lines, m.th.Text.On(cells.Clip(fmt.Sprintf(more, left), at.W, "")))
	}
	return lines
}
