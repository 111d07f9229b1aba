package compare

import (
	"testing"

	"github.com/muesli/termenv"

	"washeve/model/store"
	"washeve/planner/compare"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// ours is the built-in example.
func ours() Options {
	lib := store.Example()
	return Options{
		Base: compare.Case{Rig: lib.Rig, Places: lib.Places, Wash: lib.Washes[0].Wash},
		Means: func() (compare.Answerer, compare.Yearly) {
			return compare.NewOneWash(nil, compare.Yearly{}), compare.Yearly{}
		},
		Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Least(),
	}
}

// player presses keys and looks at what is seen.
type player = hands.Player[Model]

func play(t testing.TB, o Options, script string) *player { return hands.Play(t, New(o), script) }

// onto walks to a way.
func onto(p *player, key string) *player {
	p.Keys("home")
	for p.M.way().Key != key {
		at := p.M.hand
		if p.Keys("right"); p.M.hand == at {
			p.T.Fatalf("there is no way %s", key)
		}
	}
	return p
}
