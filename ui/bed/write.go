package bed

import (
	"fmt"
	"slices"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/keys"
	"washeve/ui/report"
)

// askKind asks what the new entry is about.
func (m Model) askKind() Model {
	var options []form.Option
	notes := map[model.Kind]string{
		model.WashKind: "water, minutes", model.StageKind: "a part of a wash", model.ReadingKind: "tap, softener or bed, any day",
		model.ResinKind: "a change of resin", model.SaltKind: "a softener regenerated", model.CorrectionKind: "puts another entry right",
	}
	for _, k := range model.Kinds() {
		options = append(options, form.Option{Text: string(k), Pick: string(k), Note: notes[k]})
	}
	p := form.Open("A new entry: what about?", options, string(model.ReadingKind))
	m.kinds = &p
	return m
}

func (m Model) picksKind(does keys.Action, msg tea.KeyMsg) Model {
	next, picked, problem := m.kinds.Press(does, msg.String())
	switch m.kinds = next; {
	case problem != "":
		return m.warn(problem)
	case picked != nil:
		return m.state(model.NewBody(model.Kind(picked.Pick)))
	}
	return m
}

// first are the lines of an entry that come first while it is stated; the one that it is
// mostly about is mainly.
func first(kind model.Kind) []string {
	switch kind {
	case model.WashKind:
		return []string{"di", "duration", "at", "softened", "raw", "flow", "place"}
	case model.ReadingKind:
		return []string{"point", "reading", "flushed", "flush_water", "at", "flow", "temperature"}
	case model.ResinKind:
		return []string{"resin", "resin_state", "price", "lot", "at"}
	case model.SaltKind:
		return []string{"salt", "softener", "at"}
	}
	return []string{"at"}
}

// mainly is the line that an entry of a kind is mostly about.
func mainly(kind model.Kind) string {
	switch kind {
	case model.ReadingKind:
		return "reading"
	case model.StageKind:
		return "used"
	}
	return first(kind)[0]
}

// state opens the form of a new entry, filled in with what the next wash says.
func (m Model) state(body model.Body) Model {
	e := model.Entry{At: m.o.Now(), Body: body}
	switch b := body.(type) {
	case *model.WashDone:
		m.presetWash(b)
	case *model.Sample:
		b.Place, b.Bed, b.Pen = m.plan.Place, m.plan.BedName, m.o.Pen()
	case *model.Refill:
		b.Bed, b.Resin, b.Price = m.plan.BedName, m.o.ResinOf(m.plan.BedName), m.o.PriceOf(m.plan.BedName)
	case *model.Regeneration:
		if m.plan.Softener != nil {
			b.Softener = m.plan.Softener.Name
		}
	}
	f := entry.New("A new entry: "+string(body.Kind()), e, m.o.Known(), first(body.Kind())...).Asking(m.slips())
	switch {
	case body.Kind() == model.WashKind:
		f = f.Following(m.besidePlan())
	case body.Kind() == model.ReadingKind && m.err == nil:
		f = f.Following(m.besideSprayer())
	}
	m.form = &f
	return m
}

// correct opens the entry under the hand to be put right, on the line that it is mostly about.
func (m Model) correct() Model {
	row, _ := m.list.here()
	f := entry.New("Put right: "+string(row.Entry.Kind())+" of "+report.EntryDay(&row, m.o.Zone()), row.Now, m.o.Known(), first(row.Entry.Kind())...).Asking(m.slips()).At(mainly(row.Entry.Kind()))
	f.Of = row.Entry.ID
	m.form = &f
	return m
}

// slips says what is odd about an entry by the plan as it stands; nil where there is none.
func (m Model) slips() func(model.Body) string {
	if m.err != nil {
		return nil
	}
	m.o.Units = m.sys
	return m.o.Slips(&m.plan)
}

// writeForm writes what the form states: a new entry, or a correction.
func (m Model) writeForm() Model {
	f := *m.form
	e := f.Entry()
	if f.Of == "" {
		return m.write("Written.", e)
	}
	row, ok := m.rowOf(f.Of)
	if !ok {
		return m.warn("The entry is not in the log any more.")
	}
	c := correctionOf(row.Now, e)
	if len(c.Changes)+len(c.Clear) == 0 && !c.At.Given() {
		m.form = nil
		return m.say("Nothing was changed.")
	}
	c.Of = f.Of
	return m.write("Put right; both can be seen.", m.later(f.Of, c))
}

// later is a correction at a moment past all that it is about.
func (m Model) later(of string, c *model.Correction) model.Entry {
	return model.Entry{At: m.o.Logger.Log().After(of, m.o.Now()), Body: c}
}

func (m Model) rowOf(id string) (model.Row, bool) { return m.list.rowOf(id) }

// correctionOf is what turns one entry into another.
func correctionOf(was, now model.Entry) *model.Correction {
	c := &model.Correction{}
	after := now.Body.Fields()
	for i, f := range was.Body.Fields() {
		switch text := after[i].Text(); {
		case after[i].Exact() == f.Exact():
		case text == "":
			c.Clear = append(c.Clear, f.Key)
		default:
			c.Changes = append(c.Changes, model.Change{Key: f.Key, Text: text})
		}
	}
	if now.At != was.At {
		c.At = now.At
	}
	return c
}

// use lets a first cup count.
func (m Model) use() Model {
	row, _ := m.list.here()
	c := &model.Correction{Of: row.Entry.ID, Changes: []model.Change{{Key: "use_anyway", Text: string(model.Yes)}}}
	return m.write("Used anyway, because you say so.", m.later(row.Entry.ID, c))
}

// undo asks, and then strikes out what was written last in this run of the program, on
// whatever screen. What is struck out already is passed over.
func (m Model) undo() Model {
	for ; m.o.Deeds.Count() > 0; m.o.Deeds.Drop(1) {
		if rows := m.counting(m.o.Deeds.Last()); len(rows) > 0 {
			what := deedWords(rows, m.o.Zone())
			m.ask = &form.Question[Model]{
				Text: "Strike out " + what + ", written last? " + m.th.YesOrNo(),
				Yes:  func(m Model) Model { return m.takeBack(what, rows) },
			}
			return m
		}
	}
	return m.warn("All that was written since the program began is struck out.")
}

// counting are the entries of a deed that count, the last first.
func (m Model) counting(ids []string) []model.Row {
	var rows []model.Row
	for _, id := range slices.Backward(ids) {
		if row, ok := m.rowOf(id); ok && row.Standing != model.Struck {
			rows = append(rows, row)
		}
	}
	return rows
}

// deedWords name a deed by its first entry.
func deedWords(rows []model.Row, zone *time.Location) string {
	first := rows[len(rows)-1]
	what := report.EntryName(&first, zone)
	if len(rows) > 1 {
		what += fmt.Sprintf(" and %d more", len(rows)-1)
	}
	return what
}

func (m Model) takeBack(what string, rows []model.Row) Model {
	entries := make([]model.Entry, len(rows))
	for i, row := range rows {
		entries[i] = m.later(row.Entry.ID, &model.Correction{Of: row.Entry.ID, Strike: model.Yes})
	}
	before := m.o.Deeds.Count()
	m = m.write("Undone: "+what+" is struck out.", entries...)
	if m.o.Deeds.Count() > before {
		m.o.Deeds.Drop(2) // the striking is no deed of its own
	}
	return m
}
