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
	plan, err := m.o.Rest(m.o.Rig, m.o.Places, m.o.Wash, m.unlogged(), m.state.ToRun().DI, m.flowToCome())
	if err != nil {
		return m.warn("The bed could not be looked at: " + err.Error())
	}
	before := m.u.Outlook.SoFar
	m.u.Outlook = outlookOf(plan, tally.DI)
	m.u.Outlook.SoFar = before
	m.odd = m.oddIn(&plan)
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

// flowToCome is the flow of the DI water that is still to run.
func (m Model) flowToCome() quantity.Flow {
	for i := m.state.At; i < len(m.state.Steps); i++ {
		if s := &m.state.Steps[i]; s.Water == model.DI && s.Flow.Given() {
			return s.Flow.Or(0)
		}
	}
	return m.u.Plan.PlannedFlow.Or(0)
}
