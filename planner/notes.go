package planner

import (
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/flow"
	"washeve/planner/water"
)

// tell writes down what the user should know beside the numbers.
func (p *Plan) tell(l *ledger, c chosen, r resin, chain plumbing, raw water.Analysis, a asked, at flow.Operating) {
	l.warnings = append(l.warnings, raw.Contradictions...)
	p.tellBed(l, c, r, a)
	p.tellFlow(l, c, chain, at)
	p.tellRoof(l, c)
	p.tellSoftener(l, raw)
	l.warnings = append(l.warnings, raw.Warnings...)
	if c.softener != nil {
		l.warnings = append(l.warnings, water.SofteningNote(raw))
	}
}

func (p *Plan) tellBed(l *ledger, c chosen, r resin, a asked) {
	if !p.Sprayer.WithinCap && p.Sprayer.Flow > 0 {
		p.tellOverCap(l) // first, since all that follows holds at the cap's flow or under it
	}
	switch {
	case len(a.uses) == 0:
		l.warn("no-di", "No stage of this wash uses DI water: nothing is asked of the bed.")
	case p.Verdict == WillNotLast:
		l.warn("short-bed", "This bed is not likely to last: the wash asks for %s with its flush, and half of such beds have %s or less left.", quantity.ValueOf(a.volume), quantity.ValueOf(p.Bed.Remaining.P50))
	case p.InDoubt():
		l.warn("reading-in-doubt", "The last outlet reading is over the limit and fits no bed that has given so little: do not go by the chance before it is explained. Flush, and read again.")
	case p.Verdict == Tight:
		l.warn("tight-bed", "It may be close: the wash asks for %s with its flush, and half of such beds have %s or less left at the final rinse's flow. Have resin at hand.", quantity.ValueOf(a.volume), quantity.ValueOf(p.Bed.Remaining.P50))
	}
	if a.needless() {
		l.warn("limit-over-feed", "The feed itself reads no more than the limit: this water needs no DI bed to keep it.")
	}
	for _, f := range p.Faces {
		if f.Water == model.DI && f.PPMLeft > p.Target.Number*1.001 {
			l.warn("target-missed", "The film will carry more than the target by the end: the bed lets too much through, or the water goes over the faces too thinly. The faces rinsed last carry most.")
			break
		}
	}
	if p.Claim != nil && !c.bed.GoodForTDS.Given() {
		l.warn("claim", "Good for %s means feed water of %s. On this water expect about %s.", quantity.ValueOf(p.Claim.Stated), quantity.ValueOf(p.Claim.Implied), quantity.ValueOf(p.Claim.Here))
	}
	re := r.tank.Reynolds(p.Sprayer.Flow, water.KinematicViscosity(p.Raw.Temperature))
	if p.Sprayer.Flow > 0 && (re < bed.LowestReynolds || re > bed.HighestReynolds) {
		l.warn("outside-range", "This flow through the bed is outside the range in which the exchange formula was measured: take its figures as rough.")
	}
}

