package water

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

func TestPurifyTakesThatPartOfTheIonsAndNoGas(t *testing.T) {
	raw := Analyse(Facts{
		TDS: quantity.PPM(320, quantity.ScaleNaCl), Hardness: quantity.Some(quantity.HardnessOf(200)),
		Alkalinity: quantity.Some(quantity.HardnessOf(150)), PH: quantity.Some(7.2), Silica: quantity.Some(12 * quantity.MilligramPerLitre),
	})
	pure := Purify(raw, 0.9)
	assert.InEpsilon(t, float64(raw.Load)/10, float64(pure.Load), 1e-12)
	assert.InEpsilon(t, float64(raw.Silica)/10, float64(pure.Silica), 1e-12)
	assert.Equal(t, raw.CO2, pure.CO2)
	assert.InDelta(t, 0.107, float64(pure.Conductivity/raw.Conductivity), 0.006, "a dilute water conducts a little better for its ions")
	assert.Equal(t, raw, Purify(raw, 0))
}

func TestPurifyIsBetweenAllAndNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		raw := Analyse(Facts{TDS: quantity.PPM(rapid.Float64Range(1, 2000).Draw(t, "ppm"), quantity.ScaleNaCl)})
		less := Purify(raw, quantity.Fraction(rapid.Float64Range(-1, 2).Draw(t, "rejected")))
		if less.Load < 0 || less.Load > raw.Load || less.Conductivity < 0 || less.Conductivity > raw.Conductivity {
			t.Fatalf("%v of %v", less, raw)
		}
	})
}
