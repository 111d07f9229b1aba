package guide

import "washeve/ui/keys"

const (
	next   keys.Action = "next page"
	before keys.Action = "page before"
)

// Keys lists the keys of the page: those to read it by, and those that turn.
func (m Model) Keys() []keys.Binding {
	all := m.reader.Keys()
	if m.Typing() {
		return all
	}
	return append(append(all[:1:1], m.turnKeys()...), all[1:]...)
}

func (m Model) turnKeys() []keys.Binding {
	following := m.pages[(m.at+1)%len(m.pages)].title
	return []keys.Binding{
		keys.New("Turn", next, "tab", following, "tab", "?").Explained("the next page: keys, terms, when something goes wrong"),
		keys.New("Turn", before, "shift+tab", "page before", "shift+tab"),
	}
}
