package planner_test

import (
	"testing"

	"washeve/model"
	"washeve/model/store"
	"washeve/model/store/decade"
	"washeve/planner"
)

// BenchmarkRecallTenYears replays ten years of washing.
func BenchmarkRecallTenYears(b *testing.B) {
	lib := store.Example()
	entries, err := decade.Entries(decade.Washes, decade.Readings)
	if err != nil {
		b.Fatal(err)
	}
	log := model.NewLog(entries)
	b.ReportAllocs()
	for b.Loop() {
		planner.Recall(log, lib.Rig, lib.Places)
	}
}
