package compare

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"

	"washeve/model/store"
	"washeve/planner/compare"
	"washeve/ui/cells"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// ours is the built-in example.
func ours() Options {
	lib := store.Example()
	return Options{
		Base:   compare.Case{Rig: lib.Rig, Places: lib.Places, Wash: lib.Washes[0].Wash},
		Answer: compare.NewOneWash(nil, compare.Yearly{}),
		Theme:  theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Least(),
	}
}

// player presses keys and looks at what is seen.
type player struct {
	t testing.TB
	m Model
	s layout.Size
}

func play(t testing.TB, o Options, script string) *player {
	return from(t, New(o), script)
}

// from plays on from a screen that stands already.
func from(t testing.TB, m Model, script string) *player {
	p := &player{t: t, m: m, s: layout.Least()}
	return p.keys(script)
}

func (p *player) keys(script string) *player {
	for _, key := range hands.Keys(script) {
		p.send(key)
	}
	return p
}

func (p *player) send(msg tea.Msg) tea.Msg {
	next, cmd := p.m.Update(msg)
	p.m = next.(Model)
	if cmd != nil {
		return cmd()
	}
	return nil
}

// onto walks to a way.
func (p *player) onto(key string) *player {
	p.keys("home")
	for p.m.way().Key != key {
		at := p.m.hand
		if p.keys("right"); p.m.hand == at {
			p.t.Fatalf("there is no way %s", key)
		}
	}
	return p
}

func (p *player) seen() string {
	frame := ansi.Strip(p.m.View(p.s))
	fits(p.t, frame, p.s)
	return frame
}

func fits(t interface{ Fatalf(string, ...any) }, frame string, size layout.Size) {
	lines := strings.Split(frame, "\n")
	if len(lines) > size.H {
		t.Fatalf("%d lines on a screen of %d:\n%s", len(lines), size.H, frame)
	}
	for _, line := range lines {
		if cells.Width(line) > size.W {
			t.Fatalf("%q is wider than %d", line, size.W)
		}
	}
}
