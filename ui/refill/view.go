package refill

import (
	"strings"

	"fmt"

	"washeve/ui/cells"
	"washeve/ui/form"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/reader"
)

// rects are the parts of the page: the steps at the left, what to do at the
// right.
type rects struct{ title, steps, page, status, hint layout.Rect }

func (m Model) rects() rects {
	var r rects
	rest := layout.Whole(m.size)
	r.title, rest = rest.Top(1)
	r.hint, rest = rest.Bottom(1)
	r.status, rest = rest.Bottom(1)
	_, rest = rest.Top(1)
	r.steps, rest = rest.Left(27)
	r.page = rest
	r.page.W = min(r.page.W, 78)
	return r
}

// View draws the page.
func (m Model) View(size layout.Size) string {
	m.size = size
	r := m.rects()
	return layout.Compose(size, []layout.Placed{
		{At: r.title, Lines: []string{m.th.Strong.On(cells.Clip(cells.Safe("Changing the resin: "+m.plan.BedName), r.title.W, m.th.Marks.More))}},
		{At: r.steps, Lines: m.stepLines(r.steps.W - 1)},
		{At: r.page, Lines: m.page(r.page)},
		{At: r.status, Lines: []string{m.statusLine(r.status.W)}},
		{At: r.hint, Lines: []string{keys.Hint(m.hints(), m.th, r.hint.W)}},
	})
}

func (m Model) hints() []keys.Binding {
	if m.edit != nil || m.reading != nil || m.inForm() {
		return m.Keys()
	}
	return append(m.Keys(), keys.New("", "", "?", "all keys"), keys.New("", "", "q", "quit"))
}

func (m Model) stepLines(width int) []string {
	var lines []string
	for i, s := range steps() {
		mark, ink := " ", m.th.Muted
		if i == m.step {
			mark, ink = m.th.Marks.Here, m.th.Accent
		}
		lines = append(lines, ink.On(cells.Clip(fmt.Sprintf("%s %2d %s", mark, i+1, s.name), width, m.th.Marks.More)))
	}
	return lines
}

// page is what the step says, or what is stated on it.
func (m Model) page(at layout.Rect) []string {
	if m.err != nil {
		return m.wrapped("No figures yet: "+m.err.Error(), at.W-1)
	}
	var lines []string
	if m.kept != nil {
		lines = m.wrapped("Not written, but still here: "+m.kept.Error(), at.W-1)
	}
	switch {
	case m.reading != nil:
		return append(lines, m.reading.Lines(m.th, m.sys, at.W-1)...)
	case m.inForm():
		return append(lines, m.fill.Lines(m.th, at.W-1, at.H-len(lines))...)
	}
	return m.told(at)
}

// told is what the step says, from the line that is seen first.
func (m Model) told(at layout.Rect) []string {
	lines := m.pageLines(at.W - 1)
	return lines[min(m.top, max(len(lines)-1, 0)):]
}

func (m Model) wrapped(text string, width int) []string {
	var lines []string
	for _, part := range cells.Wrap(cells.Safe(text), width) {
		lines = append(lines, m.th.Doubt.On(part))
	}
	return lines
}

func (m Model) pageLines(width int) []string {
	var lines []string
	if m.now().amounts {
		lines = append(m.amountLines(width), "")
	}
	for _, l := range m.now().tell(m) {
		mark, ink := m.th.Marks.Dot+" ", m.th.Text
		switch {
		case l.heed:
			mark, ink = "! ", m.th.Doubt
		case l.head:
			mark, ink = "", m.th.Strong
		}
		for i, part := range cells.Wrap(cells.Safe(l.text), width-cells.Width(mark)) {
			if i > 0 {
				mark = cells.Blank(cells.Width(mark))
			}
			lines = append(lines, ink.On(mark+part))
		}
	}
	return lines
}

// What the two amounts are called.
const (
	resinLabel = "resin in the tank"
	bagLabel   = "in one bag"
)

func (m Model) amountLines(width int) []string {
	row := func(i int, label string, a amount) string {
		r := form.Row{Label: label, Value: a.text, Here: i == m.hand}
		if r.Here {
			r.Edit = m.edit
		}
		return r.Line(m.th, width)
	}
	return []string{row(0, resinLabel, m.resin), row(1, bagLabel, m.bag)}
}

func (m Model) statusLine(width int) string {
	text, ink := m.status, m.th.Text
	if m.alarm {
		ink = m.th.Doubt
	}
	switch {
	case m.edit == nil || m.alarm:
	case m.edit.IsWhole():
		text = m.edit.OverHelp(m.amount().text)
	case m.edit.Says() != "":
		text, ink = m.edit.Says(), m.edit.Ink(m.th)
	}
	return ink.On(strings.Join(cells.Clauses(cells.Safe(text), width, 1, m.th.Marks.More), ""))
}

// whyLines is where the numbers come from.
func (m Model) whyLines(width int) []string {
	return reader.Reasons(m.th, m.sys, m.ahead.Reasons, width)
}
