package main

import (
	"fmt"
	"path"
	"slices"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/model/store/fault"
)

// program is one run: its streams and the flags that every command takes.
type program struct {
	streams
	dir   string
	units string
	json  bool
	plain bool

	opening bool  // the screens are about to open, and will ask for what is missing
	shown   *book // the log of the screens, since all was read the last time
}

// run is the whole program but for the end of the process.
func run(args []string, s streams) int {
	p := &program{streams: s}
	root := p.root()
	if len(args) > 0 { // the screens need not wait until all commands have their flags
		p.addCommands(root)
	}
	root.SetArgs(args)
	root.SetIn(s.in)
	root.SetOut(s.out)
	root.SetErr(s.errs)
	err := root.Execute()
	if err != nil && err.Error() != "" {
		fmt.Fprintf(s.errs, "%s: %s\n", toolsName, harmless(err.Error()))
	}
	return codeOf(err)
}

func (p *program) root() *cobra.Command {
	root := &cobra.Command{
		Use:   toolsName,
		Short: "Plan a spot-free wash the evening before",
		Long: `washeve plans a wash that ends in DI water: how much of it the wash takes, how
fast it may run through the bed, and whether the bed will last.

Without a command it opens the planner; where it is not at a terminal it prints
the plan. Without a rig of your own it starts on a built-in example.`,
		Version:       builtNow().String(),
		Args:          noArguments,
		SilenceErrors: true,
		SilenceUsage:  true,
		PersistentPreRunE: func(*cobra.Command, []string) error {
			p.plain = p.plain || p.screen && p.env("TERM") == "dumb"
			return p.wantsFolder()
		},
		RunE: func(c *cobra.Command, _ []string) error { return p.open(c.Context()) },
	}
	root.SuggestionsMinimumDistance = 2
	flags := root.PersistentFlags()
	flags.StringVar(&p.dir, "dir", "", "data folder (else $WASHEVE_DIR, else the user's data home)")
	flags.StringVar(&p.units, "units", "", "us or metric (else what the rig says, else by the locale's territory)")
	flags.BoolVar(&p.json, "json", false, "print one JSON object and nothing else")
	flags.BoolVar(&p.plain, "plain", false, "no colour and no drawing characters; at a terminal everything by words")
	root.SetFlagErrorFunc(func(_ *cobra.Command, err error) error {
		return wrongf("%w; see washeve --help", err)
	})
	return root
}

// addCommands gives the root its commands and the topics of its help.
func (p *program) addCommands(root *cobra.Command) {
	root.AddCommand(p.planCommand(), p.sheetCommand(), p.bedCommand(), p.tripCommand(), p.compareCommand(), p.logCommand(), p.checkCommand(), p.initCommand(), p.manCommand())
	root.AddCommand(topics()...)
	knowsTopics(root)
}

// knowsTopics lets help refuse what it knows nothing of.
func knowsTopics(root *cobra.Command) {
	root.InitDefaultHelpCmd()
	for _, c := range root.Commands() {
		if c.Name() != "help" {
			continue
		}
		c.Args = func(_ *cobra.Command, args []string) error {
			at, rest, err := root.Find(args)
			if err != nil || len(rest) > 0 {
				return noArguments(at, args[len(args)-max(len(rest), 1):])
			}
			return nil
		}
	}
}

func noArguments(c *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	hint := "see " + toolsName + " --help"
	if near := c.SuggestionsFor(args[0]); len(near) > 0 {
		hint = "did you mean " + near[0] + "?"
	}
	return wrongf("there is no command %q; %s", args[0], hint)
}

// library is what the data folder holds, or the built-in example where there is
// no rig yet.
type library struct {
	store.Library
	keep    *store.Store
	example bool
	notice  string // the first thing to heed in the files; "" where there is none

	why string // the first wash is the one to go on with

	tripLacks []fault.Fault // what trips lack, which only those need to hear who look at them
}

// load reads the data folder. Faults are told on the error stream; errors among
// them stop the run.
func (p *program) load() (library, error) {
	lib, faults := p.read()
	if fault.HasErrors(faults) || !p.opening {
		p.tell(faults)
	}
	if fault.HasErrors(faults) {
		return library{}, wrongf("the files in %s have the faults above; mend these lines, nothing was changed", lib.keep.Dir())
	}
	return lib, nil
}

// read reads the data folder, and gives the faults in it but for what trips lack. With
// errors among them the library is not to be used.
func (p *program) read() (library, []fault.Fault) {
	keep := store.Open(p.folder())
	lib, faults := keep.Load()
	faults, tripLacks := apart(faults)
	if !lib.HasRig && len(lib.Places) == 0 && len(lib.Washes) == 0 {
		return library{Library: store.Example(), keep: keep, example: true}, faults
	}
	mine := library{Library: lib, keep: keep, tripLacks: tripLacks}
	mine.toHand(p.today())
	for _, f := range faults {
		if f.Severity.Stands() {
			mine.notice = f.Error()
			break
		}
	}
	return mine, faults
}

// toHand puts the wash to go on with first.
func (lib *library) toHand(today model.Date) {
	at, coming := lib.NextWash(today)
	if at < 0 {
		return
	}
	next := lib.Washes[at]
	lib.Washes = slices.Insert(slices.Delete(lib.Washes, at, at+1), 0, next)
	if lib.why = "the last one changed"; coming {
		lib.why = "the next from today on"
	}
}

// apart divides faults into what trips lack, and the others.
func apart(faults []fault.Fault) (others, tripLacks []fault.Fault) {
	for _, f := range faults {
		if f.Severity == fault.Lack && path.Dir(f.File) == store.TripFolder {
			tripLacks = append(tripLacks, f)
			continue
		}
		others = append(others, f)
	}
	return others, tripLacks
}

func (p *program) tell(faults []fault.Fault) {
	for _, f := range faults {
		fmt.Fprintf(p.errs, "%s: %s\n", f.Severity, f.Error())
	}
}

// unsaidUnits are those to show where the rig says none: the flag's, else the locale's.
func (p *program) unsaidUnits() quantity.System {
	if sys, err := quantity.ParseSystem(p.units); err == nil {
		return sys
	}
	return p.localUnits()
}

// system is the units to show: the flag's, else the rig's, else those of the locale.
func (p *program) system(rig model.Rig) (quantity.System, error) {
	text := p.units
	if text == "" {
		text = string(rig.Defaults.Units)
	}
	if text == "" {
		return p.localUnits(), nil
	}
	sys, err := quantity.ParseSystem(text)
	if err != nil {
		return sys, wrong{err}
	}
	return sys, nil
}
