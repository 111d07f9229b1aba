package washday

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/washday"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/screen"
)

// ticked is a look at the clock. It changes nothing but what is shown.
type ticked struct{ of int }

// tick looks at the clock again after a while.
func (m Model) tick() tea.Cmd {
	if m.o.Tick <= 0 || m.err != nil {
		return nil
	}
	of := m.ticks
	return tea.Tick(m.o.Tick, func(time.Time) tea.Msg { return ticked{of} })
}

// Update takes a message.
func (m Model) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.size = layout.SizeOf(msg)
	case ticked:
		if msg.of != m.ticks {
			return m, nil
		}
		m, bell := m.look().seen().ring()
		return m, tea.Batch(bell, m.tick())
	case screen.Again:
		m.ticks++
		return m.look(), m.tick()
	case screen.InUnits:
		return m.inUnits(msg.Units), nil
	case tea.KeyMsg:
		return m.look().key(msg)
	case screen.Blindly:
		return m.look().blindly(msg.Does), nil
	case entry.Learned:
		return m.learned(), nil
	case entry.Written:
		return m.look().lookAtBed(), nil
	}
	return m, nil
}

// seenEvery is how much of a running time is lost at the most where the program is
// killed, and the water was turned off by then.
const seenEvery = time.Second

// seen keeps up to when the time ran for certain. Of a deed that is not written it makes
// no trouble less: that is told until it is.
func (m Model) seen() Model {
	n := len(m.u.Deeds)
	if n == 0 || !m.state.Running || m.offered || m.o.Rehearsal || m.kept != nil {
		return m
	}
	if d, sure := m.now.Since(m.u.Deeds[n-1].At); !sure || d < seenEvery {
		return m
	}
	m.u.Deeds = append(unseen(m.u.Deeds), model.Deed{Does: model.Seen, At: m.now})
	m.kept = m.o.Keep(m.u)
	return m
}

// unseen is what was done, and nothing of how long the time ran since. What is appended
// to it is not shared.
func unseen(deeds []model.Deed) []model.Deed {
	if n := len(deeds); n > 0 && deeds[n-1].Does == model.Seen {
		deeds = deeds[:n-1]
	}
	return deeds[:len(deeds):len(deeds)]
}

// ring tells once when the time of a step is over: by the bell, unless the rig says
// no, and in words.
func (m Model) ring() (Model, tea.Cmd) {
	s := m.step()
	if s == nil || !m.state.Running || !s.Timed() || m.done().Spent < s.Duration.Or(0) || m.rung == m.state.At {
		return m, nil
	}
	m.rung = m.state.At
	m = m.say("The planned time of this step is over.")
	if m.o.Bell == nil || m.o.Rig.Defaults.Bell == model.No {
		return m, nil
	}
	return m, func() tea.Msg {
		m.o.Bell()
		return nil
	}
}

func (m Model) key(msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	b, bound := keys.Find(m.Keys(), msg)
	switch {
	case m.refused && !m.behind && beginsNumber(msg):
		return m.letBy(), nil
	case !bound && m.behind:
		return m, nil
	case m.edit != nil && m.slip == "" && (!bound || b.Does == form.Spell):
		return m.typed(msg), nil
	case !bound:
		return m, nil
	case b.Blocked != "":
		return m.refuse(b), nil
	case b.Does == back:
		return m, leave
	}
	return m.heeded().say("").act(b.Does, msg)
}

// leave goes back to the screen below, which may find more in the log.
func leave() tea.Msg { return screen.Back{With: entry.Written{}} }

func (m Model) act(does keys.Action, msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	switch {
	case m.early != "":
		return m.answerDay(does)
	case m.ending:
		return m.answer(does), nil
	case m.again != "":
		return m.answerAgain(does), nil
	case m.stood != "":
		return m.answerStood(does), nil
	case m.slip != "":
		return m.answerSlip(does), nil
	case m.edit != nil:
		return m.finishEdit(does), nil
	case m.picker != nil:
		return m.pick(does, msg)
	}
	switch does {
	case form.Heed:
	case resume:
		m.offered = false
		if m.step() == nil {
			return m.do(model.Deed{Does: model.Finish}), nil
		}
		return m.seen().catchUp().lookAtBed(), nil
	case wasOff:
		m.offered = false
		m.now = m.u.Deeds[len(m.u.Deeds)-1].At
		return m.do(model.Deed{Does: model.WaterOff}).look(), nil
	case setAside:
		return m.aside(), nil
	case run:
		return m.turn(), nil
	case next:
		return m.goOn(), nil
	case before:
		return m.do(model.Deed{Does: model.GoBack}), nil
	case skip:
		return m.leaveStep(model.Skip), nil
	case read:
		if m = m.ask(aReading); beginsNumber(msg) {
			m = m.typed(msg)
		}
		return m, nil
	case undo:
		return m.takeBack(), nil
	case check:
		return m.ask(aFlow), nil
	case ways:
		return m.listWays(), nil
	case anyway:
		return m.do(model.Deed{Does: model.Accept}).say("Taken as good enough. " + m.th.Key("enter", "next") + " goes on."), nil
	case end:
		m.ending = true
		return m, nil
	case keys.Units:
		m = m.inUnits(m.sys.Other())
		return m.say("Shown in " + m.sys.Words() + "."), screen.ShowIn(m.sys)
	}
	return m, nil
}

