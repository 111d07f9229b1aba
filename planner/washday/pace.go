package washday

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/learning"
)

// Pace is how fast a hand went over the body in one stage, and how fast was planned.
type Pace struct {
	Stage         string
	Done, Planned quantity.Coverage
}

// Counts tells whether it is near enough to the planned one to be a pace: what is far
// off is a step that was cut short or left running, and no plan learns from it.
func (p Pace) Counts() bool { return learning.IsPace(p.Done, p.Planned) }

// Paces are those of the stages of which all the time that was spent was taken, in
// order.
func (s State) Paces() []Pace {
	type sums struct {
		area           quantity.Area
		spent, planned quantity.Duration
	}
	var stages []string
	all := map[string]sums{}
	for i := range s.Steps {
		step, done := &s.Steps[i], s.Done[i]
		if step.Kind != model.Work || !done.Passed || done.Skipped || done.Spent <= 0 || !step.Timed() {
			continue
		}
		sum, known := all[step.Stage]
		if !known {
			stages = append(stages, step.Stage)
		}
		sum.area, sum.spent, sum.planned = sum.area+step.Area.Or(0), sum.spent+done.Spent, sum.planned+step.Duration.Or(0)
		all[step.Stage] = sum
	}
	var paces []Pace
	for _, stage := range stages {
		if sum := all[stage]; sum.area > 0 {
			over := func(d quantity.Duration) quantity.Coverage { return quantity.Coverage(float64(sum.area) / float64(d)) }
			paces = append(paces, Pace{Stage: stage, Done: over(sum.spent), Planned: over(sum.planned)})
		}
	}
	return paces
}
