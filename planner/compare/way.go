// Package compare sets ways of doing the same wash, or the same trip, side by side:
// what each takes of water, time, resin, salt and money, how surely it ends well, and
// which is best in what. Every number comes from the one planner: a way is a change on
// the nouns, planned like any other wash.
package compare

import (
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// Case is all that a wash is planned from; or a trip, and then the wash says nothing.
type Case struct {
	Rig     model.Rig
	Places  model.Places
	Wash    model.Wash
	Trip    *model.Trip // nil for a wash
	Setting planner.Setting
}

// clone shares nothing that a change reaches.
func (c Case) clone() Case {
	c.Rig.Beds, c.Rig.Sprayers = slices.Clone(c.Rig.Beds), slices.Clone(c.Rig.Sprayers)
	c.Wash.Stages = slices.Clone(c.Wash.Stages)
	for i := range c.Wash.Stages {
		c.Wash.Stages[i].Faces = slices.Clone(c.Wash.Stages[i].Faces)
	}
	if c.Trip != nil {
		trip := c.Trip.Clone()
		c.Trip = &trip
	}
	return c
}

// pause, target and bed are where the case states them: in the trip, for all of its
// washes, or in the wash.
func (c *Case) pause() *quantity.Opt[quantity.Duration] {
	if c.Trip != nil {
		return &c.Trip.Pause
	}
	return &c.Wash.Pause
}

func (c *Case) target() *quantity.Opt[quantity.Reading] {
	if c.Trip != nil {
		return &c.Trip.Target
	}
	return &c.Wash.Target
}

func (c *Case) bed() *string {
	if c.Trip != nil {
		return &c.Trip.Bed
	}
	return &c.Wash.Bed
}

// softener tells whether one stands in this wash.
func (c *Case) softener() bool {
	return len(c.Rig.Softeners) > 0 && model.Find([]string{model.NoSoftener}, c.Wash.Softener) < 0
}

// stated gives the wash the usual stages where it states none, so that they can
// be changed.
func (c *Case) stated() {
	if len(c.Wash.Stages) == 0 {
		c.Wash.Stages = planner.UsualStages(c.Rig, c.Wash)
	}
}

// Way is one way of doing the wash or the trip.
type Way struct {
	Key     string   // never changes: "double-tank"
	Name    string   // a few words, for the head of a column
	Changes string   // what is done otherwise, in a sentence
	Tells   []string // what to know beside the numbers
	// Buys is what the rig does not have: the way can be made the plan once it is
	// put into the rig. Only is why it cannot be made the plan by an edit, and Instead
	// what to do then. All are empty where it can.
	Buys, Only, Instead string

	Case    Case
	Figures Figures

	change func(*Case)
	same   string // why there is nothing to compare
	idle   string // the same, where the way comes to what is planned
	knob   Knob
}

// Skipped is a way that is not compared, and why.
type Skipped struct{ Key, Name, Why string }

// noun is what is compared.
func (c *Case) noun() string {
	if c.Trip != nil {
		return "trip"
	}
	return "wash"
}

// Apply makes the change on another case.
func (w Way) Apply(c Case) Case {
	c = c.clone()
	if w.change != nil {
		w.change(&c)
	}
	return c
}

// waysOf lists the ways against a base, which comes first. The base's own plan
// says which bed, waters and times it has.
func waysOf(base Case, f Figures, o Options) []Way {
	ways := []Way{{Key: "plan", Name: "as planned", Changes: "The " + base.noun() + " as it stands."}}
	ways = append(ways, diWays(base)...)
	ways = append(ways, sprayerWays(base, f)...)
	ways = append(ways, bedWays(base, f)...)
	ways = append(ways, resinWays(base, f)...)
	ways = append(ways, softenerWays(base, f)...)
	return append(ways, purified(o), dripping(f, o), targeting(f, o))
}
