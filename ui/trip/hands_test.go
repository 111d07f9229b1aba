package trip

import (
	"maps"
	"slices"
	"sync"
	"testing"

	"github.com/muesli/termenv"

	"washeve/model"
	"washeve/model/store"
	"washeve/planner/trip"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// memory keeps trips while a test runs.
type memory struct {
	trips  []model.Trip
	washes []model.Wash
	like   map[string]model.Wash // beside those of the example
	fails  error
	kept   int
	left   *Left
}

func (k *memory) Left() (Left, bool) {
	if k.left == nil {
		return Left{}, false
	}
	return *k.left, true
}

func (k *memory) Leave(left Left) { k.left = &left }

func (k *memory) Trips(bool) ([]model.Trip, int) { return append([]model.Trip(nil), k.trips...), 0 }

func (k *memory) Keep(i int, t model.Trip) error {
	if k.fails != nil {
		return k.fails
	}
	if i >= len(k.trips) {
		k.trips, i = append(k.trips, t), len(k.trips)
	}
	k.trips[i] = t
	k.kept++
	return nil
}

func (k *memory) Drop() error {
	if k.fails == nil {
		k.trips = k.trips[:len(k.trips)-1]
	}
	return k.fails
}

func (k *memory) Like(name string) (model.Wash, bool) {
	if w, found := k.like[name]; found {
		return w, true
	}
	lib := store.Example()
	return lib.WashLike(name)
}

func (k *memory) Washes() []model.Wash { return k.washes }

func (k *memory) Names() []string {
	return append([]string{"Saturday wash"}, slices.Sorted(maps.Keys(k.like))...)
}

// ours is the built-in trip, as the person's own, on the first of May.
func ours() (Options, *memory) {
	lib := store.Example()
	k := &memory{trips: []model.Trip{lib.Trips[0].Trip}}
	return Options{
		Rig: lib.Rig, Places: lib.Places, Wash: lib.Washes[0].Wash, Keeper: k, Memory: remembered(), Today: model.Date{Year: 2026, Month: 5, Day: 1},
		Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Least(),
	}, k
}

// remembered gives the tests' players one memory, as the program has one: the answer
// with it is that without it, which planner/trip tests.
var remembered = sync.OnceValue(func() *trip.Memory { return new(trip.Memory) })

// player presses keys and looks at what is seen.
type player = hands.Player[Model]

func play(t testing.TB, o Options, script string) *player { return hands.Play(t, New(o), script) }
