// Package manual writes a page for man(1), in the macros of man(7).
package manual

import (
	"fmt"
	"strings"
)

// Page is a manual page while it is written. The same calls give the same bytes.
type Page struct{ b strings.Builder }

// New begins a page: its name, its section of the manual, the day it is of (may
// be empty), and what it comes with.
func New(name string, section int, day, comesWith string) *Page {
	p := &Page{}
	p.line(fmt.Sprintf(`.TH %s %d %s %s`, quoted(strings.ToUpper(name)), section, quoted(day), quoted(comesWith)))
	p.line(".nh") // no word is broken: a command or a key must be found by its name
	p.line(".ad l")
	return p
}

// Section begins a part of the page.
func (p *Page) Section(title string) { p.line(".SH " + quoted(strings.ToUpper(title))) }

// Part begins a part of a section.
func (p *Page) Part(title string) { p.line(".SS " + quoted(title)) }

// Text writes paragraphs. An empty line parts two of them; other line breaks
// are blanks.
func (p *Page) Text(text string) {
	for paragraph := range strings.SplitSeq(strings.TrimSpace(text), "\n\n") {
		p.line(".PP")
		p.words(paragraph)
	}
}

// Term writes a word in bold, and what is said of it, indented.
func (p *Page) Term(word, text string) {
	p.line(".TP")
	p.line(`\fB` + escaped(word) + `\fR`)
	p.words(text)
}

// Said writes a little word in italics before a text, within a term.
func (p *Page) Said(word, text string) {
	p.line(".br")
	p.line(`\fI` + escaped(word) + `\fR ` + escaped(oneLine(text)))
}

// Lines writes lines as they are: commands, tables.
func (p *Page) Lines(lines ...string) {
	p.line(".PP")
	p.line(".RS 4")
	p.line(".nf")
	for _, line := range lines {
		p.line(guarded(escaped(line)))
	}
	p.line(".fi")
	p.line(".RE")
}

// String is the page.
func (p *Page) String() string { return p.b.String() }

func (p *Page) words(text string) { p.line(guarded(escaped(oneLine(text)))) }

func (p *Page) line(text string) { p.b.WriteString(text + "\n") }

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }

// escaped keeps the page's own signs apart from the text's, and a hyphen one
// that can be copied into a shell.
func escaped(text string) string {
	return strings.NewReplacer(`\`, `\e`, `-`, `\-`, `'`, `\(aq`, `"`, `\(dq`, "`", `\(ga`, "^", `\(ha`, "~", `\(ti`).Replace(text)
}

// guarded keeps a line that starts with a point from being taken for a macro.
func guarded(line string) string {
	if strings.HasPrefix(line, ".") {
		return `\&` + line
	}
	return line
}

func quoted(text string) string { return `"` + escaped(oneLine(text)) + `"` }
