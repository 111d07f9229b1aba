package hands

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"pgregory.net/rapid"

	"washeve/ui/layout"
	"washeve/ui/screen"
)

// A Player presses keys on a screen and looks at what is seen.
type Player[M screen.Screen] struct {
	T testing.TB
	M M
	S layout.Size
	// Own tells the messages of the screen to itself, which are handed back to it as
	// the root does; nil where there are none.
	Own func(tea.Msg) bool
}

// Play presses the keys of a script on a screen of the least size.
func Play[M screen.Screen](t testing.TB, m M, script string) *Player[M] {
	p := &Player[M]{T: t, M: m, S: layout.Least()}
	return p.Keys(script)
}

// Keys presses keys by their names, as [Keys] reads them.
func (p *Player[M]) Keys(script string) *Player[M] {
	for _, key := range Keys(script) {
		p.Send(key)
	}
	return p
}

// Send hands the screen a message, and gives what its command brings.
func (p *Player[M]) Send(msg tea.Msg) tea.Msg {
	next, cmd := p.M.Update(msg)
	p.M = next.(M)
	return p.Run(cmd)
}

// Run runs a command of the screen, and gives what it brings that is not the
// screen's own; nil where there is none.
func (p *Player[M]) Run(cmd tea.Cmd) tea.Msg {
	if cmd == nil {
		return nil
	}
	msg := cmd()
	if p.Own != nil && p.Own(msg) {
		return p.Send(msg)
	}
	return msg
}

// AnyKeys draws up to so many keys, and sizes of the screen to be seen after each:
// no frame may be larger than its size.
func (p *Player[M]) AnyKeys(rt *rapid.T, keys []string, most int) {
	for _, k := range rapid.SliceOfN(rapid.SampledFrom(keys), 1, most).Draw(rt, "keys") {
		p.Send(Key(k))
		size := layout.Size{W: rapid.IntRange(80, 260).Draw(rt, "w"), H: rapid.IntRange(24, 60).Draw(rt, "h")}
		Fits(rt, ansi.Strip(p.M.View(size)), size)
	}
}

// Seen is the screen without colours. It must fit its size.
func (p *Player[M]) Seen() string {
	p.T.Helper()
	frame := ansi.Strip(p.M.View(p.S))
	Fits(p.T, frame, p.S)
	return frame
}

// Says is what is seen, with a text of several lines as one.
func (p *Player[M]) Says() string {
	p.T.Helper()
	return strings.Join(strings.Fields(p.Seen()), " ")
}

// Page is what a key opens to read.
func (p *Player[M]) Page(key string) string {
	p.T.Helper()
	opened, ok := p.Send(Key(key)).(screen.Go)
	if !ok {
		p.T.Fatalf("%s opens nothing", key)
	}
	return ansi.Strip(opened.To.View(layout.Size{W: 80, H: 100}))
}
