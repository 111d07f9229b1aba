package main

import (
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/cells"
	"washeve/ui/report"
)

// logList prints the entries, the oldest first, struck and corrected ones marked.
func (p *program) logList() *cobra.Command {
	var kind string
	var last int
	c := &cobra.Command{
		Use: "list", Short: "List the entries of the log", Args: noArguments,
		Long: "List the entries of the log: the day and the hour as its own clock had them, with the zone where it was not yours, the kind, the last letters of its id (log strike and log correct take them), and what it says. " +
			"The stages of a wash are told in its line, and listed with --kind stage. With --json every entry is listed with all that it states.",
		RunE: func(*cobra.Command, []string) error {
			log, err := p.readLog()
			if err != nil {
				return err
			}
			rows := log.Rows()
			if p.json {
				return p.listJSON(latest(ofKind(rows, kind), last))
			}
			l := listing{tail: log.Tail(), all: rows, sys: p.listSystem(), reader: p.now().Location()}
			if kind == "" {
				rows, l.parts = folded(rows)
			}
			p.listRows(latest(ofKind(rows, kind), last), l)
			return nil
		},
	}
	c.Flags().StringVar(&kind, "kind", "", "only one kind: wash, stage, reading, resin, salt or correction")
	c.Flags().IntVar(&last, "last", 0, "only the last so many")
	return c
}

// ofKind are the rows of a kind; of every kind where none is named.
func ofKind(rows []model.Row, kind string) []model.Row {
	var of []model.Row
	for _, row := range rows {
		if kind == "" || string(row.Entry.Kind()) == kind {
			of = append(of, row)
		}
	}
	return of
}

// latest are the last n rows; all where n is 0.
func latest(rows []model.Row, n int) []model.Row {
	if n > 0 && len(rows) > n {
		return rows[len(rows)-n:]
	}
	return rows
}

// folded leaves out the stages of the washes that are listed, and counts them.
func folded(rows []model.Row) (kept []model.Row, parts map[string]int) {
	places, parts := model.Folded(rows, "")
	for _, i := range places {
		kept = append(kept, rows[i])
	}
	return kept, parts
}

func (p *program) listJSON(rows []model.Row) error {
	all := make([]map[string]any, len(rows))
	for i, row := range rows {
		all[i] = entryJSON(row)
	}
	return p.printJSON(map[string]any{"format": 1, "entries": all})
}

// listing is what a list of entries is written by.
type listing struct {
	tail   int            // last letters of an identifier that are told
	all    []model.Row    // also those that are not listed
	parts  map[string]int // stages of the washes, by identifier
	sys    quantity.System
	reader *time.Location
}

func (p *program) listRows(rows []model.Row, l listing) {
	if len(rows) == 0 {
		fmt.Fprintln(p.out, "The log holds no such entry yet.")
	}
	days, widest := make([]string, len(rows)), 0
	for i := range rows {
		days[i] = report.EntryDay(&rows[i], l.reader)
		widest = max(widest, cells.Width(days[i]))
	}
	for i := range rows {
		fmt.Fprintln(p.out, cells.Fit(days[i], widest)+"  "+l.line(&rows[i]))
	}
}

// listSystem is the units of a list. It is shown though the rig cannot be read: the log
// stands without it.
func (p *program) listSystem() quantity.System {
	lib, err := p.load()
	if err != nil {
		lib = library{}
	}
	sys, err := p.system(lib.Rig)
	if err != nil {
		return quantity.US
	}
	return sys
}

// line is one entry on one line behind its day, with the last letters of its identifier.
func (l listing) line(row *model.Row) string {
	says := report.EntrySays(row, l.sys, l.named) + report.WithStages(l.parts[row.Entry.ID])
	line := fmt.Sprintf("%s  %s  %s", cells.Fit(string(row.Entry.Kind()), len(model.CorrectionKind)), cells.Fit(l.short(row.Entry.ID), l.tail), cells.Safe(says))
	return strings.TrimRight(line, " ")
}

// named is an entry that another is about, with the letters by which the list shows it.
func (l listing) named(id string) string {
	for i := range l.all {
		if l.all[i].Entry.ID == id {
			return report.EntryName(&l.all[i], l.reader) + " (" + l.short(id) + ")"
		}
	}
	return l.short(id)
}

// short are the last letters of an identifier, as the list shows them.
func (l listing) short(id string) string { return id[max(len(id)-l.tail, 0):] }

// oneEntry finds an entry by its identifier, or by the last letters of it.
func oneEntry(log model.Log, id string) (model.Entry, error) {
	ending := log.Ending(id)
	switch e, known := log.Find(id); {
	case known:
		return e, nil
	case len(ending) == 1:
		return ending[0], nil
	case len(ending) > 1:
		return model.Entry{}, wrongf("%d entries have an id that ends in %q; name more of its letters, see washeve log list", len(ending), id)
	}
	return model.Entry{}, wrongf("no entry has the id %q; see washeve log list", id)
}
