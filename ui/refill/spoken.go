package refill

import (
	"fmt"
	"strings"

	"washeve/ui/entry"
	"washeve/ui/screen"
	"washeve/ui/talk"
)

// Spoken is the change in words, step by step.
func (m Model) Spoken() talk.Page {
	title := fmt.Sprintf("Changing the resin, step %d of %d: %s", m.step+1, len(steps()), m.now().name)
	p := talk.Page{Title: title, Like: "next", Said: m.status, Tell: m.sentences, Numbers: m.numbers}
	switch {
	case m.reading != nil:
		p = m.reading.Spoken(m.th, m.sys)
	case m.inForm():
		p = m.fill.Spoken(func(f entry.Form) screen.Screen {
			m.fill = f
			return m
		})
		p.Title, p.Like, p.Tell = title, "change when 2026-06-12, or write", m.fillTold(p.Things())
		if p.Words != nil {
			p.Words = append(p.Words, m.stepWords()...)
		}
	default:
		p.Words = m.stepWords()
	}
	if m.now().amounts {
		p.Things, p.Like = m.things, "change resin "+m.resin.text+", or next"
		p.Words = append(p.Words, talk.Word{Say: "change", Does: change, Of: "LINE", Takes: m.resin.text, Like: "change bag " + m.bag.text, Help: "state how much"})
	}
	if m.edit != nil {
		p.Asks = &talk.Question{Ask: m.things()[m.hand].Name, Like: m.amount().text, Edit: m.edit}
	}
	if m.kept != nil {
		p.Said = "Not written, but still here: " + m.kept.Error()
	} else if p.Said == "" {
		p.Said = m.status
	}
	return p
}

// fillTold is what goes into the log as it stands, and what else can be stated of it.
func (m Model) fillTold(lines []talk.Thing) func() []string {
	var told, open []string
	for _, th := range lines {
		switch {
		case th.Text == "":
			open = append(open, th.Name)
		case th.Name != "log number":
			told = append(told, th.Name+": "+th.Text)
		}
	}
	return func() []string {
		if m.written {
			return []string{"The new fill is in the log. On the Bed page undo strikes it out."}
		}
		return append(told, "write puts it into the log so. If it was done on another day, say so first, like change when 2026-06-12. Not stated yet, and no need: "+strings.Join(open, ", ")+".")
	}
}

func (m Model) stepWords() []talk.Word {
	words := []talk.Word{{Say: "next", Does: next}, {Say: "before", Does: before}}
	if !m.inForm() {
		words = append(words, talk.Word{Say: "reading", Does: read})
	}
	return words
}

// sentences is what the step says, and the readings so far.
func (m Model) sentences() []string {
	if m.err != nil {
		return []string{"No figures yet: " + m.err.Error()}
	}
	var lines []string
	for _, l := range m.now().tell(m) {
		mark := ""
		if l.heed {
			mark = "Mind: "
		}
		lines = append(lines, mark+l.text)
	}
	return lines
}

// things are the two amounts that can be stated.
func (m Model) things() []talk.Thing {
	amounts := []amount{m.resin, m.bag}
	all := make([]talk.Thing, len(amounts))
	for i, name := range []string{"resin", "bag"} {
		all[i] = talk.Thing{Name: name, Text: amounts[i].text, Like: amounts[i].text, On: func() screen.Screen {
			m.hand = i
			return m
		}}
	}
	return all
}

func (m Model) numbers() []talk.Number { return talk.Reasons(m.th, m.sys, m.ahead.Reasons) }

var _ talk.Speaker = Model{}
