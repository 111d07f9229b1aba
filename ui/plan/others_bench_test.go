package plan

import (
	"slices"
	"testing"
	"time"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/model/store"
	"washeve/model/store/decade"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/theme"
)

// BenchmarkKeyToFrameBesideOthers is a key in a plan of the real planner, with ten years of
// log and two more washes on the same bed in the days before.
func BenchmarkKeyToFrameBesideOthers(b *testing.B) { benchmarkBeside(b, 2) }

// BenchmarkKeyToFrameAlone is the same key with no other wash.
func BenchmarkKeyToFrameAlone(b *testing.B) { benchmarkBeside(b, 0) }

func benchmarkBeside(b *testing.B, others int) {
	lib := store.Example()
	entries, err := decade.Entries(decade.Washes, decade.Readings)
	require.NoError(b, err)
	past := planner.Recall(model.NewLog(entries), lib.Rig, lib.Places)
	memory := planner.Memory{Past: past}
	o := ours(b)
	o.Rig, o.Places, o.Wash, o.Make = lib.Rig, lib.Places, lib.Washes[0].Wash, memory.Make
	o.Book.Clock = func() time.Time { return time.Date(2036, 5, 1, 12, 0, 0, 0, time.UTC) }
	o.Book.Past = func(model.Rig, model.Places) *planner.Past { return past }
	on := func(day int) quantity.Opt[model.Date] {
		return quantity.Some(model.Date{Year: 2036, Month: 5, Day: day})
	}
	o.Wash.Date = on(9)
	for i := range others {
		other := &stock.Kept{File: "other.toml", Wash: lib.Washes[0].Wash}
		other.Wash.Date = on(7 + i)
		o.Others = append(o.Others, other)
	}
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	p := play(b, o, "v down down down '30 ft'")
	told := slices.ContainsFunc(p.M.plan.Warnings, func(n planner.Note) bool { return n.Code == planner.PlannedBefore })
	require.Equal(b, others > 0, told)
	key := []string{"backspace", "t"}
	n := 0
	for b.Loop() {
		p.Send(hands.Key(key[n%2]))
		p.M.View(layout.Least())
		n++
	}
}
