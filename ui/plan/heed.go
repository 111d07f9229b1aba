package plan

import (
	"strconv"
	"strings"

	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// noteLines is the warnings, then the cautions, as many as there is room for; then how many
// there are besides.
func (m *Model) noteLines(at layout.Rect) []string {
	var lines []string
	shown, all := 0, len(m.plan.Warnings)+len(m.plan.Cautions)
	add := func(mark string, ink theme.Ink, n planner.Note) bool {
		text, room := cells.Safe(n.Text(m.sys)), at.H-len(lines)
		if shown < all-1 {
			room--
		}
		parts := cells.Wrap(text, at.W-2)
		if len(lines) == 0 {
			parts = cells.Clauses(text, at.W-2, room, m.th.Marks.More)
		}
		cut := len(parts) > 0 && strings.HasSuffix(parts[len(parts)-1], m.th.Marks.More)
		if len(parts) > room || cut {
			return false
		}
		for i, part := range parts {
			if i > 0 {
				mark = " "
			}
			lines = append(lines, ink.On(mark+" "+part))
		}
		shown++
		return true
	}
	for _, n := range m.plan.Warnings {
		if !add("!", m.th.Doubt, n) {
			break
		}
	}
	for _, n := range m.plan.Cautions {
		if shown < len(m.plan.Warnings) || !add(m.th.Marks.Dot, m.th.Muted, n) {
			break
		}
	}
	if shown < all {
		lines = append(lines, m.th.Text.On(cells.Clip(m.besides(shown, at.W), at.W, "")))
	}
	return lines
}

// besides says how many warnings of this plan and how many of the cautions of every wash are
// not shown, where some are; the shorter way where there is little room.
func (m *Model) besides(shown, width int) string {
	warnings := len(m.plan.Warnings)
	left, cautions := max(warnings-shown, 0), len(m.plan.Cautions)-max(shown-warnings, 0)
	ways := toHeed(left, shown > 0, cautions, shown > warnings)
	if long := ways[0] + ": f shows all"; cells.Width(long) <= width {
		return long
	}
	return ways[1] + ": f shows all"
}

// toHeed counts warnings and cautions, in a longer and in a shorter way; more tells of each
// that others are told already.
func toHeed(warnings int, moreWarnings bool, cautions int, moreCautions bool) [2]string {
	var ways [2]string
	for i, usual := range []string{"usual ", ""} {
		var parts []string
		if warnings > 0 {
			parts = append(parts, counted(warnings, moreWarnings, "warning"))
		}
		if cautions > 0 {
			parts = append(parts, counted(cautions, moreCautions, usual+"caution"))
		}
		ways[i] = strings.Join(parts, ", ")
	}
	return ways
}

// counted is a number of things: "2 more warnings".
func counted(n int, more bool, noun string) string {
	words := strconv.Itoa(n) + " "
	if more {
		words += "more "
	}
	if words += noun; n != 1 {
		words += "s"
	}
	return words
}
