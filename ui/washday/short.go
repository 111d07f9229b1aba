package washday

import "washeve/planner/washday"

// short tells that the pen lets the wash go on, and that the bed will more likely than not
// give water over the limit before the DI water has run: no bare go. It is not told by a
// reading that is not believed, nor once the person has taken it as good enough.
func (m Model) short() bool {
	return m.state.Gate(&m.u) == washday.Go && !m.odd && m.endsOver()
}

// endsOver tells that the outlet is expected to pass the limit before the DI water has
// run.
func (m Model) endsOver() bool {
	if m.state.ToRun().DI <= 0 {
		return false
	}
	chance, judged := m.u.Outlook.Chance.Get()
	end, known := m.u.Outlook.End.Get()
	limit, limited := m.u.Limit.Get()
	return judged && chance < 0.5 || known && limited && end.Number > limit.Number
}

// shortWords stand in the place of a go.
func (m Model) shortWords(limit string) string {
	return "THE BED IS SHORT: the water is good now, no more than " + limit + ", but the bed will most likely not last the rest. " +
		m.th.Key("w", "ways") + " lists the ways out; " + m.th.Key("enter", "next") + " goes on as it is."
}
