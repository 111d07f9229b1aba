// Package refill is the change of resin, step by step, with the user's own
// amounts; and what speaks against it.
package refill

import (
	"errors"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// Model is the change as it stands.
type Model struct {
	o    entry.Desk
	th   theme.Theme
	sys  quantity.System
	size layout.Size

	plan    planner.Plan
	past    *planner.BedPast
	ahead   planner.Ahead
	figures planner.RefillFigures
	err     error // why there are no figures

	step int
	top  int // first line that is seen, where a step is longer than the screen

	resin, bag amount
	hand       int // on resin or bag
	edit       *form.Edit
	fill       entry.Form // the new fill, for the log
	touched    bool       // something of it was typed
	written    bool
	reading    *entry.Reading
	readings   []string      // what was read of the new fill
	last       *model.Sample // of the readings

	kept   error
	status string
	alarm  bool
}

// amount is a volume of resin as it was typed.
type amount struct {
	volume quantity.Volume
	text   string
}

// New starts with what speaks for and against the change.
func New(o entry.Desk) Model {
	m := Model{o: o, th: o.Theme, sys: o.Units, size: o.Size}
	m.plan, m.past, m.ahead, m.err = o.Look()
	resin := m.plan.Bed.Resin
	if m.past != nil {
		resin = m.past.Bed.Resin.Or(resin)
	}
	m.resin = amountOf(resin, m.sys)
	m.bag = amountOf(planner.UsualBag, m.sys)
	m.figures = m.ahead.Refill
	return m.startFill()
}

// Open is [New] as a screen.
func Open(o entry.Desk) screen.Screen { return New(o) }

// amountOf is a volume as it would be typed.
func amountOf(v quantity.Volume, sys quantity.System) amount {
	text := v.AsResin().Show(sys)
	if typed, err := quantity.Parse[quantity.Volume](text); err == nil {
		v = typed
	}
	return amount{volume: v, text: text}
}

// startFill fills the entry in with what is known.
func (m Model) startFill() Model {
	body := &model.Refill{Bed: m.plan.BedName, State: model.NewResin, Price: m.o.PriceOf(m.plan.BedName)}
	if m.resin.volume > 0 {
		body.Resin = quantity.Typed(m.resin.volume, m.resin.text)
	}
	m.fill = entry.New("The new fill, for the log", model.Entry{At: m.o.Now(), Body: body}, m.o.Known(),
		"resin", "resin_state", "price", "lot", "capacity", "bed", "at", "note").At("price")
	return m
}

// Title is what the page is called.
func (m Model) Title() string { return "Changing the resin" }

// Init starts nothing.
func (m Model) Init() tea.Cmd { return nil }

// Typing tells that letters are text just now.
func (m Model) Typing() bool {
	return m.edit != nil && m.edit.Letters() || m.reading != nil && m.reading.Typing() || m.inForm() && m.fill.Typing()
}

// Awaits tells that a letter goes to a line of an open list.
func (m Model) Awaits() bool { return m.inForm() && m.fill.Picks() }

// Leave tells of a fill that is stated and not written yet.
func (m Model) Leave() error {
	switch {
	case m.kept != nil:
		return m.kept
	case m.touched && !m.written:
		return errors.New("the new fill is not in the log yet; " + m.th.Key("w", "write") + " on its step writes it")
	case m.reading != nil && m.reading.Begun():
		return errors.New("the reading is not written yet; " + m.th.Key("enter", "what it reads") + " writes it")
	}
	return nil
}

// inForm tells that the step is the one that writes the fill.
func (m Model) inForm() bool { return m.now().form && !m.written && m.reading == nil }

func (m Model) now() step { return steps()[m.step] }

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

// amounts takes a new volume of resin or bag, and works the figures out again.
func (m Model) amounts(a amount) Model {
	if m.hand == 1 {
		m.bag = a
		return m
	}
	m.resin = a
	figures, err := planner.Refilling(m.o.Rig, m.o.Places, m.o.Wash, a.volume)
	if err != nil {
		return m.warn(err.Error())
	}
	m.figures = figures
	if f, err := m.fill.State("resin", a.text); err == nil {
		m.fill = f
	}
	return m
}

var _ screen.Screen = Model{}
