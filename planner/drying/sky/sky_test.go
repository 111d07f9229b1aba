package sky

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying/sun"
)

const deg = quantity.Degree

func standing(altitude float64) sun.Position {
	return sun.Position{Altitude: quantity.Angle(altitude) * deg, Space: 1361}
}

// Check values of the pvlib test-suite (test_clearsky.py, scalar input): zenith
// 10 deg, air mass 1, turbidity 3, 1364 W/m2 outside the air, sea level.
func TestClearSkyAgainstPvlib(t *testing.T) {
	got := fromTurbid(1364, math.Cos(10*math.Pi/180), 1, 0, 3)
	assert.InDelta(t, 1038.159219, float64(got.Global()), 1e-5)
	assert.InDelta(t, 942.2081860378344, float64(got.Beam), 1e-6)
	assert.InDelta(t, 110.26529293612793, float64(got.Diffuse), 1e-6)
}

// B. Haurwitz, J. Meteorol. 2 (1945) 154, in pvlib's clearsky.py: 1098 cos z
// exp(-0.059/cos z). Another model of the same thing, of cleaner air when the
// sun is low: within 5 % above 30 deg and 25 % above 10 deg.
func TestClearSkyAgainstHaurwitz(t *testing.T) {
	for altitude := 10.0; altitude <= 90; altitude += 5 {
		c := math.Sin(altitude * math.Pi / 180)
		want, allow := 1098*c*math.Exp(-0.059/c), 0.05
		if altitude < 30 {
			allow = 0.25
		}
		assert.InEpsilon(t, want, float64(FromClear(standing(altitude), 0).Global()), allow, altitude)
	}
}

// Kasten and Young (1989), table: 1 overhead, 2.00 (1.995) at 30 deg, 5.58 at
// 10 deg, 38 at the horizon. MEMORY.
func TestAirMass(t *testing.T) {
	for altitude, want := range map[float64]float64{90: 1, 30: 1.994, 10: 5.58, 0: 38} {
		assert.InEpsilon(t, want, AirMass(quantity.Angle(altitude)*deg), 0.005, altitude)
	}
}

func TestNightIsDark(t *testing.T) {
	assert.Zero(t, FromClear(standing(-2), 0).Global())
	assert.Zero(t, FromClear(standing(-90), 0).Under(model.BrokenClouds).Global())
}

// Kasten and Czeplak (1980): overcast leaves a quarter, all of it diffuse.
func TestCloud(t *testing.T) {
	clear := FromClear(standing(50), 0)
	same := clear.Under(model.ClearSky)
	assert.InDelta(t, float64(clear.Beam), float64(same.Beam), 1e-9)
	assert.InDelta(t, float64(clear.Diffuse), float64(same.Diffuse), 1e-9)
	dark := clear.Under(model.Overcast)
	assert.InDelta(t, 0.25*float64(clear.Global()), float64(dark.Global()), 1e-9)
	assert.Zero(t, dark.Beam)
	for i, cloud := range model.Skies()[1:] {
		assert.Less(t, clear.Under(cloud).Global(), clear.Under(model.Skies()[i]).Global(), cloud)
		assert.Less(t, clear.Under(cloud).Beam, clear.Under(model.Skies()[i]).Beam, cloud)
	}
}

// The worked example in the comment of the formula, as quoted on a building
// simulation support list: air 20 C, dew point 10 C, clear: 0.815, 340.6 W/m2
// of a black body's 418.
func TestEmissivity(t *testing.T) {
	got := float64(Emissivity(quantity.Temperature(283), model.ClearSky))
	assert.InDelta(t, 0.815, got, 0.001)
	assert.InDelta(t, 340.6, got*5.6697e-8*math.Pow(293, 4), 0.6)
	assert.Greater(t, Emissivity(quantity.Temperature(283), model.Overcast), Emissivity(quantity.Temperature(283), model.FewClouds))
	assert.LessOrEqual(t, float64(Emissivity(quantity.Temperature(303), model.Overcast)), 1.0)
}

// On a level face in the open, all parts make up the global light.
func TestLevelFaceGetsTheGlobalLight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		altitude := rapid.Float64Range(0, 90).Draw(t, "altitude")
		elevation := quantity.Length(rapid.Float64Range(0, 3500).Draw(t, "elevation"))
		cloud := rapid.SampledFrom(model.Skies()).Draw(t, "cloud")
		light := FromClear(standing(altitude), elevation).Under(cloud)
		share := light.On(quantity.Fraction(light.height), ViewOf(true, false), false)
		require.InDelta(t, float64(light.Global()), float64(share.Total()), 1e-9)
		require.True(t, light.Beam >= 0 && light.Diffuse >= -1e-9 && light.Global() < 1361)
		shaded := light.On(quantity.Fraction(light.height), ViewOf(true, true), true)
		require.LessOrEqual(t, float64(shaded.Total()), float64(share.Total()))
		require.Zero(t, shaded.Beam)
	})
}
