// Package short is the Short screen: what to do with a bed that is short of the
// wash. The faces in the order in which they get DI water, and the other ways out,
// each with its numbers; a face is pinned in or out, and a way is taken.
package short

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/history"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// Options is what the screen is made from.
type Options struct {
	Rig     model.Rig
	Places  model.Places
	Wash    model.Wash
	Sharing func(model.Rig, model.Places, model.Wash) (*planner.Sharing, error) // see [planner.Memory.Sharing]
	Save    func(model.Wash) error                                              // keeps the wash where the program ends here
	Theme   theme.Theme
	Units   quantity.System
	Size    layout.Size
}

// Done is what the screen comes back with: the wash with other pins, or with a way
// that was taken.
type Done struct {
	Wash  model.Wash
	Taken string // name of the way; "" where only the pins are others
}

// ChangeResin is what it comes back with where the way taken is new resin. The
// wash has the pins as they are now.
type ChangeResin struct {
	Wash    model.Wash
	Changed bool // the pins are others
}

// Model is the screen as it stands.
type Model struct {
	th   theme.Theme
	sys  quantity.System
	size layout.Size
	save func(model.Wash) error

	sharing *planner.Sharing
	prepare func() (*planner.Sharing, error)
	err     error // why there is nothing to share out

	first   model.Wash // as it came
	now     model.Wash // with the pins of now
	history history.Of[model.Wash]

	share  planner.Share
	ways   []planner.WayOut // of the share before while they are worked out
	turn   int              // counts the shares, so that ways find theirs
	waysOf int              // the share that the ways are of
	hand   int              // faces first, then ways

	status string
	alarm  bool
}

// New makes the screen.
func New(o Options) Model {
	m := Model{th: o.Theme, sys: o.Units, size: o.Size, save: o.Save, first: o.Wash, now: o.Wash}
	m.prepare = func() (*planner.Sharing, error) { return o.Sharing(o.Rig, o.Places, o.Wash) }
	return m.learned()
}

// learned shares out by all that the log teaches by now.
func (m Model) learned() Model {
	m.sharing, m.err = m.prepare()
	return m.reshared()
}

// Title is what the page is called.
func (m Model) Title() string { return "Short bed" }

// Init works the ways out.
func (m Model) Init() tea.Cmd { return m.reckon() }

// Typing tells that letters are text just now.
func (m Model) Typing() bool { return false }

// Leave saves the pins where they were changed.
func (m Model) Leave() error {
	if !m.changed() {
		return nil
	}
	return m.save(m.now)
}

// reshared shares the water out under the pins of now.
func (m Model) reshared() Model {
	if m.err != nil {
		return m
	}
	share, err := m.sharing.Out(m.now)
	if err != nil {
		m.err = err
		return m
	}
	m.share = share
	m.turn++
	m.hand = min(m.hand, max(m.lines()-1, 0))
	return m
}

// reckoned are ways that have been worked out.
type reckoned struct {
	turn int
	ways []planner.WayOut
	err  error
}

// reckon works the ways of the share out beside the keys; nil where they are.
func (m Model) reckon() tea.Cmd {
	if m.err != nil || m.waysOf == m.turn {
		return nil
	}
	sharing, share, turn := m.sharing, m.share, m.turn
	return func() tea.Msg {
		ways, err := sharing.Ways(share)
		return reckoned{turn, ways, err}
	}
}

func (m Model) took(r reckoned) Model {
	if r.turn != m.turn {
		return m
	}
	if r.err != nil {
		return m.warn("The ways out could not be worked out: " + r.err.Error())
	}
	m.ways, m.waysOf = r.ways, r.turn
	return m
}

// lines is how many lines the hand can be on.
func (m Model) lines() int { return len(m.share.Faces) + len(m.ways) }

// face is the face under the hand.
func (m Model) face() (planner.FaceShare, bool) {
	if m.err != nil || m.hand >= len(m.share.Faces) {
		return planner.FaceShare{}, false
	}
	return m.share.Faces[m.hand], true
}

// way is the way under the hand.
func (m Model) way() (planner.WayOut, bool) {
	i := m.hand - len(m.share.Faces)
	if m.err != nil || i < 0 || i >= len(m.ways) {
		return planner.WayOut{}, false
	}
	return m.ways[i], true
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
