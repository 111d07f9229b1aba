package day

import (
	"strings"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/picture"
	"washeve/ui/report"
)

// View draws the screen.
func (m Model) View(size layout.Size) string {
	m.size = size
	r := m.rects()
	blocks := []layout.Placed{
		{At: r.Title, Lines: []string{m.titleLine(r.Title.W)}},
		{At: r.Weather, Lines: []string{m.weatherLine(r.Weather.W)}},
		{At: r.Answer, Lines: m.answerLines(r.Answer)},
		{At: r.Status, Lines: m.statusLines(r.Status.W)},
		{At: r.Hint, Lines: []string{keys.Hint(m.hints(), m.th, r.Hint.W)}},
	}
	if d := m.day(); d != nil {
		compass := picture.Compass{Heading: d.Heading, Steps: d.Steps, From: d.Start.At, To: d.Start.End}
		blocks = append(blocks,
			layout.Placed{At: r.Strip, Lines: m.strip().Draw(m.th, r.Strip.Size())},
			layout.Placed{At: r.Legend, Lines: []string{m.strip().Legend(m.th, r.Legend.W)}},
			layout.Placed{At: r.Compass, Lines: compass.Draw(m.th, r.Compass.Size())})
	}
	return layout.Compose(size, blocks)
}

func (m Model) rects() layout.DayRects {
	lines := 0
	if m.day() != nil {
		lines = m.strip().Height()
	}
	r := layout.Day(m.size, lines)
	more := min(len(m.statusLines(r.Status.W)), r.Answer.H) - 1
	if more > 0 {
		r.Status.Y, r.Status.H = r.Status.Y-more, r.Status.H+more
		r.Answer.H, r.Compass.H = r.Answer.H-more, max(r.Compass.H-more, 0)
	}
	return r
}

// strip is the picture of the day; there must be one.
func (m Model) strip() picture.Strip { return picture.Strip{Day: m.plan.Day, System: m.sys} }

// titleLine names the wash, and the sun's hours at the right.
func (m Model) titleLine(width int) string {
	words, hours := m.now.Name, ""
	if m.planned {
		words = report.Heading(m.plan)
	}
	if d := m.day(); d != nil {
		hours = report.SunHours(d.Sun)
	}
	words = cells.Clip(cells.Safe(words), width-cells.Width(hours)-2, m.th.Marks.More)
	return m.th.Strong.On(words) + cells.Blank(width-cells.Width(words)-cells.Width(hours)) + m.th.Sun.On(hours)
}

// weatherLine is what is stated of the day.
func (m Model) weatherLine(width int) string {
	w := m.shown()
	fields := w.Fields()
	var parts []string
	for _, part := range []struct{ key, word string }{
		{keyHeading, "nose"}, {"low", "low"}, {"high", "high"}, {"dew_point", "dew point"}, {"humidity", "humidity"}, {"wind", "wind"}, {"sky", "sky"},
	} {
		if f := fieldAt(fields, part.key); f.Given() {
			parts = append(parts, part.word+" "+cells.Safe(f.Text()))
		}
	}
	return m.th.Muted.On(cells.Clip(strings.Join(parts, ", "), width, m.th.Marks.More))
}

// shown is the wash that the screen shows: with what is being typed.
func (m *Model) shown() model.Wash {
	w := m.now
	if m.edit != nil && m.edit.Replaced {
		if err := set(&w, m.editAt, m.edit.Good); err != nil {
			return m.now
		}
	}
	return w
}

// hints are the keys at the foot.
func (m Model) hints() []keys.Binding {
	if m.edit != nil {
		return m.Keys()
	}
	hints := []keys.Binding{
		keys.New("", "", "left right", "move").Unless(m.noDay()), keys.New("", "", "enter", "take R").Unless(m.noneBetter()),
		keys.New("", "", ", .", "turn"), keys.New("", "", "esc", "back"), keys.New("", "", "?", "all keys"), keys.New("", "", "q", "quit"),
	}
	return append(hints, m.keepKeys()[:2]...)
}

func (m Model) statusLines(width int) []string {
	if m.edit != nil {
		return m.editLines(width)
	}
	text, ink := m.status, m.th.Text
	if m.alarm {
		ink = m.th.Doubt
	}
	if text == "" {
		text, ink = m.pastWords(), m.th.Doubt
	}
	if d := m.day(); text == "" && d != nil {
		text, ink = mindText(d, m.sys), m.th.Muted
	}
	if text == "" && m.planErr != nil {
		text, ink = "The answer is the last one that could be planned: "+m.planErr.Error(), m.th.Doubt
	}
	if text == "" && m.day() != nil {
		text, ink = "Date, weather and place are stated under Day in the plan: "+m.toFill()+".", m.th.Muted
	}
	return []string{ink.On(strings.Join(cells.Clauses(cells.Safe(text), width, 1, m.th.Marks.More), ""))}
}

// pastWords say that the day of the wash is over, and what to do; "" where it is not.
func (m Model) pastWords() string {
	for _, n := range m.plan.Warnings {
		if n.Code == planner.PastDay {
			return strings.TrimSuffix(n.Text(m.sys), ".") + ": esc, then d."
		}
	}
	return ""
}

// editLines are what is being typed, and what is wrong with it: while it is typed behind it,
// and whole where it was not taken, with lines of its own where it has no room there.
func (m Model) editLines(width int) []string {
	f := fieldOf(&m.first, m.editAt)
	head := f.Label + " "
	room := min(width-cells.Width(head), 28)
	line := m.th.Accent.On(head) + m.edit.View(m.th, room)
	says, ink := "like "+f.Example, m.th.Muted
	switch {
	case m.alarm:
		says, ink = m.status, m.th.Doubt
	case m.edit.Says() != "":
		says, ink = m.edit.Says(), m.edit.Ink(m.th)
	case m.edit.Heard() != "":
		says, ink = m.edit.Heard(), m.th.Text
	}
	says = cells.Safe(says)
	rest := width - cells.Width(line) - 2
	if m.alarm && cells.Width(says) > rest {
		return append([]string{line}, m.wrapped(says, ink, width)...)
	}
	if rest > 0 {
		line += "  " + ink.On(strings.Join(cells.Clauses(says, rest, 1, m.th.Marks.More), ""))
	}
	return []string{line}
}
