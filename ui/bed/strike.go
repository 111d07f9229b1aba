package bed

import (
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
		return m.write("Struck out"+goes+stays+"; "+m.th.Key("x", "strike")+" again lets it count.", m.later(row.Entry.ID, &model.Correction{Of: row.Entry.ID, Strike: model.Yes}))
	}}
	return m
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
	return m.write("It counts again.", entries...)
}
