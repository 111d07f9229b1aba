package reader

import "washeve/ui/keys"

const (
	up      keys.Action = "up"
	down    keys.Action = "down"
	pageUp  keys.Action = "page up"
	pageDn  keys.Action = "page down"
	home    keys.Action = "start"
	end     keys.Action = "end"
	find    keys.Action = "find"
	again   keys.Action = "find again"
	back    keys.Action = "back"
	accept  keys.Action = "accept"
	abandon keys.Action = "abandon"
)

// Keys lists the keys of the page.
func (m Model) Keys() []keys.Binding {
	if m.search.typing {
		return []keys.Binding{
			keys.New("Find", accept, "enter", "find these words", "enter"),
			keys.New("Find", abandon, "esc", "find nothing", "esc"),
		}
	}
	atTop, atEnd, nothing := "", "", ""
	if m.top == 0 {
		atTop = "this is the start"
	}
	if m.top >= m.last() {
		atEnd = "this is the end"
	}
	if m.search.text == "" {
		nothing = "nothing was looked for yet; / does that"
	}
	return []keys.Binding{
		keys.New("Read", back, "esc", "back", "esc", "backspace", "left"),
		keys.New("Read", down, "down", "a line down", "down", "j").Unless(atEnd),
		keys.New("Read", up, "up", "a line up", "up", "k").Unless(atTop),
		keys.New("Read", pageDn, "space", "a page down", " ", "pgdown").Unless(atEnd),
		keys.New("Read", pageUp, "b", "a page up", "b", "pgup").Unless(atTop),
		keys.New("Read", find, "/", "find words", "/"),
		keys.New("Read", again, "n", "find the next", "n").Unless(nothing),
		keys.New("Read", home, "home", "to the start", "home", "g").Unless(atTop),
		keys.New("Read", end, "end", "to the end", "end", "G").Unless(atEnd),
	}
}
