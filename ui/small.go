package ui

import (
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/screen"
)

// hidden tells that the window is too small for the screen: no key acts on what cannot be
// seen, but for those of an [screen.Unseen], and q quits though a value is typed there.
func (a App) hidden() bool { return !layout.Fits(a.size) }

// goesOn is the uppermost screen on which something goes on unseen, and where it lies; -1
// where there is none.
func (a App) goesOn() (screen.Unseen, int) {
	for i := len(a.screens) - 1; i >= 0; i-- {
		if s, ok := a.screens[i].(screen.Unseen); ok && s.UnseenWords() != "" {
			return s, i
		}
	}
	return nil, -1
}

// unseenKeys are those of what goes on unseen.
func (a App) unseenKeys() []keys.Binding {
	if s, at := a.goesOn(); at >= 0 {
		return s.UnseenKeys()
	}
	return nil
}

// unseen does what one of those keys means.
func (a App) unseen(does keys.Action) (tea.Model, tea.Cmd) {
	s, at := a.goesOn()
	if at < 0 {
		return a, nil
	}
	next, cmd := s.Update(screen.Blindly{Does: does})
	a.screens = append([]screen.Screen(nil), a.screens...)
	a.screens[at] = next
	return a, a.counted(cmd)
}

// tooSmall says what the window has and needs, which keys act all the same, and what goes
// on unseen. In a very small window the keys are read first.
func (a App) tooSmall() string {
	least := layout.Least()
	what := fmt.Sprintf("This window has %d x %d cells; the plan needs %d x %d.", a.size.W, a.size.H, least.W, least.H)
	then := "Make it larger, or the letters smaller. Your work is kept. q quits."
	s, at := a.goesOn()
	if at < 0 {
		return a.notice(what, then)
	}
	act := ""
	for _, b := range s.UnseenKeys() {
		act += b.Help().Key + ": " + b.Help().Desc + ". "
	}
	return a.notice(act+s.UnseenWords(), what, then)
}
