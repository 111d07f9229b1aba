package washday

import (
	"fmt"

	"washeve/model"
	"washeve/ui/keys"
)

// stoodWords say how little of the flush has run.
func (m Model) stoodWords() string {
	ran, asked := m.state.Flushed()
	return fmt.Sprintf("Only %s of %s were run out: standing water reads too low.", m.gallons(ran), m.gallons(asked))
}

// askStood asks whether the bed was flushed although the wash knows of too little.
func (m Model) askStood() string { return m.stoodWords() + " Was the bed flushed all the same?" }

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
	return m.say("Nothing was written.")
}
