package washday

import (
	"cmp"
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// bay is a clock to be moved, a log in memory, and the file of the wash under way.
type bay struct {
	at      time.Duration
	log     model.Log
	kept    *model.Underway
	fail    error // why nothing can be written
	logFail error // why the log cannot
	left    error // why the file of the wash cannot be read
	bells   int
}

var errFull = errors.New("no space left on the disk: free some and try again")

func (b *bay) Append(entries ...model.Entry) error {
	if err := cmp.Or(b.fail, b.logFail); err != nil {
		return err
	}
	for i := range entries {
		if faults := entries[i].Faults(); len(faults) > 0 {
			return faults[0]
		}
	}
	b.log = model.Merge(b.log, model.NewLog(entries))
	return nil
}

func (b *bay) Log() model.Log { return b.log }

func (b *bay) instant() model.Instant {
	wall := time.Date(2026, 5, 16, 6, 15, 0, 0, time.FixedZone("", -6*3600)).Add(b.at)
	return model.Instant{Wall: wall, Boot: "b", Up: time.Hour + b.at}
}

func (b *bay) keep(u model.Underway) error {
	if b.fail == nil {
		b.kept = &u
	}
	return b.fail
}

func (b *bay) close() error {
	if b.fail == nil {
		b.kept = nil
	}
	return b.fail
}

// options is the built-in example made one's own.
func (b *bay) options() Options {
	lib := store.Example()
	ids := 0
	memory := func() *planner.Memory { return &planner.Memory{Past: planner.Recall(b.log, lib.Rig, lib.Places)} }
	desk := entry.Desk{
		Rig: lib.Rig, Places: lib.Places, Wash: lib.Washes[0].Wash, Logger: b,
		Clock: func() time.Time { return b.instant().Wall },
		NewID: func(model.Moment) (string, error) { ids++; return fmt.Sprintf("wash%04d", ids), nil },
		Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Least(),
	}
	desk.Answer = func() (planner.Plan, *planner.Past, error) {
		m := memory()
		p, err := m.Make(desk.Rig, desk.Places, desk.Wash)
		return p, m.Past, err
	}
	return Options{Desk: desk, Means: Means{
		Instant: b.instant, Keep: b.keep, Close: b.close, Bell: func() { b.bells++ }, Tick: time.Second,
		Left: func() (model.Underway, bool, error) {
			if b.kept == nil {
				return model.Underway{}, false, b.left
			}
			return *b.kept, true, b.left
		},
		Aside: func() (string, error) { b.left = nil; return "underway-kept.toml", b.fail },
		Rest: func(r model.Rig, p model.Places, w model.Wash, ran, left quantity.Volume, f quantity.Flow) (planner.Plan, error) {
			return memory().Rest(r, p, w, ran, left, f)
		},
		Fresh: func(r model.Rig, p model.Places, w model.Wash) (planner.Plan, error) {
			return memory().MakeIn(planner.Setting{Fresh: true}, r, p, w)
		},
		Ways: func(r model.Rig, p model.Places, w model.Wash) (planner.Shortage, error) {
			return memory().Shorten(r, p, w)
		},
		Make: func(r model.Rig, p model.Places, w model.Wash) (planner.Plan, error) { return memory().Make(r, p, w) },
	}}
}

// player presses keys and looks at what is seen.
type player struct {
	t testing.TB
	b *bay
	m Model
	s layout.Size
}

func play(t testing.TB, b *bay, o Options, script string) *player {
	p := &player{t: t, b: b, m: Open(o).(Model), s: layout.Least()}
	return p.keys(script)
}

// fresh begins a wash of the example.
func fresh(t testing.TB, script string) *player {
	b := &bay{}
	return play(t, b, b.options(), script)
}

// keys presses keys by their names; "5s" lets five seconds pass, "5m" minutes.
func (p *player) keys(script string) *player {
	for i, part := range strings.Split(script, "'") {
		if i%2 == 1 {
			for _, k := range hands.Keys("'" + part + "'") {
				p.send(k)
			}
			continue
		}
		for _, word := range strings.Fields(part) {
			if d, err := time.ParseDuration(word); err == nil && len(word) > 1 {
				p.b.at += d
				p.send(ticked{p.m.ticks})
				continue
			}
			if word == "space" {
				word = " "
			}
			p.send(hands.Key(word))
		}
	}
	return p
}

func (p *player) send(msg tea.Msg) tea.Cmd {
	next, cmd := p.m.Update(msg)
	p.m = next.(Model)
	return cmd
}

func (p *player) seen() string {
	frame := ansi.Strip(p.m.View(p.s))
	hands.Fits(p.t, frame, p.s)
	return frame
}

// to goes on until a step of a kind; what lies between is skipped, but for the flush,
// which counts as planned.
func (p *player) to(kind model.StepKind) *player {
	for range 60 {
		s := p.m.step()
		if s == nil || s.Kind == kind {
			return p
		}
		p.keys(map[bool]string{true: "enter", false: "s"}[s.Kind == model.Flush])
	}
	require.Fail(p.t, "there is no such step")
	return p
}

var _ screen.Screen = Model{}
