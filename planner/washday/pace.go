package washday

import (
	"washeve/model"
	"washeve/model/quantity"
)

// Pace is how fast a hand went over the body in one stage, and how fast was planned.
type Pace struct {
	Stage         string
	Done, Planned quantity.Coverage
}

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
