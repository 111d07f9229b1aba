package compare

import (
	"fmt"
	"testing"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// BenchmarkSixtyStops is a trip of sixty stops, each with its own water and a wash,
// under all ways.
func BenchmarkSixtyStops(b *testing.B) {
	base := june()
	base.Trip.Stops, base.Trip.Washes, base.Places = nil, nil, nil
	for i := range 60 {
		day := func(n int) quantity.Opt[model.Date] {
			return quantity.Some(planner.OrderBy(today, -quantity.Duration(n)*quantity.Day))
		}
		place := model.Place{Name: fmt.Sprintf("stop %d", i), TDS: quantity.Some(quantity.PPM(100+float64(i*37%400), quantity.ScaleNaCl))}
		base.Places = append(base.Places, place)
		base.Trip.Stops = append(base.Trip.Stops, model.Stop{Date: day(3 * i), Place: place.Name})
		base.Trip.Washes = append(base.Trip.Washes, model.TripWash{Date: day(3*i + 1), Like: "Saturday wash"})
	}
	base.Rig.Defaults.Place = base.Places[0].Name
	for b.Loop() {
		journeys(b, base, Options{})
	}
}

// BenchmarkMonth is the built-in trip under all ways.
func BenchmarkMonth(b *testing.B) {
	base := june()
	for b.Loop() {
		journeys(b, base, Options{})
	}
}
