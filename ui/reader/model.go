// Package reader is a page to read: the keys, the plan in full, or where the
// numbers come from. It scrolls and searches.
package reader

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// Lines writes the page for a width.
type Lines func(width int) []string

// Model is the page as it stands.
type Model struct {
	th     theme.Theme
	title  string
	source Lines
	size   layout.Size
	lines  []string
	top    int
	search search
	note   string // why a key did nothing
}

// search is what is looked for.
type search struct {
	typing bool
	text   string
	missed bool
	at     int // line where it was found
}

// New makes a page. Lines is called at every new width; its lines may be in
// colour.
func New(th theme.Theme, title string, size layout.Size, lines Lines) Model {
	m := Model{th: th, title: title, source: lines}
	return m.sized(size)
}

// Title is what the page is called.
func (m Model) Title() string { return m.title }

// Init starts nothing.
func (m Model) Init() tea.Cmd { return nil }

// Typing tells that what is looked for is being typed.
func (m Model) Typing() bool { return m.search.typing }

// Leave has nothing to save.
func (m Model) Leave() error { return nil }

func (m Model) sized(size layout.Size) Model {
	m.size = size
	m.lines = m.source(max(size.W-2, 20))
	for i, line := range m.lines {
		m.lines[i] = cells.Clip(line, size.W-2, m.th.Marks.More)
	}
	return m.scrolled(0)
}

// rows is how many lines of the page are seen.
func (m Model) rows() int { return max(m.size.H-3, 1) }

func (m Model) last() int { return max(len(m.lines)-m.rows(), 0) }

func (m Model) scrolled(by int) Model {
	m.top = min(max(m.top+by, 0), m.last())
	return m
}

var _ screen.Screen = Model{}
