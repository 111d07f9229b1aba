package trip

import (
	"cmp"
	"fmt"
	"sort"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/trip"
	"washeve/ui/cells"
	"washeve/ui/layout"
)

// kind is what a line of the list is about.
type kind uint8

// In the order in which they stand on one day.
const (
	theTrip kind = iota
	stopLine
	changeLine
	adviceLine
	washLine
)

func (k kind) String() string {
	return [...]string{"trip", "stop", "change", "advice", "wash"}[k]
}

// line is one line of the list. Index counts in the trip's own list, or in the
// plan's changes for an advice.
type line struct {
	kind  kind
	index int
	date  quantity.Opt[model.Date]
}

// lines lists the trip itself and all that is in it, by date; what has none comes
// first.
func (m *Model) lines() []line {
	if !m.begun {
		return nil
	}
	var all []line
	for i := range m.now.Stops {
		all = append(all, line{stopLine, i, m.now.Stops[i].Date})
	}
	for i := range m.now.Changes {
		all = append(all, line{changeLine, i, m.now.Changes[i].Date})
	}
	for i := range m.now.Washes {
		all = append(all, line{washLine, i, m.now.Washes[i].Date})
	}
	for i, c := range m.plan.Changes {
		if c.Advised {
			all = append(all, line{adviceLine, i, quantity.Some(c.Date)})
		}
	}
	sort.SliceStable(all, func(i, j int) bool {
		a, b := &all[i], &all[j]
		return cmp.Or(a.date.Or(model.Date{}).Compare(b.date.Or(model.Date{})), cmp.Compare(a.kind, b.kind)) < 0
	})
	return append([]line{{kind: theTrip}}, all...)
}

// here is the line under the hand.
func (m *Model) here() (line, bool) {
	all := m.lines()
	if len(all) == 0 {
		return line{}, false
	}
	return all[min(max(m.hand, 0), len(all)-1)], true
}

// onto puts the hand on the line about something, where there is one.
func (m Model) onto(k kind, index int) Model {
	for i, l := range m.lines() {
		if l.kind == k && l.index == index {
			m.hand = i
		}
	}
	return m
}

// itemOf is the noun that a line is about; nil for an advice.
func itemOf(t *model.Trip, l line) model.Item {
	switch {
	case l.kind == theTrip:
		return t
	case l.kind == stopLine && l.index < len(t.Stops):
		return &t.Stops[l.index]
	case l.kind == washLine && l.index < len(t.Washes):
		return &t.Washes[l.index]
	case l.kind == changeLine && l.index < len(t.Changes):
		return &t.Changes[l.index]
	}
	return nil
}

// planned finds what the plan says of a stop, a wash or a change.
func planned[T any](all []T, index int, of func(*T) int) *T {
	for i := range all {
		if of(&all[i]) == index {
			return &all[i]
		}
	}
	return nil
}

func (m *Model) washPlan(index int) *trip.WashPlan {
	return planned(m.plan.Washes, index, func(w *trip.WashPlan) int { return w.Index })
}

func (m *Model) stopPlan(index int) *trip.StopPlan {
	return planned(m.plan.Stops, index, func(s *trip.StopPlan) int { return s.Index })
}

func (m *Model) changePlan(index int) *trip.ChangePlan {
	return planned(m.plan.Changes, index, func(c *trip.ChangePlan) int { return c.Index })
}

// counted tells that a wash of the plan is reckoned with.
func counted(w trip.WashPlan) bool { return !w.Barred }

// below is the list, or what stands in its place.
func (m Model) below(at layout.Rect) []string {
	switch {
	case m.question != nil:
		return m.whyAsked(at)
	case m.picker != nil:
		return m.picker.Lines(m.th, at.W, at.H)
	case m.sheet != nil:
		return m.sheetLines(at)
	}
	return m.listLines(at)
}

// listLines draws the list around the hand, and says how much of it is out of sight.
func (m Model) listLines(at layout.Rect) []string {
	all := m.lines()
	from := m.firstLine(at.H)
	to := min(from+at.H, len(all))
	var out []string
	for i := from; i < to; i++ {
		more := ""
		switch {
		case i == from && from > 0:
			more = fmt.Sprintf("  %d more above", from)
		case i == to-1 && to < len(all):
			more = fmt.Sprintf("  %d more below", len(all)-to)
		}
		room := at.W - cells.Width(more)
		text := m.lineText(all[i], i == m.hand, room)
		if more != "" {
			text += cells.Blank(room-cells.Width(text)) + m.th.Muted.On(more)
		}
		out = append(out, text)
	}
	return out
}

// firstLine is the first line of the list that is seen.
func (m *Model) firstLine(height int) int {
	return min(max(m.hand-height/2, 0), max(len(m.lines())-height, 0))
}
