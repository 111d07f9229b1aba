package talk

import (
	"strings"

	"washeve/model/pattern"
	"washeve/ui/theme"
)

// wide is the room between two columns of a line.
var wide = pattern.Of(` {2,}`)

// Unmarked takes the marks and the room away that lines of a screen have: what a mark
// means is in the words behind it.
func Unmarked(th theme.Theme, lines []string) []string {
	out := make([]string, len(lines))
	for i, line := range lines {
		for _, mark := range []string{th.Marks.Here, th.Marks.Good, th.Marks.Doubt, th.Marks.Bad} {
			line = strings.TrimPrefix(line, mark+" ")
		}
		out[i] = wide().ReplaceAllString(strings.TrimSpace(line), ", ")
	}
	return out
}

// sentence ends a text that does not end by itself.
func sentence(text string) string {
	if strings.HasSuffix(text, "?") || strings.HasSuffix(text, ".") {
		return text
	}
	return text + "."
}
