package rig

import (
	"fmt"

	"washeve/model/stock"
	"washeve/ui/cells"
	"washeve/ui/form"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// mostStatus is how many lines what just happened may take.
const mostStatus = 5

// View draws the screen.
func (m Model) View(size layout.Size) string {
	m.size = size
	r := m.rects()
	return layout.Compose(size, []layout.Placed{
		{At: r.Title, Lines: []string{m.titleLine(r.Title.W)}},
		{At: r.List, Lines: m.listLines(r.List)},
		{At: r.Head, Lines: m.headLines(r.Head.W - 1)},
		{At: r.Form, Lines: m.formLines(r.Form)},
		{At: r.Help, Lines: m.helpLines(r.Help)},
		{At: r.Status, Lines: m.statusLines(r.Status.W)},
		{At: r.Hint, Lines: []string{keys.Hint(m.hints(), m.th, r.Hint.W)}},
	})
}

// rects divides the screen for what there is to say.
func (m Model) rects() layout.RigRects {
	return layout.Rig(m.size, len(m.statusLines(m.size.W)))
}

func (m Model) titleLine(width int) string {
	whose, ink := "", m.th.Muted
	switch {
	case m.example:
		whose, ink = "built-in example", m.th.Doubt
	case m.unsaved != nil:
		whose, ink = "not saved", m.th.Bad
	}
	words := cells.Clip("What you own, and whose water you know", width-cells.Width(whose)-1, m.th.Marks.More)
	return m.th.Strong.On(words) + cells.Blank(width-cells.Width(words)-cells.Width(whose)) + ink.On(whose)
}

// hints are the keys at the foot: those of the moment, then help and quit.
func (m Model) hints() []keys.Binding {
	if m.typing != nil || m.picker != nil || m.ask != nil || m.refused {
		return m.Keys()
	}
	enters := "fields"
	if m.inForm {
		enters = "change"
	}
	if _, f, ok := m.target(); ok && form.TakesWords(f) {
		enters = "retype"
	}
	if m.awaitsWord() {
		return []keys.Binding{
			keys.New("", "", "a-z 0-9", "type it"), keys.New("", "", "esc", m.backWords()), keys.New("", "", "down", "line down"),
			keys.New("", "", "?", "all keys"), keys.New("", "", "ctrl+c", "quit"), keys.New("", "", "tab", "list or fields"),
		}
	}
	hints := []keys.Binding{
		keys.New("", "", "enter", enters), keys.New("", "", "esc", m.backWords()),
		keys.New("", "", "?", "all keys"), keys.New("", "", "q", "quit"),
	}
	if m.unsaved != nil {
		hints = append([]keys.Binding{keys.New("", "", "s", "save again")}, hints...)
	}
	if m.example {
		hints = append(hints, keys.New("", "", "a", "make it yours"))
	}
	return append(hints, m.itemKeys()[:5]...)
}

func (m Model) statusLines(width int) []string {
	text, ink := m.status, m.th.Text
	if m.alarm {
		ink = m.th.Doubt
	}
	if m.ask != nil {
		text, ink = m.ask.Text, m.th.Doubt
	}
	var lines []string
	for _, l := range cells.WrapMost(cells.Safe(text), width, mostStatus, m.th.Marks.More) {
		lines = append(lines, ink.On(l))
	}
	return lines
}

// listFrom is the first line of the list that is seen.
func (m *Model) listFrom(height int) int {
	lines := m.lines()
	at := 0
	for i, l := range lines {
		if l.head == "" && l.spot == m.at {
			at = i
		}
	}
	return min(max(at-height+3, 0), max(len(lines)-height, 0))
}

// listLines is the list around the hand. A mark shows what the wash that is
// planned uses.
func (m Model) listLines(at layout.Rect) []string {
	all := m.lines()
	from := m.listFrom(at.H)
	var lines []string
	for _, l := range all[from:min(from+at.H, len(all))] {
		if l.head != "" {
			lines = append(lines, m.th.Strong.On(l.head))
			continue
		}
		lines = append(lines, m.spotLine(l.spot, at.W-1))
	}
	return lines
}

func (m *Model) spotLine(s Spot, width int) string {
	mark, ink := " ", m.th.Text
	if s == m.at {
		mark = m.th.Marks.Here
		if !m.inForm {
			ink = m.th.Accent
		}
	}
	names := m.shown().Names(s.Section)
	switch {
	case s.Section == defaults:
		return ink.On(mark + " " + kindOf(defaults).head)
	case s.Index >= len(names):
		return ink.On(mark+"   ") + m.th.Muted.On("none yet")
	}
	used := " "
	if s.Section != "hose" && m.shown().Chosen(s.Section) == s.Index {
		used = m.th.Marks.Good
	}
	text := cells.Clip(mark+" "+used+" "+cells.Safe(names[s.Index]), width, m.th.Marks.More)
	note := cells.Safe(m.looks.notes[s])
	room := width - cells.Width(text) - 2
	if note == "" || cells.Width(note) > room {
		return ink.On(text)
	}
	return ink.On(text) + m.th.Muted.On(cells.Right(note, room+2))
}

// notes tell the items from others of their kind.
func (m *Model) notes(spots []Spot) map[Spot]string {
	notes := make(map[Spot]string, len(spots))
	for _, s := range spots {
		notes[s] = m.noteOf(s)
	}
	return notes
}

// noteOf tells an item from others of its kind.
func (m *Model) noteOf(s Spot) string {
	f, ok := m.shown().Field(stock.Ref{Section: s.Section, Index: s.Index, Key: stock.Telling(s.Section)})
	switch {
	case !ok:
		return ""
	case !f.Given() && f.Required:
		return "needs " + f.Label
	}
	return f.Text()
}

// headLines name the chosen item, and what names it.
func (m Model) headLines(width int) []string {
	name, what := m.name(), m.at.Section
	switch {
	case m.at.Section == defaults:
		name, what = "Defaults", "what a wash uses where it names nothing"
	case name == "":
		name, what = "No "+m.at.Section+" yet", "n adds one"
	default:
		used := m.usedBy(name)
		if what += used[0]; cells.Width(cells.Safe(what+used[1])) <= width {
			what += used[1]
		} else {
			what += used[2]
		}
	}
	clip := func(text string) string { return cells.Clip(cells.Safe(text), width, m.th.Marks.More) }
	return []string{m.th.Strong.On(clip(name)), m.th.Muted.On(clip(what))}
}

// usedBy tells whether the chosen item is in use, then what names it, and how many do,
// where that has no room.
func (m *Model) usedBy(name string) [3]string {
	var words [3]string
	if m.at.Section != "hose" && m.shown().Chosen(m.at.Section) == m.at.Index {
		words[0] = ", " + m.th.Marks.Good + " in use"
	}
	if namers := m.shown().Namers(m.at.Section, name); len(namers) > 0 {
		words[1], words[2] = "; named: "+shortOf(namers), fmt.Sprintf("; named %d times", len(namers))
	}
	return words
}

// formFrom is the first row of the form that is seen.
func (m *Model) formFrom(height int) int {
	rows := m.looks.rows
	return min(max(m.hand-height+2, 0), max(len(rows)-height, 0))
}

func (m Model) formLines(at layout.Rect) []string {
	if m.picker != nil {
		return m.picker.Lines(m.th, at.W-1, at.H)
	}
	rows := m.looks.rows
	from := m.formFrom(at.H)
	var lines []string
	for i := from; i < min(from+at.H, len(rows)); i++ {
		if rows[i].heading != "" {
			lines = append(lines, m.th.Text.On(cells.Clip(cells.Safe(rows[i].heading), at.W-1, m.th.Marks.More)))
			continue
		}
		lines = append(lines, m.fieldLine(&rows[i], m.inForm && i == m.hand, at.W-1))
	}
	return lines
}

func (m *Model) fieldLine(at *row, here bool, width int) string {
	r, f := at.ref, at.field
	line := form.Row{Label: f.Label, Value: f.Text(), Must: f.Required, Here: here, Faulty: m.looks.faults[r] != ""}
	if m.typing != nil && m.typing.ref == r {
		line.Edit = &m.typing.Edit
	}
	if line.Value == "" {
		line.Assumed, line.Tag = m.assumed(r, f)
	}
	return line.Line(m.th, width)
}

// helpLines is about the field under the hand: what is wrong with it, or what
// it is.
func (m Model) helpLines(at layout.Rect) []string {
	text, ink := m.help()
	lines := []string{""}
	for _, line := range cells.WrapMost(cells.Safe(text), at.W-1, at.H-1, m.th.Marks.More) {
		lines = append(lines, ink.On(line))
	}
	return lines
}

func (m *Model) help() (string, theme.Ink) {
	r, f, ok := m.target()
	switch {
	case !ok:
		return m.listHelp(), m.th.Muted
	case m.typing != nil && m.typing.Says() != "":
		return m.typing.Says(), m.typing.Ink(m.th)
	case m.typing != nil && m.typing.IsWhole():
		return m.typing.OverHelp(form.Like(f)), m.th.Text
	case m.looks.faults[r] != "" && f.Given():
		return f.Label + " " + m.looks.faults[r], m.th.Doubt
	}
	text := f.Label + ": " + form.Help(f, m.typing != nil)
	if told := form.SoFarTold(f, r.Section, m.name(), m.past, m.sys); told != "" && m.typing == nil {
		text = f.Label + ": " + told
	}
	text += m.assumedHelp(r, f)
	if m.typing != nil && m.typing.fresh && m.typing.Text() == "" {
		text += "; enter takes " + m.typing.Good
	}
	return text, m.th.Muted
}

// listHelp is about the list: its mark, and what the chosen item still needs.
func (m *Model) listHelp() string {
	need := ""
	for i := range m.looks.rows {
		if !m.looks.rows[i].lacks() {
			continue
		}
		if need != "" {
			need += ", "
		}
		need += m.looks.rows[i].field.Label
	}
	if need != "" {
		return "It needs " + need + " before a wash can be planned with it."
	}
	return fmt.Sprintf("%s is what the next wash uses; t puts another one there.", m.th.Marks.Good)
}
