package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner/compare"
	"washeve/ui/report"
	"washeve/ui/theme"
)

func (p *program) compareCommand() *cobra.Command {
	var rejected, drip, target string
	c := &cobra.Command{
		Use:   "compare [WASH.toml | TRIP.toml]",
		Short: "Ways of doing the same wash or the same trip, side by side",
		Long: `Set ways of doing the same wash side by side: DI for all or for the last rinse,
other sprayers, new resin, twice the tank, two in series, salt, a partly purified
feed, a longer drip, another target. The best figure of each row is marked.

Of a file that holds a trip (one in a folder trips, or with a [[stop]]), the whole
trip is planned under each way, and others beside: one change of resin, the changes
that are advised, resin that comes along the way. washeve trip --ways is the same
for the trip that comes next.`,
		Args: atMostOne("wash"),
		RunE: func(_ *cobra.Command, args []string) error {
			o, err := compareOptions(rejected, drip, target)
			if err != nil {
				return err
			}
			lib, err := p.load()
			if err != nil {
				return err
			}
			if len(args) == 1 {
				file, err := fileNamed(args[0], lib.keep.Dir(), "washes", store.TripFolder)
				if err != nil {
					return err
				}
				if args = []string{file}; store.HoldsTrip(file) {
					return p.compareTrip(lib, args, o)
				}
			}
			wash, err := p.wash(lib, args)
			if err != nil {
				return err
			}
			return p.printCompare(lib, wash, o)
		},
	}
	c.Flags().StringVar(&rejected, "rejected", "", `ions that a membrane ahead of the bed holds back, such as "95 %"`)
	c.Flags().StringVar(&drip, "drip", "", `the longer drip, such as "3 min"`)
	c.Flags().StringVar(&target, "target", "", `the other target in the film, such as "20 ppm NaCl"`)
	return c
}

// compareOptions reads the flags; each within what the ways make sense for.
func compareOptions(rejected, drip, target string) (o compare.Options, err error) {
	if o.Rejected, err = flagged("--rejected", rejected, "5 %", "99 %", quantity.Parse[quantity.Fraction]); err != nil {
		return o, err
	}
	if o.Drip, err = flagged("--drip", drip, "1 s", "30 min", quantity.Parse[quantity.Duration]); err != nil {
		return o, err
	}
	var w model.Wash
	if target != "" {
		for _, f := range w.Fields() {
			if f.Key == "target" {
				if err := f.Set(target); err != nil {
					return o, wrongf("--target: %w", err)
				}
			}
		}
	}
	o.Target = w.Target
	return o, nil
}

func flagged[Q quantity.Quantity](flag, text, low, high string, parse func(string) (Q, error)) (quantity.Opt[Q], error) {
	if text == "" {
		return quantity.Opt[Q]{}, nil
	}
	q, err := parse(text)
	if err != nil {
		return quantity.Opt[Q]{}, wrongf("%s: %w", flag, err)
	}
	if q < quantity.Must[Q](low) || q > quantity.Must[Q](high) {
		return quantity.Opt[Q]{}, wrongf("%s: %q is outside %s to %s", flag, text, low, high)
	}
	return quantity.Typed(q, text), nil
}

func (p *program) printCompare(lib library, wash model.Wash, o compare.Options) error {
	b, sys, err := p.openBookIn(lib.Rig)
	if err != nil {
		return err
	}
	past := b.past(lib.Rig, lib.Places)
	washes := compare.YearOf(lib.Rig, compare.BedOf(lib.Rig, wash), past, model.MomentOf(p.now()))
	table, err := compare.Compare(compare.Case{Rig: lib.Rig, Places: lib.Places, Wash: wash}, compare.NewOneWash(past, washes), o)
	if err != nil {
		return err
	}
	return p.printTable(lib, table, sys)
}

// compareTrip compares the trip that is named, else the one that comes next.
func (p *program) compareTrip(lib library, args []string, o compare.Options) error {
	t, err := p.trip(lib, args)
	if err != nil {
		return err
	}
	b, sys, err := p.openBookIn(lib.Rig)
	if err != nil {
		return err
	}
	by := compare.NewOneTrip(lib.WashLike, b.past(lib.Rig, lib.Places), p.seenOn(lib, args))
	table, err := compare.Compare(compare.Case{Rig: lib.Rig, Places: lib.Places, Trip: &t}, by, o)
	if err != nil {
		return err
	}
	return p.printTable(lib, table, sys)
}

func (p *program) printTable(lib library, table compare.Table, sys quantity.System) error {
	if p.json {
		return p.printJSON(report.CompareJSON(table))
	}
	if lib.example {
		fmt.Fprintln(p.out, "There is no rig of yours yet: this is the built-in example. `washeve init` writes it out for you to change.")
		fmt.Fprintln(p.out)
	}
	marks := theme.New(theme.Options{Plain: p.plain}).Marks
	fmt.Fprint(p.out, report.Compare(table, sys, p.columns, marks.Best, marks.More))
	return nil
}
