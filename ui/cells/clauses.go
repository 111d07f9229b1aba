package cells

import "strings"

// Clauses is [Wrap] with at most so many lines, for text that can be read in full
// elsewhere: where it does not fit it ends early with a whole clause and a full stop. Of a
// text that has no end of a clause past the first third of the room, it is [WrapMost].
func Clauses(text string, width, most int, tail string) []string {
	lines := Wrap(text, width)
	if len(lines) <= most {
		return lines
	}
	ends := clauseEnds(text)
	for i := len(ends) - 1; i >= 0 && Width(text[:ends[i]]) >= width*most/3; i-- {
		if lines := Wrap(text[:ends[i]]+".", width); len(lines) <= most {
			return lines
		}
	}
	return WrapMost(text, width, most, tail)
}

// clauseEnds are the places of the marks that end a clause, brackets left out: a comma
// before "then" ends none, since what is before it asks for the rest.
func clauseEnds(text string) (ends []int) {
	depth := 0
	for i := range len(text) {
		switch text[i] {
		case '(':
			depth++
		case ')':
			depth--
		case '.', ';', ':', ',':
			if depth == 0 && strings.HasPrefix(text[i+1:], " ") && !strings.HasPrefix(text[i:], ", then ") {
				ends = append(ends, i)
			}
		}
	}
	return ends
}

// WholeParts is a text whose parts stand between commas, in one line: where it is wider, as
// many of them as there is room for, and the tail. A first part that is wider is cut.
func WholeParts(text string, width int, tail string) string {
	if Width(text) <= width {
		return text
	}
	for at := strings.LastIndex(text, ", "); at > 0; at = strings.LastIndex(text[:at], ", ") {
		if Width(text[:at]+", "+tail) <= width {
			return text[:at] + ", " + tail
		}
	}
	return Clip(text, width, tail)
}
