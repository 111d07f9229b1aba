package trip

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// example is the built-in trip.
func example() Input {
	lib := store.Example()
	return Input{Rig: lib.Rig, Places: lib.Places, Trip: lib.Trips[0].Trip, Like: lib.WashLike, Today: model.Date{Year: 2026, Month: 5, Day: 1}}
}

func date(t testing.TB, text string) quantity.Opt[model.Date] {
	d, err := model.ParseDate(text)
	require.NoError(t, err)
	return quantity.Some(d)
}

// day is a date so many days after the first of June.
func day(n int) quantity.Opt[model.Date] {
	return quantity.Some(planner.OrderBy(model.Date{Year: 2026, Month: 6, Day: 1}, -quantity.Duration(n)*quantity.Day))
}

// long is a trip of n stops with a wash at each.
func long(n int) Input {
	in := example()
	in.Trip.Stops, in.Trip.Washes, in.Trip.Changes = nil, nil, nil
	in.Places = nil
	for i := range n {
		s := model.Stop{Date: day(3 * i), Place: fmt.Sprintf("stop %d", i)}
		in.Places = append(in.Places, model.Place{
			Name: s.Place, TDS: quantity.Some(quantity.PPM(100+float64(i*37%400), quantity.ScaleNaCl)),
			Temperature: quantity.Some(quantity.Celsius(10 + float64(i%17))),
		})
		in.Trip.Stops = append(in.Trip.Stops, s)
		in.Trip.Washes = append(in.Trip.Washes, model.TripWash{Date: day(3*i + 1), Like: "Saturday wash"})
	}
	in.Rig.Defaults.Place = in.Places[0].Name
	return in
}

// simulation is a trip, and the past that its bed has.
type simulation struct {
	name  string
	input func(t testing.TB) Input
	past  func(t testing.TB, in Input) []pastUse
}

func cases() []simulation {
	none := func(testing.TB, Input) []pastUse { return nil }
	return []simulation{
		{"fresh bed", func(testing.TB) Input {
			in := example()
			in.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
			for i := range 8 {
				in.Trip.Washes = append(in.Trip.Washes, model.TripWash{Date: day(28 + i), Like: "Saturday wash"})
			}
			return in
		}, none},
		{"bed of some age", func(testing.TB) Input { return example() }, pastOf},
		{"a reading", func(testing.TB) Input {
			in := example()
			in.Rig.Beds[0].LastReading = quantity.Some(quantity.PPM(4, quantity.ScaleNaCl))
			return in
		}, pastOf},
		{"changes and a wide band", func(t testing.TB) Input {
			in := example()
			in.Trip.Stops[2].LowTDS, in.Trip.Stops[2].HighTDS = quantity.Some(quantity.PPM(50, quantity.ScaleNaCl)), quantity.Some(quantity.PPM(700, quantity.ScaleNaCl))
			for i := range 4 {
				in.Trip.Washes = append(in.Trip.Washes, model.TripWash{Date: day(15 + i), Like: "Saturday wash"})
			}
			in.Trip.Changes = []model.ResinChange{{Date: date(t, "2026-06-12")}, {Date: date(t, "2026-06-20")}}
			return in
		}, pastOf},
		{"limits and faces that differ", func(testing.TB) Input {
			e := eveningOf(140)
			e.wash("coach", 40)
			e.wash("van", 10, model.Left, model.Right)
			e.wash("coupe", 2, model.Left)
			e.in.Ordered = false
			return e.in
		}, pastOf},
		{"thirty waters", func(testing.TB) Input {
			in := long(30)
			in.Trip.Changes = []model.ResinChange{{Date: day(40)}}
			return in
		}, pastOf},
	}
}

// pastOf is the past that the rig states, as uses of the bed.
func pastOf(t testing.TB, in Input) []pastUse {
	var m Memory
	fresh := in
	fresh.Rig.Beds = []model.Bed{in.Rig.Beds[0]}
	fresh.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
	fresh.Rig.Beds[0].LastReading = quantity.Opt[quantity.Reading]{}
	require.NoError(t, m.begin(&fresh, model.Wash{Bed: in.Trip.Bed, Softener: in.Trip.Softener, Feed: in.Trip.Feed}))
	at, err := m.season.Demand(in.Rig, in.Places, model.Wash{Bed: in.Trip.Bed, Softener: in.Trip.Softener, Feed: in.Trip.Feed})
	require.NoError(t, err)
	gallons := in.Rig.Beds[0].SoFar.Or(0).Gallons()
	use := pastUse{units: at.Main.Units, capacities: gallons * at.Main.Capacities}
	if reading, given := in.Rig.Beds[0].LastReading.Get(); given {
		use.read, use.feed = reading.Number, at.Feed
	}
	return []pastUse{use}
}
