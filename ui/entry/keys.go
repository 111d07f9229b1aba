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
		field, _ := f.here()
		return form.RefusedKeys(field)
	case f.asked != "":
		return form.AnswerKeys()
	case f.picker != nil:
		return form.PickKeys("as it was")
	case f.edit != nil && f.edit.IsHeld():
		return f.edit.HeldKeys("as it was", true)
	case f.edit != nil:
		return form.TypeOnKeys()
	}
	return f.formKeys()
}

func (f Form) formKeys() []keys.Binding {
	field, ok := f.here()
	notTyped, nothing := form.NotTyped(field), ""
	if !ok || !field.Given() {
		nothing = "nothing is stated here"
	} else if field.Required {
		nothing = field.Label + " cannot be left out"
	}
	return []keys.Binding{
		keys.New(f.Title, Write, "w", "write it in the log", "w").Unless(f.Problem()),
		keys.New(f.Title, change, "enter", "change", "enter").Explained("change the line under the hand: type, or pick from a list"),
		keys.New(f.Title, Leave, "esc", "leave, nothing written", "esc"),
		keys.New(f.Title, down, "down", "line down", "down", "j", "tab"),
		keys.New(f.Title, up, "up", "line up", "up", "k", "shift+tab"),
		keys.New(f.Title, overtype, "0-9", "type a new number", form.NumberKeys()...).Unless(notTyped),
		keys.New(f.Title, takeAway, "del", "take the value away", "delete", "backspace").Unless(nothing),
	}
}
