package form

import "washeve/ui/keys"

// What the keys of a text do while it is typed, beside [Accept] and [Abandon].
const (
	AcceptUp   keys.Action = "accept, up"
	AcceptDown keys.Action = "accept, down"
	AddUnit    keys.Action = "offer"
)

const (
	acceptWords   = "done; a bare number takes the unit that is offered"
	acceptOnWords = "done, and on to the next line where this one was empty; a bare number takes the unit that is offered"
)

// TypeKeys are the keys of a text on a line among others: enter goes on to the next line
// where this one [Edit.WasEmpty], and stays where a value is changed. Leave says what comes
// of leaving the text.
func TypeKeys(wasEmpty bool, leave string) []keys.Binding {
	done := "done"
	if wasEmpty {
		done = "done, next line"
	}
	return []keys.Binding{
		keys.New("Type", Accept, "enter", done, "enter").Explained(acceptOnWords),
		keys.New("Type", AddUnit, "tab", "add the unit, or next", "tab"),
		keys.New("Type", Abandon, "esc", leave, "esc"),
		keys.New("Type", AcceptDown, "down", "done, next line", "down"),
		keys.New("Type", AcceptUp, "up", "done, line before", "up", "shift+tab"),
	}
}

// TypeOnKeys are the keys of a text where enter goes on to the next line.
func TypeOnKeys() []keys.Binding {
	return []keys.Binding{
		keys.New("Type", Accept, "enter", "done, next line", "enter", "tab", "down").Explained(acceptWords),
		keys.New("Type", AcceptUp, "up", "done, line before", "up", "shift+tab"),
		keys.New("Type", Abandon, "esc", "as it was", "esc"),
	}
}
