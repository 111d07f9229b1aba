package planner_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// doneOn is the past of a log with one wash that names what was planned; struck where told.
func doneOn(lib store.Library, name string, day int, struck bool) *planner.Past {
	at := model.MomentOf(time.Date(2026, 5, day, 9, 0, 0, 0, time.UTC))
	log := model.Log{{ID: "w", At: at, Body: &model.WashDone{
		Plan: name, Place: "Juniper Flats", Bed: "half-foot tank", DI: quantity.Some(30 * quantity.Gallon),
	}}}
	if struck {
		log = append(log, model.Entry{ID: "x", At: at.Plus(60), Body: &model.Correction{Of: "w", Strike: model.Yes}})
	}
	return planner.Recall(model.NewLog(log), lib.Rig, lib.Places)
}

// A wash that was done a day or two early is done: its plan says so, and no other plan waits
// for its water. One of another name, of long before, or struck out is still to come.
func TestAWashDoneEarlyIsDone(t *testing.T) {
	lib, on := beside(t)
	other, wash := on("B 100 %", "2026-05-09"), on("A", "2026-05-09")
	for name, c := range map[string]struct {
		past *planner.Past
		done bool
	}{
		"the day before":  {doneOn(lib, "b 100 %", 8, false), true},
		"two days before": {doneOn(lib, "B 100 %", 7, false), true},
		"long before":     {doneOn(lib, "B 100 %", 6, false), false},
		"another":         {doneOn(lib, "C", 8, false), false},
		"struck out":      {doneOn(lib, "B 100 %", 8, true), false},
		"no log":          {nil, false},
	} {
		plan, err := planner.Make(lib.Rig, lib.Places, other)
		require.NoError(t, err)
		plan.WarnOfDone(other, c.past)
		told := warned(plan, planner.Done)
		require.Equal(t, c.done, told != "", name)
		if c.done {
			assert.Contains(t, told, "Done already: the log has B 100 % of 2026-05-0", name)
		}
		plan, err = planner.Make(lib.Rig, lib.Places, wash)
		require.NoError(t, err)
		plan.WarnOfOthers(lib.Rig, lib.Places, wash, []model.Wash{other}, c.past, model.Date{Year: 2026, Month: 5, Day: 8})
		assert.Equal(t, c.done, warned(plan, planner.PlannedBefore) == "", name)
	}
}

// warned is the warning of a code; "" where there is none.
func warned(plan planner.Plan, code string) string {
	for _, w := range plan.Warnings {
		if w.Code == code {
			return w.Text(quantity.US)
		}
	}
	return ""
}
