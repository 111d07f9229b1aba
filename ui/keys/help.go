package keys

import (
	"strings"

	"washeve/ui/cells"
	"washeve/ui/theme"
)

// Help lists every binding with its words, under its heading. A binding that
// cannot act says why.
func Help(all []Binding, th theme.Theme, width int) []string {
	keyWidth := widest(all)
	var lines []string
	for _, group := range groups(all) {
		if len(lines) > 0 {
			lines = append(lines, "")
		}
		lines = append(lines, th.Strong.On(group))
		for _, b := range all {
			if b.Group == group {
				lines = append(lines, helpLines(b, th, keyWidth, width)...)
			}
		}
	}
	return lines
}

func helpLines(b Binding, th theme.Theme, keyWidth, width int) []string {
	words := b.Help().Desc
	if b.Long != "" {
		words = b.Long
	}
	if b.Blocked != "" {
		words += " (not now: " + b.Blocked + ")"
	}
	var lines []string
	for i, part := range cells.Wrap(words, max(width-keyWidth-4, 10)) {
		shown := cells.Blank(keyWidth)
		if i == 0 {
			shown = th.Accent.On(cells.Fit(b.Help().Key, keyWidth))
		}
		ink := th.Text
		if b.Blocked != "" {
			ink = th.Muted
		}
		lines = append(lines, "  "+shown+"  "+ink.On(part))
	}
	return lines
}

// Hint is a line of the first bindings that fit, for the foot of a screen.
func Hint(all []Binding, th theme.Theme, width int) string {
	var b strings.Builder
	used := 0
	for _, k := range all {
		need := cells.Width(k.Help().Key) + 1 + cells.Width(k.Help().Desc) + 3
		if k.Blocked != "" || used+need > width {
			continue
		}
		if used > 0 {
			b.WriteString("   ")
		}
		b.WriteString(th.Strong.On(k.Help().Key) + " " + th.Text.On(k.Help().Desc))
		used += need
	}
	return b.String()
}

func groups(all []Binding) []string {
	var names []string
	seen := map[string]bool{}
	for _, b := range all {
		if !seen[b.Group] {
			seen[b.Group] = true
			names = append(names, b.Group)
		}
	}
	return names
}

func widest(all []Binding) int {
	most := 0
	for _, b := range all {
		most = max(most, cells.Width(b.Help().Key))
	}
	return most
}
