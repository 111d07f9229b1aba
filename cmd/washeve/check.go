package main

import (
	"encoding/json"
	"fmt"

	"github.com/spf13/cobra"

	"washeve/model/store"
	"washeve/model/store/fault"
)

func (p *program) checkCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "check FILE...",
		Short: "Read files and report every fault, changing nothing",
		Long:  "Read files and report every fault, changing nothing. A key that is mistyped, and so\nnot read, is a fault here: the exit code is 2.",
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) == 0 {
				return wrongf("name the files to check, such as rig.toml")
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			var all []fault.Fault
			for _, path := range args {
				all = append(all, store.Check(path)...)
			}
			if p.json {
				if err := p.faultsJSON(all); err != nil {
					return err
				}
			} else {
				p.tell(all)
			}
			if fault.HasErrors(all) || fault.HasLacks(all) || fault.HasUnread(all) {
				return told{wrongUse}
			}
			if !p.json {
				fmt.Fprintf(p.out, "%s\n", wellWords(len(args), len(all)))
			}
			return nil
		},
	}
}

func wellWords(files, notes int) string {
	what := "1 file reads well"
	if files > 1 {
		what = fmt.Sprintf("%d files read well", files)
	}
	if notes > 0 {
		what += ", but for the notes above"
	}
	return what + "."
}

func (p *program) faultsJSON(faults []fault.Fault) error {
	type row struct {
		File     string `json:"file"`
		Line     int    `json:"line,omitempty"`
		Key      string `json:"key,omitempty"`
		Problem  string `json:"problem"`
		Severity string `json:"severity"`
	}
	rows := make([]row, 0, len(faults))
	for _, f := range faults {
		rows = append(rows, row{f.File, f.Line, f.Key, f.Problem, f.Severity.String()})
	}
	text, err := json.MarshalIndent(struct {
		Format int   `json:"format"`
		Faults []row `json:"faults"`
	}{1, rows}, "", "  ")
	if err != nil {
		return err
	}
	fmt.Fprintf(p.out, "%s\n", text)
	return nil
}
