package bed

import (
	"strings"

	"washeve/model"
	"washeve/ui/form"
	"washeve/ui/report"
)

// strike asks, and then strikes the entry under the hand out, or lets it count
// again.
func (m Model) strike() Model {
	row, _ := m.list.here()
	what := report.EntryName(&row, m.o.Zone())
	switch {
	case row.Standing == model.Struck && row.With != "":
		return m.warn("It is struck out with its wash, " + m.list.named(row.With) + ", and counts again with it.")
	case row.Standing == model.Struck:
		m.ask = &form.Question[Model]{Text: "Let " + what + " count again? " + m.th.YesOrNo(), Yes: func(m Model) Model { return m.restore(row) }}
		return m
	}
	parts := model.PartsOf(m.list.rows, row.Entry.ID)
	goes, stays := report.StagesGo(parts), report.ReadingsStay(parts)
	m.ask = &form.Question[Model]{Text: "Strike out " + what + goes + "? It stays to be seen" + stays + ". " + m.th.YesOrNo(), Yes: func(m Model) Model {
		return m.write("Struck out"+goes+stays+"; "+m.th.Key("x", "strike")+" again lets it count.", m.strikes(row.Entry.ID))
	}}
	if too := report.ReadingsToo(parts); too != "" {
		m.ask.Text = "Strike out " + what + goes + "? It stays to be seen. " + m.th.Key("y", "yes") + ": " + strings.TrimPrefix(stays, "; ") + ", " + m.th.Key("a", "all") + ": " + too + ", or " + m.th.Key("n", "no")
		m.ask.Of, m.ask.All = too, func(m Model) Model { return m.strikeAll(row.Entry.ID, "Struck out"+goes+", "+too+".") }
	}
	return m
}

// strikes is what strikes an entry out.
func (m Model) strikes(id string) model.Entry {
	return m.later(id, &model.Correction{Of: id, Strike: model.Yes})
}

// strikeAll strikes a wash out with the readings that were taken in it, as one deed.
func (m Model) strikeAll(wash, words string) Model {
	all := []model.Entry{m.strikes(wash)}
	for _, id := range model.ReadingsOf(m.list.rows, wash) {
		all = append(all, m.strikes(id))
	}
	return m.write(words, all...)
}

// restore strikes out what strikes an entry.
func (m Model) restore(row model.Row) Model {
	var entries []model.Entry
	for _, by := range row.By {
		r, ok := m.rowOf(by)
		c, corrects := r.Entry.Body.(*model.Correction)
		if ok && corrects && c.Strike == model.Yes && r.Standing == model.Counts {
			entries = append(entries, m.later(by, &model.Correction{Of: by, Strike: model.Yes}))
		}
	}
	if len(entries) == 0 {
		return m.warn("What strikes it out is not in this log.")
	}
	m = m.write("It counts again.", entries...)
	if again, _ := m.rowOf(row.Entry.ID); again.Standing == model.Struck && again.With != "" {
		return m.say("It is not struck out by itself any more, and counts again with " + m.list.named(again.With) + ".")
	}
	return m
}
