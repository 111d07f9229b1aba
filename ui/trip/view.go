package trip

import (
	"fmt"
	"slices"
	"strings"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/form"
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
	season := picture.Season{Plan: m.plan, Here: m.dayUnder()}
	blocks := []layout.Placed{
		{At: r.Title, Lines: []string{m.titleLine(r.Title.W)}},
		{At: r.Status, Lines: m.statusLines(r.Status.W)},
		{At: r.Hint, Lines: []string{keys.Hint(m.hints(), m.th, r.Hint.W)}},
	}
	if !m.begun {
		return layout.Compose(size, append(blocks, layout.Placed{At: r.Words, Lines: m.offer(r.Words)}))
	}
	return layout.Compose(size, append(blocks,
		layout.Placed{At: r.Words, Lines: m.words(r.Words)},
		layout.Placed{At: r.Season, Lines: season.Draw(m.th, r.Season.Size())},
		layout.Placed{At: r.Legend, Lines: []string{season.Legend(m.th, r.Legend.W)}},
		layout.Placed{At: r.List, Lines: m.below(r.List)},
	))
}

func (m Model) rects() layout.TripRects {
	return layout.Trip(m.size, m.th.Plain, len(m.statusLines(m.size.W)))
}

func (m *Model) dayUnder() model.Date {
	l, _ := m.here()
	return l.date.Or(model.Date{})
}

func (m Model) titleLine(width int) string {
	words := "Trip"
	if m.begun {
		words = report.TripHeading(m.plan)
		if m.plan.Bed == "" {
			words = cells.Safe(m.now.Name)
		}
	}
	if len(m.trips) > 1 {
		words = fmt.Sprintf("%s (%d of %d)", words, m.at+1, len(m.trips))
	}
	return m.th.Strong.On(cells.Clip(cells.Safe(words), width, m.th.Marks.More))
}

// offer is what is said where there is no trip yet.
func (m Model) offer(at layout.Rect) []string {
	text := "There is no trip yet. A trip is a list of stops and washes by date: it says before you leave whether the resin lasts, where to change it, what to carry, and the day to order by. enter starts one, two weeks from today, with a stop and a wash to change."
	lines := cells.WrapMost(text, at.W, at.H, m.th.Marks.More)
	for i := range lines {
		lines[i] = m.th.Text.On(lines[i])
	}
	return lines
}

// overWords stands in the place of the order, which nobody needs any more.
const overWords = "This trip is over. b begins another; , . < > move the line under the hand."

// words is the answer: the verdict, where to change, when to order, what to carry
// and what it costs.
func (m Model) words(at layout.Rect) []string {
	if m.planErr != nil {
		text := "There is no answer yet: " + m.planErr.Error() + ". State it on the plan (esc)."
		lines := cells.WrapMost(cells.Safe(text), at.W, at.H, m.th.Marks.More)
		for i := range lines {
			lines[i] = m.th.Doubt.On(lines[i])
		}
		return lines
	}
	ink := m.th.Good
	if m.plan.FirstAtRisk >= 0 || report.TripBefore(m.plan) != "" {
		ink = m.th.Doubt
	}
	clip := func(text string) string {
		return strings.Join(cells.Clauses(cells.Safe(text), at.W, 1, m.th.Marks.More), "")
	}
	changes := strings.Join(report.TripChanges(m.plan), " ")
	if changes == "" {
		changes = report.TripUnchanged(m.plan)
	}
	order := m.th.Strong
	if m.plan.Late {
		order = m.th.Bad
	}
	whole := []string{
		report.TripVerdict(m.plan), changes, report.TripOrder(m.plan, m.sys),
		report.TripCarry(m.plan, m.sys) + " " + report.TripCost(m.plan),
	}
	inks := []theme.Ink{ink, m.th.Text, order, m.th.Text}
	if m.plan.Over {
		whole[2], inks[2] = overWords, m.th.Doubt
	}
	for i, brief := range report.TripBrief(m.plan, m.sys) {
		if cells.Width(whole[i]) > at.W {
			whole[i] = brief
		}
		whole[i] = inks[i].On(clip(whole[i]))
	}
	return whole
}

// sheetLines draws what can be stated of a line, and what the one under the hand is.
func (m Model) sheetLines(at layout.Rect) []string {
	shown := m.shown()
	rows := at.H - 1
	from := min(max(m.sheet.hand-rows/2, 0), max(len(m.sheet.keys)-rows, 0))
	var out []string
	for i := from; i < min(from+rows, len(m.sheet.keys)); i++ {
		f, ok := m.sheet.field(&shown, m.sheet.keys[i])
		if !ok {
			continue
		}
		row := form.Row{Label: f.Label, Value: f.Text(), Must: f.Required, Here: i == m.sheet.hand}
		if row.Here {
			row.Edit = m.edit
		}
		out = append(out, row.Line(m.th, at.W))
	}
	for len(out) < rows {
		out = append(out, "")
	}
	return append(out, m.help(at.W))
}

