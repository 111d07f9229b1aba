package bed

import (
	"errors"
	"fmt"
	"testing"
	"time"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/model/store/journal"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

func seasonLog(t testing.TB) model.Log {
	log, _ := journal.Open("../../testdata/season/log.toml").Load()
	require.NotEmpty(t, log)
	return log
}

// counted gives identifiers that follow each other.
func counted() func(model.Moment) (string, error) {
	n := 0
	return func(model.Moment) (string, error) {
		n++
		return fmt.Sprintf("typed%04d", n), nil
	}
}

// options is the season's rig with a log. The plan is the sample's, so that the
// frames hang on nothing else; the rest is the planner's own.
func options(log model.Log) Options {
	lib := store.Example()
	lib.Washes[0].Wash.Date = quantity.Some(model.Date{Year: 2026, Month: 9, Day: 13}) // today
	b := &sample.Log{Kept: log}
	return Options{
		Desk: entry.Desk{
			Rig: lib.Rig, Places: lib.Places, Wash: lib.Washes[0].Wash, Logger: b,
			Answer: func() (planner.Plan, *planner.Past, error) {
				p := sample.Plan()
				p.Place = "Juniper Flats"
				return p, planner.Recall(b.Kept, lib.Rig, lib.Places), nil
			},
			Clock: func() time.Time { return time.Date(2026, 9, 13, 8, 0, 0, 0, time.FixedZone("", -6*3600)) },
			NewID: counted(),
			Theme: theme.New(theme.Options{Profile: termenv.Ascii}),
			Size:  layout.Size{W: 80, H: 24},
		},
		Refill: func(entry.Desk) screen.Screen { return Model{} },
	}
}

func seasonOptions(t testing.TB) Options { return options(seasonLog(t)) }

func (o Options) book() *sample.Log { return o.Logger.(*sample.Log) }

// last is the entry that was written last.
func (o Options) last() model.Entry {
	log := o.book().Kept
	return log[len(log)-1]
}

// player presses keys and looks at what is seen.
type player = hands.Player[Model]

func play(t testing.TB, o Options, script string) *player { return hands.Play(t, New(o), script) }

var errFull = errors.New("no space left on the disk: free some and try again")

// reading is an outlet reading at 1.3 gpm at home.
func reading(id string, day int, ppm float64) model.Entry {
	return model.Entry{ID: id, At: model.MomentOf(time.Date(2026, 9, day, 12, 0, 0, 0, time.UTC)), Body: &model.Sample{
		Point: model.AfterBed, Reading: quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl)), Place: "Juniper Flats",
		Bed: "half-foot tank", Flow: quantity.Some(1.3 * quantity.GPM), Flushed: model.Yes,
	}}
}
