// Package trip is the Trip screen: a line along the season with the bed's life
// draining, and below it the stops, washes and changes of resin, which are typed
// while the answer moves.
package trip

import (
	"errors"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/trip"
	"washeve/ui/form"
	"washeve/ui/history"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// Keeper keeps the trips.
type Keeper interface {
	// Trips are those that there are, for a rig that is the built-in example or the
	// person's own, and which of them comes next.
	Trips(example bool) (all []model.Trip, next int)
	// Keep keeps a trip, in the place of one of them or, past the last, as a new
	// one. An error that is a [washeve/ui/keeping.Rewriter] can be settled by asking the person.
	Keep(index int, t model.Trip) error
	// Drop takes the last trip away for good. On error it is as it was.
	Drop() error
	// Like finds the wash that a wash of a trip calls so.
	Like(name string) (model.Wash, bool)
	// Washes are those that are planned by themselves.
	Washes() []model.Wash
	// Names lists the washes that one may be like.
	Names() []string
	// Left is how the screen was left, while the program runs; false where it was not yet.
	Left() (Left, bool)
	// Leave keeps how the screen is left.
	Leave(Left)
}

// Options is what the screen is made from.
type Options struct {
	Rig     model.Rig
	Places  model.Places
	Wash    model.Wash // that of the plan
	Example bool       // the rig is the built-in example: nothing is kept
	Keeper  Keeper
	Past    func() *planner.Past // what the log teaches by now; nil where there is no log
	Memory  *trip.Memory         // of trips planned before; nil for none
	Today   model.Date
	Theme   theme.Theme
	Units   quantity.System
	Size    layout.Size
}

// Model is the screen as it stands.
type Model struct {
	th      theme.Theme
	sys     quantity.System
	size    layout.Size
	rig     model.Rig
	places  model.Places
	wash    model.Wash
	example bool
	keeper  Keeper
	log     *planner.Past
	teach   func() *planner.Past
	today   model.Date
	memory  *trip.Memory // of the trips planned here

	trips   []model.Trip
	at      int        // the one that is shown; past the last: one that is not begun
	begun   bool       // there is a trip
	now     model.Trip // what is in force
	history history.Of[Version]

	plan    trip.Plan // of what is shown, or the last one that could be made
	planErr error

	hand   int // the line under the hand
	sheet  *sheet
	edit   *form.Edit
	picker *form.Picker

	status   string
	alarm    bool
	refused  bool // a digit was: what is typed behind it is let go by
	question *form.Question[Model]
	unsaved  error // why the last save failed
	lost     bool  // the example was changed, and is kept nowhere
}

// notKept is why leaving the program loses a changed example.
func (m Model) notKept() error {
	return errors.New("the trip was changed in the built-in example, which is kept nowhere; on the plan, " + m.th.Key("a", "adopt") + " makes it yours first")
}

// New makes the screen. The first frame shows the whole answer.
func New(o Options) Model {
	m := Model{
		th: o.Theme, sys: o.Units, size: o.Size, rig: o.Rig, places: o.Places, wash: o.Wash, example: o.Example,
		keeper: o.Keeper, teach: o.Past, today: o.Today, memory: o.Memory,
	}
	if m.memory == nil {
		m.memory = new(trip.Memory)
	}
	m.trips, m.at = o.Keeper.Trips(o.Example)
	if left, before := o.Keeper.Left(); before {
		m.at, m.history, m.unsaved = left.At, left.History, left.Unsaved
	}
	if m.begun = len(m.trips) > 0; m.begun {
		m.at = min(max(m.at, 0), len(m.trips)-1)
		m.now = m.trips[m.at].Clone()
	} else {
		m.at = 0
	}
	return m.learned()
}

// learned plans by all that the log teaches by now.
func (m Model) learned() Model {
	m = m.taught()
	return m.replan(m.shown())
}

// taught knows all that the log teaches by now.
func (m Model) taught() Model {
	if m.teach != nil {
		m.log = m.teach()
	}
	return m
}

// Title is what the page is called.
func (m Model) Title() string { return "Trip" }

// Init starts nothing.
func (m Model) Init() tea.Cmd { return nil }

// Typing tells that letters are text just now.
func (m Model) Typing() bool { return m.edit != nil && m.edit.Letters() || m.refused }

// Awaits tells that a letter goes to a line of an open list.
func (m Model) Awaits() bool { return m.picker != nil }

// Leave takes what is being typed, and keeps what is not kept yet. What is typed and cannot
// be taken would be lost.
func (m Model) Leave() error {
	var lost error
	if m.edit != nil {
		lost = m.edit.Lost(m.label())
	}
	m = m.finishEdit()
	if m.example && m.lost {
		return m.notKept()
	}
	if m.unsaved != nil {
		m = m.save()
	}
	if m.unsaved != nil {
		return m.unsaved
	}
	return lost
}

// like finds a wash by its name: that of the plan as it stands, else a kept one.
func (m *Model) like(name string) (model.Wash, bool) {
	if name != "" && model.Find([]string{m.wash.Name}, name) >= 0 {
		return m.wash, true
	}
	return m.keeper.Like(name)
}

// replan plans a trip. Where that cannot be, the last plan stays, and the reason is
// told.
func (m Model) replan(t model.Trip) Model {
	if !m.begun {
		return m
	}
	p, err := m.memory.Make(trip.Input{Rig: m.rig, Places: m.places, Trip: t, Like: m.like, Past: m.log, Today: m.seenOn(), Coming: m.keeper.Washes(), Ordered: true})
	if m.planErr = err; err == nil {
		m.plan = p
	}
	return m
}

// seenOn is the day on which the trip is looked at; not known for the built-in example,
// whose days are invented and say the same on any day.
func (m *Model) seenOn() model.Date {
	if m.example {
		return model.Date{}
	}
	return m.today
}

// shown is the trip that the screen shows: with what is being typed.
func (m *Model) shown() model.Trip {
	if m.edit != nil && m.edit.Replaced {
		if t, err := m.with(m.sheet.key(), m.edit.Good); err == nil {
			return t
		}
	}
	return m.now
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
