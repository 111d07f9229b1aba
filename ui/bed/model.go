// Package bed is the Bed screen: what is left in the resin, what the readings
// say, and the log, which grows from here.
package bed

import (
	"errors"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/layout"
	"washeve/ui/picture"
	"washeve/ui/report"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// Options is what the screen is made from. Refill opens the change of resin.
type Options struct {
	entry.Desk
	Refill func(entry.Desk) screen.Screen
}

// Model is the screen as it stands.
type Model struct {
	o    Options
	th   theme.Theme
	sys  quantity.System
	size layout.Size

	plan   planner.Plan
	past   *planner.BedPast // nil where the log knows nothing of the bed
	ahead  planner.Ahead
	err    error // why there is no answer
	length int   // of the log that the answer is by
	lag    entry.Lag
	wrote  *wrote // what the answer is yet to follow
	began  int    // length of the log when the screen was opened
	fill   picture.Fill
	odd    map[string]bool // readings that fit no bed, by identifier

	list    list
	reading *entry.Reading // while one is added
	form    *entry.Form    // while an entry is stated
	kinds   *form.Picker
	ask     *form.Question[Model]

	kept   error // why what is on the screen could not be written
	status string
	alarm  bool
}

// wrote is what was said of an entry, and how much was left and had been given before it.
type wrote struct {
	words       string
	left, given quantity.Volume
	entry       model.Entry
	first       bool // the log held nothing of the bed before
}

// New makes the screen. The first frame shows the whole answer.
func New(o Options) Model {
	if o.Deeds == nil {
		o.Deeds = &entry.Deeds{}
	}
	m := Model{o: o, th: o.Theme, sys: o.Units, size: o.Size}.renewed()
	m.began = m.length
	return m
}

// Title is what the page is called.
func (m Model) Title() string { return "Bed" }

// Init starts nothing.
func (m Model) Init() tea.Cmd { return nil }

// Typing tells that letters are text just now.
func (m Model) Typing() bool {
	return m.list.search.typing || m.reading != nil && m.reading.Typing() || m.form != nil && m.form.Typing()
}

// Awaits tells that a letter goes to a line of an open list.
func (m Model) Awaits() bool { return m.kinds != nil || m.form != nil && m.form.Picks() }

// Leave tells of an entry that is stated and not written yet.
func (m Model) Leave() error {
	switch {
	case m.kept != nil:
		return m.kept
	case m.form != nil:
		return errors.New("the entry on the Bed screen is not written yet; " + m.th.Key("w", "write") + " writes it")
	case m.reading != nil && m.reading.Begun():
		return errors.New("the reading on the Bed screen is not written yet; " + m.th.Key("enter", "what it reads") + " writes it")
	}
	return nil
}

// renewed works out everything by the log as it stands.
func (m Model) renewed() Model {
	log := m.o.Logger.Log()
	m.length = len(log)
	m.list = m.list.of(log)
	plan, past, ahead, err := m.o.Look()
	if m.err = err; err == nil {
		m.plan, m.past, m.ahead = plan, past, ahead
	}
	m.lag = m.o.Lags()
	m.fill, m.odd = m.drawing(), map[string]bool{}
	for _, s := range m.suspects() {
		m.odd[s.ID] = true
	}
	return m
}

// seen takes up what another screen has written.
func (m Model) seen() Model {
	if len(m.o.Logger.Log()) == m.length {
		return m
	}
	return m.renewed()
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

// write appends entries and shows the new answer. On error what is on the screen
// stays there.
func (m Model) write(words string, entries ...model.Entry) Model {
	ids, err := m.o.Write(entries...)
	if err != nil {
		if m.form == nil && m.reading == nil {
			return m.warn("Not written: " + err.Error())
		}
		m.kept = err
		return m.warn("Not written, as said above.")
	}
	hand := ids[0]
	if here, _ := m.list.here(); entries[0].Kind() == model.CorrectionKind {
		hand = here.Entry.ID // it stays on what is put right
	}
	m.kept, m.form, m.reading = nil, nil, nil
	m.wrote = &wrote{words, m.plan.Bed.Remaining.P50, m.given(), entries[0], m.past == nil && m.lag != entry.Unread}
	m = m.renewed()
	m.list = m.list.ontoEntry(hand)
	return m.say(words).followed()
}

// followed says what the last entry did to the answer, once the answer is by it.
func (m Model) followed() Model {
	if m.wrote == nil || m.lag != entry.UpToDate {
		return m
	}
	w := *m.wrote
	m.wrote = nil
	if m.status != w.words {
		return m
	}
	return m.say(w.words + m.counted(w) + m.changed(w.left) + m.before(w))
}

// changed says what an entry did to the answer.
func (m Model) changed(left quantity.Volume) string {
	now, was := quantity.Show(m.plan.Bed.Remaining.P50, m.sys), quantity.Show(left, m.sys)
	if m.err != nil || now == was {
		return ""
	}
	return " Left about " + now + ", was " + was + "."
}

// before tells of the first entry of a bed that what the rig states of it counts besides.
func (m Model) before(w wrote) string {
	if !w.first || m.past == nil {
		return ""
	}
	if words := report.CountedBefore(&m.o.Rig, &w.entry, m.o.Now().Date(), m.sys); words != "" {
		return " " + words
	}
	return ""
}

// given is what the present fill has given by the log.
func (m Model) given() quantity.Volume {
	if m.past == nil {
		return 0
	}
	return m.past.Present().Gallons
}

// counted says how a wash counts that adds nothing to what the fill has given, since what was
// stated after it holds its water; what striking out or putting right changes of that; and that a reading at the tap leaves the plan's water.
func (m Model) counted(w wrote) string {
	if m.err != nil || m.past == nil {
		return ""
	}
	switch b := w.entry.Body.(type) {
	case *model.Correction:
		if m.given() != w.given {
			return " The fill has given " + quantity.Show(m.given(), m.sys) + ", was " + quantity.Show(w.given, m.sys) + "."
		}
	case *model.WashDone:
		began := m.past.Present().Began
		inFill := !began.Given() || w.entry.At.Compare(began) > 0
		if b.DI.Or(0) > 0 && strings.EqualFold(b.Bed, m.plan.BedName) && inFill && m.given() == w.given {
			return " Its DI water is within the " + quantity.Show(w.given, m.sys) + " that were stated later."
		}
	case *model.Sample:
		stated := m.plan.Raw.TDS
		if b.Reading.Given() && b.Point == model.AtTap && strings.EqualFold(b.Place, m.plan.Place) && !m.plan.SameWater(&m.o.Rig, b) {
			return " The plan goes on by the " + stated.String() + " of the place."
		}
	}
	return ""
}

var _ screen.Screen = Model{}
