package washday

import (
	"washeve/model"
	"washeve/planner/washday"
	"washeve/ui/keys"
)

// againKeys answer what a second reading of the same water is. Enter is none of them: tapped
// twice behind the number it would answer unread.
func againKeys() []keys.Binding {
	return []keys.Binding{
		keys.New("Answer", sayYes, "y", "in its place", "y", "Y").Explained("the reading before was a slip: it is struck out, and this one stands"),
		keys.New("Answer", sayNo, "n", "both stand", "n", "N").Explained("the water is another by now: both readings count"),
		keys.New("Answer", abandon, "esc", "write nothing", "esc"),
	}
}

// askAgain asks whether a reading takes the place of the last one, since which no water
// ran.
func (m Model) askAgain() string {
	last, _ := washday.LastReading(&m.u).Reading.Get()
	reading, _ := m.readingOf(m.again)
	return "No DI water has run since " + last.String() + " was read. Does " + reading.String() + " take its place?"
}

// answerAgain writes the reading that waits for a word, by that word. One that takes the
// place of another is of the same water, so what was said of the flush holds for it.
func (m Model) answerAgain(does keys.Action) Model {
	text := m.again
	m.again = ""
	switch does {
	case sayYes:
		return m.takeReading(text, washday.LastReading(&m.u).Flushed, model.Deed{Does: model.TakeBack})
	case sayNo:
		return m.takeAnother(text)
	}
	return m.say(nothingWritten)
}

// takeBack takes the last reading back.
func (m Model) takeBack() Model {
	last, _ := washday.LastReading(&m.u).Reading.Get()
	m = m.do(model.Deed{Does: model.TakeBack}).lookAtBed()
	words := "Taken back: " + last.String()
	if !m.o.Rehearsal {
		words += ", struck out in the log"
	}
	return m.say(words + ".")
}

// noReading says why no reading can be taken back.
func (m Model) noReading() string {
	if washday.LastReading(&m.u) == nil {
		return "no reading of this wash stands"
	}
	return ""
}
