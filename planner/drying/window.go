package drying

import (
	"time"

	"washeve/model"
	"washeve/model/quantity"
)

// Window is a stretch of daylight in which no face dries between its rinse and
// its last water, and nothing freezes or is too hot to wash.
type Window struct {
	From, To time.Time
	Why      string // what closes it
}

// windowsOf needs the dry time and the pace of every face; a window of a single
// step is none.
func windowsOf(steps []Moment) []Window {
	var out []Window
	for i := 0; i < len(steps); i++ {
		if !easy(&steps[i]) {
			continue
		}
		start := i
		for i+1 < len(steps) && easy(&steps[i+1]) {
			i++
		}
		if i > start {
			out = append(out, windowOf(steps, start, i))
		}
	}
	return out
}

func windowOf(steps []Moment, first, last int) Window {
	w := Window{From: steps[first].At, To: steps[last].At, Why: "the day ends"}
	if last+1 < len(steps) {
		w.Why = why(&steps[last+1])
	}
	return w
}

// job is the time for all faces, one after the other.
func (in Input) job() quantity.Opt[quantity.Duration] {
	total := quantity.Duration(0)
	for _, f := range in.Faces {
		work, given := f.Work.Get()
		if !given {
			return quantity.Opt[quantity.Duration]{}
		}
		total += work
	}
	if len(in.Faces) == 0 {
		return quantity.Opt[quantity.Duration]{}
	}
	return quantity.Some(total)
}

// easy tells whether no face hurries anyone.
func easy(m *Moment) bool {
	return len(m.Faces) > 0 && why(m) == ""
}

// why names what keeps a moment from being easy, or "".
func why(m *Moment) string {
	if m.forbidden != "" {
		return m.forbidden
	}
	for i := range m.Faces {
		if word := m.Faces[i].trouble(); word != fine {
			return word.on(m.Faces[i].Side)
		}
	}
	return ""
}

// forbids names what keeps anyone from washing at a moment, or "".
func (m *Moment) forbids() string {
	switch {
	case !m.Light:
		return "it is dark"
	case freezing(m):
		return "it freezes"
	}
	return ""
}

// trouble is what is wrong with a face at a moment.
type trouble string

const (
	fine     trouble = ""
	unknown  trouble = "is not known well enough"
	tooHot   trouble = "is too hot to wash"
	hurrying trouble = "dries before it can be rinsed whole"
)

// on is the trouble in words.
func (t trouble) on(side model.Side) string { return "the " + string(side) + " " + string(t) }

func (f *FaceMoment) trouble() trouble {
	switch {
	case !f.Section.Given():
		return unknown
	case hot(f):
		return tooHot
	case f.Hurries:
		return hurrying
	}
	return fine
}
