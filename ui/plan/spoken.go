package plan

import (
	"strconv"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/report"
	"washeve/ui/screen"
	"washeve/ui/talk"
)

// Spoken is the screen in words.
func (m Model) Spoken() talk.Page {
	p := talk.Page{Title: m.Title(), Like: "walk vehicle, bed or full", Said: m.status, Tell: m.answerTold, After: m.answerTold, Things: m.things, Numbers: m.numbers}
	f, _ := m.shown().field(m.editAt)
	switch {
	case m.question != nil:
		p.Prompt = m.question.Spoken()
	case m.picker != nil:
		p.Asks = &talk.Question{Ask: m.picker.Title, List: m.picker}
	case m.edit != nil:
		p.Asks = &talk.Question{Ask: f.Label, Like: form.Like(m.suited(m.editAt, f)), Edit: m.edit}
	default:
		p.Words = append(append(pageWords(), m.walkWords()...), m.lineWords()...)
	}
	return p
}

// pageWords open the other pages, and those to be read.
func pageWords() []talk.Word {
	return []talk.Word{
		{Say: "wash", Does: washNow}, {Say: "bed", Does: bedLog}, {Say: "day", Does: dayStrip}, {Say: "short", Does: shortBed},
		{Say: "compare", Does: sideBySide, Help: "ways of the same wash: other sprayers, tanks, water, drip; one is taken for the plan"},
		{Say: "trip", Does: trips}, {Say: "rig", Does: rigList},
	}
}

// walkWords ask for the lines of one step.
func (m Model) walkWords() []talk.Word {
	var words []talk.Word
	for _, s := range steps() {
		name := strings.ToLower(s.name)
		words = append(words, talk.Word{Say: "walk " + name, Does: openStep, Key: s.letter, Walk: name, Help: "ask for every line of " + name + " in turn"})
	}
	return words
}

// lineWords change lines and what they are about.
func (m Model) lineWords() []talk.Word {
	words := []talk.Word{
		{Say: "place", Does: place, Takes: "home", Like: "place home"},
		{Say: "change", Does: change, Of: "LINE", Takes: "40 ft", Like: "change vehicle length 40 ft", Help: "state a line"},
		{Say: "clear", Does: takeAway, Of: "LINE", Like: "clear vehicle colour", Help: "take a value away: it is assumed again"},
		{Say: "drop", Does: dropItem, Of: "LINE", Like: "drop 30", Help: "take away the stage, the shade or the thing that a line is of"},
	}
	for i, s := range steps() {
		on := func() screen.Screen { return m.opened(i) }
		words = append(words, talk.Word{Say: "new " + s.about, Does: newItem, Takes: "spare", Like: "new " + s.about + " " + newLike(s.about), Help: "a new " + s.about + ", for this wash", On: on})
	}
	return append(words,
		talk.Word{Say: "full", Does: full, Lines: func() []string { return strings.Split(report.Told(m.plan, m.sys, talk.Unwrapped), "\n") }},
		talk.Word{Say: "one fill", Does: oneFill, Lines: m.oneFillTold},
		talk.Word{Say: "washes", Does: washes, Takes: "2", Like: "washes 2"},
		talk.Word{Say: "new wash", Does: newWash, Takes: "Saturday wash", Like: "new wash Saturday wash"},
		talk.Word{Say: "adopt", Does: adopt},
		talk.Word{Say: "fresh", Does: fresh})
}

// newLike is what a new item of a section is called, for example.
func newLike(section string) string {
	if section == "shade" {
		return string(model.Left)
	}
	return "spare"
}

// things are the lines of all steps.
func (m Model) things() []talk.Thing {
	var all []talk.Thing
	for i, s := range steps() {
		for j, row := range m.now.rows(s) {
			f, ok := m.now.field(row.at)
			if !row.isField() || !ok {
				continue
			}
			all = append(all, talk.Thing{
				Name: f.Label, Whose: m.whose(row.at), Text: m.valueTold(row.at, f), Group: s.name, Like: form.Like(m.suited(row.at, f)), Must: f.Required, From: m.from(f),
				On: func() screen.Screen {
					m.open, m.hand = i, j
					return m
				},
			})
		}
	}
	return all
}

// whose tells a line from others of its name: by the name of what it is of, or by the
// noun where the wash has one such.
func (m *Model) whose(r ref) string {
	switch r.section {
	case "wash":
		return ""
	case "stage", "hose":
		return m.now.names(r.section)[r.index]
	case "shade":
		return "shade " + strconv.Itoa(r.index+1)
	}
	return r.section
}

// valueTold is what a line says: as stated, or what is taken for it.
func (m Model) valueTold(r ref, f model.Field) string {
	if f.Given() {
		return f.Text()
	}
	switch value, founded := m.assumed(r, f); {
	case founded == form.ByLog:
		return "by the log " + value
	case value != "":
		return "assumed " + value
	}
	return ""
}

// from is what a line is picked from; nil where it is typed.
func (m *Model) from(f model.Field) []string {
	if f.Refers == "" {
		return f.Choices
	}
	return m.now.names(f.Refers)
}

// answerTold says the plan in a few lines.
func (m Model) answerTold() []string {
	if !m.planned {
		words := make([]string, len(m.lacks))
		for i, r := range m.lacks {
			f, _ := m.now.field(r)
			words[i] = r.section + " " + f.Label
		}
		return []string{"No plan yet. It needs: " + strings.Join(words, ", ") + ". walk needed asks for each."}
	}
	plan := m.plan
	lines := []string{report.Heading(plan) + pastWords(plan)}
	if m.planErr != nil {
		lines = append(lines, "Mind: this is the last plan that could be made: "+m.planErr.Error()+".")
	}
	lines = append(lines,
		report.Judged(&plan)+", chance "+report.Lasting(&plan)+".",
		"DI water "+quantity.Show(plan.DI.Volume, m.sys)+" in "+report.Time(plan.DI.Duration)+flushTold(plan, m.sys)+".",
		report.Cap(plan, m.sys)+".")
	if plan.Day != nil {
		lines = append(lines, report.DayStart(plan.Day)+".")
	}
	if heed := toHeed(len(plan.Warnings), false, len(plan.Cautions), false)[0]; heed != "" {
		lines = append(lines, "To heed: "+heed+"; full tells them.")
	}
	if m.underway != "" {
		lines = append(lines, m.underway+"; wash goes on with it.")
	}
	if m.lag == entry.Unread {
		lines = append(lines, entry.ReadingLog)
	}
	return lines
}

// flushTold is what the flush takes besides the DI water of the wash; "" where there is none.
func flushTold(p planner.Plan, sys quantity.System) string {
	if p.Through() <= p.DI.Volume {
		return ""
	}
	return ", and " + quantity.Show(p.Flush.Volume, sys) + " to flush: " + quantity.Show(p.Through(), sys) + " in all"
}

// pastWords end the heading of a plan whose day is over: all that follows is about a
// wash that was.
func pastWords(plan planner.Plan) string {
	for _, n := range plan.Warnings {
		if n.Code == planner.PastDay {
			return ". " + n.Format
		}
	}
	return ""
}

func (m Model) numbers() []talk.Number {
	return append(talk.Reasons(m.th, m.sys, m.plan.Reasons), append(talk.Assumptions("inputs", m.th, m.sys, m.plan.Assumptions), talk.Assumptions("constants", m.th, m.sys, m.plan.Constants)...)...)
}

var _ talk.Speaker = Model{}
