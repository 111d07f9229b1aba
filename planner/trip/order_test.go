package trip

import (
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// evening is washes of one evening at one stop on one bed, each like its own wash.
type evening struct {
	in   Input
	like map[string]model.Wash
}

// eveningOf has a fill that has given some gallons.
func eveningOf(gallons float64) *evening {
	lib := store.Example()
	e := &evening{like: map[string]model.Wash{}}
	e.in = Input{Rig: lib.Rig, Places: lib.Places, Ordered: true, Like: func(name string) (model.Wash, bool) {
		w, found := e.like[name]
		return w, found
	}}
	e.in.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(gallons) * quantity.Gallon)
	e.in.Trip.Stops = []model.Stop{{Date: day(0), Place: lib.Places[0].Name}}
	return e
}

// wash adds one with a limit, of the sides that are named.
func (e *evening) wash(name string, limit float64, sides ...model.Side) {
	w := store.Example().Washes[0].Wash
	w.Limit = quantity.Some(quantity.PPM(limit, quantity.ScaleNaCl))
	w.Stages = planner.UsualStages(e.in.Rig, w)
	for i := range w.Stages {
		w.Stages[i].Faces = sides
	}
	e.like[name] = w
	e.in.Trip.Washes = append(e.in.Trip.Washes, model.TripWash{Name: name, Date: day(0), Like: name})
}

// evenings are drawn: some washes of few to many faces, and limits that differ.
func evenings(most int) *rapid.Generator[*evening] {
	return rapid.Custom(func(t *rapid.T) *evening {
		e := eveningOf(rapid.Float64Range(0, 330).Draw(t, "gallons so far"))
		sides := []model.Side{model.Left, model.Right, model.Front, model.Rear, model.Roof}
		for i := range rapid.IntRange(2, most).Draw(t, "washes") {
			limit := rapid.SampledFrom([]float64{2, 5, 10, 20, 40}).Draw(t, "limit")
			e.wash(string(rune('A'+i)), limit, sides[:rapid.IntRange(1, len(sides)).Draw(t, "faces")]...)
		}
		return e
	})
}

func orderOf(t require.TestingT, in Input) (Plan, Order) {
	p := mustMake(t, in)
	require.Len(t, p.Orders, 1)
	return p, p.Orders[0]
}

func names(p Plan, turns []Turn) []string {
	var out []string
	for _, at := range turns {
		out = append(out, p.Washes[at.Wash].Name)
	}
	return out
}

// The chance of all as they stand is the trip's own, and that of the best order is what a
// trip in that order has; none of the others has more.
func TestTheOrderIsTheBestOfAllTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := evenings(mostTried).Draw(t, "evening")
		p, o := orderOf(t, e.in)
		require.InDelta(t, float64(p.AllOnSpec), float64(All(o.Stated)), 1e-12)
		require.Equal(t, len(e.in.Trip.Washes), len(o.Stated))
		best, worst, done, least := 0.0, 1.0, 0.0, 99.0
		var m Memory
		for _, order := range permuted([]int{0, 1, 2, 3}[:len(o.Stated)]) {
			in := e.in
			in.Trip.Washes, in.Ordered = nil, false
			for _, i := range order {
				in.Trip.Washes = append(in.Trip.Washes, e.in.Trip.Washes[i])
			}
			other, err := m.Make(in)
			require.NoError(t, err)
			sum, all := 0.0, float64(other.AllOnSpec)
			for _, w := range other.Washes {
				sum += float64(w.SoFar)
			}
			best, worst, done, least = max(best, all), min(worst, all), max(done, sum), min(least, sum)
			if slices.Equal(names(other, turnsOf(other)), names(p, o.Best)) {
				require.InDelta(t, all, float64(All(o.Best)), 1e-9)
			}
		}
		if require.InDelta(t, worst, float64(o.Worst), 1e-9); o.Whole {
			require.InDelta(t, best, float64(All(o.Best)), 0.01)
		} else {
			require.InDelta(t, done, Done(o.Best), 1e-5)
		}
		require.InDelta(t, least, o.Least, 1e-9)
	})
}

