// Package day is the Day screen: the strip of hours and faces on which the
// start is moved while the answer moves with it, and the compass.
package day

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/form"
	"washeve/ui/history"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// Options is what the screen is made from.
type Options struct {
	Rig    model.Rig
	Places model.Places
	Wash   model.Wash
	Make   func(model.Rig, model.Places, model.Wash) (planner.Plan, error) // see [planner.Memory]
	Save   func(model.Wash) error                                          // keeps the wash where the program ends here
	Theme  theme.Theme
	Units  quantity.System
	Size   layout.Size
}

// Done is what the screen comes back with: the wash, with another start or
// heading.
type Done struct{ Wash model.Wash }

// Model is the screen as it stands.
type Model struct {
	th     theme.Theme
	sys    quantity.System
	size   layout.Size
	make   func(model.Rig, model.Places, model.Wash) (planner.Plan, error)
	save   func(model.Wash) error
	rig    model.Rig
	places model.Places

	first   model.Wash // as it came
	now     model.Wash // what is in force
	history history.Of[pose]

	plan    planner.Plan // of what is shown, or the last one that could be made
	planned bool
	planErr error

	edit   *form.Edit
	editAt string // key of the field that is typed

	status string
	alarm  bool
}

// New makes the screen.
func New(o Options) Model {
	m := Model{
		th: o.Theme, sys: o.Units, size: o.Size, make: o.Make, save: o.Save,
		rig: o.Rig, places: o.Places, first: o.Wash, now: o.Wash,
	}
	return m.replan(m.now)
}

// Title is what the page is called.
func (m Model) Title() string { return "Day" }

// Init starts nothing.
func (m Model) Init() tea.Cmd { return nil }

// Typing tells that letters are text just now.
func (m Model) Typing() bool { return m.edit != nil && m.edit.Letters() }

// Leave takes what is being typed, and saves the wash where it was changed. What is typed
// and cannot be taken would be lost.
func (m Model) Leave() error {
	var lost error
	if m.edit != nil {
		lost = m.edit.Lost(fieldOf(&m.first, m.editAt).Label)
	}
	m = m.finishEdit()
	if m.changed() {
		if err := m.save(m.now); err != nil {
			return err
		}
	}
	return lost
}

// changed tells whether the wash is another than the one that came.
func (m Model) changed() bool {
	for _, key := range []string{keyStart, keyHeading} {
		if fieldOf(&m.first, key).Exact() != fieldOf(&m.now, key).Exact() {
			return true
		}
	}
	return false
}

// pose is what the screen changes of a wash.
type pose struct {
	start   quantity.Opt[model.TimeOfDay]
	heading quantity.Opt[model.Heading]
}

func poseOf(w model.Wash) pose { return pose{w.Start, w.Heading} }

// in puts the pose into a wash.
func (p pose) in(w model.Wash) model.Wash {
	w.Start, w.Heading = p.start, p.heading
	return w
}

// The fields of a wash that the screen changes.
const (
	keyStart   = "start"
	keyHeading = "heading"
)

func fieldOf(w *model.Wash, key string) model.Field { return fieldAt(w.Fields(), key) }

// set states a field of a wash as a person typed it.
func set(w *model.Wash, key, text string) error {
	f := fieldOf(w, key)
	return form.Calendar{}.Set(f, text, func(_, text string) error { return f.Set(text) })
}

func fieldAt(fields []model.Field, key string) model.Field {
	for _, f := range fields {
		if f.Key == key {
			return f
		}
	}
	return model.Field{}
}

// replan makes the plan of a wash. Where there is none, the last one stays, and
// the reason is told.
func (m Model) replan(w model.Wash) Model {
	p, err := m.make(m.rig, m.places, w)
	m.planErr = err
	if err == nil {
		m.plan, m.planned = p, true
	}
	return m
}

// day is the day of the plan, nil where it is not known.
func (m *Model) day() *planner.DayPlan {
	if !m.planned || m.plan.Day == nil || len(m.plan.Day.Steps) == 0 {
		return nil
	}
	return m.plan.Day
}

// say puts words on the status line. It is called so often that a copy of it at each call
// would be a hundredth of the program.
//
//go:noinline
func (m Model) say(text string) Model {
	m.status, m.alarm = text, false
	return m
}

// warn is [Model.say] of what did not go as it should.
//
//go:noinline
func (m Model) warn(text string) Model {
	m.status, m.alarm = text, true
	return m
}

var _ screen.Screen = Model{}
