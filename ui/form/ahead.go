package form

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"washeve/ui/cells"
	"washeve/ui/theme"
)

// typedAhead is the list after a key that belongs to the beginning of a line which is looked
// for: the hand goes to the next line that begins so, and back where none does. A letter
// typed again goes on to the next line with it. That a key is no such text is told.
func (p Picker) typedAhead(key string) (Picker, bool) {
	r, size := utf8.DecodeRuneInString(key)
	switch {
	case size != len(key) || !unicode.IsPrint(r):
		return p, false
	case p.typed == "" && !unicode.IsLetter(r):
		return p, false // a number, or the space that takes a line
	case p.typed == "" && (key == "j" || key == "k") && !p.begins(key):
		return p, false
	}
	if p.typed == "" {
		p.from = p.At
	}
	longer := p.typed + key
	switch again := strings.EqualFold(p.typed, key); {
	case p.begins(longer):
		p.At, p.typed = p.next(longer, p.At), longer
	case again:
		p.At = p.next(key, p.At+1)
	case key != " ":
		p.At, p.typed = p.from, longer
	}
	return p, true
}

// begins tells that a line begins with a text.
func (p Picker) begins(text string) bool { return p.isBegun(p.next(text, 0), text) }

// next is the first line from one on, round the end, that begins with a text; that one where
// none does.
func (p Picker) next(text string, from int) int {
	n := len(p.Options)
	for i := range n {
		if at := (from + i) % n; p.isBegun(at, text) {
			return at
		}
	}
	return from
}

func (p Picker) isBegun(at int, text string) bool {
	return text == "" || at < len(p.Options) && strings.HasPrefix(strings.ToLower(p.Options[at].Text), strings.ToLower(text))
}

// typedTold is what was typed ahead, behind the title of the list.
func (p Picker) typedTold(th theme.Theme, width int) string {
	text, ink := "  "+quotedShort(p.typed), th.Accent
	switch {
	case p.typed == "":
		return ""
	case !p.begins(p.typed):
		text, ink = "  nothing begins with "+quotedShort(p.typed), th.Doubt
	}
	return ink.On(cells.Clip(text, width, th.Marks.More))
}
