package packing

import (
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/bed"
	"washeve/planner/tag"
)

// FrostMargin is how far over freezing a forecast low still asks for empty
// hoses: forecasts are for air well above the ground, which is colder on a clear
// night. PRACTICE: 2 K.
const FrostMargin = 2 * quantity.Kelvin

// prepare is what takes hours, or somebody else's leave.
func (e *evening) prepare() {
	e.todo(Ask, say("Ask whether washing and run-off are allowed at "+name(e.plan.Place, "the place")),
		say("local rules come first"))
	e.regenerate()
	if e.uses.bed && e.plan.Verdict == planner.WillNotLast {
		e.todo(Change, say("Change the resin in "+e.bedName()+", %s, or plan DI for fewer faces", e.plan.Bed.Resin.AsResin()),
			say("this fill is not likely to last: it has about %s left", quantity.ValueOf(e.plan.Bed.Remaining.P50)))
	}
	if e.place != nil && (e.place.Supply == model.Pump || e.place.OnHand.Given()) {
		e.fill(*e.place)
	}
}

// regenerate comes first where it is needed: it takes an hour or more.
func (e *evening) regenerate() {
	s := e.plan.Softener
	if s == nil || s.Lasts || !e.uses.softener {
		return
	}
	what := say("Regenerate the " + name(s.Name, "softener"))
	if e.softener != nil {
		what = e.salted(what.Format)
	}
	why := say("it has %s left, and the wash sends %s through it", quantity.ValueOf(s.Remaining), quantity.ValueOf(s.Takes))
	if whole := quantity.Load(e.plan.Raw.Hardness).Supply(s.Capacity); whole < s.Takes {
		why.Format += "; fresh it gives %s, so pre-rinse with raw water"
		why.Values = append(why.Values, quantity.ValueOf(whole))
	}
	e.todo(Regenerate, what, why)
}

// salted says how much salt a regeneration takes, where the volume of the resin tells.
func (e *evening) salted(what string) tag.Note {
	resin, sized := e.softener.Resin.Get()
	if !sized {
		return say(what + " with salt (how much is " + planner.NeedsVolume + "), and rinse the brine out")
	}
	salt := quantity.Mass(float64(e.softener.Salt.Or(bed.UsualSalt)) * float64(resin))
	return say(what+" with %s of salt"+either(e.softener.Salt.Given(), "", " (the usual dose)")+", and rinse the brine out", quantity.ValueOf(salt))
}

func (e *evening) fill(place model.Place) {
	p := e.plan
	all := p.DI.Volume + p.Soft.Volume + p.Untreated.Volume + p.Flush.Volume
	why := say("the pump draws from it")
	if onHand, given := place.OnHand.Get(); given {
		why = say("%s on hand was stated", quantity.ValueOf(onHand))
		if onHand < all {
			why = say("%s on hand was stated: that is not enough", quantity.ValueOf(onHand))
		}
	}
	e.todo(Fill, say("Fill the water tank: the wash takes %s in all", quantity.ValueOf(all)), why)
}

// tanks are drained before they are lifted, and everything before a frost.
func (e *evening) tanks() {
	var names []string
	if e.uses.softener {
		names = append(names, e.softenerName())
	}
	if e.uses.bed {
		names = append(names, e.bedName())
	}
	if len(names) == 0 {
		return
	}
	what := names[0]
	if len(names) > 1 {
		what += " and " + names[1]
	}
	e.todo(Drain, say("Drain "+what+" before lifting"), say("a wet tank of resin is heavy: release the pressure first, lift with two"))
	if low, given := e.wash.Low.Get(); given && low <= quantity.Celsius(0)+FrostMargin {
		e.todo(Frost, say("Empty hoses, pump and sprayer, and keep the tanks indoors tonight"), say("the low is %s", quantity.ValueOf(low)))
	}
}

func (e *evening) bedName() string { return name(e.plan.BedName, "the DI bed") }

func (e *evening) softenerName() string {
	if e.plan.Softener == nil {
		return "the softener"
	}
	return name(e.plan.Softener.Name, "the softener")
}

// warned tells whether the plan warns of something.
func (e *evening) warned(code string) bool {
	return slices.ContainsFunc(e.plan.Warnings, func(n tag.Note) bool { return n.Code == code })
}
