// Package sheet makes the run sheet that is carried through the wash: one
// document, written as a page of text, as Markdown, or as one HTML file that
// needs no script and fetches nothing.
package sheet

import (
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/packing"
)

// Input is what a sheet is made from.
type Input struct {
	Plan    planner.Plan
	Vehicle model.Vehicle // for the picture; the zero value draws a usual coach
	Packing []packing.Item
	Units   quantity.System
	Example bool // the built-in example, and not somebody's rig
}

// Sheet is the document: every word and number as it is shown, in the order in
// which it is needed.
type Sheet struct {
	Title   string
	Notice  string // that it is an example, or of a day that is past; "" where it is neither
	Mood    Mood
	Verdict string
	Chance  string
	Left    string // what the bed has left
	Rules   string // local rules come first
	Heed    []string
	Tonight []Box
	Day     Day
	Steps   []Step
	Usual   string // faces and sprayer of the steps that say nothing else
	Gate    Gate
	Flow    []string
	After   []string
	Caution []string
	Assumed []string // what was not stated and taken instead

	coach coach
	tank  tank
}

// Mood is the verdict for an eye that does not read.
type Mood string

// The moods.
const (
	Good  Mood = "good"
	Doubt Mood = "doubt"
	Bad   Mood = "bad"
)

// Box is something to tick off.
type Box struct {
	ID   string
	What string
	Why  string
	Todo bool
}

// Day is the order of the day.
type Day struct {
	Start string   // when to begin, or why that is not known
	How   string   // how the faces and the steps go together
	Notes []string // of the day: sun, clocks, what is not known
	Turns []Turn
	Timed bool // the turns have times
}

// Turn is one face in its turn.
type Turn struct {
	ID       string
	Face     string
	From, To string // clock times, "" where the day is not known
	DI       string // volume and time; "none" where it gets none
	Section  string
	Dries    string
	Why      string
	WhyShort string // in at most 21 cells
	Outlook  string
}

// Step is one stage of the wash.
type Step struct {
	ID                       string
	Number                   int
	Name, Water              string
	Faces, Sprayer           string
	Flow, Volume, Time       string
	Dry                      bool // no water runs
	Gate                     bool // the reading is due before it
	UsualFaces, UsualSprayer bool // as in most steps
	Valves                   []Valve
	water                    model.Water
}

// Valve is how one unit of the chain stands.
type Valve struct {
	Unit    string
	Through bool
}

// Stand is the position in a word.
func (v Valve) Stand() string {
	if v.Through {
		return "through"
	}
	return "bypassed"
}

// Gate is the flush, the reading and what follows from it. It is empty where no
// water goes through the bed.
type Gate struct {
	Flush   string // what to run out, and before what
	Later   string // what a reading later in the wash asks for
	Limit   string
	Expect  string // what the pen is likely to show
	End     string // and when the last face is done
	Go      string
	NoGo    []string
	Present bool
}

// Make writes a plan out as a sheet.
func Make(in Input) Sheet {
	p, sys := in.Plan, in.Units
	s := Sheet{
		Mood: moodOf(p.Verdict), Rules: ruleOf(p, sys),
		Tonight: boxes(in.Packing, p, sys), Day: dayOf(p, sys), Steps: stepsOf(p, sys), Gate: gateOf(p, sys),
		Heed: heed(p, sys), Caution: cautions(p, sys), Assumed: assumed(p, sys),
		coach: coachOf(in.Vehicle, p), tank: tankOf(p),
	}
	s.head(p, sys)
	s.usual()
	s.flow(p, sys)
	s.after(p)
	for _, n := range p.Warnings {
		switch n.Code {
		case planner.Misplaced:
			s.Notice = clean(n.Text(sys))
		case planner.PastDay:
			s.Notice = strings.TrimSuffix(clean(n.Text(sys)), ".") + " before you go by this sheet."
		}
	}
	if in.Example {
		s.Notice = "The built-in example, invented: `washeve init` writes it out for you to change."
	}
	return s
}
