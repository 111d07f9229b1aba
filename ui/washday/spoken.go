package washday

import (
	"fmt"
	"strings"
	"time"

	"washeve/ui/talk"
)

// Spoken is the wash day in words.
func (m Model) Spoken() talk.Page {
	m = m.look()
	p := talk.Page{Title: m.Title(), Like: "on, next or reading 6", Said: m.said(), Tell: m.told, After: m.told}
	switch {
	case m.early != "":
		p.Prompt, p.Tell, p.After = m.early+" yes or no", nil, nil
	case m.ending:
		p.Prompt = "End the wash here? yes or no"
	case m.again != "":
		p.Prompt = m.askAgain() + " yes, or no where both stand"
	case m.stood != "":
		p.Prompt = m.askStood() + " yes, or no for a first cup"
	case m.slip != "":
		p.Prompt = m.askSlip()
	case m.picker != nil:
		p.Asks = m.asksWay()
	case m.edit != nil:
		p.Asks = map[asking]*talk.Question{
			aReading: {Ask: "The pen shows", Like: m.exampleOf(aReading), Edit: m.edit},
			aFlow:    {Ask: strings.TrimSuffix(m.flowAsk(), ": "), Like: m.exampleOf(aFlow), Edit: m.edit},
		}[m.asks]
	case m.broken != nil:
		p.Like, p.Words = "keep aside", []talk.Word{{Say: "keep aside", Does: setAside}, leaving()}
	case m.offered:
		p.Like = "go on"
		p.Words = []talk.Word{{Say: "go on", Does: resume}, {Say: "it was off", Does: wasOff}, {Say: "end", Does: end}, leaving()}
	case m.err != nil || m.state.Over:
		p.Like, p.Words = "back", []talk.Word{leaving()}
	default:
		p.Words, p.Alarm = m.stepWords(), m.stepOver()
	}
	return p
}

// stepOver is when the time of the step will be over; nil where that is not to be told.
func (m Model) stepOver() *talk.Alarm {
	s := m.step()
	if s == nil || !m.state.Running || !s.Timed() || m.rung == m.state.At {
		return nil
	}
	left := max(s.Duration.Or(0)-m.done().Spent, 0)
	return &talk.Alarm{After: time.Duration(float64(left) * float64(time.Second)), Sends: ticked{m.ticks}}
}

func leaving() talk.Word {
	return talk.Word{Say: "back", Does: back, Help: "to the plan; the wash goes on, and wash there comes back to it"}
}

func (m Model) stepWords() []talk.Word {
	water := talk.Word{Say: "on", Does: run, Help: "the water is on: the time runs"}
	if m.state.Running {
		water = talk.Word{Say: "off", Does: run, Help: "the water is off: the time stands"}
	}
	return []talk.Word{
		water,
		{Say: "next", Does: next},
		{Say: "before", Does: before},
		{Say: "skip", Does: skip},
		{Say: "reading", Does: read, Takes: "6", Like: "reading " + m.exampleOf(aReading)},
		{Say: "flow", Does: check, Takes: m.exampleOf(aFlow), Like: "flow " + m.exampleOf(aFlow)},
		{Say: "ways", Does: ways},
		{Say: "all the same", Does: anyway},
		{Say: "end", Does: end},
		leaving(),
	}
}

// said is what became of the last word, or what could not be written.
func (m Model) said() string {
	if m.kept != nil {
		return "NOT WRITTEN, tried again with the next word: " + m.kept.Error()
	}
	return m.status
}

// told is where the wash stands.
func (m Model) told() []string {
	switch {
	case m.err != nil:
		return []string{"There is no wash to do yet: " + m.err.Error()}
	case m.broken != nil:
		return []string{m.brokenWords()}
	case m.offered:
		return append(m.offerWords(), m.offerKeys())
	case m.state.Over:
		return m.summaryTold()
	}
	s := m.step()
	if s == nil {
		return nil
	}
	head := fmt.Sprintf("Step %d of %d: %s", m.state.At+1, len(m.state.Steps), s.Stage)
	if s.Face != "" {
		head += ", " + string(s.Face)
	}
	if _, over := m.overCap(); over {
		head += ", over the cap"
	}
	if clock := m.clock(); clock != "" {
		head += ", " + clock
	}
	if m.state.Running {
		head += ", the time runs"
	}
	told := append([]string{head + "."}, m.factWords()...)
	if !m.state.Sure {
		told = append(told, m.unsureWords())
	}
	return told
}

// summaryTold is the wash that is over, each figure with what it is.
func (m Model) summaryTold() []string {
	lines := m.summaryWords()[:1]
	for _, s := range m.sums() {
		lines = append(lines, fmt.Sprintf("%s: planned %s, done %s.", s.what, s.planned, s.done))
	}
	return append(lines, m.after...)
}

// asksWay offers the ways out, and says what is none.
func (m Model) asksWay() *talk.Question {
	q := &talk.Question{Ask: m.picker.Title, List: m.picker}
	if m.odd {
		q.More = append(q.More, m.oddWords())
	}
	for _, why := range m.noWays {
		q.More = append(q.More, "No way out here: "+why)
	}
	return q
}

var _ talk.Speaker = Model{}
