package water

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

func scales() []quantity.Scale {
	return []quantity.Scale{
		quantity.ScaleNaCl, quantity.ScaleKCl, quantity.Scale442,
		quantity.ScaleConductivity, quantity.PlainScale(0.5), quantity.PlainScale(0.71),
	}
}

// Makers' tables of conductivity standards at 25 C.
func TestPublishedPairs(t *testing.T) {
	for _, pair := range []struct{ microSiemens, kcl, nacl, mix float64 }{
		{23, 11.6, 10.7, 14.74}, {84, 40.38, 38.04, 50.50}, {447, 225.6, 215.5, 300.0}, {1413, 744.7, 702.1, 1000},
		{1500, 757.1, 737.1, 1050}, {2070, 1045, 1041, 1500}, {2764, 1382, 1414.8, 2062.7},
	} {
		for scale, ppm := range map[quantity.Scale]float64{
			quantity.ScaleKCl: pair.kcl, quantity.ScaleNaCl: pair.nacl, quantity.Scale442: pair.mix,
		} {
			ec := Conductivity(quantity.PPM(ppm, scale), quantity.ScaleUnsaid)
			assert.InEpsilon(t, pair.microSiemens, ec.MicroSiemensPerCm(), 1e-12)
			assert.InEpsilon(t, ppm, PPM(ec, scale).Number, 1e-12)
		}
	}
}

func TestOutsideTheTableAPPMIsProportional(t *testing.T) {
	for _, scale := range scales()[:3] {
		for _, edge := range []float64{23, 2764} {
			at := PPM(quantity.Conductivity(edge)*quantity.MicroSiemensPerCm, scale).Number
			factor := 0.1
			if edge > 1000 {
				factor = 3
			}
			beyond := PPM(quantity.Conductivity(edge*factor)*quantity.MicroSiemensPerCm, scale).Number
			assert.InEpsilon(t, at*factor, beyond, 1e-12)
		}
	}
}

func TestAReadingWithoutAScaleTakesTheFallback(t *testing.T) {
	unsaid := quantity.PPM(300, quantity.ScaleUnsaid)
	assert.InDelta(t, 447, Conductivity(unsaid, quantity.Scale442).MicroSiemensPerCm(), 1e-9)
	assert.Equal(t, Conductivity(quantity.PPM(300, quantity.ScaleNaCl), quantity.ScaleUnsaid), Conductivity(unsaid, quantity.ScaleUnsaid))
	assert.Equal(t, quantity.ScaleNaCl, PPM(0.01, quantity.ScaleUnsaid).Scale)
}

func TestScaleIsItsOwnInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		scale := rapid.SampledFrom(scales()).Draw(t, "scale")
		ppm := rapid.Float64Range(1e-6, 2e4).Draw(t, "ppm")
		back := PPM(Conductivity(quantity.PPM(ppm, scale), quantity.ScaleUnsaid), scale)
		if math.Abs(back.Number/ppm-1) > 1e-12 || back.Scale != scale {
			t.Fatalf("%g ppm %s came back as %g", ppm, scale, back.Number)
		}
	})
}

func TestMorePPMIsMoreConductivity(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		scale := rapid.SampledFrom(scales()).Draw(t, "scale")
		ppm := rapid.Float64Range(0, 1e4).Draw(t, "ppm")
		more := ppm*(1+1e-9) + 1e-9
		if !(Conductivity(quantity.PPM(more, scale), scale) > Conductivity(quantity.PPM(ppm, scale), scale)) {
			t.Fatalf("not rising at %g ppm %s", ppm, scale)
		}
	})
}

func BenchmarkConductivity(b *testing.B) {
	r := quantity.PPM(240, quantity.ScaleNaCl)
	for b.Loop() {
		Conductivity(r, quantity.ScaleUnsaid)
	}
}
