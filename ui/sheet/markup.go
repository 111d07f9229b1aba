package sheet

import (
	"html"
	"strings"

	"washeve/model/pattern"
)

// markup is a piece of HTML. Texts in the source become markup by themselves;
// whatever comes from elsewhere goes through [text] or [bound], so that it can
// stand in an element or between the quotes of an attribute and be nothing but
// text.
type markup string

func text(words string) markup { return markup(html.EscapeString(words)) }

// afterNumber is the blank between a number and what it counts.
var afterNumber = pattern.Of(`([0-9]) ([\pL%])`)

// bound is text in which a number and its unit stay on one line.
func bound(words string) markup { return text(afterNumber().ReplaceAllString(words, "$1\u00a0$2")) }

// each is one piece after another, one for each item.
func each[T any](items []T, piece func(T) markup) markup {
	var b strings.Builder
	for _, item := range items {
		b.WriteString(string(piece(item)))
	}
	return markup(b.String())
}

// given is a piece around words, and nothing where there are none.
func given(words string, before, after markup) markup {
	if words == "" {
		return ""
	}
	return before + bound(words) + after
}

// when is a piece that is there on a condition.
func when(there bool, piece markup) markup {
	if !there {
		return ""
	}
	return piece
}
