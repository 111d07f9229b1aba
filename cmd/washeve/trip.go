package main

import (
	"fmt"
	"path"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/store"
	"washeve/model/store/fault"
	"washeve/planner/compare"
	"washeve/planner/trip"
	"washeve/ui/report"
)

func (p *program) tripCommand() *cobra.Command {
	var ways bool
	c := &cobra.Command{
		Use:   "trip [TRIP.toml]",
		Short: "Print a trip wash by wash: does the resin last, when to change it, when to order",
		Long: `Print a trip wash by wash: the chance that each ends on spec, where to change the
resin, what to carry, the day to order by; and of several washes on one fill,
whether it does them all and in which order. Of the file named, else of the trip
that comes next. With --ways, the same trip under several ways side by side, as
washeve compare TRIP.toml does.`,
		Args: atMostOne("trip"),
		RunE: func(_ *cobra.Command, args []string) error {
			lib, err := p.load()
			if err != nil {
				return err
			}
			if ways {
				return p.compareTrip(lib, args, compare.Options{})
			}
			t, err := p.trip(lib, args)
			if err != nil {
				return err
			}
			return p.printTrip(lib, t, p.seenOn(lib, args))
		},
	}
	c.Flags().BoolVar(&ways, "ways", false, "the trip under several ways, side by side")
	return c
}

// trip is the one named on the command line, else the next: the first that is not
// over yet, else the last of all.
func (p *program) trip(lib library, args []string) (model.Trip, error) {
	if len(args) == 1 {
		file, err := fileNamed(args[0], lib.keep.Dir(), store.TripFolder)
		if err != nil {
			return model.Trip{}, err
		}
		t, faults := store.ReadTrip(file, lib.Library)
		p.tell(faults)
		if fault.HasErrors(faults) {
			return t, wrongf("%s has the faults above; mend these lines, nothing was changed", args[0])
		}
		return t, nil
	}
	next := lib.NextTrip(p.today())
	if next < 0 {
		return model.Trip{}, wrongf("there is no trip yet: write one in the folder trips of %s (washeve init writes an example), or start one with T in the planner", lib.keep.Dir())
	}
	for _, f := range lib.tripLacks {
		if path.Base(f.File) == lib.Trips[next].File {
			p.tell([]fault.Fault{f})
		}
	}
	return lib.Trips[next].Trip, nil
}

func (p *program) today() model.Date { return model.MomentOf(p.now()).Date() }

// seenOn is the day on which a trip is looked at; not known for that of the built-in
// example, whose days are invented and say the same on any day.
func (p *program) seenOn(lib library, named []string) model.Date {
	if lib.example && len(named) == 0 {
		return model.Date{}
	}
	return p.today()
}

func (p *program) printTrip(lib library, t model.Trip, today model.Date) error {
	b, sys, err := p.openBookIn(lib.Rig)
	if err != nil {
		return err
	}
	plan, err := trip.Make(trip.Input{
		Rig: lib.Rig, Places: lib.Places, Trip: t, Like: lib.WashLike, Past: b.past(lib.Rig, lib.Places), Today: today,
		Coming: lib.Planned(), Ordered: true,
	})
	if err != nil {
		return err
	}
	if p.json {
		text, err := report.TripJSON(plan)
		if err != nil {
			return err
		}
		fmt.Fprintf(p.out, "%s", text)
		return nil
	}
	if lib.example {
		fmt.Fprint(p.out, "There is no rig of yours yet: this is the built-in example. `washeve init` writes it out for you to change.\n\n")
	}
	fmt.Fprint(p.out, report.TripText(plan, sys, p.plain, p.columns))
	return nil
}
