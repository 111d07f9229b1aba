package bed

import (
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/report"
)

// list is the log, the newest first, with the hand on one entry.
type list struct {
	rows   []model.Row
	shown  []int // of rows, where something is looked for; nil for all
	hand   int
	search search
	texts  []string // what is searched, made when first needed
}

type search struct {
	typing bool
	text   string
}

// of is the list of a log, looking for what was looked for before.
func (l list) of(log model.Log) list {
	rows := log.Rows()
	for i, j := 0, len(rows)-1; i < j; i, j = i+1, j-1 {
		rows[i], rows[j] = rows[j], rows[i]
	}
	l.rows, l.texts, l.shown = rows, nil, nil
	if l.search.text != "" {
		l = l.found(nil)
	}
	return l.onto(l.hand)
}

func (l list) count() int {
	if l.search.text == "" {
		return len(l.rows)
	}
	return len(l.shown)
}

// row is line i of what is shown.
func (l list) row(i int) (model.Row, bool) {
	switch {
	case i < 0 || i >= l.count():
		return model.Row{}, false
	case l.search.text == "":
		return l.rows[i], true
	}
	return l.rows[l.shown[i]], true
}

func (l list) here() (model.Row, bool) { return l.row(l.hand) }

func (l list) onto(i int) list {
	l.hand = min(max(i, 0), max(l.count()-1, 0))
	return l
}

// ontoEntry puts the hand on an entry, where it is shown.
func (l list) ontoEntry(id string) list {
	for i := range l.count() {
		if row, _ := l.row(i); row.Entry.ID == id {
			return l.onto(i)
		}
	}
	return l
}

// look changes what is looked for. More letters only narrow what is found.
func (l list) look(text string) list {
	narrower := l.search.text != "" && strings.HasPrefix(text, l.search.text)
	among := l.shown
	l.search.text = text
	if text == "" {
		l.shown = nil
		return l.onto(0)
	}
	if !narrower {
		among = nil
	}
	return l.found(among).onto(0)
}

// found keeps the rows that hold the words; among nil looks through all.
func (l list) found(among []int) list {
	if l.texts == nil {
		l.texts = make([]string, len(l.rows))
		for i := range l.rows {
			l.texts[i] = strings.ToLower(l.textOf(&l.rows[i], quantity.US))
		}
	}
	wanted := strings.ToLower(l.search.text)
	found := []int{}
	if among == nil {
		for i, text := range l.texts {
			if strings.Contains(text, wanted) {
				found = append(found, i)
			}
		}
	}
	for _, i := range among {
		if strings.Contains(l.texts[i], wanted) {
			found = append(found, i)
		}
	}
	l.shown = found
	return l
}

// says is what an entry says; of one that corrects another or strikes it out, which one that is.
func (m Model) says(r *model.Row) string {
	return report.EntrySays(r, m.sys, m.list.named)
}

// named names an entry by its kind and its day, as the list shows it; one that is not there by
// its identifier alone.
func (l list) named(id string) string {
	row, ok := l.rowOf(id)
	if !ok {
		return id
	}
	return "the " + string(row.Entry.Kind()) + " of " + row.Now.At.Date().String()
}

// rowOf is the entry of an identifier.
func (l list) rowOf(id string) (model.Row, bool) {
	for i := range l.rows {
		if l.rows[i].Entry.ID == id && l.rows[i].Standing != model.Doubled {
			return l.rows[i], true
		}
	}
	return model.Row{}, false
}

// textOf is an entry in one line: its day, its kind, what it says.
func (l list) textOf(r *model.Row, sys quantity.System) string {
	own := r.Now.At.Time().Location()
	return report.EntryDay(r, own) + " " + string(r.Entry.Kind()) + " " + report.EntrySays(r, sys, l.named)
}
