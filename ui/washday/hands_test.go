package washday

import (
	"strings"
	"testing"
	"time"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// shore is all that a wash day touches: a clock that the test moves, a log and the
// wash under way, both in memory, each of which may fail.
type shore struct {
	clock  time.Duration
	log    model.Log
	kept   []model.Underway
	closed int
	bells  int
	fail   error
}

func (s *shore) Append(entries ...model.Entry) error {
	if s.fail != nil {
		return s.fail
	}
	s.log = model.Merge(s.log, model.Log(entries))
	return nil
}

func (s *shore) Log() model.Log { return s.log }

var morning = time.Date(2026, 6, 12, 8, 0, 0, 0, time.FixedZone("", -6*3600))

func (s *shore) now() model.Instant {
	return model.Instant{Wall: morning.Add(s.clock), Boot: "b", Up: time.Hour + s.clock}
}

// options is the built-in example as a person's own.
func (s *shore) options() Options {
	lib := store.Example()
	memory := &planner.Memory{}
	past := func() *planner.Past {
		memory.Past = planner.Recall(s.log, lib.Rig, lib.Places)
		return memory.Past
	}
	return Options{
		Desk: entry.Desk{
			Rig: lib.Rig, Places: lib.Places, Wash: lib.Washes[0].Wash, Logger: s,
			Answer: func() (planner.Plan, *planner.Past, error) {
				from := past()
				p, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
				return p, from, err
			},
			Clock: func() time.Time { return s.now().Wall },
			NewID: func(model.Moment) (string, error) { return "washid", nil },
			Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Size{W: 80, H: 24},
		},
		Means: Means{
			Instant: s.now,
			Keep: func(u model.Underway) error {
				if s.fail == nil {
					s.kept = append(s.kept, u)
				}
				return s.fail
			},
			Close: func() error { s.closed++; return s.fail },
			Bell:  func() { s.bells++ },
			Rest: func(r model.Rig, ps model.Places, w model.Wash, ran, left quantity.Volume, f quantity.Flow) (planner.Plan, error) {
				past()
				return memory.Rest(r, ps, w, ran, left, f)
			},
			Ways: memory.Shorten, Make: memory.Make,
		},
	}
}

// player presses keys, lets time pass, and looks at what is seen.
type player struct {
	t testing.TB
	*shore
	m    Model
	size layout.Size
}

func play(t testing.TB, script string) *player {
	s := &shore{}
	p := &player{t: t, shore: s, m: New(s.options()), size: layout.Size{W: 80, H: 24}}
	return p.keys(script)
}

func (p *player) keys(script string) *player {
	for _, key := range hands.Keys(script) {
		next, _ := p.m.Update(key)
		p.m = next.(Model)
	}
	return p
}

// blank is the space key, which a script of names cannot hold.
func (p *player) blank() *player {
	next, _ := p.m.Update(hands.Key(" "))
	p.m = next.(Model)
	return p
}

func (p *player) pass(d time.Duration) *player {
	p.clock += d
	next, _ := p.m.Update(ticked{p.m.ticks})
	p.m = next.(Model)
	return p
}

func (p *player) seen() string {
	frame := ansi.Strip(p.m.View(p.size))
	lines := strings.Split(frame, "\n")
	if len(lines) > p.size.H {
		p.t.Fatalf("%d lines on a screen of %d:\n%s", len(lines), p.size.H, frame)
	}
	for _, line := range lines {
		if cells.Width(line) > p.size.W {
			p.t.Fatalf("%q is wider than %d", line, p.size.W)
		}
	}
	return frame
}

