package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/store"
	"washeve/planner"
	"washeve/planner/packing"
	"washeve/ui/sheet"
)

// sheetFlags are what sheet is asked for.
type sheetFlags struct {
	format string
	file   string
	force  bool
}

func (p *program) sheetCommand() *cobra.Command {
	var f sheetFlags
	c := &cobra.Command{
		Use:   "sheet [WASH.toml]",
		Short: "Write the run sheet to carry through the wash",
		Long: `Write the run sheet of a wash: what to do and pack tonight, the order of the day,
each step with its valves, the flush and the reading, the cap by a jug. The wash
is the file named, else the next in the data folder from today on or the one
changed last, else the usual stages.

  text      one page of 66 lines by 80, ready for a printer; --plain is ASCII
  markdown  the same, whole, with boxes and tables
  html      one file for a phone or a printer: no script needed, nothing fetched

A file that is there already is replaced only where it is a sheet just as washeve
wrote it. One that holds anything else, your own notes in a sheet among it, is
left alone unless --force is given.`,
		Example: `  washeve sheet | lp
  washeve sheet -o saturday.html`,
		Args: atMostOne("wash"),
		RunE: func(_ *cobra.Command, args []string) error { return p.sheet(args, f) },
	}
	c.Flags().StringVar(&f.format, "format", "", "text, markdown or html (else by the file's ending, else text)")
	c.Flags().StringVarP(&f.file, "output", "o", "", "file to write (else the standard output)")
	c.Flags().BoolVar(&f.force, "force", false, "replace the file, whatever it holds")
	return c
}

func (p *program) sheet(args []string, f sheetFlags) error {
	format, err := f.formatOf()
	if err != nil {
		return err
	}
	lib, wash, err := p.loadWash(args)
	if err != nil {
		return err
	}
	sys, err := p.system(lib.Rig)
	if err != nil {
		return err
	}
	plan, err := p.makePlan(lib, wash)
	if err != nil {
		return err
	}
	in := sheet.Input{
		Plan: plan, Packing: packing.List(lib.Rig, lib.Places, wash, plan), Units: sys, Example: lib.example,
	}
	if i := model.Find(lib.Rig.Names("vehicle"), plan.Vehicle); i >= 0 {
		in.Vehicle = lib.Rig.Vehicles[i]
	}
	return p.handOut(p.writeSheet(sheet.Make(in), format), plan, format, f)
}

// formatOf is the format asked for, else that of the file's ending.
func (f sheetFlags) formatOf() (string, error) {
	format := strings.ToLower(f.format)
	if format == "" {
		switch strings.ToLower(filepath.Ext(f.file)) {
		case ".html", ".htm":
			return "html", nil
		case ".md", ".markdown":
			return "markdown", nil
		}
		return "text", nil
	}
	switch format {
	case "text", "markdown", "html":
		return format, nil
	}
	return "", wrongf("a sheet is text, markdown or html; there is no format %q", f.format)
}

func (p *program) writeSheet(s sheet.Sheet, format string) string {
	switch format {
	case "html":
		return sheet.HTML(s)
	case "markdown":
		return sheet.Markdown(s)
	}
	return sheet.Text(s, p.plain)
}

// handOut gives the sheet to the file or the standard output.
func (p *program) handOut(text string, plan planner.Plan, format string, f sheetFlags) error {
	if f.file != "" {
		if err := mayReplace(f.file, f.force); err != nil {
			return err
		}
		if err := store.WriteOutside(f.file, []byte(text)); err != nil {
			return err
		}
	}
	switch {
	case p.json:
		return p.printJSON(sheetJSON{Format: 1, Wash: plan.Wash, Verdict: plan.Verdict, Kind: format, File: f.file, Sheet: text})
	case f.file != "":
		fmt.Fprintf(p.out, "wrote %s\n", f.file)
	default:
		fmt.Fprint(p.out, text)
	}
	return nil
}

type sheetJSON struct {
	Format  int             `json:"format"`
	Wash    string          `json:"wash"`
	Verdict planner.Verdict `json:"verdict"`
	Kind    string          `json:"kind"` // text, markdown or html
	File    string          `json:"file,omitempty"`
	Sheet   string          `json:"sheet"`
}

// mayReplace tells whether a file may be written: it is not there, or it is a
// sheet that nobody has touched.
func mayReplace(path string, force bool) error {
	info, err := os.Stat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist), err == nil && force && info.Mode().IsRegular():
		return nil
	case err != nil:
		return err
	case !info.Mode().IsRegular():
		return fmt.Errorf("%s is no ordinary file; name another", path)
	}
	const largest = 4 << 20
	if info.Size() <= largest {
		data, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		if sheet.Sealed(data) {
			return nil
		}
	}
	return fmt.Errorf("%s is there and is no sheet as washeve wrote it, so it was left alone; name another file, or replace it with --force", path)
}
