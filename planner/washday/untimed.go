package washday

import (
	"washeve/model"
	"washeve/model/quantity"
)

// Spent is the time that was taken of all steps.
func (s State) Spent() quantity.Duration {
	total := quantity.Duration(0)
	for i := range s.Done {
		total += s.Done[i].Spent
	}
	return total
}

// Untimed counts the steps that were gone on from as done with no time taken, though they
// take some, and adds up the water that they are counted with as planned. Where there are
// any, the water and the time of the wash are not of the same steps: one over the other
// is no pace.
func (s State) Untimed() (steps int, used quantity.Volume) {
	for i := range s.Steps {
		step, done := &s.Steps[i], s.Done[i]
		if done.Spent > 0 || !done.Passed || done.Skipped || !step.Timed() || step.Kind == model.LetDry {
			continue
		}
		steps++
		used += done.Used
	}
	return steps, used
}
