package short

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/planner"
	"washeve/planner/split"
	"washeve/ui/entry"
	"washeve/ui/history"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/mouse"
	"washeve/ui/reader"
	"washeve/ui/screen"
)

// Update takes a message. Ways that are still to be worked out are asked for
// again with every key, since their message may have met another page.
func (m Model) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.size = layout.SizeOf(msg)
		return m, nil
	case screen.InUnits:
		m.sys = msg.Units
		return m, nil
	case tea.MouseMsg:
		return m.mouse(msg), nil
	case entry.Learned:
		next := m.learned()
		return next, next.reckon()
	case reckoned:
		return m.took(msg), nil
	case tea.KeyMsg:
		next, cmd := m.key(msg)
		if cmd == nil {
			cmd = next.reckon()
		}
		return next, cmd
	}
	return m, nil
}

func (m Model) key(msg tea.KeyMsg) (Model, tea.Cmd) {
	b, bound := keys.Find(m.Keys(), msg)
	switch {
	case !bound:
		return m, nil
	case b.Blocked != "":
		return m.warn(b.NotNow()), nil
	}
	return m.say("").act(b.Does)
}

// act does what a key means.
func (m Model) act(does keys.Action) (Model, tea.Cmd) {
	switch does {
	case up:
		return m.onto(m.hand - 1), nil
	case down:
		return m.onto(m.hand + 1), nil
	case other:
		return m.otherList(), nil
	case turn:
		return m.turnPin(), nil
	case pinIn:
		return m.pin(split.In), nil
	case pinOut:
		return m.pin(split.Out), nil
	case free:
		return m.freed(), nil
	case more:
		return m.surer(1), nil
	case less:
		return m.surer(-1), nil
	case history.Undo:
		return m.undone(), nil
	case history.Redo:
		return m.redone(), nil
	}
	return m.leave(does)
}

// leave does what a key means that opens another page or goes back.
func (m Model) leave(does keys.Action) (Model, tea.Cmd) {
	switch does {
	case keys.Units:
		m.sys = m.sys.Other()
		return m.say("Shown in " + m.sys.Words() + "."), screen.ShowIn(m.sys)
	case why:
		page := reader.New(m.th, "Where the numbers come from", m.size, m.whyLines)
		return m, func() tea.Msg { return screen.Go{To: page} }
	case take:
		return m, m.take()
	case back:
		return m, m.back()
	}
	return m, nil
}

func (m Model) onto(hand int) Model {
	m.hand = min(max(hand, 0), max(m.lines()-1, 0))
	return m
}

// otherList goes from the faces to the ways, and back.
func (m Model) otherList() Model {
	if _, ok := m.face(); ok && len(m.ways) > 0 {
		return m.onto(len(m.share.Faces))
	}
	return m.onto(0)
}

// take goes back with the way under the hand, or with the share.
func (m Model) take() tea.Cmd {
	done := Done{Wash: m.share.Wash, Taken: "DI where it shows most"}
	w, ok := m.way()
	if ok && w.Wash == nil {
		return with(ChangeResin{Wash: m.now, Changed: m.changed()})
	}
	if ok {
		done = Done{Wash: *w.Wash, Taken: w.Name}
	}
	return with(done)
}

// back returns to the screen before, with the pins where they are others now.
func (m Model) back() tea.Cmd {
	if m.changed() {
		return with(Done{Wash: m.now})
	}
	return with(nil)
}

func with(msg tea.Msg) tea.Cmd { return func() tea.Msg { return screen.Back{With: msg} } }

func (m Model) whyLines(width int) []string {
	s := planner.Shortage{Share: m.share, Ways: m.ways}
	return reader.Reasons(m.th, m.sys, s.Reasons(), width)
}

// mouse puts the hand where it clicks, and moves it by the wheel.
func (m Model) mouse(msg tea.MouseMsg) Model {
	r, perWay := m.rects()
	switch does := mouse.Of(msg); {
	case does == mouse.Up:
		return m.onto(m.hand - 1)
	case does == mouse.Down:
		return m.onto(m.hand + 1)
	case does != mouse.Click:
		return m
	case r.Faces.Holds(msg.X, msg.Y) && msg.Y > r.Faces.Y:
		return m.onto(msg.Y - r.Faces.Y - 1)
	case r.Ways.Holds(msg.X, msg.Y) && msg.Y > r.Ways.Y && len(m.ways) > 0:
		return m.onto(len(m.share.Faces) + (msg.Y-r.Ways.Y-1)/perWay)
	}
	return m
}
