package rig

import (
	"strings"

	"washeve/model"
	"washeve/ui/form"
	"washeve/ui/screen"
	"washeve/ui/talk"
)

// faces is the part of a vehicle's fields that is about its faces.
const faces = "Faces"

// Spoken is the screen in words: the list of all that is owned, or the fields of one
// thing.
func (m Model) Spoken() talk.Page {
	p := talk.Page{Title: m.Title(), Like: "show 1, new place or list", Said: m.status, Things: m.items, Tell: m.told}
	if m.inForm || m.typing != nil {
		p = talk.Page{Title: "Rig, the " + m.noun() + " " + m.name(), Like: "change note old, walk or back", Said: m.status, Things: m.fields, Tell: m.fieldsTold}
	}
	switch {
	case m.ask != nil:
		p.Prompt = m.ask.Spoken()
	case m.picker != nil:
		p.Asks = &talk.Question{Ask: m.picker.Title, List: m.picker}
	case m.typing != nil:
		f, _ := m.typing.draft.Field(m.typing.ref)
		p.Title = m.Title()
		p.Asks = &talk.Question{Ask: f.Label, Like: form.Like(f), Edit: &m.typing.Edit}
	case m.inForm:
		p.Words = m.fieldWords()
	default:
		p.Words = m.itemWords()
	}
	return p
}

func (m Model) itemWords() []talk.Word {
	var words []talk.Word
	for _, k := range kinds() {
		if k.section == defaults {
			continue
		}
		words = append(words, talk.Word{
			Say: "new " + k.section, Does: newItem, Takes: "camp", Like: "new " + k.section + " spare", Help: "a new " + k.section + ", by its name",
			On: m.on(Spot{Section: k.section}),
		})
	}
	return append(words,
		talk.Word{Say: "show", Does: enter, Of: "ITEM", Like: "show 1", Help: "its fields, to hear and to change"},
		talk.Word{Say: "copy", Does: copyItem, Of: "ITEM", Takes: "spare", Like: "copy 2 spare", Help: "copy it under a name of its own"},
		talk.Word{Say: "rename", Does: rename, Of: "ITEM", Takes: "spare", Like: "rename 2 spare", Help: "the washes and defaults that name it follow"},
		talk.Word{Say: "use", Does: useIt, Of: "ITEM", Like: "use 2", Help: "use it in the wash that is planned"},
		talk.Word{Say: "take out", Does: dropItem, Of: "ITEM", Like: "take out 2", Help: "take it out; it asks where something names it"},
		talk.Word{Say: "face", Does: newFace, Of: "ITEM", Takes: "left", Like: "face 1 left", Help: "state one face of a vehicle: its area, what it is made of"},
		talk.Word{Say: "adopt", Does: adopt})
}

func (m Model) fieldWords() []talk.Word {
	return []talk.Word{
		{Say: "change", Does: enter, Of: "FIELD", Takes: "old", Like: "change note old", Help: "state a field"},
		{Say: "clear", Does: takeAway, Of: "FIELD", Like: "clear note", Help: "take a value away: it is assumed again"},
		{Say: "face", Does: newFace, Takes: "left", Like: "face left"},
		{Say: "copy", Does: copyItem, Takes: "spare", Like: "copy spare", Help: "copy it under a name of its own"},
		{Say: "rename", Does: rename, Takes: "spare", Like: "rename spare", Help: "the washes and defaults that name it follow"},
		{Say: "use", Does: useIt, Help: "use it in the wash that is planned"},
		{Say: "adopt", Does: adopt},
		{Say: "drop face", Does: dropItem, Of: "FIELD", Among: faces, Like: "drop face 12", Help: "take away what is stated of the face that a field is of"},
	}
}

func (m Model) on(at Spot) func() screen.Screen {
	return func() screen.Screen {
		m.at, m.hand, m.inForm = at, 0, false
		return m.looked()
	}
}

func (m Model) told() []string {
	return []string{"Everything that is owned, and every place. list tells all of it; show and a number or a name tells one."}
}

// items are all that is owned and every place, by kind.
func (m Model) items() []talk.Thing {
	var all []talk.Thing
	for _, s := range m.spots() {
		names := m.now.Names(s.Section)
		if s.Section != defaults && s.Index >= len(names) {
			continue
		}
		th := talk.Thing{Name: defaults, Text: "what holds where a wash says nothing", Group: kindOf(s.Section).head, On: m.on(s)}
		if s.Section != defaults {
			th.Name, th.Text = names[s.Index], m.noteOf(s)
			if m.now.Chosen(s.Section) == s.Index && s.Section != "hose" {
				th.Text = strings.TrimPrefix(th.Text+", in use", ", ")
			}
		}
		all = append(all, th)
	}
	return all
}

// fields are the lines of the chosen item.
func (m Model) fields() []talk.Thing {
	var all []talk.Thing
	group, side := "", ""
	for i, r := range m.looks.rows {
		if r.heading != "" {
			group, side = faces, strings.TrimPrefix(r.heading, "Face: ")
			continue
		}
		text := r.field.Text()
		if value, founded := m.assumed(r.ref, r.field); text == "" && value != "" {
			text = strings.TrimSpace("assumed " + value + " " + founded)
		}
		if r.lacks() {
			text = ""
		}
		all = append(all, talk.Thing{Name: r.field.Label, Whose: side, Text: text, Group: group, Like: form.Like(suited(m.now, r.ref, r.field, m.sys)), Must: r.field.Required, From: m.from(r.field), On: func() screen.Screen {
			m.hand, m.inForm = i, true
			return m
		}})
	}
	return all
}

// from is what a field is picked from; nil where it is typed.
func (m *Model) from(f model.Field) []string {
	if f.Refers == "" {
		return f.Choices
	}
	return m.now.Names(f.Refers)
}

// fieldsTold are the fields that are stated, and those that are needed.
func (m Model) fieldsTold() []string {
	var lines []string
	for _, r := range m.looks.rows {
		switch {
		case r.lacks():
			lines = append(lines, r.field.Label+": needed, like "+suited(m.now, r.ref, r.field, m.sys).Example)
		case r.heading != "":
			lines = append(lines, r.heading)
		case r.field.Given():
			lines = append(lines, r.field.Label+": "+r.field.Text())
		}
	}
	return append(lines, "list tells all its fields, also what is assumed.")
}

var _ talk.Speaker = Model{}
