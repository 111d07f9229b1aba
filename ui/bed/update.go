package bed

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/keeping"
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
		return m, nil
	case screen.InUnits:
		return m.inUnits(msg.Units), nil
	case tea.MouseMsg:
		return m.mouse(msg), nil
	case tea.KeyMsg:
		return m.key(msg)
	case screen.Said:
		m.status, m.alarm = keeping.Told(msg, m.status, m.alarm, m.th)
		return m, nil
	case entry.Written:
		return m.seen(), nil
	case entry.Learned:
		return m.renewed().followed(), nil
	}
	return m, nil
}

func (m Model) key(msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	switch {
	case m.form != nil:
		return m.inForm(msg), nil
	case m.reading != nil:
		return m.inReading(msg), nil
	}
	b, bound := keys.Find(m.Keys(), msg)
	switch {
	case !bound && m.list.search.typing:
		return m.typesSearch(msg), nil
	case !bound:
		return m, nil
	case b.Blocked != "":
		return m.warn(b.NotNow()), nil
	}
	m = m.say("")
	switch {
	case m.ask != nil:
		return m.answer(b.Does), nil
	case m.kinds != nil:
		return m.picksKind(b.Does, msg), nil
	case m.list.search.typing:
		return m.endSearch(b.Does), nil
	}
	return m.act(b.Does)
}

func (m Model) inForm(msg tea.KeyMsg) Model {
	f, does := m.form.Update(msg)
	m.form = &f
	m = m.say("")
	switch does {
	case entry.Write:
		return m.writeForm()
	case entry.Leave:
		m.form, m.kept = nil, nil
		return m.say("Nothing was written.")
	}
	return m
}

// act does what a key means while the hand walks through the log.
func (m Model) act(does keys.Action) (screen.Screen, tea.Cmd) {
	switch does {
	case up, down, pageUp, pageDn, home, end:
		return m.walk(does), nil
	case back:
		return m.leaves()
	case find:
		m.list.search.typing = true
		return m, nil
	case add:
		return m.startReading(), nil
	case wash:
		return m.state(&model.WashDone{}), nil
	case salt:
		return m.state(&model.Regeneration{}), nil
	case newOne:
		return m.askKind(), nil
	case right:
		return m.correct(), nil
	case strike:
		return m.strike(), nil
	case useIt:
		return m.use(), nil
	case unfold:
		m.list = m.list.turned()
		return m, nil
	case undo:
		return m.undo(), nil
	}
	return m.see(does)
}

// see does what a key means that opens another page or turns this one.
func (m Model) see(does keys.Action) (screen.Screen, tea.Cmd) {
	switch does {
	case resin:
		desk := m.o.Desk
		desk.Size = m.size
		to := m.o.Refill(desk)
		return m, func() tea.Msg { return screen.Go{To: to} }
	case explain:
		return m, m.read("What the readings say", m.evidence)
	case why:
		return m, m.read("Where the numbers come from", m.whyLines)
	case keys.Units:
		m = m.inUnits(m.sys.Other())
		return m.say("Shown in " + m.sys.Words() + "."), screen.ShowIn(m.sys)
	}
	return m, nil
}

// inUnits is the screen, and what is opened from it, in some units.
func (m Model) inUnits(sys quantity.System) Model {
	m.sys, m.o.Units = sys, sys
	return m
}

func (m Model) read(title string, lines reader.Lines) tea.Cmd {
	page := reader.New(m.th, title, m.size, lines)
	return func() tea.Msg { return screen.Go{To: page} }
}

// leaves first ends a search; the hand stays on what was found.
func (m Model) leaves() (screen.Screen, tea.Cmd) {
	if m.list.search.text != "" {
		here, _ := m.list.here()
		m.list = m.list.look("").ontoEntry(here.Entry.ID)
		return m, nil
	}
	return m, func() tea.Msg { return screen.Back{With: m.news()} }
}

// news tells the screen below that the log has grown; nil where it has not.
func (m Model) news() tea.Msg {
	if m.length == m.began {
		return nil
	}
	return entry.Written{}
}

func (m Model) walk(does keys.Action) Model {
	page := m.page()
	by := map[keys.Action]int{up: -1, down: 1, pageUp: -page, pageDn: page, home: -m.list.count(), end: m.list.count()}[does]
	m.list = m.list.onto(m.list.hand + by)
	return m
}

// page is how many entries are seen while the hand walks through the log.
func (m Model) page() int {
	m.list = m.list.onto(max(m.list.hand, 1))
	return max(m.rects().List.H-1, 1)
}

func (m Model) answer(does keys.Action) Model {
	q := m.ask
	m.ask = nil
	switch does {
	case form.Yes:
		return q.Yes(m)
	case form.All:
		return q.All(m)
	}
	return m.say(q.Declined())
}

func (m Model) typesSearch(msg tea.KeyMsg) Model {
	text := m.list.search.text
	switch msg.Type {
	case tea.KeyRunes, tea.KeySpace:
		text += string(msg.Runes)
	case tea.KeyBackspace:
		if r := []rune(text); len(r) > 0 {
			text = string(r[:len(r)-1])
		}
	default:
		return m
	}
	m.list = m.list.look(text)
	return m
}

func (m Model) endSearch(does keys.Action) Model {
	m.list.search.typing = false
	if does == abandon {
		m.list = m.list.look("")
	}
	return m
}

// mouse puts the hand where it clicks, and scrolls.
func (m Model) mouse(msg tea.MouseMsg) Model {
	if m.ask != nil || m.form != nil || m.kinds != nil || m.reading != nil {
		return m
	}
	at := m.rects().List
	switch does := mouse.Of(msg); {
	case does == mouse.Up:
		m.list = m.list.onto(m.list.hand - 1)
	case does == mouse.Down:
		m.list = m.list.onto(m.list.hand + 1)
	case does == mouse.Click && at.Holds(msg.X, msg.Y) && msg.Y > at.Y:
		m.list = m.list.onto(m.first(at.H-1) + msg.Y - at.Y - 1)
	}
	return m
}
