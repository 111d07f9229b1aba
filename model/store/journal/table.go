package journal

import (
	"bufio"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/fault"
)

// WriteCSV writes a log as a table for a spreadsheet: every entry as it was
// written, corrections too, in the columns of a system of units.
func WriteCSV(w io.Writer, log model.Log, sys quantity.System) error {
	columns := columnsOf(sys)
	names := make([]string, len(columns))
	for i, c := range columns {
		names[i] = c.name
	}
	table := csv.NewWriter(w)
	if err := table.Write(names); err != nil {
		return err
	}
	for i := range log {
		if err := table.Write(rowOf(&log[i], columns)); err != nil {
			return err
		}
	}
	table.Flush()
	return table.Error()
}

func rowOf(e *model.Entry, columns []column) []string {
	texts := map[string]string{kindKey: string(e.Kind())}
	for _, f := range e.Fields() {
		texts[f.Key] = f.Text()
	}
	cells := make([]string, len(columns))
	for i, c := range columns {
		cells[i] = c.cell(texts[c.key])
	}
	return cells
}

// table is a log read from such a table, or from one that a person made.
type table struct {
	faults
	zone    *time.Location
	columns []column // by place; without a key where it is not read
	reader  *model.EntryReader
	alike   map[string]int
	entries []model.Entry
	rows    []int // of the entries
}

// readTable reads a table of any of the columns, in any order. A moment without its
// offset from UTC is taken in zone. Rows without an identifier get one that follows
// from what they say. A fault's Line is the row, the names of the columns being row 1.
func readTable(r io.Reader, name string, zone *time.Location) table {
	t := table{faults: faults{file: name}, zone: zone, reader: model.NewEntryReader(), alike: map[string]int{}}
	t.read(r)
	return t
}

func (t *table) read(r io.Reader) {
	buffered := bufio.NewReader(r)
	rows := csv.NewReader(buffered)
	rows.Comma, rows.FieldsPerRecord, rows.ReuseRecord = separator(buffered), -1, true
	for row := 1; ; row++ {
		cells, err := rows.Read()
		switch {
		case errors.Is(err, io.EOF):
			if row == 1 {
				t.add(fault.Error, 1, "", "the table is empty; the first row must name the columns")
			}
			return
		case err != nil:
			t.broken(row, err)
			return
		case row == 1:
			if !t.head(cells) {
				return
			}
		case slices.ContainsFunc(cells, func(c string) bool { return strings.TrimSpace(c) != "" }):
			t.row(row, cells)
		}
	}
}

func (t *table) broken(row int, err error) {
	var at *csv.ParseError
	if errors.As(err, &at) {
		t.add(fault.Error, row, "", fmt.Sprintf("cannot be read: %v, at letter %d; a cell with quotes or commas in it stands in quotes, and a quote in it is written twice", at.Err, at.Column))
		return
	}
	t.add(fault.Error, row, "", "cannot be read: "+err.Error())
}

// separator skips a byte order mark, and looks at the names of the columns for
// what is between them.
func separator(r *bufio.Reader) rune {
	if mark, _ := r.Peek(len(byteOrderMark)); string(mark) == byteOrderMark {
		_, _ = r.Discard(len(byteOrderMark))
	}
	start, _ := r.Peek(r.Size())
	names, _, _ := strings.Cut(string(start), "\n")
	for _, mark := range ",;\t" {
		if strings.ContainsRune(names, mark) {
			return mark
		}
	}
	return ','
}

// head reads the names of the columns, and tells whether to go on.
func (t *table) head(names []string) bool {
	const most = 500
	if len(names) > most {
		t.add(fault.Error, 1, "", fmt.Sprintf("has %d columns; is this the right file?", len(names)))
		return false
	}
	known := readable()
	t.columns = make([]column, len(names))
	seen := map[string]string{}
	for i, name := range names {
		name = strings.ToLower(strings.TrimSpace(name))
		at := slices.IndexFunc(known, func(c column) bool { return c.name == name })
		if at < 0 {
			t.unknown(name, known)
			continue
		}
		t.columns[i] = known[at]
		if other, twice := seen[known[at].key]; twice {
			t.add(fault.Error, 1, name, "states the same as the column "+other+"; keep one")
		}
		seen[known[at].key] = name
	}
	for _, needed := range []string{kindKey, "at"} {
		if seen[needed] == "" {
			t.add(fault.Error, 1, needed, "is missing; every row needs it")
		}
	}
	return !fault.HasErrors(t.all)
}

func (t *table) unknown(name string, known []column) {
	names := make([]string, len(known))
	for i, c := range known {
		names[i] = c.name
	}
	if hint := meant(name, names); hint != "" {
		t.add(fault.Error, 1, name, "is no column of the log"+hint)
	} else if name != "" {
		t.add(fault.Notice, 1, name, "is no column of the log, and is left out")
	}
}
