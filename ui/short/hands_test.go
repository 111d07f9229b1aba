package short

import (
	"errors"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// ours is a coach whose bed gives for some faces only.
func ours() Options {
	var kept planner.Memory
	rig, places, wash := sample.Day()
	sample.Set(&rig.Beds[0], map[string]string{"gallons_so_far": "190 gal", "price": "$185"})
	return Options{
		Rig: rig, Places: places, Wash: wash,
		Sharing: kept.Sharing, Save: func(model.Wash) error { return errors.New("nothing is to be saved here") },
		Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Least(),
	}
}

// player presses keys and looks at what is seen. Messages of the screen to itself
// are handed back to it, as the root does.
type player struct {
	t testing.TB
	m Model
	s layout.Size
}

func play(t testing.TB, o Options, script string) *player {
	p := &player{t: t, m: New(o), s: layout.Least()}
	p.run(p.m.Init())
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
	return p.run(cmd)
}

func (p *player) run(cmd tea.Cmd) tea.Msg {
	if cmd == nil {
		return nil
	}
	msg := cmd()
	if r, own := msg.(reckoned); own {
		return p.send(r)
	}
	return msg
}

func (p *player) seen() string {
	frame := ansi.Strip(p.m.View(p.s))
	lines := strings.Split(frame, "\n")
	if len(lines) > p.s.H {
		p.t.Fatalf("%d lines on a screen of %d:\n%s", len(lines), p.s.H, frame)
	}
	for _, line := range lines {
		if cells.Width(line) > p.s.W {
			p.t.Fatalf("%q is wider than %d", line, p.s.W)
		}
	}
	return frame
}
