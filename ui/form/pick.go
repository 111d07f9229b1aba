package form

import "washeve/ui/keys"

// What the keys of an open list do.
const (
	Up      keys.Action = "up"
	Down    keys.Action = "down"
	Accept  keys.Action = "accept"
	Number  keys.Action = "number"
	Begins  keys.Action = "begins"
	Abandon keys.Action = "abandon"
)

// AsItWas is said where what is picked holds already: nothing is written.
const AsItWas = "As it was."

// PickKeys are the keys of an open list; leave says what comes of leaving it.
func PickKeys(leave string) []keys.Binding {
	return []keys.Binding{
		keys.New("Pick", Accept, "enter", "take it", "enter", " "),
		keys.New("Pick", Number, "1-9", "take that", "1", "2", "3", "4", "5", "6", "7", "8", "9"),
		keys.New("Pick", Down, "down", "next", "down", "j", "tab"),
		keys.New("Pick", Up, "up", "before", "up", "k", "shift+tab"),
		keys.New("Pick", Abandon, "esc", leave, "esc"),
		keys.New("Pick", Begins, "a-z", "find it", lettersBut("j", "k")...).Explained("to the next line that begins with what is typed; so do j and k where one does, and digits and blanks behind a letter"),
	}
}

// Press does what a key of an open list means; key is its name, for a number. It
// gives the list as it then stands, nil where it is closed, and what was picked,
// nil where nothing was. The problem, where not "", is to be told.
func (p Picker) Press(does keys.Action, key string) (next *Picker, picked *Option, problem string) {
	if next, isText := p.typedAhead(key); isText {
		return &next, nil, ""
	}
	if does == Accept && !p.begins(p.typed) {
		problem = "Nothing in the list begins with " + quotedShort(p.typed) + "."
		p.typed = ""
		return &p, nil, problem
	}
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
