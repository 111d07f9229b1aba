package day

import (
	"time"

	"washeve/ui/keys"
)

const (
	earlier    keys.Action = "earlier"
	later      keys.Action = "later"
	hourBefore keys.Action = "an hour earlier"
	hourAfter  keys.Action = "an hour later"
	recommend  keys.Action = "recommended"
	open       keys.Action = "open"
	turnLeft   keys.Action = "turn left"
	turnRight  keys.Action = "turn right"
	typeStart  keys.Action = "type start"
	typeNose   keys.Action = "type heading"
	back       keys.Action = "back"
	accept     keys.Action = "accept"
	abandon    keys.Action = "abandon"
)

// Keys lists the keys as the screen now stands.
func (m Model) Keys() []keys.Binding {
	switch {
	case m.edit != nil && m.edit.IsHeld():
		return m.edit.HeldKeys("as it was", false)
	case m.edit != nil:
		return []keys.Binding{
			keys.New("Type", accept, "enter", "done", "enter"),
			keys.New("Type", abandon, "esc", "as it was", "esc"),
		}
	}
	return append(m.startKeys(), append(headingKeys(), m.keepKeys()...)...)
}

func (m Model) startKeys() []keys.Binding {
	early, late := m.ends()
	return []keys.Binding{
		keys.New("Start", earlier, "left", "earlier", "left", "h").Explained("begin a quarter of an hour earlier").Unless(early),
		keys.New("Start", later, "right", "later", "right", "l").Explained("begin a quarter of an hour later").Unless(late),
		keys.New("Start", hourBefore, "pgup", "an hour earlier", "pgup", "shift+left").Explained("begin an hour earlier; shift and left too").Unless(early),
		keys.New("Start", hourAfter, "pgdn", "an hour later", "pgdown", "shift+right").Explained("begin an hour later; shift and right too").Unless(late),
		keys.New("Start", recommend, "enter", "take R", "enter", "t").Explained("take the recommended start, marked R: an easy one, after which no face hurries, or the one after which the fewest do").Unless(m.noneBetter()),
		keys.New("Start", typeStart, "s", "type the start", "s").Explained("type the hour to begin at, such as 7:30"),
		keys.New("Start", open, "del", "leave it open", "delete").Explained("choose no start: the plan takes the recommended one").Unless(m.noneChosen()),
	}
}

func headingKeys() []keys.Binding {
	return []keys.Binding{
		keys.New("Heading", turnLeft, ",", "turn left", ",", "[").Explained("turn the nose to the left, to the next point of the compass"),
		keys.New("Heading", turnRight, ".", "turn right", ".", "]").Explained("turn the nose to the right, to the next point of the compass"),
		keys.New("Heading", typeNose, "n", "type the heading", "n").Explained("type where the nose points, such as north-east or 50"),
	}
}

func (m Model) keepKeys() []keys.Binding {
	return []keys.Binding{
		m.history.UndoKey("Day"),
		m.history.RedoKey("Day"),
		keys.UnitsKey(),
		keys.New("Day", back, "esc", "back", "esc", "backspace").Explained("back to the plan with this start and heading; there " + m.th.Key("u", "undo") + " undoes both"),
	}
}

// ends tells why the start cannot be moved.
func (m Model) ends() (early, late string) {
	d := m.day()
	if d == nil {
		return m.noDay(), m.noDay()
	}
	first, last := m.bounds()
	if !d.Start.At.After(first) {
		early = "there is no earlier start with light"
	}
	if !d.Start.At.Before(last) {
		late = "there is no later start with light"
	}
	return early, late
}

func (m Model) noDay() string {
	if m.day() == nil {
		return "the day is not known"
	}
	return ""
}

// bounds are the first and the last start that the arrows reach: with light to
// work by, where the day has any.
func (m *Model) bounds() (first, last time.Time) {
	d := m.plan.Day
	first, last = d.Steps[0].At, d.Steps[len(d.Steps)-1].At
	return d.Dawn.Or(first), d.Dusk.Or(last)
}

func (m Model) noneBetter() string {
	d := m.day()
	if d == nil {
		return m.noDay()
	}
	best, given := d.Recommended.Get()
	chosen, isChosen := d.Chosen.Get()
	switch {
	case !given:
		return "no start is recommended"
	case isChosen && chosen.At.Equal(best.At):
		return "this is the recommended start"
	}
	return ""
}

func (m Model) noneChosen() string {
	if !m.now.Start.Given() {
		return "no start is chosen"
	}
	return ""
}
