package refill

import (
	"strings"
	"testing"
	"time"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/store"
	"washeve/model/store/journal"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

func desk(t testing.TB) entry.Desk {
	lib := store.Example()
	log, _ := journal.Open("../../testdata/season/log.toml").Load()
	require.NotEmpty(t, log)
	b := &sample.Log{Kept: log}
	n := 0
	return entry.Desk{
		Rig: lib.Rig, Places: lib.Places, Wash: lib.Washes[0].Wash, Logger: b,
		Answer: func() (planner.Plan, *planner.Past, error) {
			p := sample.Plan()
			p.Place = "Juniper Flats"
			return p, planner.Recall(b.Kept, lib.Rig, lib.Places), nil
		},
		Clock: func() time.Time { return time.Date(2026, 9, 13, 8, 0, 0, 0, time.FixedZone("", -6*3600)) },
		NewID: func(model.Moment) (string, error) { n++; return "typed" + string(rune('a'+n)), nil },
		Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Size{W: 80, H: 24},
	}
}

// player presses keys and looks at what is seen.
type player = hands.Player[Model]

func play(t testing.TB, o entry.Desk, script string) *player { return hands.Play(t, New(o), script) }

// words is what is seen, with line ends as blanks.
func words(p *player) string {
	var b strings.Builder
	for _, line := range strings.Split(p.Seen(), "\n") {
		if cells.Width(line) > 27 {
			line = string([]rune(line)[27:])
		}
		b.WriteString(strings.TrimSpace(line) + " ")
	}
	return b.String()
}
