package store

import (
	"fmt"
	"strings"
	"unicode"

	"washeve/model/pattern"
)

// quote writes text as a TOML string: in double quotes, or in single ones where
// that saves escapes.
func quote(text string) string {
	hidden := func(r rune) bool { return !unicode.IsPrint(r) }
	if strings.Contains(text, `"`) && !strings.Contains(text, "'") && !strings.ContainsFunc(text, hidden) {
		return "'" + text + "'"
	}
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range text {
		switch {
		case r == '"' || r == '\\':
			b.WriteByte('\\')
			b.WriteRune(r)
		case hidden(r):
			fmt.Fprintf(&b, `\U%08x`, r)
		default:
			b.WriteRune(r)
		}
	}
	return b.String() + `"`
}

var plainNumber = pattern.Of(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?$`)

// array writes words as a TOML array of strings.
func array(words string) string {
	parts := strings.Split(words, ",")
	for i, p := range parts {
		parts[i] = quote(strings.TrimSpace(p))
	}
	return "[" + strings.Join(parts, ", ") + "]"
}
