package short

import (
	"cmp"
	"slices"
	"strings"

	"washeve/model"
	"washeve/planner/split"
	"washeve/ui/report"
)

func (m Model) undone() Model {
	was, past := m.history.Undone(m.now)
	words := "Undone."
	if what := differs(&m.now, &was); what != "" {
		words = "Undone: " + what + " again."
	}
	m.history = past
	return m.settle(was).say(words)
}

func (m Model) redone() Model {
	next, past := m.history.Redone(m.now)
	words := "Done again."
	if what := differs(&m.now, &next); what != "" {
		words = "Done again: " + what + "."
	}
	m.history = past
	return m.settle(next).say(words)
}

// differs says what to has otherwise than from: the confidence, and how its faces are pinned.
func differs(from, to *model.Wash) string {
	var parts []string
	if c := to.Confidence.Or(model.UsualConfidence); c != from.Confidence.Or(model.UsualConfidence) {
		parts = append(parts, "shared out with "+report.Percent(c)+" confidence")
	}
	for _, p := range []split.Pin{split.In, split.Out, split.Free} {
		var sides []model.Side
		for _, s := range model.Sides() {
			if pinOf(to, s) == p && pinOf(from, s) != p {
				sides = append(sides, s)
			}
		}
		if len(sides) > 0 {
			parts = append(parts, report.Order(sides)+" "+cmp.Or(report.Pin(p), "free"))
		}
	}
	return strings.Join(parts, ", ")
}

// pinOf is what a wash states of a face.
func pinOf(w *model.Wash, side model.Side) split.Pin {
	switch {
	case slices.Contains(w.DIFaces, side):
		return split.In
	case slices.Contains(w.TowelFaces, side):
		return split.Out
	}
	return split.Free
}
