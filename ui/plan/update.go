package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/compare"
	"washeve/ui/day"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/history"
	"washeve/ui/keeping"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/mouse"
	"washeve/ui/rig"
	"washeve/ui/screen"
	"washeve/ui/short"
	"washeve/ui/trip"
)

// Update takes a message.
func (m Model) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.size = layout.SizeOf(msg)
		return m, nil
	case screen.InUnits:
		return m.inUnits(msg.Units)
	case tea.MouseMsg:
		return m.mouse(msg), nil
	case tea.KeyMsg:
		return m.key(msg)
	case screen.Unsaved:
		m.question = keeping.AnewQuestion[Model](msg.Why, m.th)
		return m, nil
	case screen.Said, screen.Changed:
		m.status, m.alarm = keeping.Told(msg, m.status, m.alarm, m.th)
		return m, nil
	case day.Done:
		return m.tookDay(msg.Wash), nil
	case short.Done:
		return m.tookShare(msg), nil
	case short.ChangeResin:
		return m.toChangeResin(msg)
	case trip.Rigged:
		return m.rigged(msg), nil
	case compare.Done:
		return m.tookWay(msg.Way), nil
	case rig.Done:
		return m.tookRig(msg)
	case entry.Written:
		m.underway = m.washUnderway()
		return m.replan(*m.shown()), nil
	case entry.Learned:
		return m.replan(*m.shown()), nil
	}
	return m, nil
}

func (m Model) key(msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	b, bound := keys.Find(m.Keys(), msg)
	_, f, _ := m.target()
	switch {
	case m.edit != nil && (!bound || b.Does == form.Spell):
		return m.typed(msg), nil
	case !bound && (m.picker != nil || m.question != nil || m.refused):
		return m, nil
	case !bound && msg.Paste:
		return m.startEdit("").typed(msg), nil
	case !bound && form.IsLetter(msg) && m.awaitsWord():
		return m.startEdit("").typed(msg), nil
	case !bound && form.IsLetter(msg):
		m.lettersAct = false
		return m.say(form.NoKey(f, msg)), nil
	case !bound:
		return m, nil
	case b.Blocked != "":
		m.lettersAct = false
		return m.refuse(b), nil
	}
	m = m.say("")
	m.lettersAct = false
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
	}
	return m.act(b.Does, msg)
}

// refuse says why a key does nothing. Of a digit the letters behind it are let go by, too.
func (m Model) refuse(b keys.Binding) Model {
	m.refused = b.Does == overtype
	return m.warn(b.NotNow())
}

// act does what a key means while the hand walks.
func (m Model) act(does keys.Action, msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	switch does {
	case up:
		return m.onto(m.hand-1, -1), nil
	case down:
		return m.onto(m.hand+1, 1), nil
	case nextStep:
		return m.opened((m.open + 1) % len(steps())), nil
	case prevStep:
		return m.opened((m.open + len(steps()) - 1) % len(steps())), nil
	case openStep:
		return m.openedBy(msg.String()), nil
	case change:
		return m.change(), nil
	case overtype, form.Spell:
		return m.startEdit("").typed(msg), nil
	case form.LetActs:
		return m.letLetterAct(), nil
	case nextChoice:
		return m.turnChoice(1), nil
	case prevChoice:
		return m.turnChoice(-1), nil
	case takeAway:
		return m.state(m.targetRef(), ""), nil
	case place:
		return m.openPicker(ref{section: "wash", key: "place"}), nil
	case newItem:
		return m.makeNew(m.nounHere()), nil
	case dropItem:
		return m.drop(), nil
	case history.Undo:
		return m.undone(), nil
	case history.Redo:
		return m.redone(), nil
	}
	return m.see(does)
}

// letLetterAct makes the next letter a key on a line that awaits words.
func (m Model) letLetterAct() Model {
	m.lettersAct = true
	return m.say("The next letter is a key.")
}

