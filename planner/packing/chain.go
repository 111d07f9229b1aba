package packing

import (
	"fmt"

	"washeve/model"
	"washeve/model/quantity"
)

// chain is what the water goes through, from the tap to the spray.
func (e *evening) chain() {
	if e.place == nil || e.place.Supply != model.Pump {
		e.pack(Breaker, say("Vacuum breaker for the tap"), say("the local plumbing code decides"))
	}
	if e.warned("over-pressure") && e.bed != nil {
		e.pack(Reducer, say("Pressure reducer"), say("the supply is over the %s on the tank's label", quantity.ValueOf(e.bed.MaxPressure.Or(0))))
	}
	joints := e.hosesOf(model.SupplyRun) + e.hosesOf("")
	if e.uses.softener {
		e.pack(Softener, say(e.softenerName()), say("%s of the wash go through it", quantity.ValueOf(e.plan.Softener.Takes)))
		joints++
	}
	joints += e.hosesOf(model.MiddleRun)
	if e.uses.bed {
		e.pack(Bed, say(e.bedName()), say("%s of DI, with the flush", quantity.ValueOf(e.plan.Through())))
		joints++
	}
	joints += e.hosesOf(model.SprayRun)
	joints += e.sprayers()
	e.pack(Joints, say(fmt.Sprintf("Quick couplings for %d joints", joints)), say("tap to spray, and spare washers for them"))
}

// runWords says what a hose joins.
func runWords(run model.Run) string {
	switch run {
	case model.SupplyRun:
		return "tap to the first tank"
	case model.MiddleRun:
		return "softener to DI bed"
	case model.SprayRun:
		return "last tank to the sprayer"
	}
	return "its place is not stated"
}

// hosesOf packs the hoses of a run and counts them.
func (e *evening) hosesOf(run model.Run) int {
	count := 0
	for _, h := range e.hoses {
		if h.Run != run {
			continue
		}
		count++
		what := say(name(h.Name, "Hose"))
		if length, given := h.Length.Get(); given {
			what = say(what.Format+", %s", quantity.ValueOf(length))
		}
		e.pack(Hose, what, say(runWords(run)))
	}
	if len(e.hoses) == 0 && (run == model.SupplyRun || run == model.SprayRun) {
		e.pack(Hose, say("Hose, "+runWords(run)), say("the rig states none"))
		count++
	}
	return count
}

// sprayers packs what the stages spray with, and counts the joints at that end.
func (e *evening) sprayers() int {
	washer := false
	for _, t := range e.tools {
		what := say(name(t.Name, "Sprayer"))
		if n, given := t.Number.Get(); given {
			what.Format += ", nozzle " + quantity.Round(n)
		}
		washer = washer || t.Tool == model.PressureWasher
		e.pack(Sprayer, what, say("%s", quantity.ValueOf(t.Flow.Or(0))))
	}
	if washer {
		e.pack(Outlet, say("GFCI outlet or adapter"), say("where the washer is electric"))
	}
	return max(len(e.tools), 1)
}
