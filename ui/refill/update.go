package refill

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/reader"
	"washeve/ui/screen"
)

// Update takes a message.
func (m Model) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.size = layout.SizeOf(msg)
		return m, nil
	case entry.Learned:
		return m.looked().retold(), nil
	case screen.InUnits:
		return m.inUnits(msg.Units), nil
	case tea.MouseMsg:
		return m.mouse(msg), nil
	case tea.KeyMsg:
		return m.key(msg)
	}
	return m, nil
}

func (m Model) key(msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	if m.reading != nil {
		return m.reads(msg), nil
	}
	b, bound := keys.Find(m.stepsFirst(), msg)
	switch {
	case !bound && m.inForm():
		return m.states(msg)
	case m.edit != nil && (!bound || b.Does == form.Spell):
		e := m.edit.Type(msg, checkResin)
		m.edit = &e
		return m.say(e.Heard()), nil
	case !bound:
		return m, nil
	case b.Blocked != "":
		return m.warn(b.NotNow()), nil
	}
	m = m.say("")
	if m.edit != nil {
		return m.typing(b.Does), nil
	}
	return m.act(b.Does, msg)
}

// stepsFirst are the keys that are not the form's.
func (m Model) stepsFirst() []keys.Binding {
	if m.inForm() {
		return m.stepKeys("right", "pgdown")
	}
	return m.Keys()
}

func (m Model) act(does keys.Action, msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	switch does {
	case next:
		return m.onto(m.step + 1), nil
	case before:
		return m.onto(m.step - 1), nil
	case up:
		return m.moved(-1), nil
	case down:
		return m.moved(1), nil
	case change:
		return m.startEdit(m.amount().text), nil
	case overtype:
		m = m.startEdit("")
		e := m.edit.Type(msg, checkResin)
		m.edit = &e
		return m, nil
	case read:
		r := m.o.NewReading(m.plan, m.ahead.Faster)
		m.reading = &r
		return m, nil
	case why:
		page := reader.New(m.th, "Where the numbers come from", m.size, m.whyLines)
		return m, func() tea.Msg { return screen.Go{To: page} }
	case keys.Units:
		m = m.inUnits(m.sys.Other())
		return m.say("Shown in " + m.sys.Words() + "."), screen.ShowIn(m.sys)
	}
	return m.leave()
}

// inUnits is the screen, and what is stated on it, in some units.
func (m Model) inUnits(sys quantity.System) Model {
	m.sys, m.o.Units, m.fill = sys, sys, m.fill.In(sys)
	return m
}

// leave returns to the bed, which takes up what was written.
func (m Model) leave() (screen.Screen, tea.Cmd) {
	back := screen.Back{}
	if m.written {
		back.With = entry.Written{}
	}
	return m, func() tea.Msg { return back }
}

func (m Model) onto(i int) Model {
	m.step = min(max(i, 0), len(steps())-1)
	m.top = 0
	return m
}

// moved goes from amount to amount, or scrolls a step that is longer than the
// screen.
func (m Model) moved(by int) Model {
	if m.now().amounts {
		m.hand = (m.hand + 2 + by) % 2
		return m
	}
	m.top = min(max(m.top+by, 0), m.lowest())
	return m
}

// lowest is the first line seen where the step is scrolled to its end.
func (m Model) lowest() int {
	at := m.rects().page
	return max(len(m.pageLines(at.W-1))-at.H, 0)
}

func (m Model) amount() amount {
	if m.hand == 1 {
		return m.bag
	}
	return m.resin
}

// amountLabel is what the line under the hand is called.
func (m Model) amountLabel() string {
	if m.hand == 1 {
		return bagLabel
	}
	return resinLabel
}

func (m Model) startEdit(text string) Model {
	resin := quantity.Volume(0).Kind()
	e := form.Start(text, resin.Like(m.amount().text, m.sys)).OfFigures() // in US units, a bare number is offered the unit that stands there
	e.Good = m.amount().text
	m.edit = &e
	return m
}

