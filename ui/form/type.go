package form

import "washeve/ui/keys"

// What the keys of a text do while it is typed, beside [Accept] and [Abandon].
const (
	AcceptUp   keys.Action = "accept, up"
	AcceptDown keys.Action = "accept, down"
	AddUnit    keys.Action = "offer"
)

const acceptWords = "done; a bare number takes the unit that is offered"

// TypeKeys are the keys of a text where enter stays on its line; leave says what comes of
// leaving it.
func TypeKeys(leave string) []keys.Binding {
	return []keys.Binding{
		keys.New("Type", Accept, "enter", "done", "enter").Explained(acceptWords),
		keys.New("Type", AddUnit, "tab", "add the unit, or next", "tab"),
		keys.New("Type", AcceptDown, "down", "done, next line", "down"),
		keys.New("Type", AcceptUp, "up", "done, line before", "up", "shift+tab"),
		keys.New("Type", Abandon, "esc", leave, "esc"),
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