func (p *Plan) tellFlow(l *ledger, c chosen, chain plumbing, at flow.Operating) {
	held := p.Cap.Held()
	switch over := p.Sprayer.OpenHose > held.Flow; {
	case over && !p.Cap.Useful():
		l.warn("open-hose", "An open hose pushes %s through the bed, over the %s that its "+strings.ReplaceAll(string(held.Name), "-", " ")+" allows however fresh it is. Never fill buckets so.", quantity.ValueOf(p.Sprayer.OpenHose), quantity.AtMost(held.Flow))
	case over:
		l.warn("open-hose", "Over the cap of %s: an open hose pushes %s through the bed. Never fill buckets so.", quantity.AtMost(held.Flow), quantity.ValueOf(p.Sprayer.OpenHose))
	}
	if !p.Sprayer.Enough {
		l.warnings = append(l.warnings, at.Why)
	}
	if most, given := c.bed.MaxPressure.Get(); given && chain.supply.Static > most {
		l.warn("over-pressure", "The supply stands at %s, over the %s on the tank's label: fit a pressure reducer first.", quantity.ValueOf(chain.supply.Static), quantity.ValueOf(most))
	}
	if most, given := c.bed.MaxTemperature.Get(); given && p.Raw.Temperature > most {
		l.warn("over-temperature", "The water is at %s, over the %s on the tank's label: do not run it through.", quantity.ValueOf(p.Raw.Temperature), quantity.ValueOf(most))
	}
	if onHand, given := c.place.OnHand.Get(); given {
		need := p.DI.Volume + p.Soft.Volume + p.Untreated.Volume + p.Flush.Volume
		if need > onHand {
			l.warn("tank-runs-dry", "The wash takes %s in all, and %s is on hand.", quantity.ValueOf(need), quantity.ValueOf(onHand))
		}
	}
}

// tellOverCap names what runs over the cap, and how to hold it.
func (p *Plan) tellOverCap(l *ledger) {
	if !p.Cap.Useful() {
		l.warn("over-cap", "No flow keeps the limit to the end of this wash: slowing down does not bring the bed back.")
		return
	}
	for _, s := range p.Stages {
		if s.Water == model.DI && s.Flow > p.Cap.Flow {
			l.warnNote(byJug("over-cap", s.Name+": %s through the bed, and the cap is %s. Throttle it until ", "a one-gallon jug", " takes %s or longer.",
				func(holds quantity.Volume) quantity.Value { return quantity.AtLeast(p.Cap.Flow.Time(holds)) }, quantity.ValueOf(s.Flow), quantity.AtMost(p.Cap.Flow)))
		}
	}
}

func (p *Plan) tellSoftener(l *ledger, raw water.Analysis) {
	if s := p.Softener; s != nil && !s.Lasts {
		l.warn("regenerate", "The softener has %s of this water left and the wash sends %s through it: regenerate it first.", quantity.ValueOf(s.Remaining), quantity.ValueOf(s.Takes))
	}
	if p.Softener != nil && !raw.HardnessSaid {
		l.warn("hardness-assumed", "The hardness was not measured; %s was assumed from the TDS. A strip makes the softener's figures yours.", quantity.ValueOf(p.Raw.Hardness))
	}
}

// cautions are the warnings of safety, always shown where they apply. They
// defer to local codes, labels and doctors.
func cautions(pressureWasher bool) []Note {
	notes := []Note{
		{Code: "local-rules", Format: "Local rules on washing and run-off come first; many campgrounds forbid it. Ask."},
		{Code: "backflow", Format: "Fit a vacuum breaker at the tap; the local plumbing code decides."},
	}
	if pressureWasher {
		notes = append(notes,
			Note{Code: "jet", Format: "A pressure washer's jet cuts skin. A wound from it needs a doctor at once, however small it looks (CDC)."},
			Note{Code: "electric", Format: "Plug an electric washer into a GFCI outlet. Never run a petrol engine indoors."},
		)
	}
	notes = append(notes,
		Note{Code: "falls", Format: "Roofs and ladders are wet: people fall. Stay on the ground where you can."},
		Note{Code: "tank", Format: "Stay within the tank's pressure and temperature, as its label states. Release the pressure before opening it. Never reverse the flow."},
		Note{Code: "heavy", Format: "A wet tank of resin is heavy: drain it first, and lift with two."},
		Note{Code: "loose-resin", Format: "Spilled resin rolls underfoot like ball bearings: sweep it up. Used resin goes by the local waste rules."},
		Note{Code: "di-water", Format: "DI water is not for drinking, and it eats bare copper and brass."},
		Note{Code: "frost", Format: "Drain tanks and hoses before frost."},
		Note{Code: "estimate", Format: "This plan is an estimate: the pen in the stream decides."},
	)
	return notes
}
