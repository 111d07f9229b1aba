// Package rig is the Rig screen: everything that a person owns and every place
// whose water they know, listed by kind, with the fields of the chosen one.
package rig

import (
	"errors"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/planner"
	"washeve/ui/form"
	"washeve/ui/history"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// Options is what the screen is made from.
type Options struct {
	Stock   stock.Stock
	Example bool // the built-in example, which is kept nowhere
	Changed bool // and it was changed already
	// History is what can be undone of the stock, and done again, wherever it was edited.
	History history.Of[Version]
	// Save keeps everything. An error that is a [washeve/ui/keeping.Rewriter] can be settled.
	Save func(stock.Stock) error
	// Make plans a wash, to see what is assumed of the chosen item.
	Make  func(model.Rig, model.Places, model.Wash) (planner.Plan, error)
	Log   func() model.Log // nil where there is none
	Past  *planner.Past    // what the log says of the beds; nil where it says nothing
	Theme theme.Theme
	// Units are shown; Unsaid are those that are where the rig states none.
	Units, Unsaid quantity.System
	Size          layout.Size
	// Currency is offered to a bare price where the rig states none; "" for no offer.
	Currency string
	At       Spot // what is chosen first; the zero value is the first item
}

// Version is what undo goes back to.
type Version struct {
	Stock   stock.Stock
	Example bool
}

// Done tells the screen below what the stock has become.
type Done struct {
	Version
	History history.Of[Version]
	Units   quantity.System // that are shown by now
	Adopt   bool            // make the example the person's own, and come back to At
	At      Spot
}

// Spot is one item of the list: the first of an empty section stands for the
// section.
type Spot struct {
	Section string
	Index   int
}

// Model is the screen as it stands.
type Model struct {
	th  theme.Theme
	sys quantity.System
	// opened are the units as the screen was opened, unsaid those of a rig that states none.
	opened, unsaid quantity.System
	size           layout.Size
	save           func(stock.Stock) error
	make           func(model.Rig, model.Places, model.Wash) (planner.Plan, error)
	log            func() model.Log
	past           *planner.Past

	currency string // offered to a price where the rig states none
	example  bool
	changed  bool // something was changed since the screen was opened
	now      stock.Stock
	history  history.Of[Version]
	unsaved  error // why the last save failed

	at     Spot
	inForm bool // the hand is in the form, not in the list
	hand   int  // the row of the form
	looks  looks

	typing *typing
	picker *form.Picker
	picks  func(Model, form.Option) Model
	ask    *form.Question[Model]

	status  string
	alarm   bool
	refused bool // a digit was: what is typed behind it is let go by
}

// looks is what was worked out of the shown stock, so that a key does not do it
// again.
type looks struct {
	rig    *model.Rig // of the stock it is about: every change makes another
	at     Spot
	rows   []row
	faults map[stock.Ref]string
	notes  map[Spot]string
	taken  []planner.Assumption // for what is not stated of the chosen item
}

// typing is a value while it is typed.
type typing struct {
	form.Edit
	ref   stock.Ref
	base  stock.Stock // what the text is set on
	draft stock.Stock // what is shown
	was   string      // the text before
	fresh bool        // the item is new, and there only once it has a name
	from  place
}

// place is where the hand is.
type place struct {
	at     Spot
	inForm bool
	hand   int
}

// New makes the screen.
func New(o Options) Model {
	m := Model{
		th: o.Theme, sys: o.Units, opened: o.Units, unsaid: o.Unsaid, size: o.Size, save: o.Save, make: o.Make, log: o.Log, past: o.Past,
		example: o.Example, changed: o.Example && o.Changed, now: o.Stock.Clone(), history: o.History, at: o.At, currency: o.Currency,
	}
	if m.at.Section == "" {
		m.at = m.spots()[0]
	}
	return m.looked()
}

// Title is what the page is called.
func (m Model) Title() string { return "Rig" }

// Init starts nothing.
func (m Model) Init() tea.Cmd { return nil }

// Typing tells that letters are text just now.
func (m Model) Typing() bool { return m.typing != nil && m.typing.Letters() || m.refused }

// Awaits tells that a letter is text: of an open list, or of the line under the hand.
func (m Model) Awaits() bool { return m.picker != nil || m.awaitsWord() }

// awaitsWord tells that a letter begins the text of the line under the hand.
func (m Model) awaitsWord() bool {
	if m.th.Words || m.typing != nil || m.picker != nil || m.ask != nil || m.refused {
		return false
	}
	_, f, ok := m.target()
	return ok && form.Awaits(f)
}

// notKept is why leaving the program loses a changed example.
func (m Model) notKept() error {
	return errors.New("you changed the example, and it is kept nowhere until " + m.th.Key("a", "adopt") + " makes it yours")
}

// shown is what the screen shows: with what is being typed.
func (m *Model) shown() stock.Stock {
	if m.typing != nil {
		return m.typing.draft
	}
	return m.now
}

// looked works out what the shown stock says of the chosen item.
func (m Model) looked() Model {
	spots, now := m.spots(), m.shown()
	if m.spotOf(m.at) < 0 {
		near := Spot{m.at.Section, max(len(now.Names(m.at.Section))-1, 0)}
		m.at = spots[max(m.spotOf(near), 0)]
	}
	if m.looks.rig != now.Rig {
		m.looks.faults, m.looks.notes = now.Faults(), m.notes(spots)
	}
	if m.looks.rig != now.Rig || m.looks.at != m.at {
		m.looks.rig, m.looks.at = now.Rig, m.at
		m.looks.rows, m.looks.taken = m.formRows(), m.assumptions()
	}
	if n := len(m.looks.rows); m.hand >= n {
		m.hand = max(n-1, 0)
		m = m.onto(m.hand, -1)
	}
	m.inForm = m.inForm && len(m.looks.rows) > 0
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
