package plan

import (
	"washeve/model"
	"washeve/planner"
	"washeve/ui/entry"
)

// usualSprayer is the one that the plan assumes where the rig has none, with the flow as a
// person would state it; false where nothing is assumed.
func (m *Model) usualSprayer() (model.Sprayer, bool) {
	if !m.planned || len(m.now.rig.Sprayers) > 0 || m.plan.Sprayer.Name == model.ByHand {
		return model.Sprayer{}, false
	}
	return model.Sprayer{
		Name: m.plan.Sprayer.Name, Tool: model.PressureWasher, Flow: entry.Stated(planner.UsualFlow, m.sys),
	}, true
}

// takesUsual makes the assumed sprayer the person's own and states it on the line that is
// picked for, where that is what is picked.
func (m Model) takesUsual(picked string) (Model, bool) {
	usual, ok := m.usualSprayer()
	if !ok || m.editAt.key != "sprayer" || picked != usual.Name {
		return m, false
	}
	w := m.now.clone()
	w.rig.Sprayers = append(w.rig.Sprayers, usual)
	if err := w.set(m.editAt, usual.Name); err != nil {
		return m.warn(err.Error()), true
	}
	return m.commit(w), true
}
