package main

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

// enough refuses an entry of which nothing is stated: it would end a fill, or count
// as a wash, by a slip of the hand.
func enough(kind model.Kind, texts map[string]*string) error {
	needs := map[model.Kind]string{
		model.WashKind:  `say what was used, such as: washeve log wash --di "30 gal", or "110 L"`,
		model.ResinKind: `name the bed that was filled, or state any of its resin, such as: washeve log resin --bed "half-foot tank"`,
		model.SaltKind:  `state the salt or name the softener, such as: washeve log salt --salt "4 lb", or "2 kg"`,
	}
	if needs[kind] == "" {
		return nil
	}
	aside := []string{"note"}
	if kind == model.WashKind {
		aside = append(aside, "at")
	}
	for key, text := range texts {
		if *text != "" && !slices.Contains(aside, key) {
			return nil
		}
	}
	return wrongf("nothing was written: %s", needs[kind])
}

var negative = regexp.MustCompile(`unknown shorthand flag: '[0-9.,]' in (-.*)`)

// noNegative tells of a reading below zero, which is taken for a flag.
func noNegative(_ *cobra.Command, err error) error {
	if found := negative.FindStringSubmatch(err.Error()); found != nil {
		return wrongf("%q: a reading cannot be negative; write it like \"3 ppm NaCl\"", found[1])
	}
	return wrongf("%w; see washeve log reading --help", err)
}

// flushTold asks whether the standing water was run out.
func (p *program) flushTold(s *model.Sample, lib library) error {
	if s.Flushed != "" {
		return nil
	}
	here := ""
	volume, takes, err := p.flushOf(s, lib)
	switch {
	case err != nil:
		return err
	case volume != "":
		here = fmt.Sprintf(" Here that is %s, %.0f s.", volume, takes.Seconds())
	}
	return wrongf("was the standing water run out first?%s Say --flushed yes, or --flushed no for a first cup, which is kept and not used", here)
}

// noteFlush gives, where nothing tells how much was run out for a reading that is written,
// the command that states it: no gallons are taken for it else.
func (p *program) noteFlush(e model.Entry, lib library) error {
	s, is := e.Body.(*model.Sample)
	if !is || s.Point != model.AfterBed || s.Flushed != model.Yes || s.FlushWater.Given() || s.SoFar.Given() {
		return nil
	}
	sys, err := p.system(lib.Rig)
	if err != nil {
		return err
	}
	volume, _, err := p.flushOf(s, lib)
	if err != nil {
		return err
	}
	fmt.Fprintf(p.errs, "note: no water is counted for the flush, as where it is part of a wash. Where it was run for this reading alone: washeve log correct %s --flush-water %q\n", e.ID, cmp.Or(volume, volumeText(4*quantity.Gallon, sys)))
	return nil
}

// flushOf is the water that a reading's flush asks for, in the person's units, and its time;
// "" where no plan can be made to tell it.
func (p *program) flushOf(s *model.Sample, lib library) (volume string, takes quantity.Duration, err error) {
	plan, unplanned := p.makePlan(lib, model.Wash{Bed: s.Bed, Place: s.Place})
	if unplanned != nil {
		return "", 0, nil //nolint:nilerr // an entry is written without a plan as well
	}
	sys, err := p.system(lib.Rig)
	return volumeText(plan.Flush.Volume, sys), plan.Flush.Duration, err
}

// bedOf is the bed that an entry is about and the place of its water, as a wash names
// them: "" is the usual one. It is false where the entry is about none.
func bedOf(body model.Body) (model.Wash, bool) {
	switch b := body.(type) {
	case *model.WashDone:
		return model.Wash{Bed: b.Bed, Place: b.Place}, true
	case *model.Sample:
		return model.Wash{Bed: b.Bed, Place: b.Place}, b.Point == model.AfterBed
	case *model.Refill:
		return model.Wash{Bed: b.Bed}, true
	}
	return model.Wash{}, false
}

// tellOdd tells on stderr what is so odd about an entry that it looks like a slip of the
// hand. Nobody can be asked: it is written all the same. Wrong is the id of the entry whose
// place it takes, "" where it is a new one.
func (p *program) tellOdd(lib library, e model.Entry, wrong string) {
	p.tellSlip(lib, e.Body, wrong)
	if e.At.Compare(model.MomentOf(p.now())) > 0 {
		fmt.Fprintf(p.errs, "warning: %s is still to come, and the log holds what was done. It is written all the same.\n", e.At.Full())
	}
}

// tellSlip tells where a bed can hardly have shown or given what an entry says. The entry
// whose place it takes is left out of what is known of the bed.
func (p *program) tellSlip(lib library, body model.Body, wrong string) {
	wash, about := bedOf(body)
	if !about {
		return
	}
	plan, err := p.planWithout(wrong, lib, wash)
	if err != nil {
		return
	}
	sys, err := p.system(lib.Rig)
	if err != nil {
		return
	}
	if note, odd := plan.Slip(&lib.Rig, body); odd {
		fmt.Fprintf(p.errs, "warning: %s It is written all the same.\n", note.Text(sys))
	}
}

// planWithout plans a wash as if an entry had not been written; "" leaves none out.
func (p *program) planWithout(id string, lib library, wash model.Wash) (planner.Plan, error) {
	b, err := p.openBook()
	if err != nil {
		return planner.Plan{}, err
	}
	b.example = lib.example
	b.log = slices.DeleteFunc(slices.Clone(b.log), func(e model.Entry) bool { return e.ID == id })
	return b.plan(lib.Rig, lib.Places, wash)
}

// left is what the bed of an entry has left by the log as it stands; not given where
// no plan can be made to tell it.
func (p *program) left(lib library, body model.Body) quantity.Opt[quantity.Volume] {
	wash, about := bedOf(body)
	if !about || p.json {
		return quantity.Opt[quantity.Volume]{}
	}
	plan, err := p.makePlan(lib, wash)
	if err != nil {
		return quantity.Opt[quantity.Volume]{}
	}
	return quantity.Some(plan.Bed.Remaining.P50)
}

// countedBefore tells of the first entry of a bed, before it is written, that what the rig
// states of that bed counts besides; "" where there is nothing to tell.
func (p *program) countedBefore(lib library, e *model.Entry) string {
	wash, about := bedOf(e.Body)
	if !about {
		return ""
	}
	b, sys, err := p.openBookIn(lib.Rig)
	if err != nil {
		return ""
	}
	plan, err := b.plan(lib.Rig, lib.Places, wash)
	if err != nil || b.past(lib.Rig, lib.Places).Bed(plan.BedName) != nil {
		return ""
	}
	return report.CountedBefore(&lib.Rig, e, model.MomentOf(p.now()).Date(), sys)
}

// tellEffect says what an entry has changed, and how it is taken back.
func (p *program) tellEffect(lib library, entry model.Entry, before quantity.Opt[quantity.Volume]) error {
	if p.json {
		return nil
	}
	sys, err := p.system(lib.Rig)
	if err != nil {
		return err
	}
	was, known := before.Get()
	now, still := p.left(lib, entry.Body).Get()
	if wash, _ := bedOf(entry.Body); known && still {
		fmt.Fprintf(p.out, "%s: about %s left by what the log says now; before this entry, %s.\n", cmp.Or(wash.Bed, "The bed"), volumeText(now, sys), volumeText(was, sys))
	}
	fmt.Fprintf(p.out, "To take it back: washeve log strike %s\n", entry.ID)
	return nil
}
