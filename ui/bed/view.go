package bed

import (
	"fmt"
	"strings"

	"washeve/model"
	"washeve/ui/cells"
	"washeve/ui/entry"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/picture"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// View draws the screen.
func (m Model) View(size layout.Size) string {
	m.size = size
	r := m.rects()
	blocks := []layout.Placed{
		{At: r.Title, Lines: []string{m.titleLine(r.Title.W)}},
		{At: r.Verdict, Lines: []string{m.verdictLine(r.Verdict.W)}},
		{At: r.Numbers, Lines: m.numberRows(r.Numbers.W)},
		{At: r.Status, Lines: m.statusLines(r.Status.W)},
		{At: r.Hint, Lines: []string{keys.Hint(m.hints(), m.th, r.Hint.W)}},
	}
	return layout.Compose(size, append(blocks, m.body(r)...))
}

func (m Model) rects() layout.BedRects {
	return layout.Bed(m.size, layout.BedNow{InWords: m.th.Plain, InLog: m.inLog(), Says: len(m.statusLines(m.size.W))})
}

// inLog tells that the hand walks through the log, or looks for something in it.
func (m Model) inLog() bool {
	return m.list.hand > 0 || m.list.search.typing || m.list.search.text != ""
}

// body is the pictures, and below them the notes and the log, or what is stated
// just now.
func (m Model) body(r layout.BedRects) []layout.Placed {
	fill := m.fill
	fill.System = m.sys
	blocks := []layout.Placed{
		{At: r.Curve, Lines: fill.Draw(m.th, r.Curve.Size())},
		{At: r.Legend, Lines: []string{m.legend(fill, r.Legend.W)}},
	}
	if m.err == nil {
		blocks = append(blocks, layout.Placed{At: r.Tank, Lines: picture.Tank(m.th, m.plan.Bed.Before, m.plan.Bed.After, r.Tank.Size())})
	}
	list := layout.Placed{At: r.List, Lines: m.listLines(r.List)}
	work, stated := m.work(r.Work.W-1, r.Work.H)
	switch {
	case stated && r.List.X == 0:
		return append(blocks, layout.Placed{At: r.Work, Lines: work})
	case stated:
		return append(blocks, layout.Placed{At: r.Work, Lines: work}, list)
	}
	return append(blocks, layout.Placed{At: r.Notes, Lines: m.noteLines(r.Notes.W-1, r.Notes.H)}, list)
}

// work is what is stated just now, if anything is; over it, why it could not be
// written.
func (m Model) work(width, height int) (lines []string, stated bool) {
	if m.kept != nil {
		lines = m.wrap(m.th.Doubt, "Not written, but still here: "+m.kept.Error(), width, max(height-4, 1))
	}
	now, stated := m.stated(width, height-len(lines))
	return append(lines, now...), stated
}

func (m Model) stated(width, height int) (lines []string, stated bool) {
	switch {
	case m.form != nil:
		return m.form.Lines(m.th, width, height), true
	case m.kinds != nil:
		return m.kinds.Lines(m.th, width, height), true
	case m.reading != nil:
		return m.reading.Lines(m.th, m.sys, width), true
	}
	return nil, false
}

func (m Model) legend(fill picture.Fill, width int) string {
	if m.err != nil {
		return ""
	}
	tank := picture.TankLegend(m.th, m.plan.Bed.Before, m.plan.Bed.After, 40)
	dots := picture.DotLegend(m.th, fill, width-cells.Width(tank)-2)
	return cells.Fit(dots, width-cells.Width(tank)-1) + tank
}

// hints are the keys at the foot: those of the moment, then help and quit.
func (m Model) hints() []keys.Binding {
	all := m.Keys()
	if m.ask != nil || m.kinds != nil || m.form != nil || m.reading != nil || m.list.search.typing {
		return all
	}
	ends := []keys.Binding{keys.New("", "", "?", "all keys"), keys.New("", "", "q", "quit")}
	return append(append(all[:2:2], ends...), all[2:]...)
}

// mostSays is how many lines of the status are taken from the notes and the log, at most.
const mostSays = 5

// statusLines are what became of the last key, or what is asked, in as many lines as it
// takes; one where there is nothing to tell.
func (m Model) statusLines(width int) []string {
	text, ink := m.status, m.th.Text
	if m.alarm {
		ink = m.th.Doubt
	}
	switch {
	case m.ask != nil:
		text, ink = m.ask.Text, m.th.Doubt
	case m.list.search.typing:
		return []string{cells.Clip(m.th.Accent.On("find: "+m.list.search.text)+"_", width, "")}
	case text == "" && m.list.search.text != "":
		text = fmt.Sprintf("%d entries hold %q; esc shows all", m.list.count(), m.list.search.text)
	}
	if text = cells.Safe(text); m.lag == entry.Behind {
		text = entry.WhileReading(text)
	}
	return m.wrap(ink, text, width, mostSays)
}

// listLines is the log around the hand, under its heading.
func (m Model) listLines(at layout.Rect) []string {
	if at.H < 2 {
		return nil
	}
	head := fmt.Sprintf("Log: %d of %d", min(m.list.hand+1, m.list.count()), m.list.count())
	if m.list.count() == 0 {
		head = "The log is empty: r adds a reading, w a wash"
		if m.lag == entry.Unread {
			head = "Log: " + entry.ReadingLog
		}
		if m.list.search.text != "" {
			head = "Log: nothing found"
		}
	}
	if wash, n := m.list.stagesHere(); n > 0 {
		does := " lists"
		if wash == m.list.open {
			does = " folds"
		}
		head += "; " + m.th.Key("o", "stages") + does + strings.TrimPrefix(report.WithStages(n), ",")
	}
	lines := []string{m.th.Strong.On(cells.Clip(head, at.W, ""))}
	from := m.first(at.H - 1)
	for i := from; i < from+at.H-1; i++ {
		row, ok := m.list.row(i)
		if !ok {
			break
		}
		lines = append(lines, m.rowLine(&row, i == m.list.hand, at.W-1))
	}
	return lines
}

// first is the first line of the list that is seen, where n are.
func (m Model) first(n int) int {
	return min(max(m.list.hand-n/2, 0), max(m.list.count()-n, 0))
}

func (m Model) rowLine(r *model.Row, here bool, width int) string {
	mark, ink := " ", m.rowInk(r)
	if here {
		mark, ink = m.th.Marks.Here, m.th.Accent
	}
	if m.odd[r.Entry.ID] && !here {
		mark, ink = "?", m.th.Bad
	}
	head := mark + " " + r.Now.At.Date().String() + " " + cells.Fit(string(r.Entry.Kind()), 11)
	says := cells.WholeParts(cells.Safe(m.says(r)), max(width-cells.Width(head), 0), m.th.Marks.More)
	return ink.On(cells.Clip(head+says, width, m.th.Marks.More))
}

func (m Model) rowInk(r *model.Row) theme.Ink {
	if r.Standing == model.Struck || r.Standing == model.Doubled || r.Entry.Kind() == model.CorrectionKind {
		return m.th.Muted
	}
	return m.th.Text
}

// brief is text in at most so many lines, for what e or f tell in full.
func (m Model) brief(ink theme.Ink, text string, width, most int) []string {
	var lines []string
	for _, line := range cells.Clauses(cells.Safe(text), width, most, m.th.Marks.More) {
		lines = append(lines, ink.On(line))
	}
	return lines
}

// wrap is text in at most so many lines.
func (m Model) wrap(ink theme.Ink, text string, width, most int) []string {
	var lines []string
	for _, line := range cells.WrapMost(cells.Safe(text), width, most, m.th.Marks.More) {
		lines = append(lines, ink.On(line))
	}
	return lines
}
