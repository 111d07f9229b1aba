package rig

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
	nextKind   keys.Action = "next kind"
	prevKind   keys.Action = "kind before"
	otherSide  keys.Action = "other side"
	enter      keys.Action = "enter"
	back       keys.Action = "back"
	toPlan     keys.Action = "to the plan"
	overtype   keys.Action = "overtype"
	nextChoice keys.Action = "next choice"
	prevChoice keys.Action = "choice before"
	takeAway   keys.Action = "take away"
	newItem    keys.Action = "new"
	copyItem   keys.Action = "copy"
	rename     keys.Action = "rename"
	dropItem   keys.Action = "take out"
	newFace    keys.Action = "face"
	useIt      keys.Action = "use"
	adopt      keys.Action = "adopt"
	saveAgain  keys.Action = "save again"
)

// Keys lists the keys as the screen now stands. The first ones are those shown
// at the foot.
func (m Model) Keys() []keys.Binding {
	switch {
	case m.ask != nil:
		return form.AnswerKeys()
	case m.refused:
		_, f, _ := m.target()
		return form.RefusedKeys(f)
	case m.picker != nil:
		return form.PickKeys("leave it as it was")
	case m.typing != nil:
		if m.typing.IsHeld() {
			return m.typing.HeldKeys("as it was", !m.typing.fresh)
		}
		return form.TypeKeys(m.typing.fresh || m.typing.WasEmpty(), "as it was")
	}
	all := append(m.itemKeys(), append(m.walkKeys(), append(m.fieldKeys(), m.keepKeys()...)...)...)
	if m.awaitsWord() {
		return form.AwaitKeys("Fields", "esc goes to the list", all)
	}
	return all
}

// itemKeys change the list.
func (m Model) itemKeys() []keys.Binding {
	noun, none, noNew := m.noun(), "", ""
	if !m.isItem() {
		none = "no " + noun + " is under the hand"
	}
	if m.at.Section == defaults {
		none, noNew = "the defaults are no item of the list", "the defaults are there once"
	}
	return []keys.Binding{
		keys.New("List", newItem, "n", "new "+noun, "n").Unless(noNew),
		keys.New("List", copyItem, "c", "copy", "c").Explained("copy this " + noun + " under a name of its own").Unless(none),
		keys.New("List", rename, "e", "rename", "e", "f2").Explained("rename this " + noun + "; the washes, trips and defaults that name it follow").Unless(none),
		keys.New("List", useIt, "t", "use it next", "t").Explained("use this " + noun + " in the wash that is planned").Unless(m.cannotUse()),
		keys.New("List", dropItem, "X", "take out", "X").Explained(m.dropWords()).Unless(m.cannotDrop()),
		keys.New("List", newFace, "f", "state a face", "f").Explained("state one face of this vehicle: its area, what it is made of").Unless(m.noFace()),
	}
}

func (m Model) walkKeys() []keys.Binding {
	deeper := ""
	if !m.inForm && !m.isItem() && m.at.Section != defaults {
		deeper = "there is none yet; " + m.th.Key("n", "new "+m.at.Section) + " makes one"
	}
	return []keys.Binding{
		keys.New("Walk", otherSide, "tab", "list or fields", "tab", "shift+tab").Unless(deeper),
		keys.New("Walk", down, "down", "line down", "down", "j"),
		keys.New("Walk", up, "up", "line up", "up", "k"),
		keys.New("Walk", nextKind, "pgdn", "next kind", "pgdown", "]"),
		keys.New("Walk", prevKind, "pgup", "kind before", "pgup", "["),
		keys.New("Walk", first, "home", "first line", "home"),
		keys.New("Walk", last, "end", "last line", "end"),
		keys.New("Walk", back, "esc", m.backWords(), "esc"),
		keys.New("Walk", toPlan, "R", "back to the plan", "R"),
	}
}

func (m Model) backWords() string {
	if m.inForm {
		return "to the list"
	}
	return "back to the plan"
}

// fieldKeys change the line of the form under the hand.
func (m Model) fieldKeys() []keys.Binding {
	inList, noWord, notChoice, notTyped := "", "", "", ""
	_, f, ok := m.target()
	switch {
	case !ok && !m.inForm:
		inList = "the hand is in the list; enter goes to the fields"
		notTyped = "the hand is in the list; letters wait until enter or esc"
	case !ok:
		inList = "no line is under the hand"
		notTyped = inList
	case !f.Given():
		noWord = "nothing is stated here"
	case f.Required:
		noWord = f.Label + " cannot be left out"
	}
	if ok && len(f.Choices) == 0 {
		notChoice = "this line has no list of words; enter changes it"
	}
	if ok {
		notTyped = form.NotTyped(f)
	}
	deeper := ""
	if !m.inForm && !m.isItem() && m.at.Section != defaults {
		deeper = "there is none yet; " + m.th.Key("n", "new "+m.at.Section) + " makes one"
	}
	return []keys.Binding{
		keys.New("Fields", enter, "enter", "change", "enter").Explained("from the list into the fields; there, change the line: type, or pick from a list").Unless(deeper),
		keys.New("Fields", overtype, "0-9", "type a new number", form.NumberKeys()...).Unless(notTyped),
		keys.New("Fields", nextChoice, "right", "next word of a list", "right", "l").Unless(inList + notChoice),
		keys.New("Fields", prevChoice, "left", "word before", "left", "h").Unless(inList + notChoice),
		keys.New("Fields", takeAway, "del", "take the value away: it is assumed again", "delete", "backspace").Unless(inList + noWord),
	}
}

func (m Model) keepKeys() []keys.Binding {
	notExample, saved := "", ""
	if !m.example {
		notExample = "this is your own already"
	}
	if m.unsaved == nil {
		saved = "nothing is unsaved"
	}
	return []keys.Binding{
		m.history.UndoKey("Keep"),
		m.history.RedoKey("Keep"),
		keys.New("Keep", saveAgain, "s", "save again", "s").Explained("try again to write what could not be written").Unless(saved),
		keeping.AnewKey("Keep", m.example, m.th),
		keys.New("Keep", adopt, "a", "make the example yours", "a").Unless(notExample),
		keys.UnitsKey(),
	}
}

// noun is what new and take out are about.
func (m Model) noun() string {
	if m.at.Section == defaults {
		return "item"
	}
	return m.at.Section
}

func (m Model) dropWords() string {
	if _, ok := m.faceHere(); ok {
		return "take away what is stated of this face"
	}
	return "take this " + m.noun() + " out; it asks where something names it"
}

func (m Model) cannotDrop() string {
	_, onFace := m.faceHere()
	switch names := m.now.Names(m.at.Section); {
	case onFace:
		return ""
	case m.at.Section == defaults:
		return "the defaults stay; " + m.th.Key("del", "clear") + " takes one away"
	case !m.isItem():
		return "no " + m.noun() + " is under the hand"
	case len(names) == 1 && (m.at.Section == "vehicle" || m.at.Section == "bed" || m.at.Section == "place"):
		return "it is the only " + m.at.Section
	}
	return ""
}

func (m Model) cannotUse() string {
	switch {
	case m.at.Section == defaults || m.at.Section == "hose":
		return "a wash names no " + m.noun()
	case !m.isItem():
		return "no " + m.noun() + " is under the hand"
	case m.now.Chosen(m.at.Section) == m.at.Index:
		return "it is in use already"
	}
	return ""
}

func (m Model) noFace() string {
	switch {
	case m.at.Section != "vehicle" || !m.isItem():
		return "only a vehicle has faces"
	case len(m.now.FreeSides(m.at.Index)) == 0:
		return "all faces are there already"
	}
	return ""
}
