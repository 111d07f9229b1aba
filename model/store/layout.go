package store

import (
	"slices"
	"strings"

	"washeve/model"
)

// eol is how the lines of the document end.
func (d *document) eol() string {
	if first := d.data[:d.lineEnd(0)]; strings.HasSuffix(string(first), "\r\n") {
		return "\r\n"
	}
	return "\n"
}

// line is the text of the line that starts at a place.
func (d *document) line(at int) string { return string(d.data[at:d.lineEnd(at)]) }

func isComment(line string) bool { return strings.HasPrefix(strings.TrimSpace(line), "#") }

// bodyEnd is behind the last entry of a table, or behind its header.
func (t *table) bodyEnd() int {
	if n := len(t.entries); n > 0 {
		return t.entries[n-1].end
	}
	return t.end
}

// newLineAt is where a new key of a table goes: behind its last one. A file
// with no key at its top gets it behind the comment that opens the file.
func (d *document) newLineAt(t *table) int {
	if t != d.tables[0] || len(t.entries) > 0 {
		return t.bodyEnd()
	}
	at := t.end
	for at < len(d.data) && isComment(d.line(at)) {
		at = d.lineEnd(at)
	}
	if at == len(d.data) || strings.TrimSpace(d.line(at)) == "" {
		return at
	}
	return t.end
}

// blockStart is before the comment lines that stand right on top of a header.
func (d *document) blockStart(t *table) int {
	floor := d.tables[max(0, slices.Index(d.tables, t)-1)].bodyEnd()
	at := t.start
	for at > floor {
		above := d.lineStart(at - 1)
		if !isComment(d.line(above)) {
			break
		}
		at = above
	}
	return at
}

// contentEnd is behind the last entry of a table and the comment lines that
// follow without a gap.
func (d *document) contentEnd(t *table) int {
	ceiling := len(d.data)
	if next := slices.Index(d.tables, t) + 1; next < len(d.tables) {
		ceiling = d.blockStart(d.tables[next])
	}
	at := t.bodyEnd()
	for at < ceiling && isComment(d.line(at)) {
		at = d.lineEnd(at)
	}
	return at
}

// keyLineOf is a field as one line, without its end.
func keyLineOf(f model.Field) string {
	text := f.Text()
	switch {
	case f.List:
		text = array(text)
	case !f.Scalar || !plainNumber().MatchString(text):
		text = quote(text)
	}
	return f.Key + " = " + text
}

// render writes an item as a block of lines; "" where nothing is stated of an
// entry that needs no header.
func render(it item, eol string) string {
	var b strings.Builder
	for _, f := range it.fields {
		if f.Given() {
			b.WriteString(keyLineOf(f) + eol)
		}
	}
	single := it.section == defaultsSection
	if single && b.Len() == 0 {
		return ""
	}
	text := header(it.section, single) + eol + b.String()
	for _, u := range it.under {
		text += eol + render(u, eol)
	}
	return text
}

// whole writes a file anew.
func whole(s schema) []byte {
	var b strings.Builder
	b.WriteString("format = 1\n")
	for i, f := range s.top {
		if i == 0 {
			b.WriteString("\n")
		}
		if f.Given() {
			b.WriteString(keyLineOf(f) + "\n")
		}
	}
	for _, it := range s.items() {
		if text := render(it, "\n"); text != "" {
			b.WriteString("\n" + text)
		}
	}
	return []byte(b.String())
}

// sectionsOf lists the sections of what was and what is to be, once each.
func sectionsOf(was []block, items []item) []string {
	var names []string
	for _, b := range was {
		names = append(names, b.section)
	}
	for _, it := range items {
		names = append(names, it.section)
	}
	seen := map[string]bool{}
	return slices.DeleteFunc(names, func(n string) bool {
		again := seen[n]
		seen[n] = true
		return again
	})
}

func pick[T any](all []T, section string, of func(T) string) []T {
	var some []T
	for _, v := range all {
		if of(v) == section {
			some = append(some, v)
		}
	}
	return some
}
