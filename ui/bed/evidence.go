package bed

import (
	"fmt"
	"math"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/reader"
	"washeve/ui/report"
)

// noteLines is what the readings say in a few lines: first what does not fit,
// then which reading would teach most.
func (m Model) noteLines(width, most int) []string {
	if m.err != nil || most <= 0 {
		return nil
	}
	var lines []string
	odd := m.suspects()
	if len(odd) > 0 {
		text := "! " + oddWords(odd[0])
		if c := odd[0].Suspect.Causes; len(c) > 0 {
			text += " " + c[0].Note.Text(m.sys)
		}
		lines = append(lines, m.brief(m.th.Bad, text, width, max(most-1, 1))...)
	}
	if aged := report.Aged(m.past, m.sys); aged != "" && len(odd) == 0 {
		lines = append(lines, m.brief(m.th.Doubt, "! "+aged, width, max(most-1, 1))...)
	}
	if high := report.High(m.past); high != "" && len(odd) == 0 {
		lines = append(lines, m.brief(m.th.Doubt, "! "+high, width, max(most-1, 1))...)
	}
	if remarks := m.plan.Remarks(); len(remarks) > 0 && len(lines) == 0 {
		lines = append(lines, m.brief(m.th.Doubt, "! "+remarks[0].Text(m.sys), width, max(most-1, 1))...)
	}
	if moved := report.Moved(m.ahead, m.sys); moved != "" && len(lines) == 0 && most > 2 {
		lines = append(lines, m.brief(m.th.Text, moved, width, most-1)...)
	}
	more := " " + m.th.Key("e", "evidence") + " tells more."
	if len(odd) > 1 {
		more = fmt.Sprintf(" %d more fit no bed; %s shows all.", len(odd)-1, m.th.Key("e", "evidence"))
	}
	room := most - len(lines)
	if advice := m.adviceWords(room); advice != "" {
		lines = append(lines, m.brief(m.th.Text, advice+more, width, room)...)
	}
	if room := most - len(lines); room > len(m.ahead.Advice.Options) {
		lines = append(append(lines, m.th.Muted.On(cells.Clip("What is left would be known", width, ""))), m.worthLines(width)...)
	}
	return lines[:min(len(lines), most)]
}

// worthLines sets the readings that could be taken next against each other.
func (m Model) worthLines(width int) []string {
	var lines []string
	for _, o := range m.ahead.Advice.Options {
		share := "under 5 %"
		if told := o.Told(); told > 0 {
			share = report.Percent(told)
		}
		text := cells.Right(share, 9) + " narrower by " + m.worthWords(o.Code)
		lines = append(lines, m.th.Muted.On(cells.Clip(text, width, m.th.Marks.More)))
	}
	return lines
}

func oddWords(r planner.PastReading) string {
	return fmt.Sprintf("%s on %s fits no bed (%s expected) and is not used.", report.PPM(r.PPM), r.At.Date(), report.PPM(r.Suspect.Expected))
}

// adviceWords is the reading that would teach most, in few words where there is
// room for one line.
func (m Model) adviceWords(room int) string {
	a := m.ahead.Advice
	switch {
	case m.spent():
		return "This fill is at its end: " + m.th.Key("c", "resin") + " shows the change of resin, step by step."
	case len(a.Options) == 0:
		return ""
	case room < 2 && a.Note.Code != planner.ReadLater:
		return "Teaches most: " + m.worthWords(a.Options[0].Code) + "."
	}
	return a.Note.Text(m.sys)
}

// evidence is the page of what the readings say.
func (m Model) evidence(width int) []string {
	p := page{m: m, width: width}
	if m.penInDoubt() {
		p.strong("THE PEN'S SCALE IS IN DOUBT. Read the tap with it before you trust any figure.")
	}
	p.head("What does not fit")
	odd := m.suspects()
	high := report.High(m.past)
	if len(odd) == 0 && high == "" {
		p.text("Every reading of this fill fits a bed that holds what this one may hold.")
	}
	for _, r := range odd {
		p.odd(r)
	}
	if high != "" {
		p.text(high)
	}
	if aged := report.Aged(m.past, m.sys); aged != "" {
		p.text(aged)
	}
	for _, n := range m.plan.Remarks() {
		p.text(n.Text(m.sys))
	}
	p.head("Which reading would teach most")
	p.text(m.adviceWords(math.MaxInt))
	p.lines = append(p.lines, m.worthLines(width)...)
	p.head("The readings of this fill")
	p.readings()
	p.head("What they say together")
	p.together()
	return p.lines
}