// see does what a key means that looks at the plan or keeps it.
func (m Model) see(does keys.Action) (screen.Screen, tea.Cmd) {
	switch does {
	case why:
		return m, m.read("Where the numbers come from", m.whyLines)
	case full:
		return m, m.read("The plan in full", m.fullLines)
	case oneFill:
		return m, m.read("One fill, several washes", m.oneFillLines)
	case dayStrip:
		return m, m.openDay()
	case sideBySide:
		return m, m.openCompare()
	case rigList:
		return m, m.openRig(rig.Spot{})
	case bedLog:
		return m, m.openBed()
	case washNow:
		return m, m.openWashDay()
	case shortBed:
		return m, m.openShort()
	case trips:
		return m, m.openTrip()
	case keys.Units:
		return m.otherUnits(), nil
	case adopt:
		return m.adopt(), nil
	case fresh:
		return m.startFresh(), nil
	case saveAgain:
		return m.save(), nil
	case keeping.Anew:
		return m, keeping.AskAnew
	case washes:
		return m.openWashes(), nil
	case newWash:
		return m.newWash(), nil
	}
	return m, nil
}

func (m Model) opened(i int) Model {
	m.open = i
	m = m.onto(0, 1)
	if m.planned && m.step().about == "shade" {
		m = m.say("The day is stated here; " + m.afterEsc() + m.th.Key("D", "day") + " shows its sun and drying hour by hour.")
	}
	return m
}

// afterEsc is what goes before a letter that is told of, where letters are text.
func (m Model) afterEsc() string {
	if m.awaitsWord() {
		return "esc, then "
	}
	return ""
}

func (m Model) openedBy(letter string) Model {
	for i, s := range steps() {
		if s.letter == letter {
			return m.opened(i)
		}
	}
	return m
}

func (m Model) answer(does keys.Action) (screen.Screen, tea.Cmd) {
	q := m.question
	m.question = nil
	return q.Answered(m, does, Model.warn)
}

// mouse puts the hand where it clicks, and scrolls.
func (m Model) mouse(msg tea.MouseMsg) Model {
	m.refused = false
	if m.question != nil || m.edit != nil {
		return m
	}
	switch does := mouse.Of(msg); {
	case does == mouse.Up && m.picker == nil:
		return m.onto(m.hand-1, -1)
	case does == mouse.Down && m.picker == nil:
		return m.onto(m.hand+1, 1)
	case does != mouse.Click:
		return m
	}
	at := m.rects().Walk
	if !at.Holds(msg.X, msg.Y) {
		return m
	}
	if heads := len(steps()); m.picker != nil {
		return m.clickedOption(msg.Y-at.Y-heads, at.H-heads)
	}
	return m.clickedLine(msg.Y-at.Y, at.H)
}

func (m Model) clickedOption(line, height int) Model {
	i := m.picker.First(height) + line - 1
	if line < 1 || i >= len(m.picker.Options) {
		return m
	}
	p := m.picker.Onto(i)
	m.picker = &p
	return m.pick(form.Accept, tea.KeyMsg{})
}

func (m Model) clickedLine(line, height int) Model {
	lines := m.walk(height, len(m.rows()))
	switch {
	case line >= len(lines):
		return m
	case lines[line].row < 0:
		return m.opened(lines[line].step)
	case lines[line].row == m.hand:
		return m.change()
	}
	if rows := m.rows(); rows[lines[line].row].isField() {
		m.hand = lines[line].row
	}
	return m
}

// change lets the field under the hand be changed: by a list where it holds a
// word, by typing otherwise.
func (m Model) change() Model {
	r, f, ok := m.target()
	switch {
	case !ok:
		return m
	case len(f.Choices) > 0 || f.Refers != "":
		return m.openPicker(r)
	}
	return m.startEdit(f.Text())
}

func (m Model) targetRef() ref {
	r, _, _ := m.target()
	return r
}

func (m Model) turnChoice(by int) Model {
	r, f, _ := m.target()
	return m.state(r, form.TurnedChoice(f, by))
}
