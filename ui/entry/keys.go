package entry

import (
	"washeve/ui/form"
	"washeve/ui/keys"
)

// What a form asks of the screen that holds it.
const (
	Write keys.Action = "write"
	Leave keys.Action = "leave"
)

const (
	up       keys.Action = "up"
	down     keys.Action = "down"
	change   keys.Action = "change"
	overtype keys.Action = "overtype"
	takeAway keys.Action = "take away"
)

// Keys lists the keys of the form as it now stands.
func (f Form) Keys() []keys.Binding {
	switch {
	case f.refused:
		return form.RefusedKeys()
	case f.picker != nil:
		return PickKeys("as it was")
	case f.edit != nil:
		return form.TypeOnKeys()
	}
	return f.formKeys()
}

// PickKeys are the keys of a list about an entry; leave says what comes of leaving it.
func PickKeys(leave string) []keys.Binding {
	return []keys.Binding{
		keys.New("Pick", form.Accept, "enter", "take this one", "enter", " "),
		keys.New("Pick", form.Number, "1-9", "take that one", "1", "2", "3", "4", "5", "6", "7", "8", "9"),
		keys.New("Pick", form.Down, "down", "next", "down", "j", "tab"),
		keys.New("Pick", form.Up, "up", "the one before", "up", "k", "shift+tab"),
		keys.New("Pick", form.Abandon, "esc", leave, "esc"),
	}
}

func (f Form) formKeys() []keys.Binding {
	field, ok := f.here()
	notTyped, nothing := "", ""
	if !ok || len(field.Choices) > 0 {
		notTyped = form.NotTyped
	}
	if !ok || !field.Given() {
		nothing = "nothing is stated here"
	} else if field.Required {
		nothing = field.Label + " cannot be left out"
	}
	return []keys.Binding{
		keys.New("Form", Write, "w", "write it in the log", "w").Unless(f.Problem()),
		keys.New("Form", change, "enter", "change", "enter").Explained("change the line under the hand: type, or pick from a list"),
		keys.New("Form", Leave, "esc", "leave, nothing written", "esc"),
		keys.New("Form", down, "down", "line down", "down", "j", "tab"),
		keys.New("Form", up, "up", "line up", "up", "k", "shift+tab"),
		keys.New("Form", overtype, "0-9", "type a new number", form.NumberKeys()...).Unless(notTyped),
		keys.New("Form", takeAway, "del", "take the value away", "delete", "backspace").Unless(nothing),
	}
}
