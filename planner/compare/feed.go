package compare

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/rinse"
	"washeve/planner/water"
)

// What softening does and does not do for a bed, told with each way that is
// about it.
const (
	sameLoad = "The load on the DI bed is the same with salt or without, softener or none: softening swaps calcium and magnesium for sodium, equivalent for equivalent, and spares no resin. What spares the bed is DI for the last rinse only."
	softened = "What it does change: the water of the stages before, which leaves scale when it is hard and salt that wipes off when it is soft, and the soap it takes; the salt and the weight; and a little how fast the bed exchanges, since sodium gets to the beads quicker than calcium."
)

// softenerWays are the softener with fresh salt, and none.
func softenerWays(base Case, f Figures) []Way {
	s := f.Plan.Softener
	salted := Way{
		Key: "salted", Name: "softener salted", Changes: "The softener is regenerated with salt before the " + base.noun() + ".", Tells: []string{sameLoad, softened},
		Only: "salt goes into the log", Instead: "write the salt down on the Bed screen, when the softener is regenerated",
		change: func(c *Case) { c.Setting.Salted = true },
	}
	none := Way{
		Key: "no-softener", Name: "no softener", Changes: "The softener is left out; its stages get the raw water, and so does the bed.", Tells: []string{sameLoad, softened},
		change: unsoftened,
	}
	if s == nil {
		salted.same, none.same = "there is no softener in this wash", "there is none in this wash"
	} else if s.Remaining >= s.Whole {
		salted.same = "it is freshly regenerated"
	}
	return []Way{salted, none}
}

func unsoftened(c *Case) {
	if c.Trip != nil {
		c.Trip.Softener = model.NoSoftener
		return
	}
	c.stated()
	c.Wash.Softener = model.NoSoftener
	rinse.Unsoftened(c.Wash.Stages)
}

// purified is a membrane ahead of the bed that holds back a part of the ions.
func purified(o Options) Way {
	rejected := o.Rejected.Or(water.UsualRejection)
	share := quantity.Show(rejected, quantity.US)
	return Way{
		Key: "purified", Name: share + " purified", Changes: "The bed's feed is partly purified: a membrane ahead of it holds back " + share + " of the ions (PRACTICE: 90 to 98 % when new). The other stages as planned.",
		Tells: []string{
			"Not counted: the membrane's own price, weight and waste water. Most give less than the sprayer draws, so that the water has to be made ahead and stored. Carbon dioxide passes it, and loads the bed as before.",
		},
		Only:    "a rig has no membrane to state, it is only compared",
		Instead: "state the water behind a membrane as a place of its own, with the TDS that a pen shows there, and name that place",
		change:  func(c *Case) { c.Setting.Rejected = rejected }, knob: Rejected,
	}
}
