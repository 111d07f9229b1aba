package compare

import (
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/rinse"
)

// mostSprayers is how many other sprayers are worth a column each.
const mostSprayers = 3

// sprayerWays give the DI stages another sprayer of the rig, or an open hose.
func sprayerWays(base Case, f Figures) []Way {
	now := f.Plan.Sprayer.Name
	hose := f.tool(base) == model.OpenHose
	var ways []Way
	for _, s := range base.Rig.Sprayers {
		if strings.EqualFold(s.Name, now) || len(ways) == mostSprayers {
			continue
		}
		hose = hose || s.Tool == model.OpenHose
		ways = append(ways, spraying(s, "by "+s.Name))
	}
	if !hose {
		open := model.Sprayer{Name: "open hose", Tool: model.OpenHose}
		if model.Find(base.Rig.Names("sprayer"), open.Name) >= 0 {
			open.Name = "hose, wide open"
		}
		ways = append(ways, spraying(open, "by open hose"))
	}
	return ways
}

// tool is the kind of the sprayer that the DI water runs through.
func (f *Figures) tool(c Case) model.Tool {
	for _, s := range c.Rig.Sprayers {
		if strings.EqualFold(s.Name, f.Plan.Sprayer.Name) {
			return s.Tool
		}
	}
	return model.PressureWasher
}

func spraying(s model.Sprayer, name string) Way {
	key := "sprayer-" + strings.ReplaceAll(strings.ToLower(s.Name), " ", "-")
	if s.Tool == model.OpenHose {
		key = "open-hose"
	}
	return Way{
		Key: key, Name: name, Changes: "The DI stages from " + s.Name + "; the other stages as planned.",
		idle: "the DI water comes from it already",
		change: func(c *Case) {
			c.own(s)
			if c.Trip != nil {
				c.Trip.Sprayer = s.Name
				return
			}
			c.stated()
			rinse.SprayedBy(c.Wash.Stages, s.Name)
		},
	}
}

// own puts a sprayer into the rig where it is not there. One that states none
// keeps the usual one for the stages that name none.
func (c *Case) own(s model.Sprayer) {
	if len(c.Rig.Sprayers) == 0 {
		c.Rig.Sprayers = []model.Sprayer{{Name: "small pressure washer", Tool: model.PressureWasher}}
	}
	if model.Find(c.Rig.Names("sprayer"), s.Name) < 0 {
		c.Rig.Sprayers = append(c.Rig.Sprayers, s)
	}
}

// dripping is a longer drip before the final rinse.
func dripping(f Figures, o Options) Way {
	pause := o.Drip.Or(f.Plan.Drip.Longer)
	w := Way{
		Key: "drip", Name: "drip " + quantity.Show(pause, quantity.US), Changes: "The vehicle drips " + quantity.Show(pause, quantity.US) + " before the final rinse, so that less film is left to replace.",
		change: func(c *Case) { *c.pause() = quantity.Some(pause) }, knob: Drip,
	}
	if pause == f.Plan.Drip.Pause && !o.Drip.Given() {
		w.same = "the plan drips as long"
	}
	return w
}

// targeting is another target in the film.
func targeting(f Figures, o Options) Way {
	target := quantity.PPM(seenFrom(f.Plan.Target.Number), f.Plan.Target.Scale)
	if given, ok := o.Target.Get(); ok {
		target = given.WithScale(f.Plan.Target.Scale)
	}
	w := Way{
		Key: "target", Name: "target " + quantity.Round(target.Number) + " ppm", Changes: "The film may carry " + target.String() + " when it dries.",
		change: func(c *Case) { *c.target() = quantity.Some(target) }, knob: Target,
	}
	if target == f.Plan.Target && !o.Target.Given() {
		w.same = "it is the plan's target"
	}
	return w
}

// seen is the ppm from which spots are seen. PRACTICE, as in the planner's bands.
const seen = 25

// seenFrom is the band of spots next to a target: 25 ppm, where spots begin to
// be seen, or 10 where the target is that high already.
func seenFrom(target float64) float64 {
	if target < seen {
		return seen
	}
	return planner.UsualTarget
}
