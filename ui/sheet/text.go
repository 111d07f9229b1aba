package sheet

import (
	"fmt"
	"strings"

	"washeve/ui/cells"
	"washeve/ui/report"
)

// Text is the sheet as one page of [PageLines] lines of at most [PageColumns]
// cells. What does not fit is shortened, the least needed first, and the foot
// says so. Plain text is pure ASCII.
func Text(s Sheet, plain bool) string {
	w := writer{plain}
	p := w.page(s)
	lines := p.fit(w)
	return Seal(strings.Join(lines, "\n") + "\n" + w.foot() + "\n")
}

// page holds the parts in the order of the paper.
type page struct {
	head, heed, tonight, day, steps, gate, flow, after, caution, assumed *part
}

func (w writer) page(s Sheet) page {
	named := func(name, title string, ways ...[]string) *part {
		return &part{name: name, title: w.title(title), ways: ways}
	}
	caution, assumed, start := strings.Join(s.Caution, " "), strings.Join(s.Assumed, "; "), s.Day.Start+". "+s.Day.How
	day, notes := w.turns(s.Day, true), w.list(s.Day.Notes)
	bare := w.boxes(s.Tonight, false, false)
	return page{
		head: &part{ways: [][]string{w.head(s)}},
		heed: named("warnings", "HEED", w.list(s.Heed), w.brief(s.Heed, 6), w.brief(s.Heed, 3)),
		tonight: named("reasons to pack", "TONIGHT, IN THIS ORDER",
			w.boxes(s.Tonight, true, true), w.boxes(s.Tonight, true, false), bare, cut(bare, 8)),
		day:     named("day", "THE DAY", all(w.prose(start), notes, day), all(w.prose(start), w.brief(s.Day.Notes, 2), day), all(w.proseWithin(start, 2), w.turns(s.Day, false))),
		steps:   named("steps", "THE STEPS", w.steps(s.Steps, s.Usual, true), w.steps(s.Steps, s.Usual, false)),
		gate:    named("no-go", "BEFORE THE FIRST DI RINSE", w.gate(s.Gate, true), w.gate(s.Gate, false)),
		flow:    named("flow", "HOW FAST", w.list(s.Flow), w.brief(s.Flow, 2)),
		after:   named("when done", "WHEN DONE", w.after(s, PageLines), w.after(s, 2)),
		caution: named("cautions", "CAUTIONS", w.prose(caution), w.proseWithin(caution, 6), w.proseWithin(caution, 3)),
		assumed: named("what was assumed", "NOT STATED, AND TAKEN INSTEAD", w.prose(assumed), w.proseWithin(assumed, 4), nil),
	}
}

func (p page) parts() []*part {
	return []*part{p.head, p.heed, p.tonight, p.day, p.steps, p.gate, p.flow, p.after, p.caution, p.assumed}
}

// fit shortens until the page holds it all, then gives back what room is left
// over. The foot takes one line.
func (p page) fit(w writer) []string {
	inTurn := []*part{
		p.assumed, p.tonight, p.assumed, p.heed, p.tonight, p.caution, p.day, p.caution, p.steps, p.heed,
		p.gate, p.after, p.day, p.flow, p.tonight,
	}
	given := 0
	for ; given < len(inTurn) && p.count(w) > room; given++ {
		inTurn[given].now++
	}
	for i := given - 1; i >= 0; i-- {
		if inTurn[i].now--; p.count(w) > room {
			inTurn[i].now++
		}
	}
	if over := p.count(w) - room; over > 0 {
		short := p.steps.ways[1]
		p.steps.ways = append(p.steps.ways, cut(short, max(len(short)-over, 2)))
		p.steps.now = len(p.steps.ways) - 1
	}
	lines := append(p.lines(), w.shortened(p)...)
	return lines[:min(len(lines), room)]
}

// room is what the foot leaves of a page.
const room = PageLines - 1

func (p page) lines() []string {
	var lines []string
	for _, part := range p.parts() {
		lines = append(lines, part.lines()...)
	}
	return lines
}

func (p page) count(w writer) int { return len(p.lines()) + len(w.shortened(p)) }

// shortened names what is not whole.
func (w writer) shortened(p page) []string {
	var names []string
	for _, part := range p.parts() {
		if part.now > 0 {
			names = append(names, part.name)
		}
	}
	if len(names) == 0 {
		return nil
	}
	return w.wrapped("", "", "Shortened: "+strings.Join(names, ", ")+"; `washeve plan` has all.")
}

func (w writer) foot() string { return w.line("An estimate: the pen in the stream decides. " + mark) }

func (w writer) head(s Sheet) []string {
	lines := all(cut(w.wrapped("", "", s.Title), 2), w.wrapped("", "", strings.ToUpper(s.Verdict)+". "+s.Chance+"."))
	if s.Left != "" {
		lines = append(lines, w.wrapped("", "", s.Left)...)
	}
	lines = append(lines, w.wrapped("", "", s.Rules)...)
	if s.Notice != "" {
		lines = append(lines, w.wrapped("", "", s.Notice)...)
	}
	return lines
}

const box = "[ ] "

