package bed

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/ui/entry"
)

// startReading tells the flush.
func (m Model) startReading() Model {
	r := m.o.NewReading(m.plan, m.ahead.Faster)
	m.reading = &r
	return m
}

// inReading takes a key while a reading is added.
func (m Model) inReading(msg tea.KeyMsg) Model {
	r, does := m.reading.Update(msg)
	m.reading = &r
	m = m.say("")
	switch does {
	case entry.Leave:
		m.reading, m.kept = nil, nil
		return m.say("No reading added.")
	case entry.Write:
		s := r.Sample()
		words := s.Reading.Words() + ", flushed: written."
		if !s.Counts() {
			words = s.Reading.Words() + " of a first cup: written and shown, not used."
		}
		return m.write(words, model.Entry{Body: s})
	}
	return m
}
