package main

import (
	"crypto/rand"
	"fmt"
	"path/filepath"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/store/journal"
)

const logFile = "log.toml"

func (p *program) logCommand() *cobra.Command {
	c := &cobra.Command{
		Use:   "log",
		Short: "Write down what was done, and look at it",
		Args:  noArguments,
		RunE:  func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	c.AddCommand(
		p.logEntry(model.ReadingKind, "reading READING", "Write down what the pen showed"),
		p.logEntry(model.WashKind, "wash", "Write down a wash"),
		p.logEntry(model.ResinKind, "resin", "Write down a change of resin"),
		p.logEntry(model.SaltKind, "salt", "Write down a regeneration of the softener"),
		p.logList(), p.logCorrect(), p.logStrike(), p.logMerge(), p.logExport(), p.logImport(),
	)
	return c
}

func (p *program) journal() *journal.Journal {
	return journal.Open(filepath.Join(p.folder(), logFile))
}

// readLog gives the log of the data folder, its faults told.
func (p *program) readLog() (model.Log, error) {
	log, faults := p.journal().Load()
	p.tell(faults)
	if unusable(log, faults) {
		return nil, wrongf("the log in %s cannot be used; mend the lines above, nothing was changed", p.folder())
	}
	return log, nil
}

// logEntry is the command that writes an entry of a kind. Its flags are what
// can be stated of such an entry.
func (p *program) logEntry(kind model.Kind, use, short string) *cobra.Command {
	texts := map[string]*string{}
	c := &cobra.Command{
		Use: use, Short: short,
		Args: func(_ *cobra.Command, args []string) error {
			if most := strings.Count(use, " "); len(args) > most {
				return wrongf("%q is one word too many; values go behind their flags, see washeve log %s --help", args[most], kind)
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			stated := statedBy{texts: texts}
			if len(args) == 1 {
				*texts[readingKey], stated.byArgument = args[0], true
			}
			if err := enough(kind, texts); err != nil {
				return err
			}
			return p.writeEntry(kind, stated)
		},
	}
	if kind == model.ReadingKind {
		c.Long = readingHelp
		c.SetFlagErrorFunc(noNegative)
	}
	entry := model.Entry{Body: model.NewBody(kind)}
	for _, f := range entry.Fields() {
		if f.Key == "id" || f.Key == "wash" { // given by the program
			continue
		}
		texts[f.Key] = c.Flags().String(strings.ReplaceAll(f.Key, "_", "-"), "", flagHelp(f))
	}
	return c
}

const readingHelp = `Write down what the pen showed.

Water that stood in the bed reads cleaner than what the bed gives, so it is run out
first: say --flushed yes. What runs out is DI water that the bed has given. Where it
is part of a wash, the wash's --di counts it. Where it was run for this reading alone,
say how much it was with --flush-water; else nothing is counted for it. An entry that
lacks it is put right by washeve log correct.`

// writeEntry makes an entry of what is stated, fills in what goes without saying,
// and appends it.
func (p *program) writeEntry(kind model.Kind, stated statedBy) error {
	lib, err := p.load()
	if err != nil {
		return err
	}
	entry := model.Entry{At: model.MomentOf(p.now()), Body: model.NewBody(kind)}
	if err := p.stateAll(entry.Fields(), stated, lib); err != nil {
		return err
	}
	usual(entry.Body, &lib.Rig)
	if entry.ID, err = model.NewID(entry.At, rand.Reader); err != nil {
		return err
	}
	if err := p.complete(&entry, lib, stated); err != nil {
		return err
	}
	p.usualFlow(entry.Body, lib)
	p.tellOdd(lib, entry, "")
	before, twice := p.left(lib, entry.Body), p.countedBefore(lib, &entry)
	faults, err := p.journal().Append(entry)
	p.tell(faults)
	if err != nil {
		return err
	}
	if err := p.wrote(entry); err != nil {
		return err
	}
	if err := p.noteFlush(entry, lib); err != nil {
		return err
	}
	if twice != "" {
		fmt.Fprintln(p.errs, "note: "+twice)
	}
	return p.tellEffect(lib, entry, before)
}

// complete checks that nothing needed is missing. A reading after the bed must
// say whether the standing water was out, since a first cup lies.
func (p *program) complete(entry *model.Entry, lib library, stated statedBy) error {
	if s, ok := entry.Body.(*model.Sample); ok && s.Point == model.AfterBed && s.Reading.Given() {
		if err := p.flushTold(s, lib); err != nil {
			return err
		}
	}
	if faults := entry.Faults(); len(faults) > 0 {
		return stated.lacksOrErrs(entry, faults[0])
	}
	return named(entry, lib)
}

// named checks that what an entry names is in the rig or the places: gallons on
// a name that nobody knows would count for nothing.
func named(entry *model.Entry, lib library) error {
	for _, f := range entry.Fields() {
		names, checked := lib.Rig.Names(f.Refers), f.Refers != ""
		if f.Refers == "place" {
			names = lib.Places.Names()
		}
		if !checked || !f.Given() || strings.EqualFold(f.Text(), model.NoSoftener) || model.Find(names, f.Text()) >= 0 {
			continue
		}
		return wrongf("--%s: no %s is called %q; there is %s", strings.ReplaceAll(f.Key, "_", "-"), f.Refers, f.Text(), strings.Join(names, ", "))
	}
	return nil
}

func (p *program) wrote(entry model.Entry) error {
	if p.json {
		return p.printJSON(map[string]any{"format": 1, "written": entryJSON(model.Row{Entry: entry, Now: entry})})
	}
	fmt.Fprintf(p.out, "Written to the log: %s\n", entryWords(entry, p.now().Location()))
	return nil
}

// now is the moment, by the clock that the program was given.
func (p *program) now() time.Time { return p.clock.Now() }

// entryWords are all that an entry states; its moment as its own clock told it.
func entryWords(e model.Entry, reader *time.Location) string {
	parts := []string{e.ID, e.At.Told(reader), string(e.Kind())}
	for _, f := range e.Fields() {
		if f.Key != "id" && f.Key != "at" && f.Given() {
			parts = append(parts, f.Label+" "+f.Brief())
		}
	}
	return strings.Join(parts, "  ")
}
