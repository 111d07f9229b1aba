package trip

import (
	"washeve/ui/form"
	"washeve/ui/keeping"
	"washeve/ui/keys"
)

const (
	up         keys.Action = "up"
	down       keys.Action = "down"
	first      keys.Action = "first"
	last       keys.Action = "last"
	open       keys.Action = "open"
	newWash    keys.Action = "new wash"
	newStop    keys.Action = "new stop"
	newChange  keys.Action = "new change"
	take       keys.Action = "take the advice"
	dropLine   keys.Action = "drop"
	earlier    keys.Action = "earlier"
	later      keys.Action = "later"
	weekBefore keys.Action = "a week earlier"
	weekAfter  keys.Action = "a week later"
	full       keys.Action = "full"
	why        keys.Action = "why"
	compared   keys.Action = "compare"
	nextTrip   keys.Action = "next trip"
	begin      keys.Action = "begin"
	saveAgain  keys.Action = "save again"
	back       keys.Action = "back"

	change   keys.Action = "change"
	overtype keys.Action = "overtype"
	takeAway keys.Action = "take away"
)

// Keys lists the keys as the screen now stands.
func (m Model) Keys() []keys.Binding {
	switch {
	case m.question != nil:
		return form.AnswerKeys()
	case m.refused:
		f, _ := m.target()
		return form.RefusedKeys(f)
	case m.picker != nil:
		return form.PickKeys("as it was")
	case m.edit != nil && m.edit.IsHeld():
		return m.edit.HeldKeys("as it was", true)
	case m.edit != nil:
		return form.TypeOnKeys()
	case m.sheet != nil:
		return m.sheetKeys()
	case !m.begun:
		return []keys.Binding{
			keys.New("Trip", begin, "enter", "start a trip", "enter", "b"),
			m.history.RedoKey("Trip"),
			keeping.AnewKey("Trip", m.example, m.th),
			keys.New("Trip", back, "esc", "back", "esc", "backspace").Explained("back to the plan"),
		}
	}
	return append(m.lineKeys(), m.tripKeys()...)
}

func (m Model) sheetKeys() []keys.Binding {
	f, ok := m.target()
	notTyped, nothing := form.NotTyped(f), ""
	if !ok || !f.Given() {
		nothing = "nothing is stated here"
	} else if f.Required {
		nothing = f.Label + " cannot be left out"
	}
	return []keys.Binding{
		keys.New("Line", change, "enter", "change", "enter").Explained("change the value under the hand: type, or pick from a list"),
		keys.New("Line", back, "esc", "back to the list", "esc"),
		keys.New("Line", down, "down", "value down", "down", "j", "tab"),
		keys.New("Line", up, "up", "value up", "up", "k", "shift+tab"),
		keys.New("Line", overtype, "0-9", "type a new number", form.NumberKeys()...).Unless(notTyped),
		keys.New("Line", takeAway, "del", "take the value away", "delete", "backspace").Unless(nothing),
		m.history.UndoKey("Line"),
		m.history.RedoKey("Line"),
		keys.UnitsKey(),
	}
}

func (m Model) lineKeys() []keys.Binding {
	l, _ := m.here()
	noSheet, notMoved, notDropped := "", "", ""
	if l.kind == adviceLine {
		noSheet = "this change is only advised; " + m.th.Key("t", "take advice") + " plans it"
		notMoved, notDropped = noSheet, noSheet
	}
	if l.kind == theTrip {
		notMoved, notDropped = "the hand is on the trip as a whole", "the hand is on the trip as a whole"
	} else if !l.date.Given() {
		notMoved = "this line has no date yet"
	}
	return []keys.Binding{
		keys.New("Line", open, "enter", "change", "enter").Explained("change the line under the hand, value by value").Unless(noSheet),
		keys.New("Line", down, "down", "along", "down", "j", "right", "l").Unless(m.atEnd(1)),
		keys.New("Line", up, "up", "back along", "up", "k", "left", "h").Unless(m.atEnd(-1)),
		keys.New("Line", last, "end", "last line", "end", "G").Unless(m.atEnd(1)),
		keys.New("Line", first, "home", "first line", "home", "g").Unless(m.atEnd(-1)),
		keys.New("Line", newWash, "n", "new wash", "n").Explained("a wash on the day under the hand, or another user of the bed: state its DI water"),
		keys.New("Line", newStop, "o", "new stop", "o").Explained("a stop, the day after all that is under the one of this line"),
		keys.New("Line", newChange, "c", "new change", "c").Explained("a planned change of resin on the day under the hand"),
		keys.New("Line", take, "t", "take advice", "t").Explained("plan the change of resin that is advised").Unless(m.noAdvice()),
		keys.New("Line", earlier, ",", "a day earlier", ",").Unless(notMoved),
		keys.New("Line", later, ".", "a day later", ".").Unless(notMoved),
		keys.New("Line", weekBefore, "<", "a week earlier", "<").Unless(notMoved),
		keys.New("Line", weekAfter, ">", "a week later", ">").Unless(notMoved),
		keys.New("Line", dropLine, "X", "take this line away", "X").Unless(notDropped),
	}
}

func (m Model) tripKeys() []keys.Binding {
	only, saved := "", ""
	if len(m.trips) < 2 {
		only = "there is no other trip; " + m.th.Key("b", "begin") + " begins one"
	}
	if m.unsaved == nil {
		saved = "nothing is unsaved"
	}
	return []keys.Binding{
		m.history.UndoKey("Trip"),
		m.history.RedoKey("Trip"),
		keys.New("Trip", full, "f", "the trip in full", "f").Explained("all numbers of every wash: chances, waters, softener, money; which washes one fill does, and in which order"),
		keys.New("Trip", why, "y", "where from", "y").Explained("what the trip rests on, and where each number comes from"),
		keys.New("Trip", compared, "C", "compare", "C").Explained("this trip under several ways side by side; enter there makes a way the plan").Unless(m.notCompared()),
		keys.UnitsKey(),
		keys.New("Trip", nextTrip, "tab", "the next trip", "tab").Explained("go to the next trip in the folder, and round again").Unless(only),
		keys.New("Trip", begin, "b", "begin another trip", "b"),
		keys.New("Trip", saveAgain, "s", "save again", "s").Explained("try again to write what could not be written").Unless(saved),
		keeping.AnewKey("Trip", m.example, m.th),
		keys.New("Trip", back, "esc", "back", "esc", "backspace").Explained("back to the plan"),
	}
}

func (m Model) atEnd(by int) string {
	if next := m.hand + by; next < 0 || next >= len(m.lines()) {
		return "there is no further line"
	}
	return ""
}

func (m Model) noAdvice() string {
	for _, c := range m.plan.Changes {
		if c.Advised {
			return ""
		}
	}
	return "no change of resin is advised"
}
