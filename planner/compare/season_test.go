package compare

import (
	"math"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/fault"
	"washeve/model/store/journal"
	"washeve/planner"
)

// season is the example with a season's log.
func season(t testing.TB) (Case, *planner.Past) {
	log, faults := journal.Open("../../testdata/season/log.toml").Load()
	require.False(t, fault.HasErrors(faults), "%v", faults)
	base := example()
	return base, planner.Recall(log, base.Rig, base.Places)
}

func TestTheLogTellsThePaceAndTheWear(t *testing.T) {
	base, past := season(t)
	draws := past.Bed("half-foot tank").Draws
	last := draws[len(draws)-1].At
	washes := YearOf(base.Rig, BedOf(base.Rig, base.Wash), past, last)
	n, known := washes.Number.Get()
	require.True(t, known)
	pace := planner.PaceOf(draws, last)
	assert.InEpsilon(t, float64(pace.Washes)/float64(pace.Over/quantity.Day)*365.2425, n, 1e-9)

	table, err := Compare(base, NewOneWash(past, washes), Options{})
	require.NoError(t, err)
	plan := table.Ways[0].Figures
	assert.True(t, table.row("year").Cells[0].Known)
	memory := planner.Memory{Past: past}
	want, err := memory.Make(base.Rig, base.Places, base.Wash)
	require.NoError(t, err)
	assert.Equal(t, want.Bed, plan.Plan.Bed, "the plan of the screen, with what the log taught")
	for _, w := range table.Ways {
		if w.Key != "new-resin" && w.Key != "double-tank" {
			assert.Equal(t, plan.Plan.Bed.SoFar, w.Figures.Plan.Bed.SoFar, w.Key)
		}
	}
	assert.Zero(t, table.way("new-resin").Figures.Plan.Bed.SoFar)
	assert.GreaterOrEqual(t, table.way("series").Figures.Chance, plan.Chance)
}

// Fills that held more than is stated of them teach of twice the resin as well: it is new
// resin like that in the tank.
func TestTwiceTheTankIsJudgedLikeNewResin(t *testing.T) {
	base, past := season(t)
	table, err := Compare(base, NewOneWash(past, Yearly{}), Options{})
	require.NoError(t, err)
	left := func(key string) float64 { return table.way(key).Figures.Plan.Bed.Remaining.P50.Gallons() }
	fresh := compared(t, base, Options{}).way("new-resin").Figures.Plan.Bed.Remaining.P50.Gallons()
	require.Greater(t, math.Abs(left("new-resin")/fresh-1), 0.1, "the log teaches of new resin")
	assert.InEpsilon(t, 2*left("new-resin"), left("double-tank"), 0.07)
	assert.Contains(t, strings.Join(table.way("double-tank").Tells, " "), "the readings of your fills have taught")
	assert.Contains(t, strings.Join(table.way("series").Tells, " "), "whatever the readings of the first taught")
}

func TestAStatedPaceComesBeforeTheLogs(t *testing.T) {
	base, past := season(t)
	base.Rig.Defaults.Washes = quantity.Some(26.0)
	n, _ := YearOf(base.Rig, "half-foot tank", past, model.MomentOf(time.Date(2026, 10, 1, 0, 0, 0, 0, time.UTC))).Number.Get()
	assert.Equal(t, 26.0, n)
	assert.False(t, YearOf(example().Rig, "half-foot tank", nil, model.Moment{}).Number.Given())
	assert.False(t, YearOf(example().Rig, "no such tank", past, model.Moment{}).Number.Given())
}

func BenchmarkCompareWithAPast(b *testing.B) {
	base, past := season(b)
	for b.Loop() {
		if _, err := Compare(base, NewOneWash(past, Yearly{}), Options{}); err != nil {
			b.Fatal(err)
		}
	}
}
