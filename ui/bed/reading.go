package bed

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/entry"
	"washeve/ui/screen"
)

// startReading tells the flush and asks for the number.
func (m Model) startReading() Model {
	r := m.o.NewReading(m.plan, m.ahead.Faster).OfAnyTime()
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
		return m.write(r.Written(m.sys), r.Entry())
	}
	return m
}

// readingTold is the screen with a reading begun whose number was told.
func (m Model) readingTold(text string) (screen.Screen, error) {
	m = m.say("").startReading()
	r, err := m.reading.Reads(text)
	m.reading = &r
	return m, err
}
