package washday

import (
	"washeve/model"
	"washeve/model/quantity"
)

// lookAtBed asks the planner what the bed still gives, by the log as it stands and
// the flow of the DI water to come, and keeps the answer.
func (m Model) lookAtBed() Model {
	if m.err != nil || m.state.Over {
		return m
	}
	tally := m.state.Tally()
	flow := m.flowToCome()
	plan, err := m.o.Rest(m.o.Rig, m.o.Places, m.o.Wash, m.unlogged(), m.state.ToRun().DI, flow)
	if err != nil {
		return m.warn("The bed could not be looked at: " + err.Error())
	}
	before := m.u.Outlook.SoFar
	m.u.Outlook = outlookOf(plan, tally.DI, flow)
	m.u.Outlook.SoFar = before
	m.odd, m.high = m.oddIn(&plan), plan.ReadHigh
	return m.catchUp()
}

// unlogged is the DI water that has run and is not in the log yet: of the step at hand.
func (m Model) unlogged() quantity.Volume {
	if m.o.Rehearsal {
		return m.state.Tally().DI
	}
	if s := m.step(); s != nil && s.Water == model.DI {
		return m.done().Used
	}
	return 0
}

// flowToCome is the flow of the DI water that is still to run, or of that which ran last.
func (m Model) flowToCome() quantity.Flow {
	if f := m.state.FlowToCome(); f > 0 {
		return f
	}
	return m.u.Plan.PlannedFlow.Or(0)
}

// atFlow says at which flow a bed gives what is left: another one gets more out of it, or
// less. It is "" where that is not known.
func (m Model) atFlow(f quantity.Flow) string {
	if f <= 0 {
		return ""
	}
	return " at " + quantity.Show(f, m.sys)
}
