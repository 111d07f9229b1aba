package ui

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/entry"
	"washeve/ui/screen"
)

// Anew is what came of reading all files again.
type Anew struct {
	Options Options // of the program by what they hold now
	Same    bool    // they hold what is shown, but for the log; there are no options
	Said    string  // what was read
	Alarm   bool    // with trouble in it
}

// anew reads all files again and goes on with what they hold, as at the start. What is not
// saved is kept in a copy first, where the person says so; else they are asked. Files with
// faults are told, and all stays.
func (a App) anew(asked screen.Anew) (tea.Model, tea.Cmd) {
	if a.reread == nil {
		return a, nil
	}
	lost := a.keep()
	if lost != nil && !asked.Aside {
		return a.pass(screen.Unsaved{Why: lost})
	}
	now, err := a.reread(lost != nil)
	switch {
	case err != nil:
		a.trouble = err
		return a, nil
	case now.Same:
		next, learned := a.passAll(entry.Learned{})
		said, cmd := next.(App).pass(screen.Said{Text: now.Said, Alarm: now.Alarm})
		return said, tea.Batch(learned, cmd)
	}
	next := Open(now.Options)
	next.screens = next.screens[:1] // whoever is here knows of a wash that is under way
	next.lessons, next.readings = a.lessons, a.readings+1
	sized, _ := next.route(tea.WindowSizeMsg{Width: a.size.W, Height: a.size.H})
	return sized.(App).pass(screen.Said{Text: now.Said, Alarm: now.Alarm})
}

// Changed tells every screen of files that another program has changed meanwhile.
func Changed(files string) tea.Msg { return screen.Everyone{Msg: screen.Changed{Files: files}} }

// Found tells every screen, behind what it has to say of its own, of trouble that was found
// beside it.
func Found(text string) tea.Msg {
	return screen.Everyone{Msg: screen.Said{Text: text, Alarm: true, Behind: true}}
}
