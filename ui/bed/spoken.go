package bed

import (
	"slices"
	"strings"

	"washeve/ui/cells"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/report"
	"washeve/ui/screen"
	"washeve/ui/talk"
)

// Spoken is the screen in words.
func (m Model) Spoken() talk.Page {
	p := talk.Page{Title: m.Title(), Like: "reading, wash or list", Said: m.status, Tell: m.told, Things: m.things, Numbers: m.numbers}
	switch {
	case m.ask != nil:
		p.Prompt = m.ask.Spoken()
		if m.ask.All != nil {
			p.Words = []talk.Word{{Say: "all", Does: form.All, Help: m.ask.Of}}
		}
	case m.kinds != nil:
		p.Asks = &talk.Question{Ask: m.kinds.Title, List: m.kinds}
	case m.form != nil:
		p = m.form.Spoken(func(f entry.Form) screen.Screen {
			m.form = &f
			return m
		})
		p.Said = m.trouble(p.Said)
	case m.reading != nil:
		p = m.reading.Spoken(m.th, m.sys)
		p.Said = m.trouble(p.Said)
	default:
		p.Words = m.words()
	}
	return p
}

// trouble is what is said of a form, or why it could not be written.
func (m Model) trouble(said string) string {
	switch {
	case m.kept != nil:
		return "Not written, but still here: " + m.kept.Error()
	case said == "":
		return m.status
	}
	return said
}

func (m Model) words() []talk.Word {
	return []talk.Word{
		{Say: "reading", Does: add, Takes: "6", With: m.readingTold, Like: "reading " + m.o.Known().Scales("").Bare("6")},
		{Say: "wash", Does: wash},
		{Say: "salt", Does: salt},
		{Say: "resin", Does: resin},
		{Say: "new", Does: newOne, Takes: "reading", Like: "new reading"},
		{Say: "correct", Does: right, Of: "ENTRY", Like: "correct 2", Help: "put an entry right; the log keeps both"},
		{Say: "strike", Does: strike, Of: "ENTRY", Like: "strike 2", Help: "strike an entry out, or let it count again"},
		{Say: "use", Does: useIt, Of: "ENTRY", Like: "use 2"},
		{Say: "stages", Does: unfold, Of: "ENTRY", Like: "stages 2"},
		{Say: "evidence", Does: explain, Lines: func() []string { return m.evidence(talk.Unwrapped) }},
	}
}

// told is the answer, as the screen shows it.
func (m Model) told() []string {
	lines := talk.Unmarked(m.th, []string{m.titleLine(talk.Unwrapped), m.verdictLine(talk.Unwrapped)})
	for _, r := range m.rowsTold() {
		lines = append(lines, r.Label+": "+r.Value+" ("+r.Note+")")
	}
	return append(lines, talk.Unmarked(m.th, m.noteLines(talk.Unwrapped, 8))...)
}

func (m Model) rowsTold() []report.Row {
	if m.err != nil {
		return nil
	}
	return []report.Row{m.leftRow(), m.endsRow(), m.orderRow(), m.costRow()}
}

// things are the entries of the log, the newest first.
func (m Model) things() []talk.Thing {
	all := make([]talk.Thing, m.list.count())
	for i := range all {
		row, _ := m.list.row(i)
		text := m.says(&row)
		if m.odd[row.Entry.ID] {
			text += "; fits no bed"
		}
		all[i] = talk.Thing{
			Name: report.EntryDay(&row, m.o.Zone()) + " " + string(row.Entry.Kind()), Text: strings.TrimSpace(text),
			On: func() screen.Screen {
				m.list = m.list.onto(i)
				return m
			},
		}
	}
	return all
}

// numbers are those with their reasons, and under the name by which the answer tells it
// whatever has none yet, with what it waits for.
func (m Model) numbers() []talk.Number {
	all := talk.Reasons(m.th, m.sys, m.reasons())
	named := func(name string) int {
		return slices.IndexFunc(all, func(n talk.Number) bool { return n.Name == name })
	}
	for _, r := range m.rowsTold() {
		reasoned := map[string]string{"left": "remaining gallons", "cost": "cost so far", "ends": "end of the fill"}[r.Label]
		switch i := named(reasoned); {
		case named(r.Label) >= 0:
		case i >= 0:
			all = append(all, talk.Number{Name: r.Label, Value: r.Value, Lines: all[i].Lines})
		default:
			all = append(all, talk.Number{Name: r.Label, Value: r.Value, Lines: func(width int) []string {
				return cells.Wrap(cells.Safe(r.Label+": "+r.Value+" ("+r.Note+")"), width)
			}})
		}
	}
	return all
}

var _ talk.Speaker = Model{}
