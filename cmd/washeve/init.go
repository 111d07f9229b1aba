package main

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"washeve/model/store"
)

func (p *program) initCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "init",
		Short: "Write a commented rig, places, wash and trip to start from",
		Args:  noArguments,
		RunE: func(*cobra.Command, []string) error {
			written, err := store.WriteExampleOn(store.Locate(p.dir, p.env("WASHEVE_DIR")), p.today())
			for _, path := range written {
				fmt.Fprintf(p.out, "wrote %s\n", path)
			}
			if own := new(store.OwnFileError); errors.As(err, &own) {
				fmt.Fprintf(p.out, "Nothing written: %s is there already, and the example's wash and trip would not go with it.\n", own.File)
				return nil
			}
			if err != nil {
				return err
			}
			if len(written) == 0 {
				fmt.Fprintln(p.out, "Nothing written: the files are there already.")
			} else if was, is := store.ExampleOn(p.today()); is != was {
				fmt.Fprintf(p.out, "Its days are the coming ones: the wash is on %s. Its weather is made up, so state yours.\n", is)
			}
			return nil
		},
	}
}
