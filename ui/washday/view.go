package washday

import (
	"fmt"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/washday"
	"washeve/ui/cells"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// View draws the step at hand, or what is asked.
func (m Model) View(size layout.Size) string {
	m.size = size
	rest := layout.Whole(size)
	title, rest := rest.Top(1)
	hint, rest := rest.Bottom(1)
	says := m.statusLines(size.W)
	status, rest := rest.Bottom(len(says))
	return layout.Compose(size, []layout.Placed{
		{At: title, Lines: []string{m.titleLine(title.W)}},
		{At: rest, Lines: m.page(rest)},
		{At: status, Lines: says},
		{At: hint, Lines: []string{keys.Hint(m.hints(), m.th, hint.W)}},
	})
}

// hints are the keys at the foot: those that are pressed most, then help.
func (m Model) hints() []keys.Binding {
	all := m.Keys()
	if m.edit != nil || m.picker != nil || m.ending || m.stood != "" || m.again != "" || m.behind || m.early != "" {
		return all
	}
	first := min(len(all), 4)
	return append(append(all[:first:first], keys.New("", "", "?", "all keys")), all[first:]...)
}

func (m Model) titleLine(width int) string {
	words := "Wash day: " + m.u.Plan.Vehicle
	if m.u.Plan.Place != "" {
		words += " at " + m.u.Plan.Place
	}
	if m.o.Rehearsal {
		words = "Rehearsal, nothing is kept: " + m.u.Plan.Vehicle
	}
	where := ""
	if m.step() != nil {
		where = fmt.Sprintf("step %d of %d  ", m.state.At+1, len(m.state.Steps))
	}
	where += m.now.Wall.Format("15:04")
	words = cells.Clip(cells.Safe(words), width-cells.Width(where)-2, m.th.Marks.More)
	return m.th.Strong.On(words) + cells.Blank(width-cells.Width(words)-cells.Width(where)) + m.th.Muted.On(where)
}

// page is what stands between the title and the foot.
func (m Model) page(at layout.Rect) []string {
	var lines []string
	if m.kept != nil {
		lines = m.wrapped(m.th.Bad, "NOT WRITTEN, but still here, and tried again with the next key: "+m.kept.Error(), at.W)
	}
	switch {
	case m.err != nil:
		return m.wrapped(m.th.Doubt, "There is no wash to do yet: "+m.err.Error(), at.W)
	case m.broken != nil:
		return m.wrapped(m.th.Doubt, m.brokenWords(), at.W)
	case m.early != "":
		return append(lines, m.wrapped(m.th.Doubt, m.early+" y or n", at.W)...)
	case m.ending:
		return append(lines, m.wrapped(m.th.Doubt, "End the wash here? What was done stays, and goes into the log. y or n", at.W)...)
	case m.again != "":
		return append(lines, m.wrapped(m.th.Doubt, m.askAgain()+" y: it does, and that one is struck out. n: both stand.", at.W)...)
	case m.stood != "":
		return append(lines, m.wrapped(m.th.Doubt, m.askStood()+" y: it was. n: a first cup, written and not used.", at.W)...)
	case m.offered:
		return append(lines, m.offerLines(at.W)...)
	case m.state.Over:
		return append(lines, m.summary(at.W)...)
	case m.picker != nil:
		return append(lines, m.wayLines(at.W, at.H-len(lines))...)
	}
	at.H -= len(lines)
	return append(lines, m.stepLines(at)...)
}

func (m Model) stepLines(at layout.Rect) []string {
	facts := m.factLines(at.W)
	if m.edit != nil {
		facts = append(append(m.editLines(at.W), ""), facts...)
	}
	head := m.headLines(layout.Rect{W: at.W, H: at.H - len(facts) - 1})
	return append(append(head, ""), facts...)
}

// editLines are what is typed, and what is wrong with it.
func (m Model) editLines(width int) []string {
	ask := "The pen shows: "
	if m.asks == aFlow {
		ask = m.flowAsk()
	}
	if m.slip != "" {
		return append([]string{m.th.Strong.On(ask) + m.th.Text.On(cells.Safe(m.typedText()))}, m.few(m.th.Doubt, m.askSlip(), width)...)
	}
	says := m.edit.Says()
	switch {
	case m.edit.Text() == "":
		says = ""
	case m.edit.Offer != "":
		says = "enter takes it as " + m.edit.Offer
		if as := m.readAs(m.edit.Offer); as != "" {
			says += "; " + as
		}
	}
	return append([]string{m.th.Strong.On(ask) + m.edit.View(m.th, 20)}, oneAtLeast(m.few(m.th.Muted, says, width))...)
}

// factLines are the rest of what is to know of the step.
func (m Model) factLines(width int) []string {
	var lines []string
	add := func(ink theme.Ink, text string) {
		if text != "" {
			lines = append(lines, m.few(ink, text, width)...)
		}
	}
	add(m.th.Doubt, m.overCapWords())
	add(m.th.Text, m.task())
	add(m.th.Strong, m.valves())
	add(m.th.Text, m.tool())
	add(m.th.Text, m.progress())
	add(m.th.Text, m.waters())
	add(m.th.Text, m.bedWords())
	add(m.th.Text, m.endWords())
	add(m.th.Muted, m.nextWords())
	return lines
}

// factWords are the facts as they are said.
func (m Model) factWords() []string {
	return []string{m.overCapWords(), m.task(), m.valves(), m.tool(), m.progress(), m.waters(), m.bedWords(), m.endWords(), m.nextWords()}
}

func (m Model) wrapped(ink theme.Ink, text string, width int) []string {
	var lines []string
	for _, part := range cells.Wrap(cells.Safe(text), width) {
		lines = append(lines, ink.On(part))
	}
	return lines
}

// statusLines are what became of the last key; one line where there is nothing to tell.
func (m Model) statusLines(width int) []string {
	text, ink := m.status, m.th.Text
	switch {
	case m.alarm:
		ink = m.th.Doubt
	case text == "" && !m.state.Sure:
		text, ink = m.unsureWords(), m.th.Doubt
	case text == "" && m.state.Running:
		text, ink = "the time runs", m.th.Accent
	}
	return oneAtLeast(m.few(ink, text, width))
}

// mostLines is how many lines one thing that is told takes from the others, at most.
const mostLines = 3

// few is a text in as few lines as it takes.
func (m Model) few(ink theme.Ink, text string, width int) []string {
	var lines []string
	for _, l := range cells.WrapMost(cells.Safe(text), width, mostLines, m.th.Marks.More) {
		lines = append(lines, ink.On(l))
	}
	return lines
}

// oneAtLeast is lines, or an empty one that keeps their place.
func oneAtLeast(lines []string) []string {
	if len(lines) == 0 {
		return []string{""}
	}
	return lines
}

func (m Model) unsureWords() string {
	return "A clock went back, so some time is not counted: " + m.th.Key("b", "before") + " and the times set it right."
}

func (m Model) offerLines(width int) []string {
	words := m.offerWords()
	lines := m.wrapped(m.th.Strong, words[0], width)
	for _, w := range words[1:] {
		lines = append(lines, m.wrapped(m.th.Text, w, width)...)
	}
	return append(append(lines, ""), m.wrapped(m.th.Text, m.offerKeys(), width)...)
}

// offerKeys say what can be done with the wash that was left.
func (m Model) offerKeys() string {
	return m.th.Key("enter", "go on") + " goes on where it was; " + m.th.Key("x", "end") + " ends it and keeps what was done; " + m.th.Key("esc", "back") + " leaves it for later."
}

// brokenWords say that the wash under way cannot be read, and what can be done.
func (m Model) brokenWords() string {
	return "A wash is under way, but its file cannot be gone on with, and is left as it is: " + m.broken.Error() + ". Mend the line and come back, or " + m.th.Key("k", "keep aside") + " keeps the file under another name and starts a new wash."
}

// offerWords say which wash was left, and where.
func (m Model) offerWords() []string {
	words := []string{fmt.Sprintf("A wash is under way: %s, begun %s.", m.u.Plan.Vehicle, begun(&m.u))}
	s := m.step()
	if s == nil {
		return words
	}
	where := fmt.Sprintf("It stands at step %d of %d: %s", m.state.At+1, len(m.state.Steps), stepName(s))
	clock := m.clock()
	if s.Timed() {
		clock = minutes(washday.Seconds(m.done().Spent)) + " of " + minutes(washday.Seconds(s.Duration.Or(0)))
	}
	if clock != "" {
		clock += " have run"
	}
	switch {
	case m.state.Running:
		where += fmt.Sprintf(", with the time still running: %s. If the water was turned off when the program ended, %s goes on without the time since %s",
			clock, m.th.Key("o", "it was off"), m.u.Deeds[len(m.u.Deeds)-1].At.Wall.Format("15:04:05"))
	case clock != "":
		where += ", " + clock
	}
	return append(words, where+".")
}

// stepName is a step with its face, where it is about one.
func stepName(s *model.DayStep) string { return strings.TrimSpace(s.Stage + " " + string(s.Face)) }

func begun(u *model.Underway) string {
	if len(u.Deeds) == 0 {
		return "just now"
	}
	return u.Deeds[0].At.Wall.Format("2006-01-02 15:04")
}

// leftWords are what is left, with how sure that is.
func (m Model) leftWords() string {
	left, known := m.state.Left(&m.u)
	at := m.atFlow(m.u.Outlook.Flow.Or(0))
	switch {
	case !known:
		return ""
	case left.P90 <= 0:
		return "most likely nothing" + at
	}
	return fmt.Sprintf("about %s%s (%s)", quantity.Show(left.P50, m.sys), at, report.EightInTen(left, m.sys))
}

func (m Model) chanceWords() string {
	chance, known := m.u.Outlook.Chance.Get()
	if !known {
		return ""
	}
	return report.Odds(chance)
}
