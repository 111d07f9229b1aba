package plan

import (
	"fmt"
	"strings"

	"washeve/model"
	"washeve/planner"
	tripmath "washeve/planner/trip"
	"washeve/ui/report"
	"washeve/ui/talk"
)

// lookAround tells a plan that its wash is done already, and what the other washes up to its
// day mean for it and where the whole answer is, and finds those that wait for the same bed.
func (m *Model) lookAround(p *planner.Plan, w work) {
	m.beside = tripmath.Beside{}
	if m.book.Clock == nil || w.example {
		return
	}
	var past *planner.Past
	if m.book.Past != nil {
		past = m.book.Past(w.rig, w.places)
	}
	p.WarnOfDone(w.wash, past)
	if len(w.others) == 0 {
		return
	}
	others := make([]model.Wash, len(w.others))
	for i, o := range w.others {
		others[i] = o.Wash
	}
	today := model.MomentOf(m.book.Clock()).Date()
	p.WarnOfOthers(w.rig, w.places, w.wash, others, past, today)
	m.beside = tripmath.BesideOf(w.rig, w.places, w.wash, others, past, today)
	for i := range p.Warnings {
		if n := &p.Warnings[i]; n.Code == planner.PlannedBefore && m.noOneFill() == "" {
			n.Format += " " + m.th.Key("O", "one fill") + " tells whether the fill does them all, and in which order."
		}
	}
}

// noOneFill tells why there is nothing to say of what one fill does.
func (m *Model) noOneFill() string {
	switch {
	case !m.now.wash.Date.Given():
		return "this wash has no day yet"
	case len(m.beside.Washes) < 2:
		return "no other wash of the days to come waits for this bed"
	}
	return ""
}

// oneFillLines is what one fill does of the washes that wait for the bed.
func (m Model) oneFillLines(width int) []string {
	p, err := m.beside.Plan()
	if err != nil {
		return []string{"This cannot be told yet: " + err.Error() + "."}
	}
	return strings.Split(strings.TrimRight(report.BesideText(p, m.sys, m.th.Plain, width), "\n"), "\n")
}

// oneFillTold is that by words.
func (m Model) oneFillTold() []string {
	p, err := m.beside.Plan()
	if err != nil {
		return []string{"This cannot be told yet: " + err.Error() + "."}
	}
	return strings.Split(strings.TrimRight(report.BesideTold(p, m.sys, talk.Unwrapped), "\n"), "\n")
}

// oneFillNamed names the key to that, in a sentence; "" where there is nothing to say.
func (m *Model) oneFillNamed(key string) string {
	if m.noOneFill() != "" {
		return ""
	}
	return fmt.Sprintf("%s tells whether the fill does all %d washes on this bed.", m.th.Key(key, "one fill"), len(m.beside.Washes))
}
