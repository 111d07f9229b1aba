package compare

import (
	"slices"

	"washeve/model"
	"washeve/planner/rinse"
)

// diWays are DI water for every stage, or for the last rinse only.
func diWays(base Case) []Way {
	if base.Trip != nil {
		return diWaysOfTrip()
	}
	return []Way{
		{
			Key: "di-all", Name: "DI for all", Changes: "DI water in every stage that is sprayed, not only where the plan has it.",
			change: diForAll, same: unless(changes(base, diForAll), "every sprayed stage has DI water already"),
		},
		{
			Key: "di-last", Name: "DI last rinse only", Changes: "DI water in the final rinse only; the other stages get the softened or the raw water.",
			change: diForLast, same: unless(changes(base, diForLast), "DI water is for the last rinse only already"),
		},
	}
}

// diWaysOfTrip are the same for all washes of a trip; that they come to the same is
// seen by their figures.
func diWaysOfTrip() []Way {
	return []Way{
		{
			Key: "di-all", Name: "DI for all", Changes: "DI water in every stage that is sprayed, of every wash.",
			change: diForAll, idle: "every sprayed stage has DI water already",
		},
		{
			Key: "di-last", Name: "DI last rinse only", Changes: "DI water in the final rinse only, of every wash; the other stages get the softened or the raw water.",
			change: diForLast, idle: "DI water is for the last rinse only already",
		},
	}
}

func unless(ok bool, why string) string {
	if ok {
		return ""
	}
	return why
}

// changes tells whether a change moves the water of any stage.
func changes(base Case, change func(*Case)) bool {
	before, after := base.clone(), base.clone()
	before.stated()
	change(&after)
	return !slices.EqualFunc(before.Wash.Stages, after.Wash.Stages, func(a, b model.Stage) bool { return a.Water == b.Water })
}

func diForAll(c *Case) {
	if c.Trip != nil {
		c.Trip.DIFor = model.DIForAll
		return
	}
	c.stated()
	rinse.DIForAll(c.Wash.Stages)
}

func diForLast(c *Case) {
	if c.Trip != nil {
		c.Trip.DIFor = model.DIForLast
		return
	}
	c.stated()
	rinse.DIForLast(c.Wash.Stages, c.softener())
}
