package washday

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/water"
)

// Tally is the water of a wash so far.
type Tally struct{ DI, Softened, Raw quantity.Volume }

// Tally adds the steps up by water. The flush is DI water: it goes through the bed.
func (s State) Tally(u *model.Underway) Tally {
	var t Tally
	for i := range u.Steps {
		switch u.Steps[i].Water {
		case model.DI:
			t.DI += s.Done[i].Used
		case model.Softened:
			t.Softened += s.Done[i].Used
		case model.Raw:
			t.Raw += s.Done[i].Used
		}
	}
	return t
}

// ToRun is the DI water that the steps still ask for, the one at hand included.
func (s State) ToRun(u *model.Underway) quantity.Volume {
	total := quantity.Volume(0)
	for i := s.At; i < len(u.Steps); i++ {
		if u.Steps[i].Water == model.DI {
			total += max(u.Steps[i].Volume.Or(0)-s.Done[i].Used, 0)
		}
	}
	return total
}

// Left is what the bed still gives: what it was thought to give when it was last
// looked at, less the DI water since then. False where nothing was thought.
func (s State) Left(u *model.Underway) (planner.Band[quantity.Volume], bool) {
	o := &u.Outlook
	since := s.Tally(u).DI - o.After.Or(0)
	less := func(v quantity.Opt[quantity.Volume]) quantity.Volume { return max(v.Or(0)-since, 0) }
	return planner.Band[quantity.Volume]{P10: less(o.Low), P50: less(o.Mid), P90: less(o.High)}, o.Mid.Given()
}

// Gate is what the pen says before the final rinse.
type Gate string

// The gates.
const (
	NoGate  Gate = ""        // the step at hand is none
	AskPen  Gate = "reading" // nothing was read yet
	Go      Gate = "go"
	NoGo    Gate = "no-go"
	GoAlong Gate = "go all the same" // over the limit, and accepted
)

// Gate compares the reading with the limit, on the limit's scale.
func (s State) Gate(u *model.Underway) Gate {
	if s.At >= len(u.Steps) || u.Steps[s.At].Kind != model.Read {
		return NoGate
	}
	reading, read := s.Reading.Get()
	limit, limited := u.Limit.Get()
	switch {
	case s.Accepted:
		return GoAlong
	case !read:
		return AskPen
	case !limited || ppmOn(limit.Scale, reading) <= limit.Number:
		return Go
	}
	return NoGo
}

// ppmOn is a reading on another scale; one that names none is on that one.
func ppmOn(scale quantity.Scale, r quantity.Reading) float64 {
	if r.Scale == scale || r.Scale == quantity.ScaleUnsaid {
		return r.Number
	}
	return water.PPM(water.Conductivity(r, scale), scale).Number
}

// The ways out of a no-go beside those of a short bed; see [planner.WayOut].
const (
	WaySoftened = "softened" // softened water and a towel on all that is left
)

// asksAgain tells whether the pen is to be read again after a way out.
func asksAgain(way string) bool {
	switch way {
	case planner.WaySlower, planner.WayCap, planner.WayResin, planner.WayTwoFills:
		return true
	}
	return false
}

// Replaced is a wash whose steps from the one at hand on are those of another
// plan: what was done stays, and faces that are done are not done again. A read
// step at hand stays; a flush that is past is not asked for again, except after
// new resin.
func Replaced(u model.Underway, s State, p planner.Plan, way string) model.Underway {
	done := map[model.Side]map[string]bool{}
	for i := range s.At {
		step := &u.Steps[i]
		if done[step.Face] == nil {
			done[step.Face] = map[string]bool{}
		}
		done[step.Face][step.Stage] = true
	}
	keep := s.At
	if keep < len(u.Steps) && (s.Done[keep].Spent > 0 || u.Steps[keep].Kind == model.Read || u.Steps[keep].Kind == model.SetUp) {
		keep++ // it is being done: only its flow may change
	}
	steps := append([]model.DayStep(nil), u.Steps[:keep]...)
	for _, step := range Steps(p) {
		switch {
		case step.Kind == model.SetUp, done[step.Face][step.Stage]:
			continue
		case (step.Kind == model.Flush || step.Kind == model.Read) && way != planner.WayResin && passed(steps, step.Kind):
			continue
		case keep > s.At && step.Kind == u.Steps[s.At].Kind && step.Stage == u.Steps[s.At].Stage && step.Face == u.Steps[s.At].Face:
			steps[s.At].Flow = step.Flow
			continue
		}
		steps = append(steps, step)
	}
	u.Steps = steps
	return u
}

func passed(steps []model.DayStep, kind model.StepKind) bool {
	for i := range steps {
		if steps[i].Kind == kind {
			return true
		}
	}
	return false
}

// Measured is the steps when a flow was measured in the step at hand: that step and
// those after it that draw the same water with the same sprayer run at it. A hand
// goes over a face in the same time, so the water changes.
func Measured(steps []model.DayStep, s State, flow quantity.Flow) []model.DayStep {
	out := append([]model.DayStep(nil), steps...)
	if s.At >= len(out) {
		return out
	}
	at := out[s.At]
	for i := s.At; i < len(out); i++ {
		step := &out[i]
		if step.Sprayer != at.Sprayer || step.Bed != at.Bed || step.Softener != at.Softener || !step.Flow.Given() {
			continue
		}
		step.Flow = quantity.Some(flow)
		switch {
		case step.Kind == model.Flush:
			step.Duration = quantity.Some(flow.Time(step.Volume.Or(0)))
		case step.Volume.Given():
			step.Volume = quantity.Some(quantity.Volume(float64(flow) * float64(step.Duration.Or(0))))
		}
	}
	return out
}
