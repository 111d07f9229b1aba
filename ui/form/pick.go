package form

import "washeve/ui/keys"

// What the keys of an open list do.
const (
	Up      keys.Action = "up"
	Down    keys.Action = "down"
	Accept  keys.Action = "accept"
	Number  keys.Action = "number"
	Abandon keys.Action = "abandon"
)

// PickKeys are the keys of an open list; leave says what comes of leaving it.
func PickKeys(leave string) []keys.Binding {
	return []keys.Binding{
		keys.New("Pick", Accept, "enter", "take it", "enter", " "),
		keys.New("Pick", Number, "1-9", "take that", "1", "2", "3", "4", "5", "6", "7", "8", "9"),
		keys.New("Pick", Down, "down", "next", "down", "j", "tab"),
		keys.New("Pick", Up, "up", "before", "up", "k", "shift+tab"),
		keys.New("Pick", Abandon, "esc", leave, "esc"),
	}
}

// Press does what a key of an open list means; key is its name, for a number. It
// gives the list as it then stands, nil where it is closed, and what was picked,
// nil where nothing was. The problem, where not "", is to be told.
func (p Picker) Press(does keys.Action, key string) (next *Picker, picked *Option, problem string) {
	var o Option
	var ok bool
	switch does {
	case Up:
		p = p.Move(-1)
		return &p, nil, ""
	case Down:
		p = p.Move(1)
		return &p, nil, ""
	case Abandon:
		return nil, nil, ""
	case Accept:
		o, ok = p.Chosen()
	case Number:
		o, ok = p.Numbered(key)
	}
	if !ok {
		return &p, nil, "There is no such line in the list."
	}
	return nil, &o, ""
}
