package picture

import (
	"washeve/planner"
	"washeve/ui/theme"
)

// Verdict is how a verdict is marked.
func Verdict(th theme.Theme, v planner.Verdict) (mark string, ink theme.Ink) {
	switch v {
	case planner.Lasts:
		return th.Marks.Good, th.Good
	case planner.Tight:
		return th.Marks.Doubt, th.Doubt
	}
	return th.Marks.Bad, th.Bad
}
