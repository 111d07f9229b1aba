package heading_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying/heading"
)

const deg = quantity.Degree

// The sun in the south-east at 30 deg over a coach with its nose to the north:
// by hand, right and rear at cos 30 cos 45, left and front turned away.
func TestIncidenceByHand(t *testing.T) {
	h := model.HeadingOf(0)
	for side, want := range map[model.Side]float64{model.Right: 0.6124, model.Rear: 0.6124, model.Left: -0.6124, model.Front: -0.6124, model.Roof: 0.5} {
		assert.InDelta(t, want, float64(heading.CosIncidence(h, side, 30*deg, 135*deg)), 1e-4, side)
	}
	assert.InDelta(t, -1, float64(heading.CosIncidence(h, "deck", 30*deg, 135*deg)), 1e-9)
}

func TestTurningRoundSwapsTheSides(t *testing.T) {
	opposite := map[model.Side]model.Side{model.Left: model.Right, model.Right: model.Left, model.Front: model.Rear, model.Rear: model.Front, model.Roof: model.Roof}
	rapid.Check(t, func(t *rapid.T) {
		angle := quantity.Angle(rapid.Float64Range(-1000, 1000).Draw(t, "heading")) * deg
		altitude := quantity.Angle(rapid.Float64Range(-90, 90).Draw(t, "altitude")) * deg
		azimuth := quantity.Angle(rapid.Float64Range(0, 360).Draw(t, "azimuth")) * deg
		there, back := model.HeadingOf(angle), model.HeadingOf(angle+180*deg)
		for _, side := range model.Sides() {
			got := float64(heading.CosIncidence(back, opposite[side], altitude, azimuth))
			require.InDelta(t, float64(heading.CosIncidence(there, side, altitude, azimuth)), got, 1e-9)
		}
	})
}
