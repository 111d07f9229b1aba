package water

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

func equivalent(ec quantity.Conductivity, total quantity.Load) float64 {
	return float64(ec) / float64(total) * 1e4 // S cm2/eq
}

// CRC Handbook of Chemistry and Physics, section 5, equivalent conductivity of
// electrolytes at 25 C (from memory): NaCl.
func TestSodiumChlorideAgreesWithTheHandbook(t *testing.T) {
	for _, c := range []struct{ molar, conductance, within float64 }{
		{0.0005, 124.44, 1e-3}, {0.001, 123.7, 1e-3}, {0.005, 120.6, 1.5e-3}, {0.01, 118.45, 2e-3}, {0.02, 115.70, 5e-3}, {0.05, 111.01, 1e-2},
	} {
		load := quantity.Load(c.molar * 1000)
		assert.InEpsilon(t, c.conductance, equivalent(NaClConductivity(load), load), c.within, "%g mol/L", c.molar)
	}
}

// The published scale: 215.5 mg/L of NaCl (58.44 g/mol) reads 447 uS/cm. The
// pair 84 uS/cm, 38.04 mg/L is left out: in the NaCl and in the KCl column alike
// it lies 4 % beside the salt's own conductivity.
func TestSodiumChlorideAgreesWithThePenScale(t *testing.T) {
	load := quantity.Load(215.5 / 58.44)
	assert.InDelta(t, 447, NaClConductivity(load).MicroSiemensPerCm(), 1)
	for _, ppm := range []float64{10.7, 215.5, 702.1, 737.1} {
		want := Conductivity(quantity.PPM(ppm, quantity.ScaleNaCl), quantity.ScaleUnsaid)
		assert.InEpsilon(t, float64(want), float64(NaClConductivity(quantity.Load(ppm/58.44))), 0.02)
	}
}

// CRC Handbook, the same table (from memory): two parts of 1/2 CaCl2 (130.30,
// 124.19, 120.30) to one of 1/2 MgCl2 (124.15, 118.25, 114.49).
func TestHardChloridesAgreeWithTheHandbook(t *testing.T) {
	for _, c := range []struct{ equivalents, calcium, magnesium float64 }{
		{0.001, 130.30, 124.15}, {0.005, 124.19, 118.25}, {0.01, 120.30, 114.49},
	} {
		load := quantity.Load(c.equivalents * 1000)
		ec := Ions{Hardness: load, Chloride: load}.Conductivity()
		assert.InEpsilon(t, (2*c.calcium+c.magnesium)/3, equivalent(ec, load), 0.01, "%g eq/L", c.equivalents)
	}
}

// The limiting law as printed: L = L0 - (60.2 + 0.229 L0) sqrt(c).
func TestDiluteSodiumChlorideFollowsTheLimitingLaw(t *testing.T) {
	const limiting = 50.08 + 76.31
	for _, c := range []float64{1e-6, 1e-5, 1e-4} {
		want := limiting - (60.2+0.229*limiting)*math.Sqrt(c)
		load := quantity.Load(c * 1000)
		assert.InDelta(t, want, equivalent(NaClConductivity(load), load), 100*c)
	}
}

func TestSolvedTotalConductsAsThePenRead(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		total := quantity.Load(rapid.Float64Range(0.01, 50).Draw(t, "total"))
		hardness := total * quantity.Load(rapid.Float64Range(0, 1).Draw(t, "hardness"))
		bicarbonate := total * quantity.Load(rapid.Float64Range(0, 1).Draw(t, "bicarbonate"))
		found := solveTotal(fill(total, hardness, bicarbonate).Conductivity(), hardness, bicarbonate)
		if math.Abs(float64(found/total)-1) > 1e-9 {
			t.Fatalf("%g came back as %g", total, found)
		}
	})
}
