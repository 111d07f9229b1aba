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
func (s State) Tally() Tally {
	var t Tally
	for i := range s.Steps {
		t.add(s.Steps[i].Water, s.Done[i].Used)
	}
	return t
}

// ToRun is the water that the steps still ask for, the one at hand included.
func (s State) ToRun() Tally {
	var t Tally
	for i := s.At; i < len(s.Steps); i++ {
		t.add(s.Steps[i].Water, max(s.Steps[i].Volume.Or(0)-s.Done[i].Used, 0))
	}
	return t
}

func (t *Tally) add(water model.Water, v quantity.Volume) {
	switch water {
	case model.DI:
		t.DI += v
	case model.Softened:
		t.Softened += v
	case model.Raw:
		t.Raw += v
	}
}

// Left is what the bed still gives: what it was thought to give when it was last
// looked at, less the DI water since then. False where nothing was thought.
func (s State) Left(u *model.Underway) (planner.Band[quantity.Volume], bool) {
	o := &u.Outlook
	since := s.Tally().DI - o.After.Or(0)
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
	Cup     Gate = "first cup"       // within the limit, but of water that stood, which reads too low
	GoAlong Gate = "go all the same" // over the limit or a first cup, and accepted
)

// Gate compares the reading with the limit, on the limit's scale.
func (s State) Gate(u *model.Underway) Gate {
	if s.At >= len(s.Steps) || s.Steps[s.At].Kind != model.Read {
		return NoGate
	}
	reading, read := s.Reading.Get()
	limit, limited := u.Limit.Get()
	switch {
	case s.Accepted:
		return GoAlong
	case !read:
		return AskPen
	case limited && over(limit, reading):
		return NoGo
	case s.FirstCup:
		return Cup
	}
	return Go
}

// Exceeds tells that the last reading at the step at hand is over the limit, and was
// not taken as good enough.
func (s State) Exceeds(u *model.Underway) bool {
	reading, read := s.Reading.Get()
	limit, limited := u.Limit.Get()
	return read && limited && !s.Accepted && over(limit, reading)
}

func over(limit, reading quantity.Reading) bool { return ppmOn(limit.Scale, reading) > limit.Number }

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
