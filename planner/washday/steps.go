// Package washday is a wash while it is done: the plan as steps, one after the
// other, and where it stands after what has been done so far. Nothing in it knows
// what time it is; the moments are handed in.
package washday

import (
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// Steps is a plan as one thing to do after the other. Each face goes through all its
// stages before the next one, so that no soap dries on it while the others are gone over:
// in the day's order where the plan knows the day, else as the plan lists them.
//
// The flush and its reading come before the first face that gets DI water is wetted at
// all, and not right before its DI water: a flush takes longer than a face may drip in
// the sun, and a no-go may cost an hour of new resin, while the face dries with what was
// in its rinse. The reading holds until then, for a bed is used up by the water that runs
// and not by the hour; what stands in it meanwhile is cleaned on, so it is good to rinse
// with. A new reading of it would be too low: see [State.Stands].
func Steps(p planner.Plan) []model.DayStep {
	steps := []model.DayStep{{Kind: model.SetUp, Stage: "set up"}}
	work := byFace(p)
	for i := range work {
		if s := &work[i]; s.Flow.Given() {
			steps[0].Water, steps[0].Softener, steps[0].Bed = s.Water, s.Softener, s.Bed
			break
		}
	}
	steps = append(steps, withFlush(p, work)...)
	return append(steps, model.DayStep{Kind: model.PackUp, Stage: "drain and pack"})
}

// byFace takes each face through all its stages.
func byFace(p planner.Plan) []model.DayStep {
	var steps []model.DayStep
	for _, side := range p.InTurn() {
		for i := range p.Stages {
			s := &p.Stages[i]
			if use, wets := useOf(s, side); wets {
				if s.Final {
					steps = append(steps, drip(p, side)...)
				}
				steps = append(steps, stepOf(p, s, use))
			}
		}
	}
	return dry(p, steps)
}

func useOf(s *planner.StagePlan, side model.Side) (planner.FaceUse, bool) {
	for _, use := range s.PerFace {
		if use.Side == side {
			return use, true
		}
	}
	return planner.FaceUse{}, false
}

func stepOf(p planner.Plan, s *planner.StagePlan, use planner.FaceUse) model.DayStep {
	step := model.DayStep{
		Kind: model.Work, Stage: s.Name, Face: use.Side, Water: s.Water, Sprayer: s.Sprayer,
		Area: quantity.Some(use.Area * quantity.Area(max(s.Passes, 0))), Duration: quantity.Some(min(use.Duration, quantity.Day)),
	}
	if s.Flow > 0 && use.Volume > 0 {
		step.Flow, step.Volume = quantity.Some(s.Flow), quantity.Some(use.Volume)
	}
	setValves(&step, s.Valves)
	if s.Final && s.Water == model.DI {
		step.Least = leastOn(p, use.Side)
	} else {
		step.Section = sectionOn(p, use)
	}
	return step
}

// leastOn is the water that replaces the film of a face.
func leastOn(p planner.Plan, side model.Side) quantity.Opt[quantity.Volume] {
	for _, f := range p.Faces {
		if f.Name == side && f.ToDilute > 0 {
			return quantity.Some(f.ToDilute)
		}
	}
	return quantity.Opt[quantity.Volume]{}
}

// sectionOn is the most of a face to soap and rinse at a time, where the day asks
// for less than the whole.
func sectionOn(p planner.Plan, use planner.FaceUse) quantity.Opt[quantity.Area] {
	if p.Day == nil {
		return quantity.Opt[quantity.Area]{}
	}
	turn, _ := p.Day.Start.Turn(use.Side)
	if most, given := turn.Section.Get(); given && most > 0 && most < use.Area {
		return quantity.Some(most)
	}
	return quantity.Opt[quantity.Area]{}
}

func setValves(step *model.DayStep, valves []planner.Valve) {
	for _, v := range valves {
		stands := model.No
		if v.Through {
			stands = model.Yes
		}
		if v.Unit == planner.BedUnit {
			step.Bed = stands
		} else {
			step.Softener = stands
		}
	}
}

// drip is the wait before a face's final rinse.
func drip(p planner.Plan, side model.Side) []model.DayStep {
	for _, f := range p.Faces {
		if f.Name == side && f.Pause > 0 {
			return []model.DayStep{{Kind: model.LetDry, Stage: "let it drip", Face: side, Duration: quantity.Some(f.Pause)}}
		}
	}
	return nil
}

// dry marks the last step of each face that is to be dried by towel. Nobody is sent
// onto a roof for it.
func dry(p planner.Plan, steps []model.DayStep) []model.DayStep {
	for _, f := range p.Faces {
		if f.Spots != planner.Towel || f.Name == model.Roof {
			continue
		}
		for i := len(steps) - 1; i >= 0; i-- {
			if steps[i].Face == f.Name {
				steps[i].Towel = model.Yes
				break
			}
		}
	}
	return steps
}

// withFlush puts the flush and its reading before the first stage of the first face that
// gets DI water.
func withFlush(p planner.Plan, steps []model.DayStep) []model.DayStep {
	first := slices.IndexFunc(steps, func(s model.DayStep) bool { return s.Water == model.DI })
	if first < 0 || p.Flush.Volume <= 0 {
		return steps
	}
	di := &steps[first]
	at := first
	for at > 0 && steps[at-1].Face == di.Face {
		at--
	}
	flush := model.DayStep{
		Kind: model.Flush, Stage: "flush", Water: model.DI, Sprayer: di.Sprayer, Softener: di.Softener, Bed: di.Bed, Flow: di.Flow,
		Volume: quantity.Some(p.Flush.Volume),
	}
	if p.Flush.Duration < quantity.Day {
		flush.Duration = quantity.Some(p.Flush.Duration)
	}
	read := model.DayStep{Kind: model.Read, Stage: "read the pen", Water: model.DI, Softener: di.Softener, Bed: di.Bed, Flow: di.Flow}
	return slices.Insert(steps, at, flush, read)
}
