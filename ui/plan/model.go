// Package plan is the Plan screen: a walk through the wash at the left, and at
// the right the answer, which moves as the hand types.
package plan

import (
	"strconv"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/planner"
	tripmath "washeve/planner/trip"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/history"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
	"washeve/ui/trip"
	"washeve/ui/washday"
)

// Make plans a wash; see [planner.Make].
type Make func(model.Rig, model.Places, model.Wash) (planner.Plan, error)

// Keeper keeps the work beyond the program's end.
type Keeper interface {
	// Save keeps everything. An error that is a [washeve/ui/keeping.Rewriter] can be settled by
	// asking the person.
	Save(model.Rig, model.Places, model.Wash) error
	// Adopt writes the built-in example out as the person's own. The day of its wash
	// was one, and is another where that was past.
	Adopt() (was, is model.Date, err error)
}

// Options is what the screen is made from.
type Options struct {
	Rig     model.Rig
	Places  model.Places
	Wash    model.Wash
	Example bool          // the work is the built-in example
	Others  []*stock.Kept // the other washes that are kept
	Keeper  Keeper
	Shelf   Shelf // nil where the other washes are kept nowhere
	Make    Make
	Sharing Sharing       // nil where a short bed is not shared out
	Means   washday.Means // of a wash day
	Book    entry.Book    // the log; without its Logger there is none
	Trips   trip.Keeper   // nil where there are no trips
	Theme   theme.Theme
	Units   quantity.System
	Unsaid  quantity.System // in which all is shown where the rig states no units
	InHand  string          // why this wash is, where there are others, such as "the next from today on"
	// Currency is offered to a bare price where the rig states none; "" for no offer.
	Currency string
	Notice   string // said at the start, such as a fault that was found in a file
}

// Model is the screen as it stands.
type Model struct {
	th     theme.Theme
	sys    quantity.System
	unsaid quantity.System // that is shown where the rig states none
	keeper Keeper
	shelf  Shelf
	make   Make
	book   entry.Book

	currency string // offered to a price where the rig states none
	sharing  Sharing
	means    washday.Means
	size     layout.Size
	trips    trip.Keeper
	seen     *tripmath.Memory // of the trips planned so far

	now     work // what is in force
	history history.Of[work]

	plan    planner.Plan    // of what is shown, or the last one that could be made
	planned bool            // there is a plan
	planErr error           // why there is none for what is shown
	beside  tripmath.Beside // the washes that wait for the bed, where there are others
	lag     entry.Lag       // of the log that the plan is by
	faults  map[ref]string
	lacks   []ref // what the plan cannot do without
	begins  bool  // no plan of this work has stood yet

	open   int // the step that is open
	hand   int // the row under the hand, in the open step
	editAt ref
	edit   *form.Edit
	draft  work // what is shown while typing
	adding *addition
	picker *form.Picker

	lettersAct bool // the next letter is a key, whatever the line under the hand awaits

	status   string
	alarm    bool // the status tells of trouble
	refused  bool // a digit was: what is typed behind it is let go by
	question *form.Question[Model]
	changed  bool   // the example was changed and is kept nowhere
	unsaved  error  // why the last save failed
	underway string // the wash that is being done, in words; "" where none is
}

// addition is a new item, or a new wash, that is not there before it has a name: the work
// with it, and where the hand was.
type addition struct {
	work       work
	open, hand int
	wash       bool // it is the wash itself
}

