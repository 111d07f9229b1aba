// Package washday is the wash while it is done: one step at a time, in letters to
// be read from two steps away, the log written as it goes.
package washday

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/planner"
	"washeve/planner/washday"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// Means is what a wash day is done with, beside the desk. Without its Instant there
// is no wash day.
type Means struct {
	Instant func() model.Instant
	Left    func() (u model.Underway, there bool, err error) // the wash that is under way
	Keep    func(model.Underway) error                       // for good, before anything is shown as done
	Close   func() error                                     // the wash is over and in the log
	Aside   func() (kept string, err error)                  // keeps what Left could not read under another name
	Bell    func()                                           // rings
	Tick    time.Duration                                    // between two looks at the clock
	Rest    func(rig model.Rig, places model.Places, wash model.Wash, ran, left quantity.Volume, flow quantity.Flow) (planner.Plan, error)
	Ways    func(model.Rig, model.Places, model.Wash) (planner.Shortage, error)
	Make    func(model.Rig, model.Places, model.Wash) (planner.Plan, error)
	Fresh   func(model.Rig, model.Places, model.Wash) (planner.Plan, error) // with new resin in the bed
	Past    func(model.Rig, model.Places) *planner.Past                     // nil to ask the desk
}

// Options is what the screen is made from.
type Options struct {
	entry.Desk
	Means
	Rehearsal bool // of the built-in example: nothing is written
	Refill    func(entry.Desk) screen.Screen
}

// Model is the wash day as it stands.
type Model struct {
	o    Options
	th   theme.Theme
	sys  quantity.System
	size layout.Size

	u     model.Underway
	now   model.Instant
	state washday.State
	err   error // why there is no wash to do

	offered bool  // a wash that was left is offered to be gone on with
	broken  error // why the wash that was left cannot be gone on with
	asks    asking
	edit    *form.Edit
	ways    []wayOut
	noWays  []string // what is none, and why
	picker  *form.Picker
	ending  bool   // asks whether to end early
	early   string // asks whether a wash is begun that is of another day, or whose day speaks against it; "" where it is not
	slip    string // what is odd about the reading that is typed, and is asked about; "" where nothing is
	stood   string // a reading that waits for the word whether the bed was flushed; "" where none does
	again   string // a reading that waits for the word whether it takes the last one's place; "" where none does

	refused bool // a reading or a flow was: a number that comes next belongs to it
	behind  bool // that number was begun: all of it is let go by

	odd    bool     // the last reading is over the limit, and no bed like this one would show it
	high   string   // the last reading, where it is more than a bed as this one is said to be would show
	kept   error    // what could not be written; the next deed tries again
	rung   int      // the step whose bell has rung, -1 for none
	after  []string // what was learned and what is next, once the wash is over
	ticks  int      // of the clock that counts: one that was started before does not
	status string
	alarm  bool
}

// asking is what is being typed.
type asking string

const (
	aReading asking = "reading"
	aFlow    asking = "flow"
)

// Open goes on with the wash that is under way, or starts one.
//
// What is begun here is written into the log, so it rests on all that the log
// teaches by now: with a Past of its own the wash day does not ask the desk, which
// may still be reading.
func Open(o Options) screen.Screen {
	if o.Past != nil {
		o.Answer = func() (planner.Plan, *planner.Past, error) {
			p, err := o.Make(o.Rig, o.Places, o.Wash)
			return p, o.Past(o.Rig, o.Places), err
		}
	}
	if o.Rehearsal {
		return New(o)
	}
	u, there, err := o.Left()
	switch {
	case err != nil:
		m := blank(o)
		m.broken = err
		return m
	case there:
		return GoOn(o, u)
	}
	return New(o)
}

// New starts a wash with the plan's steps; nothing is written before the first
// deed.
func New(o Options) Model {
	m := blank(o)
	plan, _, err := o.Answer()
	if err == nil {
		m.u, err = m.begin(plan)
		m.odd, m.high = plan.InDoubt(), plan.ReadHigh
	}
	m.err = err
	return m.look().askDay(&plan)
}

