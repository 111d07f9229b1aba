package day

import (
	"errors"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// ours is a clear day in May, of which all is known.
func ours() Options {
	var kept planner.Memory
	rig, places, wash := sample.Day()
	return Options{
		Rig: rig, Places: places, Wash: wash,
		Make: kept.Make, Save: func(model.Wash) error { return errors.New("nothing is to be saved here") },
		Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Least(),
	}
}

// player presses keys and looks at what is seen.
type player struct {
	t testing.TB
	m Model
	s layout.Size
}

func play(t testing.TB, o Options, script string) *player {
	p := &player{t: t, m: New(o), s: layout.Least()}
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

func (p *player) seen() string {
	frame := ansi.Strip(p.m.View(p.s))
	hands.Fits(p.t, frame, p.s)
	return frame
}

func (p *player) start() string { return fieldOf(&p.m.now, keyStart).Text() }

func (p *player) nose() string { return fieldOf(&p.m.now, keyHeading).Text() }
