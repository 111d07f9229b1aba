package drying

import (
	"fmt"
	"math"
	"slices"
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Start is a wash begun at a moment: the faces one after the other, each with
// what the day does to it while its turn comes.
type Start struct {
	At       time.Time
	Label    string // clock time
	FullHour bool
	End      time.Time // of the last face, which no order of the faces changes
	Turns    []Turn    // in the recommended order
	Easy     bool      // no face hurries anyone, and nothing forbids washing
	Why      string    // what spoils it; "" where it is easy

	// Room is the least, over the faces, of the time that the film lasts over the time
	// that the rinse takes: under 1 a face hurries. It is 0 where something forbids
	// washing, or is not known.
	Room float64

	// EndsLate tells that the sun is down at the end.
	EndsLate bool
}

// Hurried lists the faces that hurry while their turn comes.
func (s Start) Hurried() []model.Side {
	var sides []model.Side
	for _, t := range s.Turns {
		if t.Hurries {
			sides = append(sides, t.Side)
		}
	}
	return sides
}

// nearly is the room from which a start by daylight is to be had rather than an easy one
// that ends without the sun. PRACTICE: how fast a film dries is not known better than to a
// fifth ([panel.Convection]).
//
// [panel.Convection]: washeve/planner/drying/panel#Convection
const nearly = 0.8

// byDay tells that a start ends while the sun is up, with next to no hurry.
func (s Start) byDay() bool { return !s.EndsLate && s.Room >= nearly }

// Better tells whether a start is to be had rather than another: one after which washing is
// possible; of those one that ends while the sun is up, with next to no hurry; of those an
// easy one; else the one with fewer faces that hurry, and of those the one with more room.
func (s Start) Better(than Start) bool {
	a, b := len(s.Hurried()), len(than.Hurried())
	switch {
	case (s.Room > 0) != (than.Room > 0):
		return s.Room > 0
	case s.byDay() != than.byDay():
		return s.byDay()
	case s.Easy != than.Easy:
		return s.Easy
	case s.Easy:
		return false
	case a != b:
		return a < b
	}
	return s.Room > than.Room
}

// Turn is one face: what sun and shade do when it begins, and the day in its time. What is
// not known is not given.
type Turn struct {
	Side     model.Side
	Why      string
	From, To time.Time
	Dries    quantity.Opt[quantity.Duration] // the least that its film lasts
	Section  quantity.Opt[quantity.Area]     // the largest to soap and rinse at a time
	Sunlit   bool                            // the sun is on it at some time
	Hurries  bool                            // its rinse takes longer than its film lasts
}

// Turn finds a side in the start.
func (s Start) Turn(side model.Side) (Turn, bool) {
	for _, t := range s.Turns {
		if t.Side == side {
			return t, true
		}
	}
	return Turn{}, false
}

// Starting is a start at a clock time of the day. Where the clock shows it twice
// the first is taken, and the note says so; where it skips it, that is an error.
func (f Forecast) Starting(t model.TimeOfDay) (Start, []tag.Note, error) {
	found, err := f.hours.At(t)
	if err != nil {
		return Start{}, nil, err
	}
	at := found[0]
	i := len(f.Steps) - 1
	for i > 0 && f.Steps[i].At.After(at) {
		i--
	}
	s := f.start(i, at, make([]Turn, len(f.faces)))
	s.Label, s.FullHour = f.hours.Label(at), t.Minute == 0
	if len(found) == 1 {
		return s, nil, nil
	}
	return s, []tag.Note{{Code: "start-twice", Format: fmt.Sprintf("the clock shows %s twice on this day: the first is meant, %s", t, s.Label)}}, nil
}

// begin fills in the starts and finds the one to recommend.
func (f *Forecast) begin() {
	f.Starts = make([]Start, 0, len(f.Steps))
	at := make([]int, 0, len(f.Steps))
	n := len(f.faces)
	turns := make([]Turn, len(f.Steps)*n) // one piece for all starts
	for i := range f.Steps {
		if m := &f.Steps[i]; m.Light {
			f.Starts, at = append(f.Starts, f.start(i, m.At, turns[i*n:(i+1)*n:(i+1)*n])), append(at, i)
		}
	}
	best := f.best()
	if best < 0 {
		return
	}
	f.Recommended = quantity.Some(f.Starts[best])
	if !f.Starts[best].Easy {
		return
	}
	first, last := best, best
	for first > 0 && f.Starts[first-1].Easy && at[first-1] == at[first]-1 {
		first--
	}
	for last+1 < len(at) && f.Starts[last+1].Easy && at[last+1] == at[last]+1 {
		last++
	}
	f.NotBefore, f.NotAfter = quantity.Some(f.Starts[first].At), quantity.Some(f.Starts[last].At)
}

// best is the first easy start with the sun up that ends before it is down, else the
// best of those after which washing is possible, or -1.
func (f *Forecast) best() int {
	best := -1
	for i, s := range f.Starts {
		switch {
		case s.Easy && f.Sun.Up(s.At) && !s.EndsLate:
			return i
		case s.Room > 0 && (best < 0 || s.Better(f.Starts[best])):
			best = i
		}
	}
	return best
}

// NoneEasy says, where no easy start is recommended, whether there is none or only some that
// end without the sun.
func (f Forecast) NoneEasy() string {
	if slices.ContainsFunc(f.Starts, func(s Start) bool { return s.Easy }) {
		return "no easy start ends by daylight"
	}
	return "no start is easy"
}

// start works out a wash begun at an instant in step i. The turns, one a face, are
// filled in.
func (f *Forecast) start(i int, at time.Time, turns []Turn) Start {
	m := &f.Steps[i]
	var space [8]rank
	ranks := ranked(space[:0], m, f.spells[i])
	s := Start{At: at, Label: m.Label, FullHour: m.FullHour, End: at, Turns: turns[:len(ranks)], Room: math.Inf(1)}
	if len(ranks) < len(f.faces) || len(ranks) == 0 {
		s.Why, s.Room = "the heading is not known", 0
	}
	for n, r := range ranks {
		face := &f.faces[r.face]
		end := s.End.Add(time.Duration(float64(face.Work.Or(0)) * float64(time.Second)))
		s.Turns[n] = Turn{Side: face.Side, Why: f.why(i, s.End, r.face), From: s.End, To: end}
		last, spoilt, forbidden := f.through(&s.Turns[n], r.face, i)
		if i = last; s.Why == "" {
			s.Why = spoilt
		}
		switch lasts, given := s.Turns[n].Dries.Get(); {
		case forbidden || !given:
			s.Room = 0
		case face.Rinse.Or(0) > 0:
			s.Room = min(s.Room, float64(lasts)/float64(face.Rinse.Or(0)))
		}
		s.End = end
	}
	for i := range f.faces { // of which nobody knows when their turn comes
		if face := &f.faces[i]; len(s.Turns) < len(f.faces) && !s.has(face.Side) {
			s.End = s.End.Add(time.Duration(float64(face.Work.Or(0)) * float64(time.Second)))
		}
	}
	s.Easy = s.Why == ""
	s.EndsLate = !f.Sun.Up(s.End)
	return s
}

func (s Start) has(side model.Side) bool {
	_, found := s.Turn(side)
	return found
}

// through takes a turn through the steps from i on, and gives the step at its
// end, what spoils it, and whether that forbids washing.
func (f *Forecast) through(t *Turn, face, i int) (end int, spoilt string, forbidden bool) {
	worst := fine
	for first := true; ; first = false {
		m := &f.Steps[i]
		now := &m.Faces[face]
		t.least(now, first)
		forbidden = forbidden || m.forbidden != "" || hot(now)
		if spoilt == "" {
			spoilt = m.forbidden
		}
		if worst == fine {
			worst = now.trouble()
		}
		if i+1 >= len(f.Steps) || f.Steps[i+1].At.After(t.To) {
			break
		}
		i++
	}
	if spoilt == "" && worst != fine {
		spoilt = worst.on(t.Side)
	}
	return i, spoilt, forbidden
}

// least keeps the worst of the moments of a turn.
func (t *Turn) least(now *FaceMoment, first bool) {
	t.Sunlit, t.Hurries = t.Sunlit || now.Sunlit, t.Hurries || now.Hurries
	if first || now.Dries.Or(0) < t.Dries.Or(0) {
		t.Dries = now.Dries
	}
	if first || now.Section.Or(0) < t.Section.Or(0) {
		t.Section = now.Section
	}
}
