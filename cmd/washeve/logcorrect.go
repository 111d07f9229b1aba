package main

import (
	"crypto/rand"
	"strings"

	"github.com/spf13/cobra"

	"washeve/model"
)

// logCorrect states fields of an entry anew, by a later entry that says so.
func (p *program) logCorrect() *cobra.Command {
	texts := map[string]*string{}
	c := &cobra.Command{
		Use: "correct ID", Short: "Put an entry right: what was wrong is stated anew",
		Long: "State anew what was wrong in an entry, or was left out of it. The entry stays to be seen as it was written.\n" +
			"ID is the entry's, or its last letters as washeve log list shows them. Only what goes with the\nkind of entry is taken.",
		Args: oneArgument(theEntry),
		RunE: func(_ *cobra.Command, args []string) error { return p.correct(args[0], statedBy{texts: texts}) },
	}
	for _, f := range (&model.Entry{Body: &model.Correction{}}).Fields() {
		switch f.Key {
		case "of", "strike", "id", "at":
			continue
		case "note":
			f.Help = "why it is put right"
		}
		texts[f.Key] = c.Flags().String(strings.ReplaceAll(f.Key, "_", "-"), "", flagHelp(f))
	}
	return c
}

func (p *program) correct(id string, stated statedBy) error {
	lib, err := p.load()
	if err != nil {
		return err
	}
	log, err := p.readLog()
	if err != nil {
		return err
	}
	wrong, err := oneEntry(log, id)
	if err != nil {
		return err
	}
	if wrong.Kind() == model.CorrectionKind {
		return wrongf("%s is a correction itself; correct the entry that it is about, or take it back with washeve log strike %s", wrong.ID, wrong.ID)
	}
	if part := stated.texts["wash"]; *part != "" {
		wash, err := oneEntry(log, *part)
		if err != nil {
			return wrongf("--wash: %w", err)
		}
		*part = wash.ID
	}
	right := &model.Correction{Of: wrong.ID}
	e := model.Entry{At: log.After(wrong.ID, model.MomentOf(p.now())), Body: right}
	if err := p.stateAll(e.Fields(), stated, lib); err != nil {
		return err
	}
	if len(e.Contradictions()) > 0 {
		return wrongf("say what was wrong, such as: washeve log correct %s --temperature \"68 F\", or \"20 C\"", id)
	}
	if e.ID, err = model.NewID(e.At, rand.Reader); err != nil {
		return err
	}
	now, err := fits(log, e, stated)
	if err != nil {
		return err
	}
	if err := named(&e, lib); err != nil {
		return err
	}
	p.tellOdd(lib, now, wrong.ID)
	before := p.left(lib, now.Body)
	faults, err := p.journal().Append(e)
	p.tell(faults)
	if err != nil {
		return err
	}
	if err := p.wrote(e); err != nil {
		return err
	}
	return p.tellEffect(lib, model.Entry{ID: e.ID, Body: now.Body}, before)
}

// fits checks that a correction goes with the entry that it is about, and leaves nothing in
// it that cannot be. It gives the entry as it then counts.
func fits(log model.Log, correction model.Entry, stated statedBy) (now model.Entry, err error) {
	all := model.Merge(log, model.Log{correction})
	for _, f := range all.Faults() {
		if f.ID == correction.ID {
			return now, wrongf("nothing was written: it %s", f.Problem)
		}
	}
	of := correction.Body.(*model.Correction).Of
	for _, row := range all.Rows() {
		switch {
		case row.Entry.ID != of:
		case row.Standing == model.Struck:
			return now, wrongf("nothing was written: the entry %s is struck out", of)
		default:
			if now = row.Now; len(now.Faults()) > 0 {
				return now, stated.lacksOrErrs(&now, now.Faults()[0])
			}
		}
	}
	return now, nil
}
