package main

import (
	"fmt"
	"regexp"
	"slices"

	"github.com/spf13/cobra"

	"washeve/model"
	"washeve/model/quantity"
)

// enough refuses an entry of which nothing is stated: it would end a fill, or count
// as a wash, by a slip of the hand.
func enough(kind model.Kind, texts map[string]*string) error {
	needs := map[model.Kind]string{
		model.WashKind:  `say what was used, such as: washeve log wash --di "30 gal"`,
		model.ResinKind: `name the bed that was filled, or state any of its resin, such as: washeve log resin --bed "half-foot tank"`,
		model.SaltKind:  `state the salt or name the softener, such as: washeve log salt --salt "4 lb"`,
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

// bedOf is the bed that an entry is about, and the place of its water; "" where it is
// about none.
func bedOf(body model.Body) (bed, place string) {
	switch b := body.(type) {
	case *model.WashDone:
		return b.Bed, b.Place
	case *model.Sample:
		if b.Point == model.AfterBed {
			return b.Bed, b.Place
		}
	case *model.Refill:
		return b.Bed, ""
	}
	return "", ""
}

// left is what the bed of an entry has left by the log as it stands; not given where
// no plan can be made to tell it.
func (p *program) left(lib library, body model.Body) quantity.Opt[quantity.Volume] {
	bed, place := bedOf(body)
	if bed == "" || p.json {
		return quantity.Opt[quantity.Volume]{}
	}
	plan, err := p.makePlan(lib, model.Wash{Bed: bed, Place: place})
	if err != nil {
		return quantity.Opt[quantity.Volume]{}
	}
	return quantity.Some(plan.Bed.Remaining.P50)
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
	if bed, _ := bedOf(entry.Body); known && still {
		fmt.Fprintf(p.out, "%s: about %s left by what the log says now; before this entry, %s.\n", bed, volumeText(now, sys), volumeText(was, sys))
	}
	fmt.Fprintf(p.out, "To take it back: washeve log strike %s\n", entry.ID)
	return nil
}
