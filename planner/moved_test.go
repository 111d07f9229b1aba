package planner_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// A reading that shows early lowers the chance, and it is said why.
func TestWhatAReadingMoved(t *testing.T) {
	rig, places, wash, _ := season(t)
	look := func(ppm float64) planner.Ahead {
		log := model.NewLog([]model.Entry{{ID: "b234567890123456", At: onDay(time.May, 2), Body: &model.Sample{
			Point: model.AfterBed, Bed: rig.Beds[0].Name, Place: "Juniper Flats", Flushed: model.Yes,
			Reading: quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl)),
		}}})
		memory := planner.Memory{Past: planner.Recall(log, rig, places)}
		plan, err := memory.Make(rig, places, wash)
		require.NoError(t, err)
		a, err := planner.LookAhead(rig, places, wash, plan, memory.Past, onDay(time.May, 3))
		require.NoError(t, err)
		return a
	}
	early := look(8)
	moved, much := early.Moved.Get()
	require.True(t, much)
	assert.Greater(t, moved.PPM, moved.Expected)
	assert.Less(t, moved.After, moved.Before)
	assert.Less(t, moved.Factor.After, moved.Factor.Before)
}
