package main

import (
	"cmp"
	"fmt"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/entry"
)

// usual states what goes without saying: the rig's own defaults, and the only one of a kind.
func usual(body model.Body, rig *model.Rig) {
	d := &rig.Defaults
	word := func(at *string, fallback string) {
		if *at == "" {
			*at = fallback
		}
	}
	switch b := body.(type) {
	case *model.Sample:
		if b.Point == "" {
			b.Point = model.AfterBed
		}
		word(&b.Place, d.Place)
		word(&b.Pen, d.Pen)
		if b.Point == model.AfterBed {
			word(&b.Bed, d.Bed)
			if b.Feed == "" && len(rig.Softeners) == 0 {
				b.Feed = model.No // one that is bought later was not there
			}
		}
	case *model.WashDone:
		word(&b.Place, d.Place)
		word(&b.Vehicle, d.Vehicle)
		word(&b.Bed, d.Bed)
		word(&b.Softener, d.Softener)
		word(&b.Sprayer, d.Sprayer)
	case *model.Refill:
		word(&b.Bed, d.Bed)
		if len(rig.Beds) == 1 {
			word(&b.Bed, rig.Beds[0].Name)
		}
	case *model.Regeneration:
		word(&b.Softener, d.Softener)
		if len(rig.Softeners) == 1 {
			word(&b.Softener, rig.Softeners[0].Name)
		}
	}
}

// usualFlow states the flow of the sprayer, as the screens do, where a wash or a reading after
// the bed states none and the rig has a sprayer; it is told. Where no plan can be made the
// entry stays as it is.
func (p *program) usualFlow(body model.Body, lib library) {
	flow, sprayer := flowOf(body)
	if flow == nil || flow.Given() || len(lib.Rig.Sprayers) == 0 {
		return
	}
	wash, _ := bedOf(body)
	wash.Sprayer = sprayer
	if sprayer == "" && len(lib.Washes) > 0 {
		wash.Sprayer = lib.Washes[0].Wash.Sprayer
	}
	plan, err := p.makePlan(lib, wash)
	sys, unknown := p.system(lib.Rig)
	if err != nil || unknown != nil {
		return
	}
	if *flow = entry.Stated(plan.Sprayer.Flow, sys); flow.Given() {
		fmt.Fprintf(p.errs, "note: flow: taken as the %s of %s; --flow states another\n", quantity.Show(plan.Sprayer.Flow, sys), cmp.Or(plan.Sprayer.Name, "the sprayer"))
	}
}

// flowOf is where an entry states the flow through the bed, and the sprayer that it names; nil
// where none ran.
func flowOf(body model.Body) (flow *quantity.Opt[quantity.Flow], sprayer string) {
	switch b := body.(type) {
	case *model.Sample:
		if b.Point == model.AfterBed {
			return &b.Flow, ""
		}
	case *model.WashDone:
		if b.DI.Or(0) > 0 {
			return &b.Flow, b.Sprayer
		}
	}
	return nil, ""
}
