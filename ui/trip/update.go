package trip

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/cells"
	"washeve/ui/compare"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/history"
	"washeve/ui/keeping"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/mouse"
	"washeve/ui/reader"
	"washeve/ui/report"
	"washeve/ui/screen"
)

// Update takes a message.
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
	case compare.Done:
		return m.tookWay(msg.Way)
	case entry.Learned:
		return m.learned(), nil
	case tea.KeyMsg:
		return m.key(msg)
	case screen.Unsaved:
		m.question = keeping.AnewQuestion[Model](msg.Why, m.th)
		return m, nil
	case screen.Said, screen.Changed:
		m.status, m.alarm = keeping.Told(msg, m.status, m.alarm, m.th)
		return m, nil
	}
	return m, nil
}

func (m Model) key(msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	b, bound := keys.Find(m.Keys(), msg)
	f, _ := m.target()
	switch {
	case m.edit != nil && (!bound || b.Does == form.Spell):
		return m.typed(msg), nil
	case !bound && (m.sheet == nil || m.picker != nil || m.question != nil || m.refused):
		return m, nil
	case !bound && msg.Paste:
		return m.overtyped(msg), nil
	case !bound && form.IsLetter(msg):
		return m.say(form.NoKey(f, msg)), nil
	case !bound:
		return m, nil
	case b.Blocked != "":
		return m.refuse(b), nil
	}
	m = m.say("")
	switch {
	case m.refused:
		if m.refused = false; b.Does == form.OpenLine {
			return m.change(), nil
		}
		return m, nil
	case m.question != nil:
		return m.answer(b.Does)
	case m.picker != nil:
		return m.pick(b.Does, msg), nil
	case m.edit != nil:
		return m.typing(b.Does), nil
	case m.sheet != nil && b.Does != keys.Units:
		return m.onSheet(b.Does, msg), nil
	}
	return m.act(b.Does)
}

// refuse says why a key does nothing. Of a digit the letters behind it are let go by, too.
func (m Model) refuse(b keys.Binding) Model {
	m.refused = b.Does == overtype
	return m.warn(b.NotNow())
}

// act does what a key means on the list.
func (m Model) act(does keys.Action) (screen.Screen, tea.Cmd) {
	switch does {
	case up:
		m.hand--
	case down:
		m.hand++
	case first:
		m.hand = 0
	case last:
		m.hand = len(m.lines()) - 1
	case open:
		return m.openSheet(), nil
	case newWash:
		return m.add(washLine), nil
	case newStop:
		return m.add(stopLine), nil
	case newChange:
		return m.add(changeLine), nil
	case take:
		return m.advised(), nil
	case dropLine:
		return m.drop(), nil
	case earlier, later, weekBefore, weekAfter:
		return m.moved(map[keys.Action]int{earlier: -1, later: 1, weekBefore: -7, weekAfter: 7}[does]), nil
	}
	return m.see(does)
}

// see does what a key means that looks at the trip or keeps it.
func (m Model) see(does keys.Action) (screen.Screen, tea.Cmd) {
	switch does {
	case history.Undo:
		return m.undone(), nil
	case history.Redo:
		return m.redone(), nil
	case nextTrip:
		return m.other(), nil
	case begin:
		return m.start(), nil
	case saveAgain:
		return m.save(), nil
	case keeping.Anew:
		return m, keeping.AskAnew
	case full:
		return m, m.read("The trip in full", func(width int) []string {
			return split(report.TripText(m.plan, m.sys, m.th.Plain, width))
		})
	case why:
		return m, m.read("What the trip rests on", m.whyLines)
	case compared:
		return m, m.openCompare()
	case keys.Units:
		m.sys = m.sys.Other()
		return m.say("Shown in " + m.sys.Words() + "."), screen.ShowIn(m.sys)
	case back:
		m.keeper.Leave(Left{At: m.at, History: m.history, Unsaved: m.unsaved})
		return m, func() tea.Msg { return screen.Back{} }
	}
	return m, nil
}

func (m Model) read(title string, lines func(width int) []string) tea.Cmd {
	page := reader.New(m.th, title, m.size, lines)
	return func() tea.Msg { return screen.Go{To: page} }
}

// chanceWords say how the chances of a trip are worked out.
const chanceWords = "One bed goes through all washes: a thousand ways in which it may be, with its capacity, its contact, the load of each place's water and, where a water is unknown, its place in the band, go through the whole trip. The chance of a wash is the share of them that end under the limit; the chance of all is the share that do so every time, and no product."

// whyLines lists what was stated or assumed, and how the answer is worked out.
func (m Model) whyLines(width int) []string {
	lines := cells.Wrap(chanceWords, width)
	if len(m.plan.Orders) > 0 {
		lines = append(append(lines, ""), cells.Wrap(report.OrderWhy, width)...)
	}
	lines = append(lines, "")
	for _, a := range m.plan.Assumptions {
		text := a.Name + ": " + report.Value(a, m.sys) + " (" + string(a.Source.Tag) + ": " + a.Source.Text + ")"
		lines = append(lines, cells.Wrap(cells.Safe(text), width)...)
	}
	return lines
}

// onSheet does what a key means on a sheet.
func (m Model) onSheet(does keys.Action, msg tea.KeyMsg) Model {
	switch does {
	case up:
		return m.along(-1)
	case down:
		return m.along(1)
	case change:
		return m.change()
	case overtype:
		return m.overtyped(msg)
	case takeAway:
		return m.state(m.sheet.key(), "")
	case history.Undo:
		return m.closed().undone()
	case history.Redo:
		return m.closed().redone()
	}
	return m.closed()
}

// closed is the screen without its sheet.
func (m Model) closed() Model {
	m.sheet = nil
	return m
}

func (m Model) overtyped(msg tea.KeyMsg) Model {
	if m = m.startEdit(""); m.edit == nil {
		return m
	}
	return m.typed(msg)
}

func (m Model) answer(does keys.Action) (screen.Screen, tea.Cmd) {
	q := m.question
	m.question = nil
	return q.Answered(m, does, Model.warn)
}

// mouse puts the hand where it clicks, and scrolls.
func (m Model) mouse(msg tea.MouseMsg) Model {
	m.refused = false
	if m.question != nil || m.edit != nil || m.picker != nil || !m.begun {
		return m
	}
	switch does := mouse.Of(msg); {
	case does == mouse.Up:
		return m.scrolled(-1)
	case does == mouse.Down:
		return m.scrolled(1)
	case does != mouse.Click || m.sheet != nil:
		return m
	}
	at := m.rects().List
	if i := m.firstLine(at.H) + msg.Y - at.Y; at.Holds(msg.X, msg.Y) && i < len(m.lines()) {
		if i == m.hand {
			return m.openSheet()
		}
		m.hand = i
	}
	return m
}

func (m Model) scrolled(by int) Model {
	if m.sheet != nil {
		return m.along(by)
	}
	m.hand = min(max(m.hand+by, 0), len(m.lines())-1)
	return m
}
