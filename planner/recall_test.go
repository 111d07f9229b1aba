package planner_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/model/store/fault"
	"washeve/model/store/journal"
	"washeve/planner"
)

func seasonLog(t testing.TB) (model.Log, store.Library) {
	log, faults := journal.Open("../testdata/season/log.toml").Load()
	require.False(t, fault.HasErrors(faults), "%v", faults)
	return log, store.Example()
}

func TestASeasonIsReplayed(t *testing.T) {
	log, lib := seasonLog(t)
	past := planner.Recall(log, lib.Rig, lib.Places).Bed("half-foot tank")
	require.NotNil(t, past)
	require.Len(t, past.Fills, 2)
	washes, readings := 0, 0
	for _, f := range past.Fills {
		washes += f.Washes
		readings += len(f.Readings)
	}
	assert.Equal(t, 14, washes)
	assert.Positive(t, readings)
	memory := planner.Memory{Past: planner.Recall(log, lib.Rig, lib.Places)}
	learned, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	prior := mustMake(t, lib.Rig, lib.Places, lib.Washes[0].Wash)
	assert.NotEqual(t, prior.Bed.Remaining, learned.Bed.Remaining)
	assert.Equal(t, past.Present().Gallons, learned.Bed.SoFar)
}

// The same season from the table and from the file teaches the same.
func TestTheSeasonFromItsTableTeachesTheSame(t *testing.T) {
	log, lib := seasonLog(t)
	table, err := os.Open("../testdata/season/log.csv")
	require.NoError(t, err)
	defer table.Close()
	imported := journal.Open(filepath.Join(t.TempDir(), "log.toml"))
	_, faults, err := imported.Import(table, "log.csv", nil)
	require.NoError(t, err, "%v", faults)
	entries, _ := imported.Load()
	fromFile := planner.Memory{Past: planner.Recall(log, lib.Rig, lib.Places)}
	fromTable := planner.Memory{Past: planner.Recall(entries, lib.Rig, lib.Places)}
	a, err := fromFile.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	b, err := fromTable.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	assert.Equal(t, a, b)
}

func TestAnEmptyLogChangesNothing(t *testing.T) {
	_, lib := seasonLog(t)
	memory := planner.Memory{Past: planner.Recall(nil, lib.Rig, lib.Places)}
	with, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	assert.Equal(t, mustMake(t, lib.Rig, lib.Places, lib.Washes[0].Wash), with)
}

// A reading in the middle of a wash, by a meter, and the wash written down
// after it, count the water once.
func TestAReadingInAWashCountsItsWaterOnce(t *testing.T) {
	_, lib := seasonLog(t)
	at := func(text string) model.Moment {
		m, err := model.ParseMoment(text, nil)
		require.NoError(t, err)
		return m
	}
	log := model.NewLog([]model.Entry{
		{ID: "a234567890123456", At: at("2026-05-01T08:00:00-06:00"), Body: &model.Refill{Bed: "half-foot tank"}},
		{ID: "b234567890123456", At: at("2026-05-02T09:00:00-06:00"), Body: &model.Sample{
			Point: model.AfterBed, Bed: "half-foot tank", Place: "Juniper Flats", Flushed: model.Yes,
			Reading: quantity.Some(quantity.PPM(0, quantity.ScaleNaCl)), SoFar: quantity.Some(20 * quantity.Gallon),
		}},
		{ID: "c234567890123456", At: at("2026-05-02T09:30:00-06:00"), Body: &model.WashDone{
			Bed: "half-foot tank", Place: "Juniper Flats", DI: quantity.Some(30 * quantity.Gallon),
		}},
	})
	past := planner.Recall(log, lib.Rig, lib.Places).Bed("half-foot tank")
	require.NotNil(t, past)
	assert.InDelta(t, 30, past.Present().Gallons.Gallons(), 1e-9)
	assert.InDelta(t, 20, past.Present().Readings[0].Gallons.Gallons(), 1e-9)
}

func BenchmarkMakeWithAPast(b *testing.B) {
	log, lib := seasonLog(b)
	memory := planner.Memory{Past: planner.Recall(log, lib.Rig, lib.Places)}
	for b.Loop() {
		_, err := memory.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
		require.NoError(b, err)
	}
}

func BenchmarkRecallASeason(b *testing.B) {
	log, lib := seasonLog(b)
	for b.Loop() {
		planner.Recall(log, lib.Rig, lib.Places)
	}
}
