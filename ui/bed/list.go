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
	shown  []int // of rows: all but folded stages, or what was found
	hand   int
	search search
	texts  []string // what is searched, made when first needed

	open   string         // the wash whose stages are listed, by its identifier
	stages map[string]int // how many each wash has
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
	l.rows, l.texts = rows, nil
	if l = l.folded(); l.search.text != "" {
		l = l.found(nil)
	}
	return l.onto(l.hand)
}

// folded lists all but the stages of the washes that are not open.
func (l list) folded() list {
	l.shown, l.stages = model.Folded(l.rows, l.open)
	return l
}

// stagesHere is the wash under the hand, or that of the stage under it, and how many stages it
// has that can be listed apart; none while something is looked for, since it finds them too.
func (l list) stagesHere() (wash string, n int) {
	row, ok := l.here()
	if !ok || l.search.text != "" {
		return "", 0
	}
	wash = row.Entry.ID
	if s, is := row.Now.Body.(*model.StageDone); is {
		wash = s.Wash
	}
	return wash, l.stages[wash]
}

// turned lists the stages of the wash under the hand, or folds them again; the hand is on the
// wash.
func (l list) turned() list {
	wash, _ := l.stagesHere()
	if l.open == wash {
		l.open = ""
	} else {
		l.open = wash
	}
	return l.folded().ontoEntry(wash)
}

func (l list) count() int { return len(l.shown) }

// row is line i of what is shown.
func (l list) row(i int) (model.Row, bool) {
	if i < 0 || i >= l.count() {
		return model.Row{}, false
	}
	return l.rows[l.shown[i]], true
}

func (l list) here() (model.Row, bool) { return l.row(l.hand) }

func (l list) onto(i int) list {
	l.hand = min(max(i, 0), max(l.count()-1, 0))
	return l
}

// ontoEntry puts the hand on an entry. A stage that is folded is listed for it.
func (l list) ontoEntry(id string) list {
	if row, ok := l.rowOf(id); ok && l.search.text == "" {
		if s, is := row.Now.Body.(*model.StageDone); is && l.open != s.Wash {
			l.open = s.Wash
			l = l.folded()
		}
	}
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
		return l.folded().onto(0)
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
	return report.EntrySays(r, m.sys, m.list.namedIn(r)) + report.WithStages(m.list.stages[r.Entry.ID])
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

// namedIn is how an entry names the one that it is about: a reading that it strikes out by
// what it read as well, since a day has several of them.
func (l list) namedIn(r *model.Row) func(id string) string {
	return func(id string) string {
		of, _ := l.rowOf(id)
		sample, reads := of.Entry.Body.(*model.Sample)
		if c, corrects := r.Entry.Body.(*model.Correction); corrects && c.Strike == model.Yes && reads && sample.Reading.Given() {
			return "the reading " + sample.Reading.Or(quantity.Reading{}).String() + " of " + of.Now.At.Date().String()
		}
		return l.named(id)
	}
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
	return report.EntryDay(r, own) + " " + string(r.Entry.Kind()) + " " + report.EntrySays(r, sys, l.namedIn(r))
}
