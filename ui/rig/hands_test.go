package rig

import (
	"fmt"
	"testing"
	"time"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/stock"
	"washeve/model/store"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// shelf keeps what is saved, or fails.
type shelf struct {
	saves int
	kept  stock.Stock
	fail  error
}

func (s *shelf) save(now stock.Stock) error {
	if s.fail != nil {
		return s.fail
	}
	s.saves++
	s.kept = now
	return nil
}

// stubborn is an error of saving that can be settled.
type stubborn struct {
	shelf *shelf
	takes bool
}

func (s stubborn) Error() string { return "rig.toml would have to be written anew." }

func (s stubborn) TakesOut() bool { return s.takes }

func (s stubborn) Rewrite() (string, error) {
	s.shelf.fail = nil
	return "rig.toml.bak-1", nil
}

// ours is the example's rig as a person's own, with two more washes and a log.
func ours() (Options, *shelf) {
	lib, kept := store.Example(), &shelf{}
	others := []*stock.Kept{
		{File: "may.toml", Wash: model.Wash{Name: "May wash", Vehicle: "Marigold", Bed: "half-foot tank", Place: "Fernwater"}},
		{File: "june.toml", Wash: model.Wash{Name: "June wash", Vehicle: "marigold", Place: "Fernwater"}},
	}
	log := model.Log{{ID: "one", At: model.MomentOf(time.Date(2026, 5, 1, 8, 0, 0, 0, time.UTC)), Body: &model.WashDone{Vehicle: "Marigold", Bed: "half-foot tank"}}}
	return Options{
		Stock: stock.Stock{Rig: &lib.Rig, Places: &lib.Places, Wash: &lib.Washes[0].Wash, Others: &others},
		Save:  kept.save, Make: new(planner.Memory).Make, Log: func() model.Log { return log },
		Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Size{W: 80, H: 24},
	}, kept
}

// player presses keys and looks at what is seen.
type player = hands.Player[Model]

func play(t testing.TB, o Options, script string) *player { return hands.Play(t, New(o), script) }

// done is what the key that leaves hands over.
func done(p *player, key string) Done {
	back, ok := p.Send(hands.Key(key)).(screen.Back)
	require.True(p.T, ok, "%s does not leave", key)
	done, ok := back.With.(Done)
	require.True(p.T, ok, "nothing is handed over")
	return done
}

// manyWashes puts n washes on the shelf.
func manyWashes(o Options, n int) Options {
	others := make([]*stock.Kept, n)
	for i := range others {
		others[i] = &stock.Kept{File: fmt.Sprintf("wash-%d.toml", i), Wash: model.Wash{Vehicle: "Marigold", Bed: "half-foot tank"}}
	}
	o.Stock.Others = &others
	return o
}
