package sheet

import (
	"fmt"
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/washday"
	"washeve/ui/cells"
	"washeve/ui/report"
)

// stepsOf lists the stages. The reading is due before the first with DI water.
func stepsOf(p planner.Plan, sys quantity.System) []Step {
	out := make([]Step, len(p.Stages))
	gated := false
	for i, st := range p.Stages {
		s := Step{
			ID: fmt.Sprintf("step-%d", i+1), Number: i + 1, Name: cells.Safe(st.Name),
			Water: report.WaterName(st.Water), water: st.Water, Faces: report.Faces(st.Faces), Sprayer: cells.Safe(st.Sprayer),
			Flow: quantity.Show(st.Flow, sys), Volume: quantity.Show(st.Volume, sys), Time: report.Time(st.Duration),
			Dry: st.Flow == 0 && st.Volume == 0, Gate: st.Water == model.DI && !gated,
		}
		for _, v := range st.Valves {
			s.Valves = append(s.Valves, Valve{v.Unit, v.Through})
		}
		gated = gated || s.Gate
		out[i] = s
	}
	return out
}

// usual says what holds for every step that says nothing else: what most do.
func (s *Sheet) usual() {
	if len(s.Steps) == 0 {
		return
	}
	faces := most(s.Steps, func(st Step) string { return st.Faces })
	sprayer := most(s.Steps, func(st Step) string { return st.Sprayer })
	for i := range s.Steps {
		s.Steps[i].UsualFaces, s.Steps[i].UsualSprayer = s.Steps[i].Faces == faces, s.Steps[i].Sprayer == sprayer
	}
	s.Usual = clean(faces) + ", " + sprayer + ", unless it says otherwise."
}

// most is the word that most steps have, the first such.
func most(steps []Step, word func(Step) string) string {
	count, best := map[string]int{}, word(steps[0])
	for _, s := range steps {
		count[word(s)]++
	}
	for _, s := range steps {
		if count[word(s)] > count[best] {
			best = word(s)
		}
	}
	return best
}

// differing says on which faces and with what, where that is not the usual.
func (s Step) differing() string {
	var words []string
	if !s.UsualFaces {
		words = append(words, s.Faces)
	}
	if !s.UsualSprayer {
		words = append(words, s.Sprayer)
	}
	return strings.Join(words, ", ")
}

// amounts are the step's numbers in a line.
func (s Step) amounts() string {
	if s.Dry {
		return s.Time + ", no water runs"
	}
	return s.Flow + ", " + s.Volume + ", " + s.Time
}

// flushDue says before what the flush is due, as the wash day has it: the step behind the reading is the first of all
// on the first face that gets DI water.
func flushDue(p planner.Plan) string {
	steps := washday.Steps(p)
	read := slices.IndexFunc(steps, func(s model.DayStep) bool { return s.Kind == model.Read })
	if read < 0 {
		return ""
	}
	return " before any water goes on the " + string(steps[read+1].Face)
}

// gateOf is the flush and the reading before the first DI water reaches a face.
func gateOf(p planner.Plan, sys quantity.System) Gate {
	if !throughBed(p) {
		return Gate{}
	}
	limit := cells.Safe(p.Limit.String())
	g := Gate{
		Present: true, Limit: limit,
		Flush: fmt.Sprintf("Run %s (%s) through the bed to waste%s: standing water reads low.", quantity.Show(p.Flush.Volume, sys), report.Time(p.Flush.Duration), flushDue(p)),
		Later: fmt.Sprintf("It holds for all faces. To read again after the bed stood %s, run %s first.",
			report.Time(washday.StandsAfter), quantity.Show(p.Flush.Volume, sys)),
		Expect: report.PPM(p.Bed.OutletNow.P50),
		End:    report.PPM(p.Bed.OutletAtEnd.P50),
		Go:     "The pen shows " + limit + " or less",
		NoGo: []string{
			"halve the flow and read again: a tired bed reads lower when slower, a spent one does not",
			"DI on glass and paint only, softened water and a towel on the rest",
			"softened water and a towel everywhere",
			"change the resin now",
		},
	}
	if p.ReadHigh != "" {
		g.Expect += "; it last read " + cells.Safe(p.ReadHigh) + ", see to the pen"
		g.End = "the same" // a pen that errs does so again, and a bed that lets go lets no less go
	}
	if p.Softener == nil {
		g.NoGo[1] = "DI on glass and paint only, a towel on the rest"
		g.NoGo[2] = "the water as it is and a towel everywhere"
	}
	return g
}
