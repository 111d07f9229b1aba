package compare

import (
	"slices"
	"strings"

	"washeve/model"
)

// diWays are DI water for every stage, or for the last rinse only.
func diWays(base Case) []Way {
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

func byHand(s model.Stage) bool { return strings.EqualFold(s.Sprayer, model.ByHand) }

func diForAll(c *Case) {
	c.stated()
	for i := range c.Wash.Stages {
		if s := &c.Wash.Stages[i]; !byHand(*s) {
			s.Water = model.DI
		}
	}
}

func diForLast(c *Case) {
	c.stated()
	stages := c.Wash.Stages
	last := lastRinse(stages)
	other := model.Raw
	if c.softener() {
		other = model.Softened
	}
	for i := range stages {
		switch {
		case i == last:
			stages[i].Water = model.DI
		case stages[i].Water == model.DI:
			stages[i].Water = other
		}
	}
}

// lastRinse is the stage that dries: the last final one, else the last with DI
// water, else the last.
func lastRinse(stages []model.Stage) int {
	last := -1
	for i, s := range stages {
		if s.Final || s.Water == model.DI && (last < 0 || !stages[last].Final) {
			last = i
		}
	}
	if last < 0 {
		return len(stages) - 1
	}
	return last
}
