package packing

import (
	"fmt"
	"math"
	"strings"

	"washeve/model/quantity"
	"washeve/planner"
)

// TowelArea is what one large microfibre towel dries before it is too wet.
// PRACTICE: about 60 ft2, wrung out as one goes.
const TowelArea = 60 * quantity.SquareFoot

// measures are what tells whether the wash goes as planned.
func (e *evening) measures() {
	if e.uses.bed {
		if e.plan.Cap.Useful() {
			keeps := "%s or longer to a gallon keeps the flow under the cap"
			if e.plan.Sprayer.Held() {
				keeps = "%s or longer to a gallon holds the DI water as slow as the plan has it"
			}
			e.pack(Jug, say("A jug and a watch"), say(keeps, quantity.AtLeast(e.plan.HoldFlow().Time(quantity.Gallon))))
		}
		pen := "TDS pen"
		if e.pen != nil {
			pen = name(e.pen.Name, pen) + " (TDS)"
		}
		e.pack(Pen, say(pen), say("the limit is "+strings.ReplaceAll(e.plan.Limit.String(), "%", "%%")+"; the pen in the stream decides"))
	}
	if e.place != nil && !e.place.Temperature.Given() {
		e.pack(Stick, say("Thermometer"), say("the water was taken for %s, and cold water spends a bed sooner", quantity.ValueOf(e.plan.Raw.Temperature)))
	}
	if e.uses.softener && !e.plan.Raw.HardnessSaid {
		e.pack(Strip, say("Hardness strip"), say("%s was assumed from the TDS", quantity.ValueOf(e.plan.Raw.Hardness)))
	}
}

// hands are what is carried in a bucket.
func (e *evening) hands() {
	if e.byHand != "" {
		e.pack(Mitt, say("Soap, mitt, two buckets"), say(name(e.byHand, "a stage")+" is done by hand"))
	}
	e.towels()
	if e.uses.bed && e.plan.Verdict != planner.Lasts {
		e.pack(Spare, say("Spare resin, %s", e.plan.Bed.Resin.AsResin()), say("the bed may not last to the end"))
	}
	e.pack(Paper, say("This sheet and a pencil"), say("what you write down teaches the next plan"))
}

// towels are for the faces that dry with spots. Nobody is sent onto a roof to
// dry it.
func (e *evening) towels() {
	area, where, roof := quantity.Area(0), []string{}, false
	for _, f := range e.plan.Faces {
		switch {
		case f.Spots != planner.Towel && f.Spots != planner.Seen:
		case f.Name == "roof":
			roof = true
		default:
			area += f.Area
			where = append(where, string(f.Name))
		}
	}
	count := int(math.Ceil(float64(area / TowelArea)))
	switch {
	case count > 0 && count < 1000:
		e.pack(Towels, say(fmt.Sprintf("Towels: %d or more", count)), say("%s to dry by hand: "+strings.Join(where, ", "), quantity.ValueOf(area)))
	case roof:
		e.pack(Towels, say("Towels: 2"), say("drips from the roof and the mirrors"))
	default:
		e.pack(Towels, say("Towels: 2"), say("drips from mirrors, rails and seams"))
	}
}
