package plan

import (
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	doing "washeve/planner/washday"
	"washeve/ui/refill"
	"washeve/ui/screen"
	"washeve/ui/washday"
)

// openWashDay does the wash. It comes back with [entry.Written], since the log has
// grown.
func (m Model) openWashDay() tea.Cmd {
	page := washday.Open(m.washDay())
	return func() tea.Msg { return screen.Go{To: page} }
}

func (m Model) washDay() washday.Options {
	return washday.Options{Desk: m.desk(), Means: m.means, Rehearsal: m.now.example, Refill: refill.Open}
}

// washUnderway tells which wash is being done and where it stands, "" where none is.
func (m Model) washUnderway() string {
	if m.means.Left == nil || m.now.example {
		return ""
	}
	u, there, err := m.means.Left()
	if err != nil || !there {
		return ""
	}
	u = washday.CalledAnew(m.now.stock(), u)
	s := doing.StandAtLast(&u)
	if s.At >= len(s.Steps) {
		return "A wash is under way: " + u.Plan.Vehicle
	}
	return fmt.Sprintf("A wash is under way: %s, step %d of %d, %s", u.Plan.Vehicle, s.At+1, len(s.Steps), s.Steps[s.At].Stage)
}

// LeftWash is the screen that offers to go on with a wash that was left under way;
// false where there is none.
func (m Model) LeftWash() (screen.Screen, bool) {
	if m.means.Left == nil {
		return nil, false
	}
	if _, there, err := m.means.Left(); !there && err == nil {
		return nil, false
	}
	o := m.washDay()
	o.Rehearsal = false
	return washday.Open(o), true
}

func (m Model) noWashDay() string {
	switch {
	case m.means.Instant == nil || m.book.Logger == nil:
		return "there is no log to write in"
	case !m.planned || m.planErr != nil:
		return "there is no plan yet"
	}
	return ""
}
