package washday

import (
	"fmt"

	"washeve/model"
	"washeve/ui/keys"
	"washeve/ui/report"
)

// stoodWords say how little of the flush has run.
func (m Model) stoodWords() string {
	ran, asked := m.state.Flushed()
	return fmt.Sprintf("Only %s of %s were run out: standing water reads too low.", m.gallons(ran), m.gallons(asked))
}

// askStood asks whether the bed was flushed although the wash knows of too little.
func (m Model) askStood() string {
	words := m.stoodWords() + " Was the bed flushed all the same?"
	if stood, long := m.state.Stood(); long {
		return "The bed has stood " + report.Time(stood) + ". " + words
	}
	return words
}

// restWords say, before DI water is turned on, that the bed has stood for long: the go
// holds, since the water that stood is the purer one and can be rinsed with; only the pen
// would be told too little by it.
func (m Model) restWords() string {
	s, done := m.step(), m.done()
	stood, long := m.state.Stood()
	_, asked := m.state.Flushed()
	if s.Water != model.DI || !long || m.state.Running || done.Spent > 0 || asked <= 0 {
		return ""
	}
	return fmt.Sprintf(" The bed has stood %s: purer water, none to waste; a new reading counts after %s.", report.Time(stood), m.gallons(asked))
}

// answerStood writes the reading that waits for a word, by that word.
func (m Model) answerStood(does keys.Action) Model {
	text := m.stood
	m.stood = ""
	switch does {
	case sayYes:
		return m.takeReading(text, model.Yes)
	case sayNo:
		return m.takeReading(text, model.No)
	}
	return m.say(nothingWritten)
}
