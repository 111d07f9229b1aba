package form

import (
	"washeve/model"
	"washeve/ui/keys"
)

// What the keys do that end a text which no line takes: the letters act again, or the line
// is changed as enter changes it.
const (
	Heed     keys.Action = "heed"
	OpenLine keys.Action = "open line"
)

// NotTyped is why no digit begins the text of a field: a list is picked from, and a name is
// begun by enter, as it is where a letter is its first; "" where digits are typed.
func NotTyped(f model.Field) string {
	switch {
	case isListed(f):
		return "this line takes a word from a list; enter lists them"
	case f.Key != "" && f.Free():
		return "no digit begins this line; " + enterThenType
	}
	return ""
}

// isListed tells that a field is picked from a list.
func isListed(f model.Field) bool { return len(f.Choices) > 0 || f.Refers != "" }

// RefusedKeys are the keys after a digit was refused on the line of a field: what comes
// behind it belongs to the same text, and none of it may act. The field without a key is no
// line at all.
func RefusedKeys(f model.Field) []keys.Binding {
	const acts = "letters act again"
	ends := []string{"esc", "up", "down", "left", "right", "tab", "shift+tab"}
	if f.Key == "" {
		return []keys.Binding{keys.New("Not typed", Heed, "enter esc", acts, append(ends, "enter")...).
			Explained("nothing is typed now: letters do nothing until enter, esc or an arrow")}
	}
	enters := "type it"
	if isListed(f) {
		enters = "list them"
	}
	return []keys.Binding{
		keys.New("Not typed", OpenLine, "enter", enters, "enter").Explained("the line is changed: its list opens, or its text begins"),
		keys.New("Not typed", Heed, "esc", acts, ends...).
			Explained("no digit begins a text on this line: letters do nothing until enter, esc or an arrow"),
	}
}
