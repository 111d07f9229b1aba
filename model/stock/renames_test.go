package stock_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
)

func TestATripFollowsEveryName(t *testing.T) {
	was := model.Trip{
		Bed: "Tank", Softener: "soft", Sprayer: "nozzle", Stops: []model.Stop{{Place: "home"}, {Place: "lake"}},
		Washes: []model.TripWash{{Vehicle: "coach", Like: "Friday", Place: "Home"}, {Stages: []model.Stage{{Name: "rinse", Sprayer: "Nozzle"}}}},
	}
	before := was.Clone()
	var renames []stock.Rename
	for _, r := range [][3]string{{"bed", "tank", "big tank"}, {"softener", "soft", "softer"}, {"sprayer", "nozzle", "wand"}, {"place", "home", "yard"}, {"vehicle", "coach", "bus"}, {"wash", "friday", "Sunday"}} {
		renames = append(renames, stock.Rename{Section: r[0], Was: r[1], Now: r[2]})
	}
	now, changed := stock.Follow(was, renames)
	assert.True(t, changed)
	assert.Equal(t, before, was, "what is given stays as it is")
	assert.Equal(t, model.Trip{
		Bed: "big tank", Softener: "softer", Sprayer: "wand", Stops: []model.Stop{{Place: "yard"}, {Place: "lake"}},
		Washes: []model.TripWash{{Vehicle: "bus", Like: "Sunday", Place: "yard"}, {Stages: []model.Stage{{Name: "rinse", Sprayer: "wand"}}}},
	}, now)
	_, changed = stock.Follow(was, []stock.Rename{{Section: "vehicle", Was: "home", Now: "yard"}})
	assert.False(t, changed, "a place is no vehicle")
}

// A stop of unknown water may be called as a place is: its washes go on naming it, while
// those at the place follow that.
func TestAWashStaysAtItsStop(t *testing.T) {
	day := quantity.Some(model.Date{Year: 2026, Month: 6, Day: 8})
	next := quantity.Some(model.Date{Year: 2026, Month: 6, Day: 9})
	was := model.Trip{
		Stops:  []model.Stop{{Date: day, Name: "the lake"}, {Date: day, Place: "home"}, {Date: next, Place: "the lake"}, {Date: next, Place: "home"}},
		Washes: []model.TripWash{{Date: day, Place: "The lake"}, {Date: next, Place: "the lake"}},
	}
	now, changed := stock.Follow(was, []stock.Rename{{Section: "place", Was: "the lake", Now: "north shore"}})
	assert.True(t, changed)
	assert.Equal(t, "north shore", now.Stops[2].Place)
	assert.Equal(t, []string{"The lake", "north shore"}, []string{now.Washes[0].Place, now.Washes[1].Place})
	for i, want := range []int{0, 2} {
		stop, named := now.StopOf(&now.Washes[i])
		assert.Equal(t, want, stop)
		assert.True(t, named)
	}
}

// named is the names of some vehicles.
func named(names ...string) stock.Named {
	rig, places, wash := model.Rig{}, model.Places{}, model.Wash{Name: "Friday"}
	for _, n := range names {
		rig.Vehicles = append(rig.Vehicles, model.Vehicle{Name: n})
	}
	return stock.Stock{Rig: &rig, Places: &places, Wash: &wash}.Named()
}

func TestOnlyANewNameIsARename(t *testing.T) {
	vehicle := func(was, now string) stock.Rename { return stock.Rename{Section: "vehicle", Was: was, Now: now} }
	assert.Equal(t, []stock.Rename{vehicle("a", "c")}, named("a", "b").To(named("c", "b")))
	assert.Equal(t, []stock.Rename{vehicle("a", "A")}, named("a").To(named("A")))
	assert.Equal(t, []stock.Rename{vehicle("a", "x"), vehicle("b", "y")}, named("a", "b").To(named("x", "y")))
	for _, later := range []stock.Named{named("a", "b"), named("a"), named("b"), named("a", "b", "c"), named("b", "c"), named("b", "a"), named("", "b")} {
		assert.Empty(t, named("a", "b").To(later), "%v", later)
	}
	wash := named()
	wash["wash"] = []string{"Sunday"}
	require.Equal(t, []stock.Rename{{Section: "wash", Was: "Friday", Now: "Sunday"}}, named().To(wash))
}
