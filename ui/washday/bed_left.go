package washday

import (
	"fmt"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

// bedLeftWords say what is left in the bed, and whether that does for the whole wash once
// more.
func (m Model) bedLeftWords(plan planner.Plan) string {
	left, again := plan.Bed.Remaining, "; "+m.againWords(plan)
	show := func(v quantity.Volume) string { return quantity.Show(v, m.sys) }
	switch {
	case left.P90 <= 0:
		return "Left in the bed: most likely nothing" + again
	case left.P50 <= 0:
		return "Left in the bed: as likely as not nothing, one time in ten " + show(left.P90) + " or more" + again
	}
	return fmt.Sprintf("Left in the bed: about %s (%s)%s", show(left.P50), report.EightInTen(left, m.sys), again)
}

// againWords are the chance of the wash as it was planned, however much of it was done;
// where its plan told no gallons, of the wash as it would be planned now.
func (m Model) againWords(plan planner.Plan) string {
	takes := plan.DI.Volume + plan.Flush.Volume
	if planned, told := m.u.Plan.PlannedDI.Get(); told && planned > 0 {
		whole, err := m.o.Rest(m.o.Rig, m.o.Places, m.o.Wash, 0, planned, m.u.Plan.PlannedFlow.Or(plan.Sprayer.Flow))
		if err == nil {
			plan, takes = whole, planned
		}
	}
	return fmt.Sprintf("the whole wash again (%s of DI water): chance %s.", quantity.Show(takes, m.sys), report.Odds(plan.Bed.ChanceLasts))
}