// boxes writes what to tick off, a line each; what is only packed stands two in
// a line where it goes without reasons.
func (w writer) boxes(all []Box, why, whyPacked bool) []string {
	var lines []string
	half := ""
	flush := func() {
		if half != "" {
			lines, half = append(lines, w.line(half)), ""
		}
	}
	for _, b := range all {
		if b.Todo || whyPacked {
			flush()
			text := b.What
			if why {
				text += " (" + b.Why + ")"
			}
			lines = append(lines, w.wrapped(box, "    ", text)...)
			continue
		}
		one := box + w.say(b.What)
		if half == "" {
			half = cells.Fit(one, PageColumns/2-1) + " "
			continue
		}
		half += cells.Fit(one, PageColumns/2)
		flush()
	}
	flush()
	return lines
}

// turns lists the faces in their order.
func (w writer) turns(d Day, why bool) []string {
	t := report.Table{Head: []string{"    face", "DI", "outlook"}, Numeric: []bool{false, false, false}}
	if d.Timed {
		t = report.Table{Head: []string{"    face", "when", "DI", "section", "dries"}, Numeric: []bool{false, false, false, true, true}}
	}
	for _, turn := range d.Turns {
		row := []string{box + turn.Face, turn.DI, turn.Outlook}
		if d.Timed {
			row = []string{box + turn.Face, turn.From + "-" + turn.To, turn.DI, turn.Section, turn.Dries}
		}
		t.Rows = append(t.Rows, row)
	}
	if len(t.Rows) == 0 {
		return nil
	}
	if d.Timed && why {
		t = w.because(t, d)
	}
	lines := report.Columns(t)
	for i, line := range lines {
		lines[i] = w.line(w.say(line))
	}
	return lines
}

// because is a table of the faces with the reason for each one's place in the room that
// is left, on as many lines as that takes.
func (w writer) because(t report.Table, d Day) report.Table {
	const leastRoom = 8
	room := max(PageColumns-cells.Width(w.say(report.Columns(t)[0]))-2, leastRoom)
	out := report.Table{Head: append(t.Head, "because"), Numeric: append(t.Numeric, false)}
	for i, row := range t.Rows {
		for n, line := range cells.Wrap(w.say(d.Turns[i].WhyShort), room) {
			if n > 0 {
				row = make([]string, len(t.Head))
			}
			out.Rows = append(out.Rows, append(row, line))
		}
	}
	return out
}

// steps is a table of the stages. Under a row stands what differs from the
// usual.
func (w writer) steps(stages []Step, usual string, differing bool) []string {
	if len(stages) == 0 {
		return nil
	}
	letters := 18
	table := w.stepTable(stages, letters)
	if over := cells.Width(table[0]) - PageColumns; over > 0 {
		table = w.stepTable(stages, max(letters-over, 4))
	}
	lines := all(w.wrapped("  ", "  ", usual), table[:1])
	for i, s := range stages {
		lines = append(lines, table[i+1])
		if other := s.differing(); differing && other != "" {
			lines = append(lines, w.wrapped("       ", "       ", other)...)
		}
	}
	for i, line := range lines {
		lines[i] = w.line(line)
	}
	return lines
}

// stepTable gives the names of the steps at most so many letters.
func (w writer) stepTable(stages []Step, letters int) []string {
	t := report.Table{Head: []string{"    step", "water", "flow", "takes", "time"}, Numeric: []bool{false, false, true, true, true}}
	for _, v := range stages[0].Valves {
		t.Head, t.Numeric = append(t.Head, w.say(v.Unit)), append(t.Numeric, false)
	}
	for _, s := range stages {
		row := []string{fmt.Sprintf("%s%d. %s", box, s.Number, cells.Clip(w.say(s.Name), letters, "")), w.say(s.Water), s.Flow, s.Volume, s.Time}
		if s.Dry {
			row[2], row[3] = "-", "-"
		}
		for i := range stages[0].Valves {
			row = append(row, s.stand(i))
		}
		t.Rows = append(t.Rows, row)
	}
	return report.Columns(t)
}

// stand is how the unit at i stands, the open way in capitals.
func (s Step) stand(i int) string {
	if i >= len(s.Valves) {
		return ""
	}
	if v := s.Valves[i]; v.Through {
		return strings.ToUpper(v.Stand())
	}
	return s.Valves[i].Stand()
}

func (w writer) gate(g Gate, whole bool) []string {
	if !g.Present {
		return nil
	}
	goes := g.Go + "."
	if whole {
		goes += " " + g.Later
	}
	lines := all(
		w.wrapped(box, "    ", g.Flush),
		w.wrapped(box, "    ", "Pen ______ ppm   flow ______   time ______   expect "+g.Expect),
		w.wrapped("    GO ", "       ", goes),
	)
	noGo := "The pen shows more."
	if whole {
		noGo += " Then either " + strings.Join(g.NoGo, "; or ") + "."
	}
	return append(lines, w.wrapped("    NO-GO ", "          ", noGo)...)
}

// after is what is left to do, in at most so many lines below that of the last reading.
func (w writer) after(s Sheet, most int) []string {
	lines := w.brief(s.After, most)
	if s.Gate.Present {
		lines = append([]string{w.line("    Pen ______ ppm   DI and flush ______   time ______   expect " + s.Gate.End)}, lines...)
	}
	return lines
}