func turnsOf(p Plan) []Turn {
	var out []Turn
	for k, w := range p.Washes {
		out = append(out, Turn{k, w.SoFar})
	}
	return out
}

// In whatever order the washes are listed, the best order of them is one, with one chance.
func TestTheBestOrderHangsOnNoList(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := evenings(6).Draw(t, "evening")
		p, o := orderOf(t, e.in)
		seed := rapid.Uint64().Draw(t, "seed")
		e.in.Trip = e.in.Trip.Clone()
		all := e.in.Trip.Washes
		rand.New(rand.NewPCG(seed, 1)).Shuffle(len(all), func(a, b int) { all[a], all[b] = all[b], all[a] })
		other, mixed := orderOf(t, e.in)
		require.Equal(t, o.Whole, mixed.Whole)
		require.Equal(t, names(p, o.Best), names(other, mixed.Best))
		for i := range o.Best {
			require.InDelta(t, float64(o.Best[i].SoFar), float64(mixed.Best[i].SoFar), 1e-9)
		}
		require.InDelta(t, float64(o.Worst), float64(mixed.Worst), 1e-9)
		require.InDelta(t, o.Points(), mixed.Points(), 1e-9)
	})
}

// A bed of double the resin never does fewer of them.
func TestDoubleTheResinDoesNoFewer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := evenings(mostTried).Draw(t, "evening")
		_, o := orderOf(t, e.in)
		e.in.Rig.Beds = slices.Clone(e.in.Rig.Beds)
		b := &e.in.Rig.Beds[0]
		b.Resin = quantity.Some(2 * b.Resin.Or(0))
		_, twice := orderOf(t, e.in)
		for _, chance := range []quantity.Fraction{0.5, 0.9} {
			require.GreaterOrEqual(t, Until(twice.Stated, chance), Until(o.Stated, chance))
			require.GreaterOrEqual(t, Until(twice.Best, chance), Until(o.Stated, chance))
		}
		require.GreaterOrEqual(t, float64(All(twice.Best)), float64(All(o.Best))-0.01)
	})
}

// The neediest first is about the best where one fill does all: nothing beyond that is
// to be had by trying.
func TestTheRuleIsAboutTheBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := evenings(mostTried).Draw(t, "evening")
		p, o := orderOf(t, e.in)
		if !o.Whole {
			return
		}
		in := e.in
		in.Trip = e.in.Trip.Clone()
		slices.SortStableFunc(in.Trip.Washes, func(a, b model.TripWash) int {
			return int(limitOf(e.like[a.Name]) - limitOf(e.like[b.Name]))
		})
		in.Ordered = false
		sorted := mustMake(t, in)
		require.InDelta(t, float64(All(o.Best)), float64(sorted.AllOnSpec), 0.03, "%v", names(p, o.Best))
	})
}

func limitOf(w model.Wash) float64 { return w.Limit.Or(quantity.Reading{}).Number }

// Of washes alike no order is better, and the chance of all is about that of the last.
func TestOfWashesAlikeAnyOrderWillDo(t *testing.T) {
	for _, gallons := range []float64{0, 150, 220, 300} {
		e := eveningOf(gallons)
		for _, name := range []string{"first", "second", "third"} {
			e.wash(name, 10)
		}
		p, o := orderOf(t, e.in)
		assert.True(t, o.Any(), "%v gal: %v", gallons, o.Points())
		assert.False(t, o.Advised())
		assert.Equal(t, 6, o.Tried)
		assert.InDelta(t, float64(p.Washes[2].Chance), float64(All(o.Stated)), 0.02)
	}
}

