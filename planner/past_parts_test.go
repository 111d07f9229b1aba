package planner_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// The resin is changed in the middle of a wash: each fill is charged with its own
// gallons, while the wash is under way and when it is over.
func TestAChangeOfResinInTheMiddleOfAWash(t *testing.T) {
	lib := store.Example()
	at := func(minute int) model.Moment {
		return model.MomentOf(time.Date(2026, 6, 1, 8, minute, 0, 0, time.UTC))
	}
	gallons := func(v float64) quantity.Opt[quantity.Volume] {
		return quantity.Some(quantity.Volume(v) * quantity.Gallon)
	}
	stage := func(minute int, v float64) model.Entry {
		return model.Entry{ID: fmt.Sprintf("s%d", minute), At: at(minute), Body: &model.StageDone{
			Wash: "W", Stage: "final rinse", Place: "Juniper Flats", Bed: "half-foot tank", Water: model.DI, Used: gallons(v),
		}}
	}
	log := model.NewLog([]model.Entry{
		stage(1, 20), {ID: "r", At: at(2), Body: &model.Refill{Bed: "half-foot tank"}}, stage(3, 5),
	})
	check := func(log model.Log) {
		fills := planner.Recall(log, lib.Rig, lib.Places).Bed("half-foot tank").Fills
		require.Len(t, fills, 2)
		assert.InDelta(t, 140, fills[0].Gallons.Gallons(), 1e-9, "120 gal before the log, and 20")
		assert.InDelta(t, 5, fills[1].Gallons.Gallons(), 1e-9)
	}
	check(log)
	check(model.NewLog(append(log, model.Entry{ID: "W", At: at(4), Body: &model.WashDone{Place: "Juniper Flats", Bed: "half-foot tank", DI: gallons(25)}})))
}
