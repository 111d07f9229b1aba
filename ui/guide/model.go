// Package guide is the help of every screen: its keys, the trade's terms, and
// what to do when something goes wrong, as pages to turn.
package guide

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/glossary"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/reader"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// page is a title and the lines under it.
type page struct {
	title string
	lines reader.Lines
}

// Model is the page that is read, and those beside it.
type Model struct {
	reader reader.Model
	th     theme.Theme
	size   layout.Size
	pages  []page
	at     int
}

// New opens the guide at the keys of a screen, of which the title is given.
func New(th theme.Theme, title string, size layout.Size, all []keys.Binding) Model {
	m := Model{th: th, size: size, pages: []page{
		{"Keys: " + title, func(width int) []string { return keys.Help(all, th, width) }},
		{"Terms of the trade", func(width int) []string { return glossary.TermLines(th, width) }},
		{"When something goes wrong", func(width int) []string { return glossary.TroubleLines(th, width) }},
	}}
	return m.onto(0)
}

// onto turns to a page; behind the last one comes the first.
func (m Model) onto(at int) Model {
	m.at = (at + len(m.pages)) % len(m.pages)
	m.reader = reader.New(m.th, m.pages[m.at].title, m.size, m.pages[m.at].lines)
	return m
}

// Title is what the page is called.
func (m Model) Title() string { return m.reader.Title() }

// Init starts nothing.
func (m Model) Init() tea.Cmd { return nil }

// Typing tells that what is looked for is being typed.
func (m Model) Typing() bool { return m.reader.Typing() }

// Leave has nothing to save.
func (m Model) Leave() error { return nil }

var _ screen.Screen = Model{}