// A wash of a tighter limit goes first where the bed is nearly spent.
func TestTheTighterLimitGoesFirst(t *testing.T) {
	e := eveningOf(150)
	e.wash("coach", 20, model.Left, model.Right, model.Front, model.Rear)
	e.wash("toad", 20, model.Left)
	e.wash("black car", 2, model.Left)
	p, o := orderOf(t, e.in)
	require.True(t, o.Whole, "%v", o)
	assert.True(t, o.Advised(), "%v", o)
	assert.False(t, o.Any())
	best := names(p, o.Best)
	assert.Less(t, slices.Index(best, "black car"), slices.Index(best, "coach"), best)
}

// Of more washes than are tried in every order, the rules are tried, and no other order
// does notably better.
func TestOfManyTheRulesAreTried(t *testing.T) {
	e := eveningOf(100)
	for i, limit := range []float64{20, 5, 10, 40, 5} {
		e.wash(string(rune('A'+i)), limit, []model.Side{model.Left, model.Right, model.Rear}[:1+i%3]...)
	}
	p, o := orderOf(t, e.in)
	require.True(t, o.ByRule)
	require.Equal(t, 4, o.Tried)
	require.True(t, o.Whole)
	assert.Equal(t, 5.0, limitOf(e.like[names(p, o.Best)[0]]))
	var m Memory
	best := 0.0
	for _, order := range permuted([]int{0, 1, 2, 3, 4}) {
		in := e.in
		in.Trip.Washes, in.Ordered = nil, false
		for _, i := range order {
			in.Trip.Washes = append(in.Trip.Washes, e.in.Trip.Washes[i])
		}
		other, err := m.Make(in)
		require.NoError(t, err)
		best = max(best, float64(other.AllOnSpec))
	}
	assert.InDelta(t, best, float64(All(o.Best)), 0.02)
}

// What is tried leaves no trace in what follows: also of two tanks, and after a change.
func TestTryingOrdersLeavesNoTrace(t *testing.T) {
	for _, behind := range []bool{false, true} {
		e := eveningOf(200)
		e.in.Setting.Behind = behind
		e.wash("coach", 10)
		e.wash("toad", 5, model.Left)
		e.wash("coach again", 10)
		e.wash("toad again", 5, model.Left)
		e.in.Trip.Washes[2].Date, e.in.Trip.Washes[3].Date = day(9), day(9)
		e.in.Trip.Changes = []model.ResinChange{{Date: day(9)}}
		p := mustMake(t, e.in)
		require.Len(t, p.Orders, 2)
		assert.InDelta(t, float64(p.Washes[1].SoFar), float64(All(p.Orders[0].Stated)), 1e-12)
		assert.InDelta(t, float64(p.Washes[3].Chance), float64(All(p.Orders[1].Stated)), 0.01, "the new fill by itself")
		assert.Equal(t, 1, p.Orders[1].Fill)
		orders := p.Orders
		e.in.Ordered, p.Orders = false, nil
		assert.Equal(t, mustMake(t, e.in), p)
		for _, o := range orders {
			assert.Equal(t, 2, o.Tried)
		}
	}
}

// Only those at the stop of the weakest wash could change places on a trip, and all of those
// that are planned by themselves.
func TestOnlyThoseAtOneStopChangePlaces(t *testing.T) {
	e := eveningOf(200)
	e.wash("coach", 10)
	e.wash("toad", 5, model.Left)
	e.wash("coach away", 10)
	e.in.Trip.Stops = append(e.in.Trip.Stops, model.Stop{Date: day(3), Place: e.in.Places[1].Name})
	e.in.Trip.Washes[2].Date = day(4)
	_, o := orderOf(t, e.in)
	assert.Equal(t, 0, o.Tried, "the weakest is alone at its stop")
	assert.Equal(t, []int{2}, o.Free)
	assert.Len(t, o.Stated, 3)
	e.in.Loose = true
	_, o = orderOf(t, e.in)
	assert.Equal(t, 6, o.Tried)
}
