package planner

import (
	"washeve/model"
	"washeve/model/quantity"
)

// Rest looks at the bed in the middle of a wash: with DI water that has run and is
// not in the log yet, and what is still to run, both at one flow. It is the bed's
// outlook for what is left of the job; its Remaining counts from now on.
func (m *Memory) Rest(rig model.Rig, places model.Places, wash model.Wash, ran, left quantity.Volume, flow quantity.Flow) (Plan, error) {
	made, err := begin(rig, places, wash, m.sources(Setting{}))
	if err != nil {
		return Plan{}, err
	}
	ask := made.ask
	ask.main, ask.volume, ask.uses = flow, ran+left, nil
	if ask.volume > 0 && flow > 0 {
		ask.uses = []diUse{{flow, ask.volume}}
	}
	made.answer()
	p := &made.plan
	p.Bed = made.resin.foresee(made.before, ask)
	for _, v := range []*quantity.Volume{&p.Bed.Remaining.P10, &p.Bed.Remaining.P50, &p.Bed.Remaining.P90} {
		*v = max(*v-ran, 0)
	}
	p.Verdict = made.verdict(p.Bed.ChanceLasts)
	made.account()
	return *p, nil
}
