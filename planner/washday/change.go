package washday

import (
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// Replaced is a wash whose steps beyond those that were come to are those of another
// plan: what was done stays, and faces that are done are not done again. A read step
// at hand stays; a flush that is past is not asked for again, except after new resin.
func Replaced(u model.Underway, s State, p planner.Plan, way string) model.Underway {
	keep := max(s.Far, s.At)
	if at := s.At; at < len(s.Steps) && keep == at && (s.Steps[at].Kind == model.Read && !ChangesResin(way) || s.Steps[at].Kind == model.SetUp) {
		keep++
	}
	done := map[model.DayStep]bool{}
	for i := range keep {
		done[taskOf(&u.Steps[i])] = true
	}
	var towels []model.DayStep
	steps := slices.Clone(u.Steps[:keep])
	for _, step := range Steps(p) {
		again := ChangesResin(way) && (step.Kind == model.Flush || step.Kind == model.Read)
		step.Since = quantity.Some(len(u.Deeds))
		switch {
		case step.Kind == model.SetUp:
		case done[taskOf(&step)] && !again:
			if step.Towel == model.Yes {
				towels = append(towels, byTowel(&step))
			}
		case step.Kind == model.PackUp:
			steps = append(append(steps, towels...), step)
		default:
			steps = append(steps, step)
		}
	}
	u.Steps = steps
	return u
}

// byTowel is the drying of a face whose water is on it already.
func byTowel(step *model.DayStep) model.DayStep {
	area := step.Area.Or(0)
	return model.DayStep{
		Kind: model.Work, Stage: "dry by towel", Face: step.Face, Sprayer: model.ByHand, Area: step.Area,
		Duration: quantity.Some(quantity.Duration(area / quantity.Area(planner.TowelRate))), Since: step.Since,
	}
}

// ChangesResin tells whether a way out puts new resin in the tank.
func ChangesResin(way string) bool { return way == planner.WayResin || way == planner.WayTwoFills }

// taskOf is what a step is about, whatever water and time it takes.
func taskOf(s *model.DayStep) model.DayStep {
	return model.DayStep{Kind: s.Kind, Stage: s.Stage, Face: s.Face}
}

// Hurried tells whether a flow is that of a flush run to waste faster than the bed can
// purify: no rinse follows at it.
func Hurried(u *model.Underway, step *model.DayStep, flow quantity.Flow) bool {
	limit, given := u.Outlook.Cap.Get()
	return given && step.Kind == model.Flush && flow > limit
}

// measured is the steps when deed n measured a flow in the step at hand: that step
// and, but for one [Hurried], those after it that draw the same water with the same sprayer
// run at it. A
// hand goes over a face in the same time, so the water changes; but no face gets
// less than what replaces its film.
func measured(u *model.Underway, s State, n int, flow quantity.Flow) []model.DayStep {
	if s.At >= len(s.Steps) || !(flow > 0) {
		return s.Steps
	}
	out, planned := slices.Clone(s.Steps), u.Steps
	at := out[s.At]
	if Hurried(u, &at, flow) {
		run(&out[s.At], &planned[s.At], flow)
		return out
	}
	for i := s.At; i < len(out); i++ {
		if step := &out[i]; step.Since.Or(0) <= n && sameWater(step, &at) {
			run(step, &planned[i], flow)
		}
	}
	return out
}

// throttled is the steps when deed n took a way out with the DI water at a flow: what of
// it was in the plan before runs no faster from then on.
func throttled(planned []model.DayStep, s State, n int, flow quantity.Flow) []model.DayStep {
	if !(flow > 0) {
		return s.Steps
	}
	out := slices.Clone(s.Steps)
	for i := s.At; i < len(out); i++ {
		if step := &out[i]; step.Since.Or(0) < n && step.Water == model.DI && step.Flow.Or(0) > flow {
			run(step, &planned[i], flow)
		}
	}
	return out
}

// DIFlow is the greatest flow of a plan's DI water; zero where none runs.
func DIFlow(p *planner.Plan) quantity.Flow {
	most := quantity.Flow(0)
	for i := range p.Stages {
		if s := &p.Stages[i]; s.Water == model.DI {
			most = max(most, s.Flow)
		}
	}
	return most
}

// FlowToCome is the flow of the DI water that is still to run, or of that which ran last
// where none is; zero where none ran at all.
func (s State) FlowToCome() quantity.Flow {
	draws := func(step *model.DayStep) bool { return step.Water == model.DI && step.Flow.Given() }
	for i := s.At; i < len(s.Steps); i++ {
		if draws(&s.Steps[i]) {
			return s.Steps[i].Flow.Or(0)
		}
	}
	for i := min(s.At, len(s.Steps)) - 1; i >= 0; i-- {
		if draws(&s.Steps[i]) && s.Done[i].Used > 0 {
			return s.Steps[i].Flow.Or(0)
		}
	}
	return 0
}

// sameWater tells whether two steps draw the same water with the same sprayer. The pen is
// read in the stream of whatever sprays, so a reading names none.
func sameWater(a, b *model.DayStep) bool {
	same := a.Sprayer == b.Sprayer || a.Kind == model.Read || b.Kind == model.Read
	return same && a.Bed == b.Bed && a.Softener == b.Softener && a.Flow.Given()
}

// run makes a step, planned so, run at a flow.
func run(step, planned *model.DayStep, flow quantity.Flow) {
	step.Flow = quantity.Some(flow)
	switch volume := planned.Volume.Or(0); {
	case volume <= 0:
	case step.Kind == model.Flush:
		step.Duration = quantity.Some(flow.Time(volume))
	default:
		volume = max(flow.Volume(planned.Duration.Or(0)), planned.Least.Or(0))
		step.Volume = quantity.Some(volume)
		step.Duration = quantity.Some(max(flow.Time(volume), planned.Duration.Or(0)))
	}
}
