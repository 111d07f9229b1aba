package day

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/drying"
	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// answerLines is what the start brings: when it ends, what spoils it, what would
// be better, what is not known, the faces in their order, and what to mind.
func (m Model) answerLines(at layout.Rect) []string {
	d := m.day()
	if d == nil {
		return m.lackLines(at)
	}
	var gap []string
	if at.H >= airy {
		gap = []string{""}
	}
	lines := append(append(m.misplacedLines(at.W), m.headLines(d, at.W)...), gap...)
	if len(d.Start.Turns) > 0 {
		lines = append(append(lines, m.turnLines(d, at.W)...), gap...)
	}
	if words := report.DayWindows(d); words != "" && at.H >= airy {
		lines = append(lines, m.wrapped("Easy hours: "+words+".", m.th.Muted, at.W)...)
	}
	minded := []string{"freezing", "hot-panel", "hot-tank", "drip-dries"}
	if at.H >= airy { // else the first line says so
		minded = append(minded, endsWithoutSun)
	}
	for _, n := range m.plan.Warnings {
		if slices.Contains(minded, n.Code) {
			lines = append(lines, m.wrapped(n.Text(m.sys), m.th.Muted, at.W)...)
		}
	}
	if len(lines) > at.H && at.H > 0 {
		lines = append(lines[:at.H-1], m.th.Muted.On(cells.Clip("more in a larger window, and in the plan by f", at.W, "")))
	}
	return lines
}

// misplacedLines warn, before all else, of a place that cannot be where it is said to be:
// then every hour shown is wrong.
func (m Model) misplacedLines(width int) []string {
	var lines []string
	for _, n := range m.plan.Warnings {
		if n.Code == planner.Misplaced {
			lines = append(lines, m.wrapped(m.th.Marks.Doubt+" "+n.Text(m.sys), m.th.Doubt, width)...)
		}
	}
	return lines
}

// endsWithoutSun is the code of the warning of a wash that ends after sunset.
const endsWithoutSun = "ends-without-sun"

// lackLines says why there is no day, and where to fill in what it needs.
func (m Model) lackLines(at layout.Rect) []string {
	if !m.planned {
		return m.wrapped("There is no plan of this wash yet, so no day to show.", m.th.Doubt, at.W)
	}
	text := m.plan.DayNote.Text(m.sys)
	for _, n := range m.plan.Warnings {
		if n.Code == "day-contradicts" {
			text = n.Text(m.sys)
		}
	}
	lines := append(m.wrapped(text, m.th.Doubt, at.W), "")
	return append(lines, m.wrapped("All of this is filled in under Day in the plan: "+m.toFill()+".", m.th.Text, at.W)...)
}

func (m Model) wrapped(text string, ink theme.Ink, width int) []string {
	var lines []string
	for _, line := range cells.Wrap(cells.Safe(text), width) {
		lines = append(lines, ink.On(line))
	}
	return lines
}

// headLines are the start, what spoils it, and what would be better or is not
// known.
func (m Model) headLines(d *planner.DayPlan, width int) []string {
	s := d.Start
	if len(s.Turns) == 0 {
		return m.wrapped("It is dark all day, so no start is recommended; s types one.", m.th.Doubt, width)
	}
	how := "the first full hour with light"
	switch {
	case d.Chosen.Given():
		how = "chosen"
	case d.Recommended.Given():
		how = "recommended, none chosen"
	}
	head := s.Label + " to " + report.ClockAfter(s.End, s.At)
	if d.EndsWithoutSun(s) != "" {
		head += map[drying.Light]string{drying.Twilight: ", ends in twilight", drying.Dark: ", ends in the dark"}[d.LightAt(s.End)]
		if how, _, _ = strings.Cut(how, ","); cells.Width(head+how)+4 > width {
			how = ""
		}
	}
	lines := []string{m.th.Accent.On(m.th.Marks.Here+" ") + m.th.Strong.On(head) + m.th.Muted.On(cells.Clip("  "+how, width-cells.Width(head)-2, m.th.Marks.More))}
	if !report.Foreseen(d) {
		return append(lines, m.wrapped(m.unknownText(d.Unknown, width), m.th.Doubt, width)...)
	}
	mark, ink, words := m.th.Marks.Doubt, m.th.Doubt, s.Why
	if s.Easy {
		mark, ink, words = m.th.Marks.Good, m.th.Good, "easy: no face hurries"
	}
	lines = append(lines, ink.On(cells.Clip(mark+" "+words, width, m.th.Marks.More)))
	best := report.DayBest(d, m.th.Key("recommended (R)", "recommended"))
	if whole := d.NoneEasy() + "; " + best; d.Recommended.Given() && !d.NotAfter.Given() && cells.Width(whole) <= width {
		best = whole
	}
	return append(lines, m.th.Muted.On(cells.Clip(best, width, m.th.Marks.More)))
}

