package form

import "washeve/ui/keys"

// Heed is what the keys do that end a text that no line takes.
const Heed keys.Action = "heed"

// NotTyped is why a line that is picked from a list takes no digit.
const NotTyped = "this line takes a word from a list; letters wait until enter or esc"

// RefusedKeys are the keys after a digit was refused: the letters that come behind it
// belong to the same text, and none of them may act.
func RefusedKeys() []keys.Binding {
	return []keys.Binding{
		keys.New("Not typed", Heed, "enter esc", "letters act again", "enter", "esc", "up", "down", "left", "right", "tab", "shift+tab").
			Explained("no number is typed on this line: letters do nothing until enter, esc or an arrow"),
	}
}
