package plan

import (
	"fmt"
	"strings"

	"washeve/model"
	"washeve/planner"
	"washeve/planner/tag"
	"washeve/ui/cells"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/keeping"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// View draws the screen.
func (m Model) View(size layout.Size) string {
	m.size = size
	r, rows := m.rects(), m.rows()
	blocks := []layout.Placed{
		{At: r.Title, Lines: []string{m.titleLine(r.Title.W)}},
		{At: r.Walk, Lines: m.walkLines(r.Walk, rows)},
		{At: r.Help, Lines: m.helpLines(r.Help, rows)},
		{At: r.Status, Lines: m.statusLines(r.Status.W)},
		{At: r.Hint, Lines: []string{keys.Hint(m.hints(), m.th, r.Hint.W)}},
	}
	return layout.Compose(size, append(blocks, m.answerBlocks(r)...))
}

// rects divides the screen for what there is to show.
func (m *Model) rects() layout.PlanRects {
	return layout.Plan(m.size, layout.PlanNeeds{Bars: len(m.plan.Cap.Caps) + 2, Stages: len(m.plan.Stages), Status: len(m.statusLines(m.size.W))})
}

// titleLine names the wash, and whose it is at the right.
func (m *Model) titleLine(width int) string {
	words := "washeve"
	if w := m.shown(); w.wash.Name != "" {
		words = w.wash.Name
	}
	if m.planned {
		words = report.Heading(m.plan)
	}
	whose, ink := "", m.th.Muted
	switch {
	case m.now.example:
		whose, ink = "built-in example", m.th.Doubt
	case m.unsaved != nil:
		whose, ink = "not saved", m.th.Bad
	}
	room := width - cells.Width(whose) - 1
	words = cells.Clip(cells.Safe(words), room-1, m.th.Marks.More)
	return m.th.Strong.On(words) + cells.Blank(width-cells.Width(words)-cells.Width(whose)) + ink.On(whose)
}

// hints are the keys at the foot: those of the moment, then help and quit.
func (m *Model) hints() []keys.Binding {
	if m.edit != nil || m.picker != nil || m.question != nil || m.refused {
		return m.Keys()
	}
	ends := []keys.Binding{
		keys.New("", "", "?", "all keys"), keys.New("", "", "q", "quit"),
		keys.New("", "", "tab", "next step"), keys.New("", "", "D", "the sun"),
		keys.New("", "", "B", "bed and log"), keys.New("", "", "W", "wash day"),
	}
	if m.now.example {
		ends = append(ends, keys.New("", "", "a", "make it yours"), keys.New("", "", "e", "start empty"))
	}
	if m.awaitsWord() {
		return []keys.Binding{
			keys.New("", "", "a-z 0-9", "type it"), letActsKey(), keys.New("", "", "down", "line down"),
			keys.New("", "", "?", "all keys"), keys.New("", "", "ctrl+c", "quit"), keys.New("", "", "tab", "next step"),
		}
	}
	all := m.changeKeys()
	return append(append(all[:1:1], ends...), all[1:5]...)
}

// mostStatus is how many lines a status takes from what is over it, at most.
const mostStatus = 3

func (m *Model) statusLines(width int) []string {
	text, ink := m.status, m.th.Text
	if m.alarm {
		ink = m.th.Doubt
	}
	if m.question != nil {
		text, ink = m.question.Text, m.th.Doubt
	}
	if (text == "" || text == keeping.Saved) && m.planErr != nil && m.planned {
		text, ink = "The answer is the last one that could be planned: "+m.planErr.Error(), m.th.Doubt
	}
	if text == "" && m.underway != "" {
		text, ink = m.underway+"; W goes on with it.", m.th.Accent
	}
	if text = cells.Safe(text); m.lag == entry.Behind {
		text = entry.WhileReading(text)
	}
	return inked(ink, cells.WrapMost(text, width, mostStatus, m.th.Marks.More))
}

// walkLine is a line of the walk: the head of a step (row -1), or a row of the
// open one.
type walkLine struct{ step, row int }

// walk lists the lines that are seen: all steps, and below them of the open one
// the rows around the hand.
func (m *Model) walk(height, rows int) []walkLine {
	room := max(height-len(steps()), 1)
	from := min(max(m.hand-room+2, 0), max(rows-room, 0))
	var lines []walkLine
	for i := range steps() {
		lines = append(lines, walkLine{i, -1})
	}
	for j := from; j < min(from+room, rows); j++ {
		lines = append(lines, walkLine{m.open, j})
	}
	return lines
}

func (m *Model) walkLines(at layout.Rect, rows []row) []string {
	if m.question != nil {
		return inked(m.th.Doubt, cells.WrapMost(cells.Safe(m.question.Why), at.W-1, at.H, m.th.Marks.More))
	}
	var lines []string
	for _, l := range m.walk(at.H, len(rows)) {
		switch {
		case l.row >= 0 && m.picker != nil:
			return append(lines, m.picker.Lines(m.th, at.W-1, at.H-len(lines))...)
		case l.row < 0:
			lines = append(lines, m.headLine(l.step, at.W-1))
		case !rows[l.row].isField():
			lines = append(lines, m.th.Text.On(cells.Clip(cells.Safe(rows[l.row].heading), at.W-1, m.th.Marks.More)))
		default:
			lines = append(lines, m.fieldLine(rows[l.row], l.row == m.hand, at.W-1))
		}
	}
	return lines
}

// headLine names a step, its key, and what is chosen in it.
func (m *Model) headLine(i, width int) string {
	s := steps()[i]
	ink := m.th.Text
	if i == m.open {
		ink = m.th.Strong
	}
	text := s.name
	if i == m.open {
		text = strings.ToUpper(text)
	}
	line := m.th.Accent.On(s.letter) + " " + ink.On(cells.Fit(text, 9))
	what, inkOf := m.summary(s)
	return line + inkOf.On(cells.Clip(cells.Safe(what), width-11, m.th.Marks.More))
}

func (m *Model) summary(s step) (string, theme.Ink) {
	w := m.shown()
	for _, r := range m.lacks {
		if r.section == s.about {
			f, _ := w.field(r)
			return "needs " + f.Label, m.th.Doubt
		}
	}
	if s.about == "shade" {
		return m.daySummary()
	}
	if s.about == "stage" {
		if n := len(w.wash.Stages); n > 0 {
			return fmt.Sprintf("%d steps", n), m.th.Text
		}
		return "the usual ones", m.th.Text
	}
	names, i := w.names(s.about), w.chosen(s.about)
	if i < 0 {
		return "none", m.th.Text
	}
	return names[i], m.th.Text
}

func (m *Model) fieldLine(r row, here bool, width int) string {
	f := r.field
	line := form.Row{Label: f.Label, Value: f.Text(), Must: f.Required, Here: here, Faulty: m.faults[r.at] != ""}
	if here && m.edit != nil {
		line.Edit = m.edit
	}
	if line.Value == "" {
		line.Assumed, line.Tag = m.assumed(r.at, f)
	}
	return line.Line(m.th, width)
}

// inked draws every line in an ink.
func inked(ink theme.Ink, lines []string) []string {
	for i := range lines {
		lines[i] = ink.On(lines[i])
	}
	return lines
}

// helpLines is about the field under the hand: what is wrong with it, or what
// it is.
func (m *Model) helpLines(at layout.Rect, rows []row) []string {
	if text, ok := m.washTold(); ok {
		return m.helped(text, m.th.Muted, at)
	}
	r, f, ok := m.targetAmong(rows)
	if !ok {
		return nil
	}
	text, ink := f.Label+": "+form.Help(f, m.edit != nil), m.th.Muted
	if told := m.soFarTold(r, f); told != "" {
		text = f.Label + ": " + told
	}
	text += m.assumedHelp(r, f) + m.weatherHelp(r, f)
	if problem := m.faults[r]; problem != "" && f.Given() {
		text, ink = f.Label+" "+problem, m.th.Doubt
	}
	switch {
	case m.edit != nil && m.edit.IsWhole() && m.adding == nil:
		text, ink = m.edit.OverHelp(form.Like(f)), m.th.Text
	case m.edit != nil && m.edit.IsWhole():
		text, ink = "type its "+f.Label+", or enter takes this one; esc leaves it out", m.th.Text
	case m.edit != nil && m.edit.Says() != "":
		text, ink = m.edit.Says(), m.edit.Ink(m.th)
	}
	return m.helped(text, ink, at)
}

func (m *Model) helped(text string, ink theme.Ink, at layout.Rect) []string {
	return append([]string{""}, inked(ink, cells.Clauses(cells.Safe(text), at.W-1, at.H-1, m.th.Marks.More))...)
}

// assumedHelp tells what is taken for a field; "" where it is stated.
func (m *Model) assumedHelp(at ref, f model.Field) string {
	if f.Given() {
		return ""
	}
	return form.AssumedHelp(m.assumed(at, f))
}

// assumed finds what the plan took for a field that is not stated: nothing where there is no
// plan of what is shown.
func (m *Model) assumed(at ref, f model.Field) (value, founded string) {
	if f.Refers != "" {
		if names, i := m.shown().names(f.Refers), m.shown().chosen(f.Refers); i >= 0 {
			return names[i], ""
		}
		if f.Refers == "sprayer" && m.planned && m.planErr == nil {
			return m.plan.Sprayer.Name, string(tag.Practice)
		}
		return "none", ""
	}
	if at.section == "stage" && (at.key == "faces" || at.key == "final") {
		return map[string]string{"faces": "all", "final": "no"}[at.key], ""
	}
	if !m.planned || m.planErr != nil {
		return "", ""
	}
	if d := m.plan.Day; at == (ref{section: "wash", key: "start"}) && d != nil && d.Recommended.Given() {
		return d.Start.Label, ""
	}
	wanted := assumptionNames(m.shown(), at, f)
	for _, name := range wanted {
		for _, a := range m.plan.Assumptions {
			if sameName(a, name) {
				return report.Value(a, m.sys), form.Founded(a.Source)
			}
		}
	}
	return "", ""
}

func sameName(a planner.Assumption, wanted string) bool {
	return strings.EqualFold(a.Name, wanted)
}

// assumptionNames is what the plan may call a field, the likeliest first.
func assumptionNames(w *work, at ref, f model.Field) []string {
	owner := at.section
	if owner == "stage" {
		owner = w.names("stage")[at.index]
	}
	return []string{owner + " " + f.Label, f.Label, owner + " " + strings.ReplaceAll(f.Key, "_", " "), f.Label + " while washing"}
}