// GoOn offers to go on with a wash that was left.
func GoOn(o Options, u model.Underway) Model {
	u = CalledAnew(stock.Stock{Rig: &o.Rig, Places: &o.Places, Wash: &o.Wash}, u)
	for _, name := range []struct {
		of *string
		as string
	}{{&o.Wash.Place, u.Plan.Place}, {&o.Wash.Vehicle, u.Plan.Vehicle}, {&o.Wash.Bed, u.Plan.Bed}} {
		if name.as != "" {
			*name.of = name.as
		}
	}
	m := blank(o)
	m.u, m.offered = u, true
	if m = m.look(); m.state.Over {
		m.offered = false
		return m.catchUp()
	}
	return m
}

func blank(o Options) Model {
	return Model{o: o, th: o.Theme, sys: o.Units, size: o.Size, rung: -1}
}

// begin makes the wash of a plan.
func (m Model) begin(p planner.Plan) (model.Underway, error) {
	now := m.o.Instant()
	id, err := m.o.NewID(now.Moment())
	if err != nil {
		return model.Underway{}, err
	}
	u := model.Underway{
		ID: id, Limit: quantity.Some(p.Limit), Steps: washday.Steps(p),
		Plan: model.WashDone{
			Plan: p.Wash, Place: p.Place, Vehicle: p.Vehicle, Bed: p.BedName, Sprayer: p.Sprayer.Name, Feed: m.o.Wash.Feed,
			PlannedDI: quantity.Some(p.Through()), PlannedSoftened: quantity.Some(p.Soft.Volume), PlannedRaw: quantity.Some(p.Untreated.Volume),
			PlannedFlow: washday.Loggable(p.Sprayer.Flow), PlannedDuration: quantity.Some(min(p.DI.Duration+p.Soft.Duration+p.Untreated.Duration, 3*quantity.Day)),
		},
	}
	u.Plan.Softener = model.NoSoftener
	if p.Softener != nil {
		u.Plan.Softener = p.Softener.Name
	}
	if m.o.Rehearsal {
		u.Unlogged = model.Yes
	}
	u.Outlook = outlookOf(p, 0, p.Sprayer.Flow)
	return u, nil
}

// outlookOf is what a plan thinks of the bed, after so much DI water of the wash and at the
// flow of what is to come.
func outlookOf(p planner.Plan, after quantity.Volume, flow quantity.Flow) model.BedLeft {
	ppm := func(v float64) quantity.Opt[quantity.Reading] {
		if !(v >= 0) {
			return quantity.Opt[quantity.Reading]{}
		}
		return quantity.Some(quantity.PPM(min(v, 5000), p.Limit.Scale))
	}
	useful := quantity.Flow(0) // none
	if p.Cap.Useful() {
		useful = min(p.Cap.Flow, 1000*quantity.GPM)
	}
	return model.BedLeft{
		After: quantity.Some(after), Flow: quantity.Some(min(flow, 1000*quantity.GPM)), SoFar: some(p.Bed.SoFar), Chance: quantity.Some(max(min(p.Bed.ChanceLasts, 1), 0)),
		Cap: quantity.Some(useful), WasteCap: quantity.Some(min(p.Cap.ToWaste(), 1000*quantity.GPM)),
		Low: some(p.Bed.Remaining.P10), Mid: some(p.Bed.Remaining.P50), High: some(p.Bed.Remaining.P90),
		End: ppm(p.Bed.OutletAtEnd.P50), EndHigh: ppm(p.Bed.OutletAtEnd.P90),
	}
}

// some is a volume that can be written down: one without end is a great deal.
func some(v quantity.Volume) quantity.Opt[quantity.Volume] {
	return quantity.Some(min(v, 100000*quantity.Gallon))
}

// Title is what the page is called.
func (m Model) Title() string { return "Wash day" }

// Init starts the looks at the clock.
func (m Model) Init() tea.Cmd { return m.tick() }

// Typing tells that letters are text just now.
func (m Model) Typing() bool { return m.edit != nil && m.slip == "" && m.edit.Letters() || m.behind }

// look works out where the wash stands now.
func (m Model) look() Model {
	m.now = m.o.Instant()
	m.state = washday.Stand(&m.u, m.now)
	return m
}

// step is the one at hand; nil when all are done.
func (m Model) step() *model.DayStep {
	if m.state.At < len(m.state.Steps) {
		return &m.state.Steps[m.state.At]
	}
	return nil
}

func (m Model) done() washday.Done { return m.state.Done[m.state.At] }

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
