package planner_test

import (
	"math"
	"testing"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// BenchmarkMake is a keystroke that changes the day, or the first plan.
func BenchmarkMake(b *testing.B) {
	lib := store.Example()
	b.ReportAllocs()
	for b.Loop() {
		mustMake(b, lib.Rig, lib.Places, lib.Washes[0].Wash)
	}
}

// BenchmarkMakeWithoutDay is a plan of a wash without a date.
func BenchmarkMakeWithoutDay(b *testing.B) {
	lib := store.Example()
	wash := lib.Washes[0].Wash
	wash.Date = quantity.Opt[model.Date]{}
	b.ReportAllocs()
	for b.Loop() {
		mustMake(b, lib.Rig, lib.Places, wash)
	}
}

// BenchmarkMemoryMake is a keystroke on the day strip: the start moves through
// the day, which stays the same.
func BenchmarkMemoryMake(b *testing.B) {
	lib := store.Example()
	wash := lib.Washes[0].Wash
	var memory planner.Memory
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		wash.Start = quantity.Some(model.TimeOfDay{Hour: 6 + i%12, Minute: 15 * (i % 4)})
		if _, err := memory.Make(lib.Rig, lib.Places, wash); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkMemoryTurn is a keystroke on the day strip that turns the coach: the
// whole day is told ahead again.
func BenchmarkMemoryTurn(b *testing.B) {
	lib := store.Example()
	wash := lib.Washes[0].Wash
	var memory planner.Memory
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		wash.Heading = quantity.Some(model.Heading(float64(i%16) * math.Pi / 8))
		if _, err := memory.Make(lib.Rig, lib.Places, wash); err != nil {
			b.Fatal(err)
		}
	}
}
