package form

import (
	"errors"
	"slices"
	"strings"

	"washeve/model"
)

// Unknown is the edit of a field that answers a word such as "?" or "don't know": the line is
// left empty, with what is told behind that, "" for nothing; or it is one that is needed. A
// line that takes the word as its value does so still.
func (e Edit) Unknown(f model.Field, told string) Edit {
	e.unknown = errors.New("leave it empty where it is not known" + told)
	if f.Required {
		e.unknown = errors.New("nothing is planned without it; write it like " + f.Example)
	}
	return e
}

// isUnknown tells a text that says that nobody knows.
func isUnknown(text string) bool {
	words := []string{"?", "unknown", "not known", "don't know", "dont know", "do not know", "i don't know", "i dont know", "no idea", "not sure", "unsure", "n/a"}
	plain := strings.ToLower(strings.Join(strings.Fields(strings.ReplaceAll(text, "’", "'")), " "))
	return slices.Contains(words, strings.TrimRight(plain, ".!")) || plain != "" && strings.Trim(plain, "?") == ""
}
