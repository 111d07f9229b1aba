package trip

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// threeWashes are a coach's, which is in hand, and two others of the same evening, on a
// fill that has given some gallons.
func threeWashes(t *testing.T, gallons float64) (rig model.Rig, places model.Places, wash model.Wash, others []model.Wash) {
	lib := store.Example()
	lib.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(gallons) * quantity.Gallon)
	lib.Rig.Vehicles = append(lib.Rig.Vehicles, model.Vehicle{
		Name: "toad", Length: quantity.Some(14 * quantity.Foot), Height: quantity.Some(5 * quantity.Foot), Width: quantity.Some(6 * quantity.Foot),
	})
	wash = lib.Washes[0].Wash
	wash.Date = date(t, "2026-05-09")
	toad, late := wash, wash
	toad.Name, toad.Vehicle, toad.Limit = "Toad wash", "toad", quantity.Some(quantity.PPM(5, quantity.ScaleNaCl))
	toad.Start = quantity.Some(model.TimeOfDay{Hour: 7})
	late.Name, late.Date = "Late wash", date(t, "2026-05-10")
	return lib.Rig, lib.Places, wash, []model.Wash{late, toad}
}

var may = model.Date{Year: 2026, Month: 5, Day: 2}

// The washes that are planned beside each other are those of a trip of the same washes:
// the chances are the same, and the first one's is that of its own plan.
func TestWashesBesideEachOtherAreATrip(t *testing.T) {
	for _, gallons := range []float64{0, 120, 200, 280} {
		rig, places, wash, others := threeWashes(t, gallons)
		p, err := BesideOf(rig, places, wash, others, nil, may).Plan()
		require.NoError(t, err)
		assert.Equal(t, []string{"Toad wash", wash.Name, "Late wash"}, []string{p.Washes[0].Name, p.Washes[1].Name, p.Washes[2].Name})
		own, err := planner.Make(rig, places, others[1])
		require.NoError(t, err)
		assert.InDelta(t, float64(own.Bed.ChanceLasts), float64(p.Washes[0].Chance), 0.03, "%v gal", gallons)
		assert.InEpsilon(t, own.Through().Gallons(), (p.Washes[0].DI.P50 + p.Washes[0].Flush).Gallons(), 1e-9)

		in := Input{Rig: rig, Places: places, Ordered: true, Like: func(name string) (model.Wash, bool) {
			all := append([]model.Wash{wash}, others...)
			for _, w := range all {
				if w.Name == name {
					return w, true
				}
			}
			return model.Wash{}, false
		}}
		in.Trip.Stops = []model.Stop{{Date: date(t, "2026-05-01"), Place: places[0].Name}}
		for _, w := range []model.Wash{others[1], wash, others[0]} {
			in.Trip.Washes = append(in.Trip.Washes, model.TripWash{Name: w.Name, Date: w.Date, Like: w.Name})
		}
		season := mustMake(t, in)
		require.Len(t, season.Orders, 1)
		assert.Equal(t, season.Orders, p.Orders, "%v gal", gallons)
		assert.Equal(t, season.AllOnSpec, All(p.Orders[0].Stated))
	}
}

// Whichever of them is in hand, the answer is one.
func TestTheAnswerIsOneWhicheverIsInHand(t *testing.T) {
	rig, places, wash, others := threeWashes(t, 200)
	want, err := BesideOf(rig, places, wash, others, nil, may).Plan()
	require.NoError(t, err)
	got, err := BesideOf(rig, places, others[1], []model.Wash{wash, others[0]}, nil, may).Plan()
	require.NoError(t, err)
	assert.Equal(t, want.Orders, got.Orders)
}

// One that is over, has no day, or takes another bed does not wait for this one.
func TestWhoWaitsForTheBed(t *testing.T) {
	rig, places, wash, others := threeWashes(t, 0)
	second := rig.Beds[0]
	second.Name = "another"
	rig.Beds = append(rig.Beds, second)
	rig.Defaults.Bed = ""
	count := func(w model.Wash) int { return len(BesideOf(rig, places, w, others, nil, may).Washes) }
	assert.Equal(t, 3, count(wash))
	others[0].Bed = "another"
	assert.Equal(t, 2, count(wash))
	others[0].Bed = rig.Beds[0].Name
	assert.Equal(t, 3, count(wash), "the first bed is the one that is not named")
	others[0].Date = date(t, "2026-05-01")
	assert.Equal(t, 2, count(wash), "it is over")
	others[1].Date = quantity.Opt[model.Date]{}
	assert.Equal(t, 1, count(wash))
	wash.Date = quantity.Opt[model.Date]{}
	assert.Zero(t, count(wash))
}
