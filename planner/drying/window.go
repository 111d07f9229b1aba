package drying

import (
	"time"

	"washeve/model/quantity"
)

// Window is a stretch of daylight in which no face dries before it can be
// soaped and rinsed whole, and nothing freezes or is too hot to wash.
type Window struct {
	From, To    time.Time
	Why         string                  // what closes it
	LatestStart quantity.Opt[time.Time] // for the whole job; not given where it is too short
}

// windowsOf needs the dry time, the area and the pace of every face; a window
// of a single step is none.
func windowsOf(steps []Moment, job quantity.Opt[quantity.Duration]) []Window {
	var out []Window
	for i := 0; i < len(steps); i++ {
		if !easy(steps[i]) {
			continue
		}
		start := i
		for i+1 < len(steps) && easy(steps[i+1]) {
			i++
		}
		if i > start {
			out = append(out, windowOf(steps, start, i, job))
		}
	}
	return out
}

func windowOf(steps []Moment, first, last int, job quantity.Opt[quantity.Duration]) Window {
	w := Window{From: steps[first].At, To: steps[last].At, Why: "the day ends"}
	if last+1 < len(steps) {
		w.Why = why(steps[last+1])
	}
	if length, given := job.Get(); given && float64(length) <= w.To.Sub(w.From).Seconds() {
		w.LatestStart = quantity.Some(w.To.Add(-time.Duration(float64(length) * float64(time.Second))))
	}
	return w
}

func starts(windows []Window) (notBefore, notAfter quantity.Opt[time.Time]) {
	for _, w := range windows {
		if !w.LatestStart.Given() {
			continue
		}
		if !notBefore.Given() {
			notBefore = quantity.Some(w.From)
		}
		notAfter = w.LatestStart
	}
	return notBefore, notAfter
}

// job is the time for all faces, one after the other.
func (in Input) job() quantity.Opt[quantity.Duration] {
	pace, given := in.Coverage.Get()
	if !given || len(in.Faces) == 0 {
		return quantity.Opt[quantity.Duration]{}
	}
	total := quantity.Duration(0)
	for _, f := range in.Faces {
		area, stated := f.Area.Get()
		if !stated {
			return quantity.Opt[quantity.Duration]{}
		}
		total += pace.Time(area)
	}
	return quantity.Some(total)
}

// easy tells whether every face can be done whole before it dries.
func easy(m Moment) bool {
	return len(m.Faces) > 0 && why(m) == ""
}

// why names what keeps a moment from being easy, or "".
func why(m Moment) string {
	if !m.Light {
		return "it is dark"
	}
	if freezing(m) {
		return "it freezes"
	}
	for _, f := range m.Faces {
		switch {
		case !f.Section.Given():
			return "the " + string(f.Side) + " is not known well enough"
		case hot(f):
			return "the " + string(f.Side) + " is too hot to wash"
		case f.Hurries:
			return "the " + string(f.Side) + " dries too fast to do in one go"
		}
	}
	return ""
}
