// Package compare is the Compare screen: ways of doing the same wash, or the same
// trip, side by side, the best figure of each row marked.
package compare

import (
	"slices"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model/quantity"
	"washeve/planner/compare"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// Options is what the screen is made from.
type Options struct {
	Base  compare.Case
	Means func() (compare.Answerer, compare.Yearly) // what answers, by all that the log teaches by now, and the washes of a year
	Theme theme.Theme
	Units quantity.System
	Size  layout.Size
}

// Done is what the screen comes back with: the way to make the plan.
type Done struct{ Way compare.Way }

// Model is the screen as it stands.
type Model struct {
	th     theme.Theme
	sys    quantity.System
	size   layout.Size
	base   compare.Case
	means  func() (compare.Answerer, compare.Yearly)
	answer compare.Answerer
	washes compare.Yearly

	turned compare.Options
	table  compare.Table
	err    error // why nothing can be compared

	hand  int  // the way under the hand
	first int  // the leftmost way beside the plan's own
	top   int  // the first line of the words that is seen
	chose bool // a key that no text has, or the mouse, was meant for this page
	ask   bool // whether to make the way under the hand the plan

	status string
	alarm  bool
}

// New makes the screen. The first frame shows all of it.
func New(o Options) Model {
	m := Model{
		th: o.Theme, sys: o.Units, size: o.Size, base: o.Base, means: o.Means, first: 1,
	}
	return m.learned()
}

// learned compares by all that the log teaches by now.
func (m Model) learned() Model {
	m.answer, m.washes = m.means()
	return m.compare()
}

// compare works every way out, and keeps the hand on its way. Where that is not
// compared any more, nothing is asked of it.
func (m Model) compare() Model {
	table, err := compare.Compare(m.base, m.answer, m.turned)
	if m.err = err; err != nil {
		return m
	}
	key := ""
	if m.hand < len(m.table.Ways) {
		key = m.way().Key
	}
	m.table = table
	at := slices.IndexFunc(table.Ways, func(w compare.Way) bool { return w.Key == key })
	if top := m.top; at >= 0 {
		m = m.to(at)
		m.top = min(top, m.lastTop())
		return m
	}
	m.ask = false
	return m.to(m.hand)
}

// Title is what the page is called.
func (m Model) Title() string { return "Compare" }

// Init starts nothing.
func (m Model) Init() tea.Cmd { return nil }

// Typing tells that letters are text just now: they never are.
func (m Model) Typing() bool { return false }

// Leave has nothing to save.
func (m Model) Leave() error { return nil }

// way is the one under the hand; there must be one.
func (m *Model) way() compare.Way { return m.table.Ways[m.hand] }

// beside is how many ways stand beside the plan's own.
func (m *Model) beside() int { return max(columns(m.size.W)-1, 1) }

// to puts the hand on a way, and brings it into sight.
func (m Model) to(way int) Model {
	m.hand, m.top = min(max(way, 0), max(len(m.table.Ways)-1, 0)), 0
	switch n := m.beside(); {
	case m.hand == 0:
	case m.hand < m.first:
		m.first = m.hand
	case m.hand >= m.first+n:
		m.first = m.hand - n + 1
	}
	m.first = max(min(m.first, len(m.table.Ways)-m.beside()), 1)
	return m
}

// seen lists the ways in sight, the plan's own first.
func (m *Model) seen() []int {
	ways := []int{0}
	for i := m.first; i < min(m.first+m.beside(), len(m.table.Ways)); i++ {
		ways = append(ways, i)
	}
	return ways
}

// say puts words on the status line. It is called so often that a copy of it at each call
// would be a hundredth of the program.
//
//go:noinline
func (m Model) say(text string) Model {
	m.status, m.alarm = text, false
	return m
}

// warn is [Model.say] of what did not go as it should.
//
//go:noinline
func (m Model) warn(text string) Model {
	m.status, m.alarm = text, true
	return m
}

var _ screen.Screen = Model{}
