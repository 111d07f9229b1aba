package washday_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/planner/washday"
)

// The faces that a short bed's share gives DI water get it on the day in the share's order:
// its chances to get to each face are worked out for that one.
func TestTheDayRinsesInTheOrderOfTheShare(t *testing.T) {
	lib := store.Example()
	for _, heading := range []string{"north", "east", "south", "west"} {
		wash := lib.Washes[0].Wash
		bearing, err := model.ParseHeading(heading)
		require.NoError(t, err)
		wash.Heading = quantity.Some(bearing)
		rig := lib.Rig
		rig.Beds = append([]model.Bed{}, rig.Beds...)
		rig.Beds[0].SoFar = quantity.Some(130 * quantity.Gallon)
		var memory planner.Memory
		short, err := memory.Shorten(rig, lib.Places, wash)
		require.NoError(t, err)
		plan, err := memory.Make(rig, lib.Places, short.Share.Wash)
		require.NoError(t, err)
		var rinsed []model.Side
		for _, s := range washday.Steps(plan) {
			if s.Kind == model.Work && s.Water == model.DI {
				rinsed = append(rinsed, s.Face)
			}
		}
		require.Greater(t, len(rinsed), 1)
		assert.Equal(t, short.Share.Order(), rinsed, heading)
		for i := 1; i < len(rinsed); i++ {
			assert.LessOrEqual(t, short.Share.Faces[i].Reaches, short.Share.Faces[i-1].Reaches)
		}
	}
}
