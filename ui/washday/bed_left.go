package washday

import (
	"fmt"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

// bedLeftWords say what is left in the bed at the flow that ran last, as it stood on the
// screen until then, and whether that does for the whole wash once more.
func (m Model) bedLeftWords(plan planner.Plan) string {
	last, _ := m.wholeWash(plan, m.flowToCome())
	left, at, again := last.Bed.Remaining, m.atFlow(m.flowToCome()), "; "+m.againWords(plan)
	show := func(v quantity.Volume) string { return quantity.Show(v, m.sys) }
	switch {
	case left.P90 <= 0:
		return "Left in the bed: most likely nothing" + at + again
	case left.P50 <= 0:
		return "Left in the bed: as likely as not nothing" + at + ", one time in ten " + show(left.P90) + " or more" + again
	}
	return fmt.Sprintf("Left in the bed: about %s%s (%s)%s", show(left.P50), at, report.EightInTen(left, m.sys), again)
}

// againWords are the chance of the wash as it was planned, at its planned flow and however
// much of it was done.
func (m Model) againWords(plan planner.Plan) string {
	flow := m.u.Plan.PlannedFlow.Or(plan.Sprayer.Flow)
	whole, takes := m.wholeWash(plan, flow)
	return fmt.Sprintf("the whole wash again (%s of DI water%s): chance %s.", quantity.Show(takes, m.sys), m.atFlow(flow), report.Odds(whole.Bed.ChanceLasts))
}

// wholeWash is what the bed makes of the wash as it was planned, at a flow, and the DI water
// of it; where its plan told no gallons, of the wash as it would be planned now.
func (m Model) wholeWash(plan planner.Plan, flow quantity.Flow) (planner.Plan, quantity.Volume) {
	if planned, told := m.u.Plan.PlannedDI.Get(); told && planned > 0 {
		if whole, err := m.o.Rest(m.o.Rig, m.o.Places, m.o.Wash, 0, planned, flow); err == nil {
			return whole, planned
		}
	}
	return plan, plan.DI.Volume + plan.Flush.Volume
}
