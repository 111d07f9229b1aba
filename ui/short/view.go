package short

import (
	"fmt"
	"strings"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/picture"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// ways is how many lines the ways have before they are worked out.
const waysAtMost = 8

// View draws the screen.
func (m Model) View(size layout.Size) string {
	m.size = size
	r, perWay := m.rects()
	blocks := []layout.Placed{
		{At: r.Title, Lines: []string{m.titleLine(r.Title.W)}},
		{At: r.Status, Lines: []string{m.statusLine(r.Status.W)}},
		{At: r.Hint, Lines: []string{keys.Hint(m.hints(), m.th, r.Hint.W)}},
	}
	if m.err != nil {
		return layout.Compose(size, append(blocks, layout.Placed{At: r.Verdict, Lines: m.wrap(m.th.Doubt, m.err.Error(), size.W, 2)}))
	}
	return layout.Compose(size, append(blocks,
		layout.Placed{At: r.Verdict, Lines: m.verdictLines(r.Verdict.W)},
		layout.Placed{At: r.Says, Lines: []string{m.saysLine(r.Says.W)}},
		layout.Placed{At: r.Faces, Lines: m.faceLines(r.Faces.W)},
		layout.Placed{At: r.Ways, Lines: m.wayLines(r.Ways.W, perWay)},
		layout.Placed{At: r.Detail, Lines: m.detailLines(r.Detail)},
	))
}

func (m Model) rects() (layout.ShortRects, int) {
	return layout.Short(m.size, len(m.share.Faces), waysAtMost)
}

func (m Model) titleLine(width int) string {
	words := "Short bed"
	if m.now.Name != "" {
		words += ": " + m.now.Name
	}
	sure := "wanted: " + report.Percent(m.share.Confidence) + " sure"
	if m.err != nil {
		sure = ""
	}
	words = cells.Clip(cells.Safe(words), width-cells.Width(sure)-2, m.th.Marks.More)
	return m.th.Strong.On(words) + cells.Blank(width-cells.Width(words)-cells.Width(sure)) + m.th.Muted.On(sure)
}

// verdictLines say how the share ends, and what there is to share out.
func (m Model) verdictLines(width int) []string {
	mark, ink := picture.Verdict(m.th, m.share.Verdict)
	head := m.ends()
	switch {
	case m.share.Short > 0:
		mark, ink, head = m.th.Marks.Bad, m.th.Bad, report.ShareSays(&m.share, m.sys)
	case m.sharesNothing():
		mark, ink = m.th.Marks.Bad, m.th.Bad
	}
	return []string{
		ink.On(cells.Clip(mark+" "+head, width, m.th.Marks.More)),
		m.th.Text.On(cells.Clip(m.gives(), width, m.th.Marks.More)),
	}
}

// ends says how the wash ends with the share.
func (m Model) ends() string {
	if m.sharesNothing() {
		return "With this share no face gets DI water"
	}
	return "With this share: " + report.Verdict(m.share.Verdict) + ", " + report.Odds(m.share.Chance)
}

// sharesNothing tells of a bed that lasts only since nothing is asked of it.
func (m Model) sharesNothing() bool { return m.share.Needs > 0 && len(m.share.Order()) == 0 }

func (m Model) saysLine(width int) string {
	if m.share.Short > 0 {
		return m.th.Muted.On(cells.Clip("Free one of them, change the resin, or ask for less confidence (-).", width, m.th.Marks.More))
	}
	return m.th.Strong.On(cells.Clip(m.says(), width, m.th.Marks.More))
}

// gives says in one line what there is and what is needed.
func (m Model) gives() string {
	s := &m.share
	return fmt.Sprintf("The bed gives %s at %s after its flush; DI for all takes %s.",
		quantity.Show(s.Gives, m.sys), quantity.Show(s.Flow, m.sys), quantity.Show(s.Needs, m.sys))
}

// says is who gets DI water, in one line.
func (m Model) says() string {
	s := &m.share
	order := s.Order()
	if s.Needs <= 0 {
		return "No DI water flows in this wash: there is nothing to share out."
	}
	if len(order) == 0 {
		return "No face is sure enough: rinse from the top, stop when the pen shows the limit."
	}
	text := "DI on " + report.Order(order)
	text += ": spares " + report.Percent(s.Spared) + " of the spots"
	if s.Unpinned-s.Spared > 0.005 {
		text += ", without pins " + report.Percent(s.Unpinned)
	}
	return text
}

// faceLines is the table of faces, the hand beside one.
func (m Model) faceLines(width int) []string {
	lines := report.ColumnsWithin(report.ShareTable(&m.share, m.sys), width-2)
	for i, line := range lines {
		ink, mark := m.th.Muted, " "
		if i > 0 {
			ink = picture.WaterInk(m.th, m.share.Faces[i-1].Water)
		}
		if i > 0 && i-1 == m.hand {
			ink, mark = m.th.Accent, m.th.Marks.Here
		}
		lines[i] = ink.On(cells.Clip(mark+" "+strings.TrimRight(line, " "), width, m.th.Marks.More))
	}
	return lines
}

// wayLines is the table of ways. What is no way here says why in its line.
func (m Model) wayLines(width, perWay int) []string {
	if len(m.ways) == 0 {
		return []string{m.th.Muted.On("  The other ways out are being worked out" + m.th.Marks.More)}
	}
	table := report.ColumnsWithin(report.WaysTable(m.ways, m.sys), width-2)
	lines := []string{m.th.Muted.On(cells.Clip("  "+table[0], width, m.th.Marks.More))}
	next := 1
	for i, w := range m.ways {
		mark, ink := " ", m.th.Text
		if w.Not.Code != "" || m.waysOf != m.turn {
			ink = m.th.Muted
		}
		if m.hand == len(m.share.Faces)+i {
			mark, ink = m.th.Marks.Here, m.th.Accent
		}
		text := m.inOne(w.Name+": "+report.WaySays(w, m.sys), width-2)
		switch {
		case w.Not.Code == "":
			text, next = cells.Clip(table[next], width-2, m.th.Marks.More), next+1
		case perWay > 1:
			text = w.Name
		}
		lines = append(lines, ink.On(mark+" "+text))
		if perWay > 1 {
			lines = append(lines, m.secondLine(w, width))
		}
	}
	return lines
}

// secondLine says under a way what it is, or why it is none here.
func (m Model) secondLine(w planner.WayOut, width int) string {
	return m.th.Muted.On("    " + m.inOne(report.WaySays(w, m.sys), width-4))
}

// inOne is a text in one line; the hand on it, it is told in full.
func (m Model) inOne(text string, width int) string {
	return strings.Join(cells.Clauses(cells.Safe(text), width, 1, m.th.Marks.More), "")
}

// detailLines is about the line under the hand: what a pin would do, or what a
// way is.
func (m Model) detailLines(at layout.Rect) []string {
	text := ""
	if f, ok := m.face(); ok {
		text = report.Turning(f, &m.share, m.sys)
	}
	if w, ok := m.way(); ok {
		text = w.Name + ": " + m.figures(w, at.W) + report.WaySays(w, m.sys)
	}
	lines := m.wrap(m.th.Text, text, at.W, at.H)
	if len(lines) < at.H {
		lines = append([]string{""}, lines...) // apart from the ways
	}
	return lines
}

// figures are the numbers of a way by their names, where its line has no room for them.
func (m Model) figures(w planner.WayOut, width int) string {
	table := report.WaysTable(m.ways, m.sys)
	if w.Not.Code != "" || cells.Width(report.ColumnsWithin(table, width-2)[0]) <= width-2 {
		return ""
	}
	for _, row := range table.Rows {
		if row[0] == w.Name {
			return named(table.Head, row) + ". "
		}
	}
	return ""
}

func (m Model) wrap(ink theme.Ink, text string, width, most int) []string {
	var lines []string
	for _, line := range cells.WrapMost(cells.Safe(text), width, most, m.th.Marks.More) {
		lines = append(lines, ink.On(line))
	}
	return lines
}

func (m Model) statusLine(width int) string {
	ink := m.th.Text
	if m.alarm {
		ink = m.th.Doubt
	}
	return ink.On(cells.Clip(cells.Safe(m.status), width, m.th.Marks.More))
}

// hints are the keys at the foot.
func (m Model) hints() []keys.Binding {
	all := m.Keys()
	hints := []keys.Binding{
		keys.New("", "", "up down", "move"), all[0].Unless(all[0].Blocked), all[6].Unless(all[6].Blocked), all[7],
		keys.New("", "", "?", "all keys"), keys.New("", "", "- +", "sureness"), keys.New("", "", "q", "quit"),
	}
	return append(hints, all[8], all[9])
}