func (m Model) worthWords(code string) string {
	switch code {
	case planner.ReadFaster:
		return "a flushed reading now at " + quantity.Show(m.ahead.Faster, m.sys) + ", to waste"
	case planner.ReadAtEnd:
		return "a reading at the end of the next wash"
	}
	return "a flushed reading now at " + quantity.Show(m.plan.Sprayer.Flow, m.sys)
}

// page gathers lines.
type page struct {
	m     Model
	width int
	lines []string
}

func (p *page) head(text string) {
	if len(p.lines) > 0 {
		p.lines = append(p.lines, "")
	}
	p.lines = append(p.lines, p.m.th.Strong.On(text))
}

func (p *page) strong(text string) {
	p.lines = append(p.lines, p.m.wrap(p.m.th.Bad, text, p.width, math.MaxInt)...)
}

func (p *page) text(text string) { p.row("  ", text) }

// row is text behind a head.
func (p *page) row(head, text string) {
	p.lines = append(p.lines, reader.Hanging(p.m.th, head, text, p.width)...)
}

func (p *page) odd(r planner.PastReading) {
	p.lines = append(p.lines, p.m.wrap(p.m.th.Bad, "? "+oddWords(r)+" What may be behind it, the likeliest first:", p.width, math.MaxInt)...)
	for i, c := range r.Suspect.Causes {
		p.row(fmt.Sprintf("  %d. ", i+1), c.Note.Text(p.m.sys))
	}
}

func (p *page) readings() {
	if p.m.past == nil || len(p.m.past.Present().Readings) == 0 {
		p.text("None yet: " + p.m.th.Key("r", "reading") + " adds one.")
		return
	}
	for _, r := range p.m.past.Present().Readings {
		how := "should have shown " + report.PPM(r.Expected) + ", by all readings"
		switch {
		case !r.Counts:
			how = "a first cup: shown, not used"
		case math.IsNaN(r.Expected):
			how = "cannot be set against a bed"
		case r.Suspect != nil:
			how = "should have shown " + report.PPM(r.Suspect.Expected) + "; fits no bed"
		}
		p.row("  "+r.At.Date().String()+cells.Right(quantity.Show(r.Gallons, p.m.sys), 10)+"  ", report.PPM(r.PPM)+"; "+how)
	}
}

func (p *page) together() {
	a := p.m.ahead
	if p.m.past == nil {
		p.text("The log knows nothing of this bed yet: the figures are what is usual of such a bed.")
		return
	}
	readings := "readings"
	if a.Used == 1 {
		readings = "reading"
	}
	if moved := report.Moved(a, p.m.sys); moved != "" && report.Aged(p.m.past, p.m.sys) == "" {
		p.text(moved)
	}
	met := fmt.Sprintf("%s of the resin that it should (8 in 10: %s to %s)", report.Times(a.Contact.P50), report.Times(a.Contact.P10), report.Times(a.Contact.P90))
	p.text(fmt.Sprintf("%d %s used. It holds %s; the water meets %s.", a.Used, readings, report.OfRating(a.Factor), met))
}

// whyLines is where the numbers of this screen come from.
func (m Model) whyLines(width int) []string {
	return reader.Reasons(m.th, m.sys, m.reasons(), width)
}

// reasons are those of the bed, and what the plan says of it.
func (m Model) reasons() []planner.Reason {
	reasons := append([]planner.Reason{}, m.ahead.Reasons...)
	for _, r := range m.plan.Reasons {
		if r.Number == "remaining gallons" || r.Number == "chance of lasting" || r.Number == "flush" {
			reasons = append(reasons, r)
		}
	}
	return reasons
}
