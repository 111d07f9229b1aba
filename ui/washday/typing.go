package washday

import (
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/washday"
	"washeve/ui/form"
	"washeve/ui/keys"
)

const nothingWritten = "Nothing was written."

// soFar is the DI water that the fill has given by now; not known after a change of
// resin in the middle of the wash.
func (m Model) soFar() quantity.Opt[quantity.Volume] {
	before, known := m.u.Outlook.SoFar.Get()
	for i := range m.u.Deeds {
		known = known && !washday.ChangesResin(m.u.Deeds[i].Way)
	}
	if !known {
		return quantity.Opt[quantity.Volume]{}
	}
	return washday.Hundredths(before + m.state.Tally().DI)
}

// ask begins to type what the pen shows, or how long the vessel takes.
func (m Model) ask(what asking) Model {
	m.asks = what
	e := form.Start("", m.exampleOf(what)).Telling(m.readAs).OfFigures()
	m.edit = &e
	return m
}

// readAs says of a right text what it was read as, where that is more than it says.
func (m Model) readAs(text string) string {
	if m.asks == aFlow {
		return m.timedAs(text)
	}
	return m.scales().Taken(text)
}

// scales are those of a reading by the pen that is used.
func (m Model) scales() form.Scales { return m.o.Known().Scales(m.o.Pen()) }

func (m Model) exampleOf(what asking) string {
	if what == aFlow {
		return flowExamples(m.sys)[0]
	}
	return m.scales().Bare("6")
}

func (m Model) typed(msg tea.KeyMsg) Model {
	e := m.edit.Type(msg, m.check)
	m.edit = &e
	return m.say(e.Heard())
}

// check tries what is typed.
func (m Model) check(text string) error {
	if m.asks == aReading {
		_, err := m.readingOf(text)
		return err
	}
	_, err := m.flowOf(text)
	return err
}

func (m Model) readingOf(text string) (quantity.Reading, error) {
	var s model.Sample
	for _, f := range s.Fields() {
		if f.Key == "reading" {
			if err := f.Set(text); err != nil {
				return quantity.Reading{}, err
			}
		}
	}
	return s.Reading.Or(quantity.Reading{}), nil
}

// typedText is what is typed, with the unit that is offered for a bare number.
func (m Model) typedText() string {
	if m.edit.Offer != "" {
		return m.edit.Offer
	}
	return m.edit.Text()
}

func (m Model) finishEdit(does keys.Action) Model {
	text := m.typedText()
	if does == abandon || strings.TrimSpace(text) == "" {
		m.edit = nil
		return m.say(nothingWritten)
	}
	if err := m.check(text); err != nil {
		e, _ := m.edit.Held(does)
		m.edit = &e
		return m.warn("Not taken: " + err.Error())
	}
	if m.asks == aFlow {
		m.edit = nil
		return m.takeFlow(text)
	}
	if m.slip = m.slipOf(text); m.slip != "" {
		return m
	}
	return m.typedReading(text)
}

// typedReading takes what was typed for good, or asks first whether it is another reading
// at all.
func (m Model) typedReading(text string) Model {
	m.edit = nil
	if m.state.SameWater() {
		m.again = text
		return m
	}
	return m.takeAnother(text)
}

// takeAnother takes a reading of other water than the last, or asks first whether the bed
// was flushed.
func (m Model) takeAnother(text string) Model {
	if m.state.Stands() {
		m.stood = text
		return m
	}
	return m.takeReading(text, "")
}

// takeReading writes a reading down, with what is done first of all. Where it may be of standing water it is said whether
// the bed was flushed all the same.
func (m Model) takeReading(text string, flushed model.Answer, first ...model.Deed) Model {
	reading, err := m.readingOf(text)
	if err != nil {
		return m.warn(err.Error())
	}
	taken := model.Deed{Does: model.TakeRead, Reading: quantity.Some(reading), Flow: m.step().Flow, Pen: m.o.Pen(), Flushed: flushed, SoFar: m.soFar()}
	m = m.do(append(first, taken)...).lookAtBed()
	switch gate := m.state.Gate(&m.u); {
	case gate == washday.NoGo:
		return m.listWays()
	case m.state.Exceeds(&m.u):
		return m.warn("OVER THE LIMIT: " + reading.String() + ". " + m.th.Key("w", "ways") + " lists the ways out, " + m.th.Key("a", "all the same") + " goes on all the same.")
	case m.state.FirstCup:
		return m.say("Written as a first cup, and not used.")
	case m.short(), gate != washday.Go && m.endsOver():
		return m.warn("Good water now, but it ends over the limit: " + m.th.Key("w", "ways") + " lists what there is to do.")
	case gate == washday.Go:
		return m.say("GO: the pen shows no more than the limit. " + m.th.Key("enter", "next") + " goes on.")
	}
	return m.say("Written: " + reading.String() + ".")
}

// takeFlow makes the steps that follow go by a measured flow.
func (m Model) takeFlow(text string) Model {
	flow, err := m.flowOf(text)
	if err != nil {
		return m.warn(err.Error())
	}
	before := *m.step()
	m = m.do(model.Deed{Does: model.Measure, Flow: quantity.Some(flow)}).lookAtBed()
	m = m.say(m.measuredWords(before))
	_, m.alarm = m.overCap()
	return m
}
