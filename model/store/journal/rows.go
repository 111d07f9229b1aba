package journal

import (
	"errors"
	"fmt"
	"io"
	"strings"
	"time"

	"washeve/model"
	"washeve/model/store/fault"
)

// row reads one row into an entry.
func (t *table) row(row int, cells []string) {
	before := len(t.all)
	kind := ""
	for i, c := range t.columns {
		if c.key == kindKey && i < len(cells) {
			kind = strings.ToLower(c.text(cells[i]))
		}
	}
	if err := t.reader.Start(kind); err != nil {
		t.add(fault.Error, row, kindKey, err.Error())
		return
	}
	for i, cell := range cells {
		if i >= len(t.columns) {
			if strings.TrimSpace(cell) != "" {
				t.add(fault.Error, row, "", fmt.Sprintf("%q stands beyond the last column that has a name", cell))
			}
		} else if c := t.columns[i]; c.key != "" && c.key != kindKey {
			t.cell(row, kind, c, cell)
		}
	}
	t.finish(row, before)
}

func (t *table) cell(row int, kind string, c column, cell string) {
	text := c.text(cell)
	if text == "" {
		return
	}
	if c.key == "at" || c.key == "new_at" {
		moment, err := model.ParseMoment(text, t.zone)
		if err != nil {
			t.add(fault.Error, row, c.name, err.Error())
			return
		}
		text = moment.String()
	}
	err := t.reader.Set(c.key, text)
	switch {
	case errors.Is(err, model.ErrUnknownKey):
		t.add(fault.Error, row, c.name, fmt.Sprintf("%q stands in a row of the kind %s, which has no %s; leave the cell empty", cell, kind, c.key))
	case err != nil:
		t.add(fault.Error, row, c.name, err.Error())
	}
}

// finish takes the entry of a row, if nothing was told since before.
func (t *table) finish(row, before int) {
	if len(t.all) > before {
		return
	}
	for _, p := range t.reader.Faults() {
		if p.Key != idKey {
			t.add(fault.Error, row, p.Key, p.Problem)
		}
	}
	e := t.reader.Entry()
	if e.ID == "" {
		content := e.Content()
		e.ID = model.ContentID(e, t.alike[content])
		t.alike[content]++
	}
	t.entries = append(t.entries, e)
	t.rows = append(t.rows, row)
}

// Import adds the entries of a table that the log does not hold, all of them or,
// where any row is faulty, none. A row whose identifier the log holds with
// another content is told and left out: an entry is corrected by a correction.
func (j *Journal) Import(r io.Reader, name string, zone *time.Location) (added int, told []fault.Fault, err error) {
	t := readTable(r, name, zone)
	if fault.HasErrors(t.all) {
		return 0, t.all, fmt.Errorf("%s: nothing was imported, since it has faults; put them right and import it again", name)
	}
	more, err := j.add(func() ([]string, error) {
		fresh := t.lackingIn(scanFile(j.path).found)
		added = len(fresh)
		return encodeAll(fresh)
	})
	if err != nil {
		added = 0
	}
	return added, append(t.all, more...), err
}

// lackingIn gives the entries whose identifiers are not in a log.
func (t *table) lackingIn(log []model.Entry) []model.Entry {
	known := make(map[string]string, len(log)+len(t.entries))
	for i := range log {
		known[log[i].ID] = log[i].Content()
	}
	var fresh []model.Entry
	for i, e := range t.entries {
		content, there := known[e.ID]
		switch {
		case !there:
			known[e.ID] = e.Content()
			fresh = append(fresh, e)
		case content != e.Content():
			t.add(fault.Notice, t.rows[i], idKey, fmt.Sprintf("the log holds %s already, and it says something else there; the log stands, and a correction is the way to change it", e.ID))
		}
	}
	return fresh
}
