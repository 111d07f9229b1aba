package planner_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/planner"
)

// A coach's roof is of rubber and seen by nobody. That of a car, a pickup or a van is
// painted as the sides are, and gets the final rinse; unless rubber is stated.
func TestARoofThatShowsIsPaintedAndRinsed(t *testing.T) {
	for _, c := range []struct {
		shape, stated, takes string
		rinsed               bool
	}{
		{"coach", "", "rubber roof", false},
		{"trailer", "", "rubber roof", false},
		{"coach", "paint", "paint", false},
		{"van", "", "paint", true},
		{"pickup", "", "paint", true},
		{"car", "", "paint", true},
		{"van", "rubber roof", "rubber roof", false},
	} {
		rig, places, wash := threeFacts()
		rig.Vehicles[0].Shape, rig.Vehicles[0].RoofSkin = model.Shape(c.shape), model.Surface(c.stated)
		p := mustMake(t, rig, places, wash)
		assert.Equal(t, c.takes, taken(t, p, "vehicle roof skin").Words, c.shape)
		roof := p.Faces[0]
		require.Equal(t, model.Roof, roof.Name)
		assert.Equal(t, c.rinsed, roof.DI > 0, "%s, roof %q", c.shape, c.stated)
		assert.Equal(t, model.Surface(c.takes), roof.Surfaces[0].Surface, c.shape)
		assert.Equal(t, len(planner.UsualStages(rig, wash)), len(p.Stages))
	}
}
