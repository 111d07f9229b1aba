package trip

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/water"
)

// A band with one end stated never stands upside down, whatever the scale.
func TestBandOfOneStatedEnd(t *testing.T) {
	tds := func(text string) quantity.Opt[quantity.Reading] {
		if text == "" {
			return quantity.Opt[quantity.Reading]{}
		}
		r, err := quantity.ParseReading(text)
		require.NoError(t, err)
		return quantity.Some(r)
	}
	for _, c := range []struct{ low, high, wantLow, wantHigh string }{
		{"", "", "100 ppm NaCl", "600 ppm NaCl"},
		{"800 ppm NaCl", "", "800 ppm NaCl", "800 ppm NaCl"},
		{"200 ppm NaCl", "", "200 ppm NaCl", "600 ppm NaCl"},
		{"", "60 ppm NaCl", "60 ppm NaCl", "60 ppm NaCl"},
		{"", "400 ppm NaCl", "100 ppm NaCl", "400 ppm NaCl"},
		{"", "900 uS/cm", "", "900 uS/cm"},
		{"2000 uS/cm", "", "2000 uS/cm", "2000 uS/cm"},
		{"150 ppm 442", "", "150 ppm 442", ""},
	} {
		low, high := tdsBand(&model.Stop{LowTDS: tds(c.low), HighTDS: tds(c.high)})
		assert.Equal(t, low.Scale, high.Scale, c)
		assert.LessOrEqual(t, low.Number, high.Number, c)
		ec := func(r quantity.Reading) float64 {
			return water.Conductivity(r, quantity.ScaleNaCl).MicroSiemensPerCm()
		}
		for got, want := range map[quantity.Reading]string{low: c.wantLow, high: c.wantHigh} {
			if want == "" {
				want = map[bool]string{true: "100 ppm NaCl", false: "600 ppm NaCl"}[got == low]
			}
			r, _ := tds(want).Get()
			if low != high {
				assert.InEpsilon(t, ec(r), ec(got), 1e-9, c)
			}
		}
	}
	hardness := func(gr float64) quantity.Opt[quantity.Hardness] {
		return quantity.Some(quantity.Hardness(gr) * softest / 3)
	}
	soft, hard := hardnessBand(&model.Stop{LowHardness: hardness(40)})
	assert.Equal(t, soft, hard)
	soft, hard = hardnessBand(&model.Stop{HighHardness: hardness(1)})
	assert.Equal(t, soft, hard)
}

func TestAssumedEndOfABandIsTold(t *testing.T) {
	some := quantity.Some(quantity.PPM(800, quantity.ScaleNaCl))
	for _, c := range []struct {
		stop model.Stop
		want string
	}{
		{model.Stop{}, "from 100 to 600 ppm NaCl; state tds_low and tds_high"},
		{model.Stop{LowTDS: some}, "from 800 to 800 ppm NaCl; state tds_high"},
		{model.Stop{HighTDS: some}, "from 100 to 800 ppm NaCl; state tds_low"},
		{model.Stop{LowTDS: some, HighTDS: some}, ""},
	} {
		var told []string
		bandNote(&c.stop, "Bend", func(_, format string, _ ...quantity.Value) { told = append(told, format) })
		assert.Contains(t, strings.Join(told, " "), c.want)
		assert.Equal(t, c.want == "", len(told) == 0)
	}
}
