package trip

import (
	"testing"

	"washeve/model"
	"washeve/model/quantity"
)

// BenchmarkSixtyStops is a key that changes one of sixty stops, each with its own
// water and a wash: all chances, and where to change the resin.
func BenchmarkSixtyStops(b *testing.B) {
	in := long(60)
	var m Memory
	if _, err := m.Make(in); err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		in.Trip.Washes[30].DI = quantity.Some(quantity.Volume(5+i%40) * quantity.Gallon)
		in.Trip.Washes[30].Like = ""
		if _, err := m.Make(in); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkSixtyStopsFromNothing is the same without a memory.
func BenchmarkSixtyStopsFromNothing(b *testing.B) {
	in := long(60)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Make(in); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkMonth is a key on a trip of four stops and five washes.
func BenchmarkMonth(b *testing.B) {
	in := example()
	var m Memory
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		in.Trip.Washes[1].DI = quantity.Some(quantity.Volume(5+i%40) * quantity.Gallon)
		if _, err := m.Make(in); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkMonthOrdered is that with the orders of its washes.
func BenchmarkMonthOrdered(b *testing.B) {
	in := example()
	in.Ordered = true
	var m Memory
	for i := 0; b.Loop(); i++ {
		in.Trip.Washes[1].DI = quantity.Some(quantity.Volume(5+i%40) * quantity.Gallon)
		if _, err := m.Make(in); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkEveningOrdered is four washes of one evening in all their orders.
func BenchmarkEveningOrdered(b *testing.B) {
	in := example()
	in.Ordered = true
	in.Trip.Stops = in.Trip.Stops[:1]
	in.Trip.Washes = nil
	for range mostTried {
		in.Trip.Washes = append(in.Trip.Washes, model.TripWash{Date: in.Trip.Stops[0].Date, Like: "Saturday wash"})
	}
	var m Memory
	for b.Loop() {
		if _, err := m.Make(in); err != nil {
			b.Fatal(err)
		}
	}
}
