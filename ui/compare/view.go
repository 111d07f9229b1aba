package compare

import (
	"fmt"

	"washeve/ui/cells"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/report"
)

// View draws the screen.
func (m Model) View(size layout.Size) string {
	if size != m.size {
		m.size = size
		m = m.keepTop(m.to(m.hand))
	}
	r := m.rects()
	blocks := []layout.Placed{
		{At: r.Title, Lines: []string{m.titleLine(r.Title.W)}},
		{At: r.Status, Lines: []string{m.statusLine(r.Status.W)}},
		{At: r.Hint, Lines: []string{keys.Hint(m.hints(), m.th, r.Hint.W)}},
	}
	if m.err != nil {
		lines := cells.WrapMost(cells.Safe("Nothing can be compared: "+m.err.Error()), r.Table.W, r.Table.H, m.th.Marks.More)
		return layout.Compose(size, append(blocks, layout.Placed{At: r.Table, Lines: lines}))
	}
	return layout.Compose(size, append(blocks,
		layout.Placed{At: r.Table, Lines: m.tableLines()},
		layout.Placed{At: r.Foot, Lines: []string{m.footLine()}},
		layout.Placed{At: r.Words, Lines: m.wordLines(r.Words.H)}))
}

// keepTop is a model with the words where they were.
func (m Model) keepTop(other Model) Model {
	other.top = min(m.top, other.lastTop())
	return other
}

func (m *Model) rects() layout.CompareRects {
	return layout.Compare(m.size, 2+len(report.CompareRows(m.table)))
}

func (m *Model) titleLine(width int) string {
	if m.err != nil {
		return m.th.Strong.On("Compare")
	}
	at := fmt.Sprintf("way %d of %d", m.hand+1, len(m.table.Ways))
	words := cells.Clip("Compare: "+cells.Safe(report.CompareHeading(m.table)), width-cells.Width(at)-2, m.th.Marks.More)
	return m.th.Strong.On(words) + cells.Blank(width-cells.Width(words)-cells.Width(at)) + m.th.Muted.On(at)
}

func (m *Model) statusLine(width int) string {
	text, ink := m.status, m.th.Text
	switch {
	case m.alarm:
		ink = m.th.Doubt
	case m.ask:
		text, ink = m.asks()+" y or n", m.th.Doubt
	case text == "" && m.err == nil && m.way().Only != "":
		text, ink = "Only compared: enter cannot make it the plan; what to do instead stands above.", m.th.Doubt
	case text == "" && m.err == nil:
		text, ink = m.th.Marks.Best+" best in its row", m.th.Muted
		if m.hand == 0 {
			text = "The plan as it is; " + m.th.Key("right", "way 2") + ": another way. " + text
		}
		if m.hand > 0 && len(report.Unknown(m.table)) > 0 {
			text += "; home tells why some are unknown"
		}
		if m.top < m.lastTop() {
			text += "; down: more to read"
		}
	}
	return ink.On(cells.Clip(cells.Safe(text), width, m.th.Marks.More))
}

// hints are the keys at the foot.
func (m *Model) hints() []keys.Binding {
	if m.ask || m.err != nil {
		return m.Keys()
	}
	all := m.wayKeys()
	hints := append([]keys.Binding{keys.New("", "", "left right", "ways")}, all[:4]...)
	return append(hints, keys.New("", "", "esc", "back"), keys.New("", "", "?", "all keys"), keys.New("", "", "q", "quit"))
}