// inUnits is the screen, and what is asked on it, in some units.
func (m Model) inUnits(sys quantity.System) Model {
	m.sys, m.o.Units = sys, sys
	return m
}

func (m Model) answer(does keys.Action) Model {
	m.ending = false
	if does != sayYes {
		return m
	}
	m.offered = false
	return m.do(model.Deed{Does: model.EndEarly})
}

// turn turns the water on or off.
func (m Model) turn() Model {
	if m.state.Running {
		return m.do(model.Deed{Does: model.WaterOff})
	}
	m.rung = -1
	if s := m.step(); s.Timed() && m.done().Spent >= s.Duration.Or(0) {
		m.rung = m.state.At // it is over already: no second bell
	}
	return m.do(model.Deed{Does: model.WaterOn})
}

// goOn leaves the step as done; the last one ends the wash.
func (m Model) goOn() Model { return m.leaveStep(model.GoOn) }

func (m Model) leaveStep(how model.DeedKind) Model {
	m.rung = -1
	if m.step() == nil {
		return m.do(model.Deed{Does: model.Finish})
	}
	left, done := m.step(), m.done()
	if m.state.At+1 >= len(m.state.Steps) {
		m = m.do(model.Deed{Does: how}, model.Deed{Does: model.Finish})
	} else {
		m = m.do(model.Deed{Does: how})
	}
	if !m.state.Over && left.Water == model.DI && left.Volume.Given() {
		m = m.lookAtBed() // by the log, as a reading will: one that is taken back leads here again
	}
	switch {
	case m.state.Over:
	case left.Kind == model.Flush && how == model.Skip:
		return m.warn("The flush was left out: " + m.th.Key("b", "before") + " goes back and runs it.")
	case left.Kind == model.Flush && m.state.Stands():
		return m.warn("The flush was cut short: " + m.th.Key("b", "before") + " goes back and runs the rest.")
	case left.Kind == model.Flush:
		return m.say("Read the pen in the stream, then " + m.th.Key("r", "reading") + ".")
	case how == model.GoOn && done.Spent == 0 && left.Volume.Given():
		return m.say("Not timed: counted as planned, " + m.gallons(left.Volume.Or(0)) + ". " + m.th.Key("b", "before") + " goes back; " + m.th.Key("s", "skip") + " leaves a step out.")
	}
	return m
}

// do does deeds at once: they are kept first, then shown, then what follows from them
// goes into the log. What cannot be written is told, and tried again with the next.
func (m Model) do(deeds ...model.Deed) Model {
	m.u.Deeds = unseen(m.u.Deeds)
	for _, d := range deeds {
		d.At = m.now
		m.u.Deeds = append(m.u.Deeds, d)
	}
	return m.catchUp()
}

// catchUp keeps the wash as it stands, and gives the log what it lacks of it.
func (m Model) catchUp() Model {
	m.state = washday.Stand(&m.u, m.now)
	m.kept = nil
	if m.o.Rehearsal {
		return m.lookBack()
	}
	if m.kept = m.o.Keep(m.u); m.kept == nil {
		m.kept = m.log()
	}
	if m.kept == nil && m.state.Over {
		m.kept = m.o.Close()
	}
	return m.lookBack()
}

// aside keeps a file that cannot be read under another name, and starts a wash.
func (m Model) aside() Model {
	kept, err := m.o.Aside()
	if err != nil {
		return m.warn(err.Error())
	}
	return New(m.o).say("Kept as " + kept + ", beside the rig. This is a new wash.")
}

// log appends what the log lacks of the wash.
func (m Model) log() error {
	lacks := washday.Lacks(&m.u, m.o.Logger.Log())
	if len(lacks) == 0 {
		return nil
	}
	_, err := m.o.Write(lacks...)
	return err
}
