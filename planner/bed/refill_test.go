package bed

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

// Common practice, no source: resin weighs 43 to 45 lb/ft3 as shipped.
func TestBagsForAFill(t *testing.T) {
	for _, c := range []struct {
		resin, bag float64
		count      int
		left       float64
		low, high  float64 // lb bought
	}{
		{0.5, 0.5, 1, 0, 21.5, 22.5}, {0.5, 1, 1, 0.5, 43, 45}, {1, 0.5, 2, 0, 43, 45}, {0.7, 0.5, 2, 0.3, 43, 45}, {2.2, 1, 3, 0.8, 129, 135},
	} {
		b := BagsFor(quantity.Volume(c.resin)*quantity.CubicFoot, quantity.Volume(c.bag)*quantity.CubicFoot)
		assert.Equal(t, c.count, b.Count)
		assert.InDelta(t, c.left, b.Left.CubicFeet(), 1e-9)
		assert.InDelta(t, c.low, b.Low.Pounds(), 1e-9)
		assert.InDelta(t, c.high, b.High.Pounds(), 1e-9)
		assert.InDelta(t, 43*c.resin, b.FillLow.Pounds(), 1e-9)
	}
	for _, bag := range []quantity.Volume{0, -1} {
		assert.Zero(t, BagsFor(quantity.CubicFoot, bag))
	}
	assert.Zero(t, BagsFor(0, quantity.CubicFoot))
}

func TestBagsHoldTheFillAndNoBagIsToSpare(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		resin := quantity.Volume(rapid.Float64Range(0.02, 10).Draw(t, "resin")) * quantity.CubicFoot
		bag := quantity.Volume(rapid.Float64Range(0.05, 3).Draw(t, "bag")) * quantity.CubicFoot
		b := BagsFor(resin, bag)
		assert.GreaterOrEqual(t, b.Bought, resin*(1-1e-5))
		assert.Less(t, b.Left, bag)
		assert.Less(t, b.Low, b.High)
	})
}

// Worked by hand: 0.38 of 0.5 ft3 (14.16 L) is 5.38 L, and 7.08 L over it, at
// 998.2 kg/m3 12.4 kg. PUBLISHED for the density: IAPWS at 20 C, see
// testdata/reference/water-viscosity-density.csv.
func TestWaterInTheTank(t *testing.T) {
	assert.InDelta(t, 12.44, float64(halfFoot.WaterWeight(0.25*quantity.CubicFoot, 998.2)), 0.01)
	assert.InDelta(t, 8.6, halfFoot.Freeboard(0.25*quantity.CubicFoot).Inches(), 0.05)
	assert.InDelta(t, 0.5, halfFoot.FirstFlow().GPM(), 1e-9)
}
