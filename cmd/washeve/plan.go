package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/store"
	"washeve/model/store/fault"
	"washeve/planner"
	"washeve/planner/trip"
	"washeve/ui/report"
)

func (p *program) planCommand() *cobra.Command {
	var strict bool
	c := &cobra.Command{
		Use:   "plan [WASH.toml]",
		Short: "Print the plan of a wash",
		Long: `Print the plan of a wash: of the file named, else of the next wash in the data
folder from today on, else of the one changed last, else of the usual stages with
the first vehicle, bed and place. Where other washes wait for the same bed, a
warning says whether one fill does them all, and in which order.`,
		Args: atMostOne("wash"),
		RunE: func(_ *cobra.Command, args []string) error {
			lib, wash, err := p.loadWash(args)
			if err != nil {
				return err
			}
			return p.print(lib, wash, strict)
		},
	}
	c.Flags().BoolVar(&strict, "strict", false, "exit with 3 when the bed will not last; where it is only tight, with 0")
	return c
}

// atMostOne takes one file of a noun, or none.
func atMostOne(noun string) cobra.PositionalArgs {
	return func(_ *cobra.Command, args []string) error {
		if len(args) > 1 {
			return wrongf("one %s at a time: %d files were named", noun, len(args))
		}
		return nil
	}
}

// loadWash reads the data folder, and the wash named on the command line, else the
// one to go on with.
func (p *program) loadWash(args []string) (library, model.Wash, error) {
	lib, err := p.load()
	if err != nil {
		return lib, model.Wash{}, err
	}
	wash, err := p.wash(lib, args)
	return lib, wash, err
}

// wash is the one named on the command line, else the one to go on with.
func (p *program) wash(lib library, args []string) (model.Wash, error) {
	if len(args) == 0 {
		if len(lib.Washes) == 0 {
			return model.Wash{}, nil
		}
		return lib.Washes[0].Wash, nil
	}
	path, err := fileNamed(args[0], lib.keep.Dir(), "washes")
	if err != nil {
		return model.Wash{}, err
	}
	wash, faults := store.ReadWash(path, lib.Library)
	p.tell(faults)
	if fault.HasErrors(faults) {
		return wash, wrongf("%s has the faults above; mend these lines, nothing was changed", args[0])
	}
	return wash, nil
}

// makePlan plans a wash with what the log teaches.
func (p *program) makePlan(lib library, wash model.Wash) (planner.Plan, error) {
	return p.planWithout("", lib, wash)
}

// shortenedPlan is a plan that also says whether its wash is done, which other washes the bed is to give water to
// by then, and what to do where it is short.
func (p *program) shortenedPlan(lib library, wash model.Wash) (planner.Plan, error) {
	b, err := p.openBook()
	if err != nil {
		return planner.Plan{}, err
	}
	b.example = lib.example
	plan, err := b.plan(lib.Rig, lib.Places, wash)
	if err == nil {
		today := model.MomentOf(p.now()).Date()
		past := b.past(lib.Rig, lib.Places)
		warnOfOneFill(&plan, trip.BesideOf(lib.Rig, lib.Places, wash, lib.Planned(), past, today))
		plan.WarnOfDone(wash, past)
		plan.WarnOfOthers(lib.Rig, lib.Places, wash, lib.Planned(), past, today)
	}
	if err != nil || plan.Verdict == planner.Lasts {
		return plan, err
	}
	s, err := b.memory.Shorten(lib.Rig, lib.Places, wash)
	plan.Shortage = &s
	return plan, err
}

// oneFill is the code of the warning that says what one fill does of the washes that wait
// for it, and in which order.
const oneFill = "one-fill"

// warnOfOneFill says that of a plan beside which others wait for the bed. Where one of them
// lacks what a plan needs nothing is said: its own plan says what.
func warnOfOneFill(plan *planner.Plan, beside trip.Beside) {
	if len(beside.Washes) < 2 {
		return
	}
	if p, err := beside.Plan(); err == nil && len(p.Orders) > 0 {
		text := "The washes that wait for " + p.Bed + ": " + strings.Join(report.OneFills(p), " ")
		plan.Warn(planner.Note{Code: oneFill, Format: strings.ReplaceAll(text, "%", "%%")})
	}
}

// print makes the plan and prints it.
func (p *program) print(lib library, wash model.Wash, strict bool) error {
	sys, err := p.system(lib.Rig)
	if err != nil {
		return err
	}
	plan, err := p.shortenedPlan(lib, wash)
	if err != nil {
		return err
	}
	if p.json {
		text, err := report.JSON(plan)
		if err != nil {
			return err
		}
		fmt.Fprintf(p.out, "%s\n", text)
	} else {
		if lib.example {
			fmt.Fprintln(p.out, "There is no rig of yours yet: this is the built-in example. `washeve init` writes it out for you to change.")
			fmt.Fprintln(p.out)
		}
		fmt.Fprint(p.out, report.Text(plan, sys, p.plain, p.columns))
	}
	if strict && plan.Verdict == planner.WillNotLast {
		return told{shortBed}
	}
	return nil
}
