package plan

import (
	"washeve/ui/form"
	"washeve/ui/keeping"
	"washeve/ui/keys"
)

const (
	up         keys.Action = "up"
	down       keys.Action = "down"
	nextStep   keys.Action = "next step"
	prevStep   keys.Action = "step before"
	openStep   keys.Action = "open step"
	change     keys.Action = "change"
	overtype   keys.Action = "overtype"
	nextChoice keys.Action = "next choice"
	prevChoice keys.Action = "choice before"
	takeAway   keys.Action = "take away"
	place      keys.Action = "place"
	newItem    keys.Action = "new"
	dropItem   keys.Action = "drop"
	why        keys.Action = "why"
	dayStrip   keys.Action = "day"
	sideBySide keys.Action = "compare"
	bedLog     keys.Action = "bed and log"
	shortBed   keys.Action = "short bed"
	washNow    keys.Action = "wash day"
	trips      keys.Action = "trips"
	oneFill    keys.Action = "one fill"
	rigList    keys.Action = "rig"
	full       keys.Action = "full"
	adopt      keys.Action = "adopt"
	fresh      keys.Action = "fresh"
	saveAgain  keys.Action = "save again"
	washes     keys.Action = "washes"
	newWash    keys.Action = "new wash"
)

// Keys lists the keys as the screen now stands. The first ones are those shown
// at the foot.
func (m Model) Keys() []keys.Binding {
	switch {
	case m.question != nil:
		return form.AnswerKeys()
	case m.refused:
		_, f, _ := m.target()
		return form.RefusedKeys(f)
	case m.picker != nil:
		return form.PickKeys(m.leaveWords("leave it as it was"))
	case m.edit != nil && m.edit.IsHeld():
		return m.edit.HeldKeys(m.leaveWords("as it was"), m.adding == nil)
	case m.edit != nil:
		return form.TypeKeys(m.adding != nil || m.edit.WasEmpty(), m.leaveWords("as it was"))
	}
	all := append(m.changeKeys(), append(m.walkKeys(), m.seeKeys()...)...)
	if m.awaitsWord() {
		all = append(form.AwaitKeys("Change", "esc makes the next one a key", all), letActsKey())
	}
	return all
}

func letActsKey() keys.Binding {
	return keys.New("Walk", form.LetActs, "esc", "then a key", "esc").Explained("makes the next letter a key, on a line where letters are text")
}

// leaveWords says what comes of leaving a value: of a new item's first one, that there is
// no such item.
func (m Model) leaveWords(otherwise string) string {
	if m.adding != nil {
		return "leave it out"
	}
	return otherwise
}

func (m Model) changeKeys() []keys.Binding {
	_, f, ok := m.target()
	nothing, noWord, notChoice := "", "", ""
	if !ok {
		nothing = "no line is under the hand"
	}
	if ok && !f.Given() {
		noWord = "nothing is stated here"
	} else if ok && f.Required {
		noWord = f.Label + " cannot be left out"
	}
	if !ok || len(f.Choices) == 0 {
		notChoice = "this line has no list of words; enter changes it"
	}
	notTyped := form.NotTyped(f)
	if !ok {
		notTyped = nothing
	}
	enters := "change"
	switch {
	case ok && form.Awaits(f):
		enters = "type"
	case ok && form.TakesWords(f):
		enters = "retype"
	}
	return []keys.Binding{
		keys.New("Change", change, "enter", enters, "enter").Explained("change the line under the hand: type, or pick from a list"),
		keys.New("Change", place, "p", "place", "p").Explained("pick the place of this wash; the answer follows").Unless(m.noneOf("place")),
		keys.New("See", why, "y", "where from", "y").Explained("where each number comes from: formula, inputs, source; and all that is assumed"),
		m.history.UndoKey("Change"),
		m.history.RedoKey("Change"),
		keys.New("Change", overtype, "0-9", "type a new number", form.NumberKeys()...).Unless(notTyped),
		keys.New("Change", nextChoice, "right", "next word of a list", "right", "l").Unless(notChoice),
		keys.New("Change", prevChoice, "left", "word before", "left", "h").Unless(notChoice),
		keys.New("Change", takeAway, "del", "take the value away: it is assumed again", "delete", "backspace").Unless(nothing + noWord),
		keys.New("Change", newItem, "n", "new "+m.nounHere(), "n"),
		keys.New("Change", dropItem, "X", "take this "+m.nounHere()+" away", "X").Unless(m.cannotDrop()),
	}
}

