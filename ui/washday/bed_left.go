package washday

import (
	"fmt"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

// bedLeftWords say what is left in the bed, and whether that does for such a wash.
func (m Model) bedLeftWords(plan planner.Plan) string {
	left, again := plan.Bed.Remaining, "; a wash like this again: chance "+report.Odds(plan.Bed.ChanceLasts)+"."
	show := func(v quantity.Volume) string { return quantity.Show(v, m.sys) }
	switch {
	case left.P90 <= 0:
		return "Left in the bed: most likely nothing" + again
	case left.P50 <= 0:
		return "Left in the bed: as likely as not nothing, one time in ten " + show(left.P90) + " or more" + again
	}
	return fmt.Sprintf("Left in the bed: about %s (%s)%s", show(left.P50), report.EightInTen(left, m.sys), again)
}