const (
	roomy = 80 // a width that has room for whole reasons
	airy  = 16 // a height that has room for blank lines
)

// turnLines is the faces in their order. With little room the drips stand in a
// line of their own and the reasons are cut short.
func (m Model) turnLines(d *planner.DayPlan, width int) []string {
	wide := width >= roomy
	head := fmt.Sprintf("  %-6s%-7s%7s%9s  ", "face", "begins", "dries", "section")
	if wide {
		head += fmt.Sprintf("%-6s  ", "drip")
	}
	lines := []string{m.th.Muted.On(head + "why here")}
	for i := range d.Start.Turns {
		lines = append(lines, m.turnLine(i, d.Start, wide, width))
	}
	if drip := m.dripWords(); !wide && drip != "" {
		lines = append(lines, m.th.Muted.On(cells.Clip(drip, width, m.th.Marks.More)))
	}
	return lines
}

func (m Model) turnLine(i int, s drying.Start, wide bool, width int) string {
	t := s.Turns[i]
	dries, section := "?", "?"
	if lasts, given := t.Dries.Get(); given {
		dries = report.Dries(lasts)
	}
	if area, given := t.Section.Get(); given {
		section = quantity.Show(area, m.sys)
	}
	words := fmt.Sprintf("%-6s%-7s", t.Side, report.ClockAfter(t.From, s.At))
	timed := fmt.Sprintf("%7s%9s", dries, section)
	rest := "  "
	if wide {
		rest += fmt.Sprintf("%-6s  ", m.drip(t))
	}
	rest += report.TurnReason(t, width-2-len(words)-len(timed)-len(rest))
	mark, ink := " ", m.th.Text
	if t.Hurries {
		mark, ink = "!", m.th.Bad
	}
	return m.th.Text.On(strconv.Itoa(i+1)+" "+words) + ink.On(timed+mark) + m.th.Text.On(cells.Clip(rest[1:], width-3-len(words)-len(timed), m.th.Marks.More))
}

// drip is the pause of a face before its final rinse.
func (m Model) drip(t drying.Turn) string {
	for _, f := range m.plan.Faces {
		if f.Name == t.Side && f.DI > 0 {
			return report.Time(f.Pause)
		}
	}
	return "-"
}

// dripWords tells the pause before the final rinse, and the faces that get a
// shorter one.
func (m Model) dripWords() string {
	longest := quantity.Duration(0)
	for _, f := range m.plan.Faces {
		if f.DI > 0 {
			longest = max(longest, f.Pause)
		}
	}
	if longest == 0 {
		return ""
	}
	words := "drip " + report.Time(longest) + " before the final rinse"
	for _, f := range m.plan.Faces {
		if f.DI > 0 && f.Pause < longest {
			words += ", " + string(f.Name) + " " + report.Time(f.Pause)
		}
	}
	return words
}

// assumedText names what was taken for what is not stated, "" where that is nothing.
func assumedText(assumed []string) string {
	if len(assumed) == 0 {
		return ""
	}
	return "Assumed: " + strings.Join(assumed, ", ") + "."
}

// toFill is how a hand gets to the lines of the day.
func (m Model) toFill() string { return m.th.Key("esc, then d", "back, then walk day") }

// unknownText names what is needed and not known, what that leaves open where there is
// room, and where to fill it in.
func (m Model) unknownText(unknown []string, width int) string {
	words := make([]string, len(unknown))
	elsewhere := false
	for i, u := range unknown {
		name, open, _ := strings.Cut(u, ":")
		words[i] = name
		if width >= roomy {
			words[i] += " (" + strings.TrimSpace(open) + ")"
		}
		switch {
		case name == keyHeading:
			words[i] += ", which " + m.th.Key("n types here", "heading states here")
		default:
			elsewhere = true
		}
	}
	text := "Needed: " + strings.Join(words, "; ") + "."
	if elsewhere {
		text += " Fill in under Day in the plan: " + m.toFill() + "."
	}
	return text
}

// mindText is what is odd about the day.
func mindText(d *planner.DayPlan, sys quantity.System) string {
	texts := make([]string, len(d.Notes))
	for i, n := range d.Notes {
		texts[i] = n.Text(sys)
	}
	words := assumedText(d.Assumed)
	if len(texts) > 0 {
		words = "Mind: " + strings.Join(texts, "; ") + ". " + words
	}
	return strings.TrimSpace(words)
}