// checkResin holds an amount to what a tank can hold.
func checkResin(text string) error {
	for _, f := range (&model.Refill{}).Fields() {
		if f.Key == "resin" && text != "" {
			return f.Set(text)
		}
	}
	return nil
}

func (m Model) typing(does keys.Action) Model {
	e, held := m.edit.Held(does)
	if held {
		m.edit = &e
		return m.warn(e.NotTaken(m.amountLabel()))
	}
	m.edit = nil
	if does == abandon {
		return m
	}
	switch e = e.Offered(checkResin); {
	case e.Problem != nil:
		m = m.warn(e.NotTaken(m.amountLabel()))
		return m.beside(does)
	case !e.Replaced:
		return m
	}
	v, err := quantity.Parse[quantity.Volume](e.Good)
	if err != nil {
		return m.warn("Not taken: " + err.Error())
	}
	return m.amounts(amount{volume: v, text: e.Good})
}

// beside goes to the amount beside the one that was typed.
func (m Model) beside(does keys.Action) Model {
	switch does {
	case form.AcceptUp:
		return m.moved(-1)
	case form.AcceptDown:
		return m.moved(1)
	}
	return m
}

// states takes a key into the form of the new fill.
func (m Model) states(msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	f, does := m.fill.Update(msg)
	was, is := m.fill.Entry(), f.Entry()
	m.touched = m.touched || was.Content() != is.Content()
	m.fill = f
	m = m.say("")
	switch does {
	case entry.Leave:
		return m.leave()
	case entry.Write:
		return m.writeFill(), nil
	}
	return m, nil
}

// writeFill puts the new fill into the log.
func (m Model) writeFill() Model {
	if _, err := m.o.Write(m.fill.Entry()); err != nil {
		m.kept = err
		return m.warn("Not written, as said above.")
	}
	m.kept, m.written = nil, true
	return m.looked().say("Written. The log counts a new fill from here; " + m.th.Key("right goes on.", "next goes on. On the Bed page undo strikes it out."))
}

// looked takes up the plan of the new fill.
func (m Model) looked() Model {
	plan, past, ahead, err := m.o.Look()
	if err != nil {
		return m.warn(err.Error())
	}
	m.plan, m.past, m.ahead = plan, past, ahead
	return m
}

// reads takes a key while a reading is added.
func (m Model) reads(msg tea.KeyMsg) Model {
	r, does := m.reading.Update(msg)
	m.reading = &r
	m = m.say("")
	switch does {
	case entry.Leave:
		m.reading, m.kept = nil, nil
		return m.say("No reading added.")
	case entry.Write:
		s := r.Sample()
		if _, err := m.o.Write(model.Entry{Body: s}); err != nil {
			m.kept = err
			return m.warn("Not written, as said above.")
		}
		m.kept, m.reading = nil, nil
		return m.looked().took(s)
	}
	return m
}

// took says how a reading of the new fill stands.
func (m Model) took(s *model.Sample) Model {
	m.last = s
	m.readings = append(m.readings[:len(m.readings):len(m.readings)], m.stands(s))
	return m.say("Written.")
}

// retold says it again when the log has been read.
func (m Model) retold() Model {
	if n := len(m.readings); n > 0 {
		m.readings = append(m.readings[:n-1:n-1], m.stands(m.last))
	}
	return m
}

func (m Model) stands(s *model.Sample) string {
	words := "Read: " + s.Reading.Words()
	if !s.Counts() {
		words += ", a first cup, not used"
	}
	if m.past != nil {
		all := m.past.Present().Readings
		if n := len(all); n > 0 && all[n-1].Suspect != nil {
			words += "; it fits no bed: " + m.th.Key("esc, then e on the Bed screen says", "back, then evidence on the Bed page says") + " what to check"
		}
	}
	return words + "."
}