func (m Model) help(width int) string {
	f, ok := m.target()
	if !ok {
		return ""
	}
	text, ink := form.Help(f, m.edit != nil), m.th.Muted
	switch {
	case f.Refers != "" && m.edit == nil: // picked, and left out for a reason that the help ends with
		text = f.Help
	case m.edit != nil && m.edit.IsWhole():
		text, ink = m.edit.OverHelp(form.Like(f)), m.th.Text
	case m.edit != nil && m.edit.Says() != "":
		text, ink = m.edit.Says(), m.edit.Ink(m.th)
	}
	return ink.On(strings.Join(cells.Clauses(cells.Safe(text), width, 1, m.th.Marks.More), ""))
}

// mostStatus is how many lines a status takes from the list, at most.
const mostStatus = 3

func (m Model) statusLines(width int) []string {
	text, ink := m.status, m.th.Text
	if m.alarm {
		ink = m.th.Doubt
	}
	if m.question != nil {
		text, ink = m.question.Text, m.th.Doubt
	}
	if problem := m.problem(); text == "" && m.begun && problem != "" {
		text, ink = problem, m.th.Doubt
	}
	if notes := m.heeded(); text == "" && len(notes) > 0 {
		if ink = m.th.Muted; m.toldBefore() {
			ink = m.th.Doubt
		}
		return []string{ink.On(m.noteLine(notes, width))}
	}
	lines := cells.WrapMost(cells.Safe(text), width, mostStatus, m.th.Marks.More)
	for i := range lines {
		lines[i] = ink.On(lines[i])
	}
	return lines
}

// toldBefore tells that a wash is planned with this bed before the trip, which comes before
// all else that there is to heed.
func (m *Model) toldBefore() bool {
	return len(m.plan.Notes) > 0 && m.plan.Notes[0].Code == planner.PlannedBefore
}

// heeded are the notes of the trip, with the order of its washes where that is to be said
// unasked: behind the washes before the trip, ahead of all others.
func (m *Model) heeded() []string {
	var notes []string
	for _, n := range m.plan.Notes {
		notes = append(notes, n.Text(m.sys))
	}
	order := report.OneFillBrief(m.plan)
	if order == "" || !m.begun {
		return notes
	}
	at := 0
	for at < len(notes) && m.plan.Notes[at].Code == planner.PlannedBefore {
		at++
	}
	return slices.Insert(notes, at, order)
}

// noteLine is the first note in one line, and how many more f shows.
func (m Model) noteLine(notes []string, width int) string {
	more := ""
	if n := len(notes); n > 1 {
		more = fmt.Sprintf(" (and %d more: f)", n-1)
	}
	return strings.Join(cells.Clauses(cells.Safe(notes[0]), width-cells.Width(more), 1, m.th.Marks.More), "") + more
}

func (m Model) hints() []keys.Binding {
	if m.question != nil || m.picker != nil || m.edit != nil || m.sheet != nil || !m.begun {
		return m.Keys()
	}
	return []keys.Binding{
		keys.New("", "", "enter", "change"), keys.New("", "", "n", "wash"), keys.New("", "", "o", "stop"),
		keys.New("", "", "b", "another trip"), keys.New("", "", "?", "all keys"), keys.New("", "", "C", "ways").Unless(m.notCompared()),
		keys.New("", "", "t", "take advice").Unless(m.noAdvice()), keys.New("", "", "c", "change"), keys.New("", "", ", .", "move"),
		keys.New("", "", "u", "undo").Unless(m.history.NoUndo()), keys.New("", "", "f", "in full"), keys.New("", "", "esc", "back"),
	}
}

// lineText is one line of the list.
func (m Model) lineText(l line, here bool, width int) string {
	mark, ink := " ", m.th.Text
	if here {
		mark, ink = m.th.Marks.Here, m.th.Accent
	}
	day := "no date"
	if d, given := l.date.Get(); given {
		day = fmt.Sprintf("%02d-%02d", d.Month, d.Day)
	}
	if l.kind == theTrip {
		return ink.On(mark+" ") + m.th.Strong.On(strings.Join(cells.Clauses(cells.Safe(m.settings()), width-2, 1, m.th.Marks.More), ""))
	}
	head := mark + " " + cells.Fit(day, 8)
	room := max(width-nameWidth-10, 0)
	name, details, tone := m.lineWords(l)
	detail := details[len(details)-1]
	for i := len(details) - 1; i >= 0; i-- {
		if cells.Width(details[i]) <= room {
			detail = details[i]
		}
	}
	return ink.On(head+cells.Fit(cells.Clip(cells.Safe(name), nameWidth-1, m.th.Marks.More), nameWidth)) +
		tone.On(cells.Clip(cells.Safe(detail), room, m.th.Marks.More))
}

// nameWidth is how much of a line the name takes.
const nameWidth = 24

// settings is the line about the trip as a whole.
func (m *Model) settings() string {
	lead := "resin takes " + report.Days(m.plan.Lead, m.sys)
	carried := "carried from the start"
	if m.now.Carry == model.No {
		carried = "comes along the way"
	}
	words := append(m.now.Otherwise(), lead, carried)
	if m.plan.ToFill {
		words = append([]string{"tank still to be filled"}, words...)
	}
	return m.now.Name + ": " + strings.Join(words, ", ")
}

func split(text string) []string { return strings.Split(strings.TrimRight(text, "\n"), "\n") }
