package bed

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/entry"
	"washeve/ui/screen"
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
		return m.write(writtenWords(s, m.sys), model.Entry{Body: s})
	}
	return m
}

// writtenWords say what was written of a reading.
func writtenWords(s *model.Sample, sys quantity.System) string {
	flush, counted := s.FlushWater.Get()
	switch {
	case !s.Counts():
		return s.Reading.Words() + " of a first cup: written and shown, not used."
	case counted:
		return s.Reading.Words() + ", flushed, " + quantity.Show(flush, sys) + " more given: written."
	}
	return s.Reading.Words() + ", flushed: written."
}

// readingTold is the screen with a reading begun whose number was told.
func (m Model) readingTold(text string) (screen.Screen, error) {
	m = m.say("").startReading()
	r, err := m.reading.Reads(text)
	m.reading = &r
	return m, err
}
