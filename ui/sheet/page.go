package sheet

import (
	"fmt"
	"strings"

	"washeve/ui/cells"
)

// A page of text: what a line printer puts on one sheet of paper.
const (
	PageLines   = 66
	PageColumns = 80
)

// part is one section of a page, in ways of writing it, the whole one first and
// each shorter than the one before. The last may be none at all.
type part struct {
	name  string // in the word about what was shortened
	title string
	ways  [][]string
	now   int // the way in use
}

func (p *part) lines() []string {
	lines := p.ways[p.now]
	if len(lines) == 0 || p.title == "" {
		return lines
	}
	return append([]string{p.title}, lines...)
}

// cut keeps the first lines and says how many are gone. None of nothing is cut.
func cut(lines []string, most int) []string {
	if len(lines) <= most || most <= 0 {
		return lines[:min(len(lines), max(most, 0))]
	}
	kept := append([]string(nil), lines[:most-1]...)
	return append(kept, fmt.Sprintf("    ... and %d more lines, left out here", len(lines)-most+1))
}

// brief is [writer.list] in at most so many lines: as many texts as go in whole, then one
// more as far as its first clauses, and a line that says how many are left out, and where
// all stands.
func (w writer) brief(texts []string, most int) []string {
	if whole := w.list(texts); len(whole) <= most {
		return whole
	}
	var lines []string
	shown, begun := 0, false
	for _, t := range texts {
		next := w.list([]string{t})
		if room := most - 1 - len(lines); len(next) > room {
			next = w.clauses("  - ", "    ", t, room)
			if begun = shown == 0 || len(next) > 0 && !strings.HasSuffix(next[len(next)-1], tail); begun {
				lines = append(lines, next...)
			}
			break
		}
		lines, shown = append(lines, next...), shown+1
	}
	left := "... "
	if begun {
		shown++
		left += "the rest of it"
	}
	if n := len(texts) - shown; n > 0 {
		left += map[bool]string{true: " and "}[begun] + fmt.Sprintf("%d more", n)
	}
	return append(lines, "    "+left+": `washeve plan` has all")
}

// tail ends what has no end of a clause to stop at.
const tail = "..."

// clauses writes a text in at most so many lines, as far as its first clauses.
func (w writer) clauses(first, rest, text string, most int) []string {
	var lines []string
	for i, line := range cells.Clauses(w.say(text), PageColumns-cells.Width(first), most, tail) {
		if i > 0 {
			first = rest
		}
		lines = append(lines, w.line(first+line))
	}
	return lines
}

// prose is a paragraph.
func (w writer) prose(text string) []string { return w.wrapped("  ", "  ", text) }

// proseWithin is the beginning of a paragraph, whole clauses in at most so many lines.
func (w writer) proseWithin(text string, most int) []string { return w.clauses("  ", "  ", text, most) }

// writer writes paragraphs in the page's width.
type writer struct{ plain bool }

// say makes text fit for the page's characters.
func (w writer) say(text string) string {
	text = cells.Safe(text)
	if w.plain {
		return ascii(text)
	}
	return text
}

// wrapped writes text in lines that start with first, then with rest.
func (w writer) wrapped(first, rest, text string) []string {
	var lines []string
	for i, line := range cells.Wrap(w.say(text), PageColumns-cells.Width(first)) {
		if i > 0 {
			first = rest
		}
		lines = append(lines, w.line(first+line))
	}
	return lines
}

// line is one line, cut where even a long word did not break.
func (w writer) line(text string) string {
	return strings.TrimRight(cells.Clip(text, PageColumns, ""), " ")
}

func (w writer) title(text string) string {
	rule := "─"
	if w.plain {
		rule = "-"
	}
	text = cells.Clip(w.say(text), PageColumns-4, "")
	return text + " " + cells.Repeat(rule, PageColumns-cells.Width(text)-1)
}

// all joins blocks of lines.
func all(blocks ...[]string) []string {
	var lines []string
	for _, b := range blocks {
		lines = append(lines, b...)
	}
	return lines
}

// one writes each text as a paragraph with a dash.
func (w writer) list(texts []string) []string {
	var lines []string
	for _, t := range texts {
		lines = append(lines, w.wrapped("  - ", "    ", t)...)
	}
	return lines
}
