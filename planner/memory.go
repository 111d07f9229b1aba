package planner

import (
	"reflect"
	"slices"

	"washeve/model"
	"washeve/planner/drying"
	"washeve/planner/learning"
)

// Memory is what one plan leaves for the next: what the log taught, and the
// forecast of the last day, how the bed of the last age stands and the last curve,
// so that a change that leaves these as they were does not have them worked out
// again. The zero value is ready. It is not for two goroutines at once.
type Memory struct {
	Past *Past // of the log, by [Recall]; nil where there is none

	days [2]foretold // the last two: of what is typed, and of what stands without it

	aged  learning.Age
	stood *stand

	believed learning.Belief
	units    float64
	fed      []float64
	drawn    []learning.Quantiles
}

// Make is [Make] with the memory: without a past it has the same answer.
func (m *Memory) Make(rig model.Rig, places model.Places, wash model.Wash) (Plan, error) {
	return m.MakeIn(Setting{}, rig, places, wash)
}

// sources is the memory as what a plan is made from.
func (m *Memory) sources(s Setting) sources {
	return sources{day: m.day, age: m.age, curve: m.curve, past: m.Past, setting: s}
}

// foretold is a day as it was asked for, and what came of it.
type foretold struct {
	full     bool
	asked    drying.Input
	panels   drying.Panels
	forecast drying.Forecast
	err      error
}

// day is [drying.Day] through the memory.
func (m *Memory) day(in drying.Input) (drying.Forecast, error) {
	switch last := &m.days[0]; {
	case last.full && reflect.DeepEqual(in, last.asked):
	case m.days[1].full && reflect.DeepEqual(in, m.days[1].asked):
		m.days[0], m.days[1] = m.days[1], m.days[0]
	default:
		m.days[1] = *last
		last.full, last.asked = true, in
		if last.panels, last.err = m.panels(in); last.err == nil {
			last.forecast, last.err = last.panels.Day(in)
		}
	}
	return m.days[0].forecast, m.days[0].err
}

// panels is [drying.PanelsOf] through the memory: more work on a face leaves its panel as
// it was.
func (m *Memory) panels(in drying.Input) (drying.Panels, error) {
	for i := range m.days {
		if known := m.days[i].panels; known.Serve(in) {
			return known, nil
		}
	}
	return drying.PanelsOf(in)
}

// age is [standAt] through the memory.
func (m *Memory) age(age learning.Age) stand {
	if m.stood == nil || !age.Equal(m.aged) {
		s := standAt(age)
		m.aged, m.stood = age, &s
	}
	return *m.stood
}

// curve is [learning.Curve] through the memory.
func (m *Memory) curve(b learning.Belief, units float64, fed []float64) []learning.Quantiles {
	if m.drawn == nil || units != m.units || !slices.Equal(fed, m.fed) || !slices.Equal(b, m.believed) {
		m.drawn = learning.Curve(b, units, fed)
		m.believed, m.units, m.fed = b, units, fed
	}
	return m.drawn
}
