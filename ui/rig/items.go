package rig

import (
	"fmt"
	"strings"

	"washeve/model"
	"washeve/model/stock"
	"washeve/ui/form"
)

// adds begins a new item: it is there once it has its name.
func (m Model) adds() Model {
	s := m.now.Clone()
	i, err := s.Add(m.at.Section)
	if err != nil {
		return m.warn(err.Error())
	}
	return m.names(s, i).say("Type a name; " + m.th.Key("esc", "back") + " leaves it.")
}

// copies begins an item like the chosen one.
func (m Model) copies() Model {
	s := m.now.Clone()
	i, err := s.Copy(m.at.Section, m.at.Index)
	if err != nil {
		return m.warn(err.Error())
	}
	words := "Type a name for the copy; " + m.th.Key("esc", "back") + " leaves it."
	if m.at.Section == "bed" || m.at.Section == "softener" {
		words += " How far the tank is used up is not copied."
	}
	return m.names(s, i).say(words)
}

// names lets the name of a new item be typed.
func (m Model) names(s stock.Stock, index int) Model {
	from := place{m.at, m.inForm, m.hand}
	m.at, m.hand, m.inForm = Spot{m.at.Section, index}, 0, true
	m = m.startTyping(s, stock.Ref{Section: m.at.Section, Index: index, Key: "name"}, "")
	m.typing.fresh, m.typing.from = true, from
	return m.looked()
}

func (m Model) renames() Model {
	r := stock.Ref{Section: m.at.Section, Index: m.at.Index, Key: "name"}
	m = m.startTyping(m.now, r, m.name())
	m.inForm, m.hand = true, 0
	return m
}

// follows says what a new name did beyond the name itself.
func (m Model) follows(t typing, was string) string {
	f, ok := t.draft.Field(t.ref)
	if was == "" || !ok || f.Text() == was {
		return ""
	}
	words := "Renamed."
	if namers := m.now.Namers(t.ref.Section, f.Text()); len(namers) > 0 {
		words = "Renamed, and so in " + listOf(namers) + "."
	}
	if n := m.logged(t.ref.Section, was); n > 0 && !strings.EqualFold(was, f.Text()) {
		words += fmt.Sprintf(" The log keeps the old name in %s: they count for %q alone. %s takes it back.", entries(n), was, m.th.Key("u", "undo"))
	}
	return words
}

func entries(n int) string {
	if n == 1 {
		return "1 entry"
	}
	return fmt.Sprintf("%d entries", n)
}

// logged counts the entries of the log that name an item.
func (m Model) logged(section, name string) int {
	if m.log == nil {
		return 0
	}
	n := 0
	for _, e := range m.log() {
		if e.Body == nil {
			continue
		}
		for _, f := range e.Body.Fields() {
			if f.Refers == section && strings.EqualFold(f.Text(), name) {
				n++
				break
			}
		}
	}
	return n
}

// drops takes out the face under the hand, or the chosen item; where something
// names that, it asks.
func (m Model) drops() Model {
	if face, ok := m.faceHere(); ok {
		return m.dropsFace(face)
	}
	namers := m.now.Namers(m.at.Section, m.name())
	if len(namers) == 0 {
		return m.takesOut()
	}
	m.ask = &form.Question[Model]{
		Text: fmt.Sprintf("%s is named in %s. Take it out, and leave that to the default? %s", m.name(), listOf(namers), m.th.YesOrNo()),
		Yes:  Model.takesOut,
	}
	return m
}

func (m Model) takesOut() Model {
	s, name := m.now.Clone(), m.name()
	if err := s.Remove(m.at.Section, m.at.Index); err != nil {
		return m.warn(err.Error())
	}
	logged := m.logged(m.at.Section, name)
	m.hand, m.inForm = 0, false
	m = m.commit(s)
	words := name + " is taken out; " + m.th.Key("u", "undo") + " brings it back."
	if logged > 0 {
		words += fmt.Sprintf(" The log keeps its %s.", entries(logged))
	}
	return m.done(words)
}

// done says what was done, with the backup that saving told of, unless there is
// trouble to tell.
func (m Model) done(words string) Model {
	if m.alarm || m.ask != nil {
		return m
	}
	if strings.Contains(m.status, backupWords) {
		words += " " + m.status
	}
	return m.say(words)
}

// faceHere is the face under the hand.
func (m Model) faceHere() (index int, ok bool) {
	r, _, ok := m.target()
	return r.Index, ok && r.Section == stock.Face
}

func (m Model) dropsFace(face int) Model {
	s := m.now.Clone()
	name := s.FaceName(face)
	if err := s.RemoveFace(face); err != nil {
		return m.warn(err.Error())
	}
	return m.commit(s).done("What was stated of the face " + name + " is taken away; " + m.th.Key("u", "undo") + " brings it back.")
}

// asksFace lists the faces of which nothing is stated.
func (m Model) asksFace() Model {
	var options []form.Option
	for _, side := range m.now.FreeSides(m.at.Index) {
		options = append(options, form.Option{Text: string(side), Pick: string(side)})
	}
	m.inForm = true
	return m.opens(form.Open("which face", options, ""), func(m Model, o form.Option) Model { return m.addsFace(model.Side(o.Pick)) })
}

func (m Model) addsFace(side model.Side) Model {
	s := m.now.Clone()
	face, err := s.AddFace(m.at.Index, side)
	if err != nil {
		return m.warn(err.Error())
	}
	m = m.commit(s)
	for i := range m.looks.rows {
		if m.looks.rows[i].ref == (stock.Ref{Section: stock.Face, Index: face, Key: "area"}) {
			m.hand = i
		}
	}
	return m
}

// uses lets the wash in hand use the chosen item.
func (m Model) uses() Model {
	s := m.now.Clone()
	if err := s.Use(m.at.Section, m.at.Index); err != nil {
		return m.warn(err.Error())
	}
	return m.commit(s).done(m.name() + " is in the wash that is planned.")
}

// shortOf is a list in few letters.
func shortOf(namers []stock.Namer) string {
	var words []string
	for _, n := range namers {
		switch {
		case n.Defaults:
			words = append(words, "defaults")
		case n.File == "":
			words = append(words, "next wash")
		case len(namers) > 3:
			return strings.Join(append(words, fmt.Sprintf("%d washes", len(namers)-len(words))), ", ")
		default:
			words = append(words, n.File)
		}
	}
	return strings.Join(words, ", ")
}

// listOf names the first things of a list, and how many more there are.
func listOf(namers []stock.Namer) string {
	const most = 3
	var words []string
	for i, n := range namers {
		switch {
		case i == most && len(namers) > most+1:
			return strings.Join(words, ", ") + fmt.Sprintf(" and %d more", len(namers)-most)
		case n.Defaults:
			words = append(words, "the defaults")
		case n.File == "":
			words = append(words, "the next wash")
		default:
			words = append(words, "washes/"+n.File)
		}
	}
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:len(words)-1], ", ") + " and " + words[len(words)-1]
}
