package washday

import (
	"fmt"

	"washeve/planner/washday"
)

// spentWords are the time that was taken, and that it is not all where a step was not
// timed.
func (m Model) spentWords() string {
	words := minutes(washday.Seconds(m.state.Spent()))
	if steps, _ := m.state.Untimed(); steps > 0 {
		return words + " timed"
	}
	return words
}

// untimedWords say which part of the water was not measured by the clock, so that nobody
// sets all of it against the time beside it; none where every step was timed.
func (m Model) untimedWords() []string {
	steps, used := m.state.Untimed()
	if steps == 0 {
		return nil
	}
	words := fmt.Sprintf("Not timed: %d of the steps done, %s of the water, counted as planned. The time is that of the other steps alone; these teach no pace", steps, m.gallons(used))
	if m.o.Rehearsal {
		return []string{words + "."}
	}
	return []string{words + ", and the log has no minutes for the whole wash."}
}