func (m Model) walkKeys() []keys.Binding {
	bindings := []keys.Binding{
		keys.New("Walk", nextStep, "tab", "next step", "tab"),
		keys.New("Walk", prevStep, "shift+tab", "step before", "shift+tab"),
		keys.New("Walk", down, "down", "line down", "down", "j"),
		keys.New("Walk", up, "up", "line up", "up", "k"),
	}
	for _, s := range steps() {
		bindings = append(bindings, keys.New("Walk", openStep, s.letter, s.name, s.letter))
	}
	return bindings
}

func (m Model) seeKeys() []keys.Binding {
	notExample, noPlan, notStated, saved, noLog := "", "", "", "", ""
	if m.planErr != nil {
		notStated = "there is no plan of this yet"
	}
	if m.book.Logger == nil {
		noLog = "there is no log to write in"
	}
	if !m.now.example {
		notExample = "this is your own already"
	}
	if !m.planned {
		noPlan = "there is no plan yet"
	}
	if m.unsaved == nil {
		saved = "nothing is unsaved"
	}
	return []keys.Binding{
		keys.New("See", dayStrip, "D", "the day", "D").Explained("the day hour by hour: sun and shade, how fast each face dries; move the start, turn the nose").Unless(noPlan),
		keys.New("See", sideBySide, "C", "compare ways", "C").Explained("ways of the same wash side by side: other sprayers, tanks, water, drip; enter makes a way the plan").Unless(notStated),
		keys.New("See", bedLog, "B", "bed and log", "B").Explained("what is left in the bed, when it ends, and the log: add readings and washes, change the resin").Unless(noLog),
		keys.New("See", shortBed, "S", "short bed", "S").Explained("who gets DI water when the bed is short, and every other way out, each with its numbers").Unless(m.noShare()),
		keys.New("See", washNow, "W", "wash day", "W").Explained("do the wash: one step at a time, with valves, seconds and amounts; the log is written as it goes").Unless(m.noWashDay()),
		keys.New("See", trips, "T", "trips", "T").Explained("does the resin last a whole trip: stops and washes by date, where to change it, when to order").Unless(m.noTrips()),
		keys.New("See", oneFill, "O", "one fill", "O").Explained("the washes that are planned on this bed: does one fill do them all, and in which order").Unless(m.noOneFill()),
		keys.New("See", rigList, "R", "rig and places", "R").Explained("everything you own and every place: add, copy, rename, take out"),
		keys.New("See", full, "f", "the plan in full", "f").Unless(noPlan),
		keys.UnitsKey(),
		keys.New("Keep", adopt, "a", "make the example yours", "a").Unless(notExample),
		keys.New("Keep", fresh, "e", "start your own, empty", "e").Unless(notExample),
		keys.New("Keep", saveAgain, "s", "save again", "s").Explained("try again to write what could not be written").Unless(saved),
		keeping.AnewKey("Keep", m.now.example, m.th),
		keys.New("Keep", washes, "L", "washes", "L").Explained("all washes, a file each: open another, or begin a new one; the one in hand is put away as it is").Unless(m.noWashes()),
		keys.New("Keep", newWash, "N", "new wash", "N").Explained("begin another wash like this one, for another day: its name, then a file of its own").Unless(m.noWashes()),
	}
}

func (m Model) noShare() string {
	switch {
	case m.sharing == nil:
		return "there is nothing to share out here"
	case !m.planned || m.planErr != nil:
		return "there is no plan yet"
	}
	return ""
}

func (m Model) noneOf(section string) string {
	if len(m.now.names(section)) == 0 {
		return "there is no " + section + " yet; " + m.th.Key("n", "new "+section) + " makes one"
	}
	return ""
}

// sectionHere is the section that new and drop are about.
func (m Model) sectionHere() (section string, index int) {
	r, f, ok := m.target()
	switch {
	case ok && f.Refers != "" && r.section != "stage":
		return f.Refers, m.now.chosen(f.Refers)
	case ok && r.section != "wash" && r.section != "defaults":
		return r.section, r.index
	}
	about := m.step().about
	if about == "stage" || about == "shade" {
		return about, -1
	}
	return about, m.now.chosen(about)
}

func (m Model) nounHere() string {
	section, _ := m.sectionHere()
	return section
}

func (m Model) cannotDrop() string {
	section, index := m.sectionHere()
	names := m.now.names(section)
	switch {
	case index < 0 || index >= len(names):
		return "no " + section + " is under the hand"
	case len(names) == 1 && (section == "vehicle" || section == "bed" || section == "place"):
		return "it is the only " + section
	}
	return ""
}