// New makes the screen. The first frame shows the whole answer.
func New(o Options) Model {
	m := Model{
		th: o.Theme, sys: o.Units, unsaid: o.Unsaid, keeper: o.Keeper, shelf: o.Shelf, make: o.Make, sharing: o.Sharing, means: o.Means, book: o.Book,
		currency: o.Currency, trips: o.Trips, seen: new(tripmath.Memory), size: layout.Least(),
		now:    work{rig: o.Rig, places: o.Places, wash: o.Wash, others: o.Others, example: o.Example}.clone(),
		status: o.Notice, alarm: o.Notice != "",
	}
	if o.Example && o.Notice == "" {
		m = m.say("This is a built-in example. " + m.th.Key("a", "adopt") + " makes it yours, " + m.th.Key("e", "fresh") + " starts your own from nothing.")
	}
	if n := len(o.Others); n > 0 && o.Notice == "" && o.InHand != "" {
		m = m.say("In hand: " + o.InHand + ", " + called(&o.Wash) + ". " + m.th.Key("L", "washes") + " lists " + othersWords(n) + ".")
	}
	m = m.replan(m.now)
	if told := m.oneFillNamed("O"); told != "" && o.InHand != "" && o.Notice == "" {
		m = m.say(m.status + " " + told)
	}
	m.begins = len(m.lacks) > 0
	return m.toFirst()
}

func othersWords(n int) string {
	if n == 1 {
		return "the other one"
	}
	return "the " + strconv.Itoa(n) + " others"
}

// Title is what the page is called.
func (m Model) Title() string { return "Plan" }

// Init starts nothing.
func (m Model) Init() tea.Cmd { return nil }

// Typing tells that letters are text just now.
func (m Model) Typing() bool { return m.edit != nil && m.edit.Letters() || m.refused }

// Awaits tells that a letter is text: of an open list, or of the line under the hand.
func (m Model) Awaits() bool { return m.picker != nil || m.awaitsWord() }

// awaitsWord tells that a letter begins the text of the line under the hand.
func (m Model) awaitsWord() bool {
	if m.th.Words || m.lettersAct || m.edit != nil || m.picker != nil || m.question != nil || m.refused {
		return false
	}
	_, f, ok := m.target()
	return ok && form.Awaits(f)
}

// shown is the work that the screen shows: with what is being typed.
func (m *Model) shown() *work {
	if m.edit != nil {
		return &m.draft
	}
	return m.ground()
}

// ground is the work that a text or a word is set on: what is in force, with the new item
// while it has no name.
func (m *Model) ground() *work {
	if m.adding != nil {
		return &m.adding.work
	}
	return &m.now
}

// replan makes the plan of a work. Where there is none, the last one stays, and the reason
// is told; but none stands for a work in force that lacks what a plan needs.
func (m Model) replan(w work) Model {
	p, err := m.make(w.rig, w.places, w.wash)
	m.planErr, m.faults, m.lacks, m.lag = err, w.faulty(), w.lacking(), m.book.Lags()
	switch {
	case err == nil:
		m.lookAround(&p, w)
		m.plan, m.planned = p, true
	case len(m.lacks) > 0 && m.edit == nil && m.adding == nil:
		m.plan, m.planned = planner.Plan{}, false
	}
	return m
}

// step is the step that is open.
func (m *Model) step() step { return steps()[m.open] }

// rows lists the lines of the open step.
func (m *Model) rows() []row { return m.shown().rows(m.step()) }

// target is the field under the hand.
func (m *Model) target() (ref, model.Field, bool) {
	return m.targetAmong(m.rows())
}

// suited is a field with its example in the units in which it is to be stated.
func (m *Model) suited(r ref, f model.Field) model.Field {
	return form.Suited(f, m.ground().item(r.section, r.index), m.sys)
}

func (m *Model) targetAmong(rows []row) (ref, model.Field, bool) {
	if m.hand < 0 || m.hand >= len(rows) || !rows[m.hand].isField() {
		return ref{}, model.Field{}, false
	}
	return rows[m.hand].at, m.suited(rows[m.hand].at, rows[m.hand].field), true
}

// onto puts the hand on a row, or on the next field in a direction.
func (m Model) onto(hand, by int) Model {
	rows := m.rows()
	for i := hand; i >= 0 && i < len(rows); i += by {
		if rows[i].isField() {
			m.hand = i
			return m
		}
	}
	return m
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
