package trip

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
)

// The water of a stop is known before a wash is put there, and is then the same.
func TestTheWaterOfAStopHangsOnNoWash(t *testing.T) {
	in := example()
	want := mustMake(t, in)
	without := in
	without.Trip = in.Trip.Clone()
	without.Trip.Washes = nil
	got := mustMake(t, without)
	require.Len(t, got.Stops, 4)
	assert.Equal(t, want.Scale, got.Scale)
	for i := range want.Stops {
		assert.Zero(t, got.Stops[i].Washes)
		assert.InEpsilon(t, want.Stops[i].TDS.P50, got.Stops[i].TDS.P50, 1e-12, want.Stops[i].Name)
		assert.InEpsilon(t, want.Stops[i].TDS.P10, got.Stops[i].TDS.P10, 1e-12)
		assert.InEpsilon(t, want.Stops[i].TDS.P90, got.Stops[i].TDS.P90, 1e-12)
	}
	assert.Equal(t, Band[float64]{P10: 100, P50: 275, P90: 450}, rounded(got.Stops[2].TDS))

	without.Trip.Limit = quantity.Some(quantity.Reading{Number: 10, Scale: quantity.Scale442})
	assert.NotEqual(t, rounded(got.Stops[2].TDS), rounded(mustMake(t, without).Stops[2].TDS), "it is told on the scale of the limit")
	without.Trip.Stops = append(without.Trip.Stops, model.Stop{Date: day(40), Place: "nowhere"})
	assert.Zero(t, mustMake(t, without).Stops[4].TDS)
}

// rounded is a band in whole ppm.
func rounded(b Band[float64]) Band[float64] {
	round := func(x float64) float64 { return float64(int(x + 0.5)) }
	return Band[float64]{P10: round(b.P10), P50: round(b.P50), P90: round(b.P90)}
}
