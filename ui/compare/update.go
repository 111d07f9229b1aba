package compare

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/entry"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/mouse"
	"washeve/ui/reader"
	"washeve/ui/screen"
)

// Update takes a message.
func (m Model) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.size = layout.SizeOf(msg)
		return m.to(m.hand), nil
	case screen.InUnits:
		m.sys = msg.Units
		return m, nil
	case tea.MouseMsg:
		return m.mouse(msg), nil
	case entry.Learned:
		return m.learned(), nil
	case tea.KeyMsg:
		return m.key(msg)
	}
	return m, nil
}

func (m Model) key(msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	b, bound := keys.Find(m.Keys(), msg)
	switch {
	case !bound:
		return m, nil
	case b.Blocked != "":
		return m.warn(b.NotNow()), nil
	}
	m = m.say("")
	if msg.Type != tea.KeyRunes && b.Does != adopt {
		m.chose = true
	}
	switch b.Does {
	case back:
		return m, func() tea.Msg { return screen.Back{} }
	case why:
		return m, m.explain()
	case adopt:
		return m.adopt()
	case take:
		m.ask = false
		return m, m.done()
	case keys.Units:
		m.sys = m.sys.Other()
		return m.say("Shown in " + m.sys.Words() + "."), screen.ShowIn(m.sys)
	}
	return m.act(b.Does), nil
}

// act does what a key means that stays on the page.
func (m Model) act(does keys.Action) Model {
	switch does {
	case before:
		return m.to(m.hand - 1)
	case next:
		return m.to(m.hand + 1)
	case home:
		return m.to(0)
	case end:
		return m.to(len(m.table.Ways))
	case up:
		m.top--
	case down:
		m.top++
	case more:
		return m.turn(1)
	case less:
		return m.turn(-1)
	case leaveOut:
		m.ask = false
		return m.warn("Left as it was.")
	}
	return m
}

// chosen puts the hand on a way as the person wants it.
func (m Model) chosen(way int) Model {
	m.chose = true
	return m.to(way)
}

// adopt makes the way under the hand the plan. It asks first where the rig lacks what
// it takes, and where letters alone put the hand there: a text that was meant for a field
// may have opened the page and gone on.
func (m Model) adopt() (screen.Screen, tea.Cmd) {
	if m.way().Buys != "" || !m.chose {
		m.ask = true
		return m, nil
	}
	return m, m.done()
}

// asks is the question that is open: whether to make the way under the hand the plan,
// and to put what it takes into the rig.
func (m *Model) asks() string {
	if buys := m.way().Buys; buys != "" {
		return "Put " + buys + " into your rig, and plan with it?"
	}
	return "Make '" + m.way().Name + "' the plan?"
}

// done goes back with the way under the hand.
func (m Model) done() tea.Cmd {
	w := m.way()
	return func() tea.Msg { return screen.Back{With: Done{w}} }
}

// turn moves what the way hangs on.
func (m Model) turn(by int) Model {
	m.turned = m.turned.Turned(m.way(), by)
	return m.compare()
}

// mouse puts the hand where it clicks, and moves it by the wheel.
func (m Model) mouse(msg tea.MouseMsg) Model {
	r := m.rects()
	switch does := mouse.Of(msg); {
	case m.err != nil || m.ask:
		return m
	case does == mouse.Up:
		return m.chosen(m.hand - 1)
	case does == mouse.Down:
		return m.chosen(m.hand + 1)
	case does != mouse.Click || !r.Table.Holds(msg.X, msg.Y):
		return m
	}
	seen := m.seen()
	if at := columnAt(msg.X - r.Table.X); at >= 0 && at < len(seen) {
		return m.say("").chosen(seen[at])
	}
	return m
}

// explain opens where the numbers of the way come from.
func (m Model) explain() tea.Cmd {
	page := reader.New(m.th, "Where the numbers come from: "+m.way().Name, m.size, m.whyLines)
	return func() tea.Msg { return screen.Go{To: page} }
}
