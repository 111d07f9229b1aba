package trip

import (
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// notCounted are the notes on washes that are planned before the trip.
func notCounted(t testing.TB, in Input) []string {
	var all []string
	for _, n := range mustMake(t, in).Notes {
		if n.Code == planner.PlannedBefore {
			all = append(all, n.Text(quantity.US))
		}
	}
	return all
}

// tomorrow is the example, and its wash planned by itself for the day after.
func tomorrow(t testing.TB) Input {
	in := example()
	lib := store.Example()
	w := lib.Washes[0].Wash
	w.Name, w.Date = "a 100 % wash", date(t, "2026-05-02")
	in.Coming = []model.Wash{w}
	return in
}

func TestAWashBeforeTheTripIsTold(t *testing.T) {
	in := tomorrow(t)
	told := notCounted(t, in)
	require.Len(t, told, 1)
	alone, err := planner.Make(in.Rig, in.Places, in.Coming[0])
	require.NoError(t, err)
	through := quantity.Show(alone.DI.Volume+alone.Flush.Volume, quantity.US)
	assert.Contains(t, told[0], "Not counted: a 100 % wash, 2026-05-02, "+through+" with its flush. It uses this bed before the trip")
	assert.Equal(t, planner.PlannedBefore, mustMake(t, in).Notes[0].Code, "it is told first")

	without := in
	without.Coming = nil
	assert.Equal(t, mustMake(t, without).AllOnSpec, mustMake(t, in).AllOnSpec, "told, and not counted")
}

func TestWashesBeforeTheTripAreToldByDate(t *testing.T) {
	in := tomorrow(t)
	later := in.Coming[0]
	later.Date, later.Name = date(t, "2026-05-20"), ""
	in.Coming = []model.Wash{later, in.Coming[0]}
	told := notCounted(t, in)
	require.Len(t, told, 2)
	assert.Contains(t, told[0], "2026-05-02")
	assert.Contains(t, told[1], "the wash, 2026-05-20")

	in.Coming[0].Place = "nowhere"
	assert.Contains(t, notCounted(t, in)[1], "the wash, 2026-05-20. It uses this bed before the trip")
}

func TestAWashThatTakesNothingFromTheTripIsNotTold(t *testing.T) {
	for name, change := range map[string]func(*Input, *model.Wash){
		"of no day":           func(_ *Input, w *model.Wash) { w.Date = quantity.Opt[model.Date]{} },
		"of yesterday":        func(_ *Input, w *model.Wash) { w.Date = date(t, "2026-04-30") },
		"of the first day":    func(in *Input, w *model.Wash) { w.Date = in.Trip.Stops[0].Date },
		"with another bed":    func(_ *Input, w *model.Wash) { w.Bed = "big tank" },
		"without DI water":    func(_ *Input, w *model.Wash) { w.Stages = []model.Stage{{Name: "rinse", Water: model.Raw}} },
		"on a day unknown":    func(in *Input, _ *model.Wash) { in.Today = model.Date{} },
		"that is logged done": func(in *Input, w *model.Wash) { in.Past = pastOfToday(in, w) },
	} {
		t.Run(name, func(t *testing.T) {
			in := tomorrow(t)
			in.Coming = slices.Clone(in.Coming)
			change(&in, &in.Coming[0])
			assert.Empty(t, notCounted(t, in))
		})
	}
}

// pastOfToday is a log of the wash, done on its day, which is today.
func pastOfToday(in *Input, w *model.Wash) *planner.Past {
	in.Today = w.Date.Or(model.Date{})
	done := model.WashDone{Bed: in.Trip.Bed, Place: in.Rig.Defaults.Place, DI: quantity.Some(24 * quantity.Gallon)}
	entry := model.Entry{ID: "1", At: model.MomentOf(time.Date(2026, 5, 2, 9, 0, 0, 0, time.UTC)), Body: &done}
	return planner.Recall(model.NewLog([]model.Entry{entry}), in.Rig, in.Places)
}
