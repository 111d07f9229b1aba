package main

import (
	"crypto/rand"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/fault"
	"washeve/model/store/journal"
	"washeve/ui/report"
)

func volumeText(v quantity.Volume, sys quantity.System) string { return quantity.Show(v, sys) }

// entryJSON is an entry as texts by key.
func entryJSON(row model.Row) map[string]any {
	e := row.Now
	if e.Body == nil {
		e = row.Entry
	}
	out := map[string]any{"kind": string(row.Entry.Kind())}
	for _, f := range e.Fields() {
		if f.Given() {
			out[f.Key] = f.Text()
		}
	}
	out["id"], out["at"] = e.ID, e.At.String()
	if row.Standing != "" {
		out["standing"] = string(row.Standing)
	}
	return out
}

func (p *program) printJSON(v any) error {
	text, err := json.MarshalIndent(v, "", "  ")
	if err != nil {
		return err
	}
	fmt.Fprintf(p.out, "%s\n", text)
	return nil
}

// logStrike takes an entry out of the count, by a later entry that says so.
func (p *program) logStrike() *cobra.Command {
	var note string
	var readings bool
	c := &cobra.Command{
		Use: "strike ID", Short: "Strike an entry: it stays to be seen and no longer counts",
		Args: oneArgument(theEntry),
		RunE: func(_ *cobra.Command, args []string) error {
			log, err := p.readLog()
			if err != nil {
				return err
			}
			struck, err := oneEntry(log, args[0])
			if err != nil {
				return err
			}
			ids := []string{struck.ID}
			if readings {
				ids = append(ids, model.ReadingsOf(log.Rows(), struck.ID)...)
			}
			strikes, err := p.strikesOf(log, ids, note)
			if err != nil {
				return err
			}
			faults, err := p.journal().Append(strikes...)
			p.tell(faults)
			if err != nil {
				return err
			}
			if err := p.wrote(strikes[0]); err != nil {
				return err
			}
			p.tellParts(log, struck, readings)
			return nil
		},
	}
	c.Flags().StringVar(&note, "note", "", "why")
	c.Flags().BoolVar(&readings, "with-readings", false, "of a wash: the readings that were taken in it, too")
	return c
}

// strikesOf are the entries that strike those of some identifiers out.
func (p *program) strikesOf(log model.Log, ids []string, note string) ([]model.Entry, error) {
	strikes := make([]model.Entry, len(ids))
	for i, of := range ids {
		at := log.After(of, model.MomentOf(p.now()))
		id, err := model.NewID(at, rand.Reader)
		if err != nil {
			return nil, err
		}
		strikes[i] = model.Entry{ID: id, At: at, Note: note, Body: &model.Correction{Of: of, Strike: model.Yes}}
	}
	return strikes, nil
}

// tellParts tells what becomes of the parts of a wash that was struck out, and by which
// commands its readings go as well.
func (p *program) tellParts(log model.Log, struck model.Entry, readings bool) {
	rows := log.Rows()
	parts := model.PartsOf(rows, struck.ID)
	words := report.StagesGo(parts) + report.ReadingsStay(parts)
	if readings && parts.Readings > 0 {
		words = report.StagesGo(parts) + ", " + report.ReadingsToo(parts)
	}
	if words == "" || p.json {
		return
	}
	fmt.Fprintf(p.out, "The wash is struck out%s.\n", words)
	if !readings {
		for _, id := range model.ReadingsOf(rows, struck.ID) {
			fmt.Fprintf(p.out, "To strike its reading out as well: washeve log strike %s\n", id)
		}
	}
}

// theEntry is what a command asks for that is about one.
const theEntry = "the entry, by its id or the last letters of it, as washeve log list shows them"

func oneArgument(what string) cobra.PositionalArgs {
	return func(_ *cobra.Command, args []string) error {
		if len(args) != 1 {
			return wrongf("name %s", what)
		}
		return nil
	}
}

func (p *program) logMerge() *cobra.Command {
	return &cobra.Command{
		Use: "merge FILE", Short: "Add what another copy of the log holds and this one lacks",
		Args: oneArgument("the other log.toml"),
		RunE: func(_ *cobra.Command, args []string) error {
			added, faults, err := p.journal().Merge(args[0])
			p.tell(faults)
			return p.added(added, args[0], err)
		},
	}
}

func (p *program) logImport() *cobra.Command {
	return &cobra.Command{
		Use: "import FILE.csv", Short: "Add the rows of a table; a bad row stops it all",
		Args: oneArgument("the table to import"),
		RunE: func(_ *cobra.Command, args []string) error {
			file, err := os.Open(args[0])
			if err != nil {
				return wrong{err}
			}
			defer file.Close()
			added, faults, err := p.journal().Import(file, args[0], p.now().Location())
			p.tell(faults)
			if fault.HasErrors(faults) {
				return wrongf("%s has the faults above; mend these rows, nothing was imported", args[0])
			}
			return p.added(added, args[0], err)
		},
	}
}

func (p *program) added(n int, from string, err error) error {
	if err != nil {
		return err
	}
	if p.json {
		return p.printJSON(map[string]any{"format": 1, "added": n})
	}
	fmt.Fprintf(p.out, "%d entries added from %s.\n", n, from)
	return nil
}

func (p *program) logExport() *cobra.Command {
	var format, file string
	c := &cobra.Command{
		Use: "export", Short: "Write the log as a table", Args: noArguments,
		RunE: func(*cobra.Command, []string) error {
			if format != "csv" {
				return wrongf("the log is exported as csv; there is no format %q", format)
			}
			lib, err := p.load()
			if err != nil {
				return err
			}
			sys, err := p.system(lib.Rig)
			if err != nil {
				return err
			}
			log, err := p.readLog()
			if err != nil {
				return err
			}
			return p.into(file, func(w io.Writer) error { return journal.WriteCSV(w, log, sys) })
		},
	}
	c.Flags().StringVar(&format, "format", "csv", "csv")
	c.Flags().StringVarP(&file, "output", "o", "", "file to write (else the standard output)")
	return c
}

// into writes to a file that is not there yet, or to the standard output.
func (p *program) into(file string, write func(io.Writer) error) error {
	if file == "" {
		return write(p.out)
	}
	f, err := os.OpenFile(file, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
	switch {
	case errors.Is(err, fs.ErrExist):
		return wrongf("%s is there already, and is not written over; name another file, or take that one away", file)
	case err != nil:
		return err
	}
	err = write(f)
	if closing := f.Close(); err == nil {
		err = closing
	}
	return err
}
