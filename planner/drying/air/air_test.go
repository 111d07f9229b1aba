package air_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model/quantity"
	"washeve/model/store/reference"
	"washeve/planner/drying/air"
	"washeve/planner/drying/sun"
)

// testdata/reference/psychrometrics.csv: PsychroLib 1.1.1, the formulae of the
// 2017 ASHRAE Handbook. Wanted: 0.2 K and 1 %; the same equations agree closer.
func TestMoistAirAgainstASHRAE(t *testing.T) {
	for _, row := range reference.Rows(t, "psychrometrics.csv") {
		s := air.OfHumidity(quantity.Celsius(row.Number(t, "t_c")), quantity.Fraction(row.Number(t, "rh")), quantity.Pressure(row.Number(t, "p_pa")))
		name := row["t_c"] + " C " + row["rh"] + " " + row["p_pa"]
		assert.InEpsilon(t, row.Number(t, "psat_pa"), float64(air.SaturationPressure(s.Temperature())), 1e-5, name)
		assert.InEpsilon(t, row.Number(t, "pv_pa"), float64(s.Vapour()), 1e-5, name)
		assert.InDelta(t, row.Number(t, "dew_c"), s.DewPoint().Celsius(), 0.005, name)
		assert.InDelta(t, row.Number(t, "wetbulb_c"), s.WetBulb().Celsius(), 0.005, name)
		assert.InEpsilon(t, row.Number(t, "w_kg_kg"), float64(s.HumidityRatio()), 1e-4, name)
		assert.InDelta(t, row.Number(t, "h_j_kg"), float64(s.Enthalpy()), 20, name)
		assert.InDelta(t, row.Number(t, "rh"), float64(s.RelativeHumidity()), 1e-9, name)
	}
}

// Steam tables (any): latent heat 2500.9 kJ/kg at 0.01 C, 2453.5 at 20 C,
// 2406.0 at 40 C. MEMORY.
func TestLatentHeat(t *testing.T) {
	for c, want := range map[float64]float64{0.01: 2500.9e3, 20: 2453.5e3, 40: 2406.0e3} {
		assert.InEpsilon(t, want, float64(air.LatentHeat(quantity.Celsius(c))), 0.001, c)
	}
}

// The standard atmosphere as rounded in the header of psychrometrics.csv:
// 84556 Pa about 1500 m, 95000 Pa about 540 m.
func TestStandardPressure(t *testing.T) {
	assert.InDelta(t, 101325, float64(air.StandardPressure(0)), 1e-6)
	assert.InEpsilon(t, 84556, float64(air.StandardPressure(1500)), 0.0005)
	assert.InEpsilon(t, 95000, float64(air.StandardPressure(540)), 0.0005)
}

// FAO-56 example 18 (testdata/reference/evaporation.csv): 2.78 m/s at 10 m is
// 2.078 at 2 m.
func TestWindAgainstFAO(t *testing.T) {
	var at10, at2 float64
	for _, row := range reference.Rows(t, "evaporation.csv") {
		switch {
		case row["kind"] == "FAO-56 ex 18" && row["quantity"] == "wind at 10 m":
			at10 = row.Number(t, "value")
		case row["kind"] == "FAO-56 ex 18" && row["quantity"] == "u2":
			at2 = row.Number(t, "value")
		}
	}
	assert.InDelta(t, at2, air.At2m(quantity.Speed(at10), 10).MetresPerSecond(), 0.002)
	assert.InDelta(t, 3, air.At2m(3, 2).MetresPerSecond(), 0.01)
}

// FAO-56 example 17: the mean of the saturation pressures at 34.8 and 25.6 C is
// 4.42 kPa (its own formula; ours is within 0.3 %).
func TestSaturationAgainstFAO(t *testing.T) {
	mean := (air.SaturationPressure(quantity.Celsius(34.8)) + air.SaturationPressure(quantity.Celsius(25.6))) / 2
	assert.InDelta(t, 4420, float64(mean), 13)
}

func TestWetBulbLiesBetweenDewAndAir(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := air.OfHumidity(
			quantity.Celsius(rapid.Float64Range(-40, 60).Draw(t, "t")),
			quantity.Fraction(rapid.Float64Range(0, 1).Draw(t, "rh")),
			quantity.Pressure(rapid.Float64Range(60e3, 105e3).Draw(t, "p")))
		wet := s.WetBulb()
		require.LessOrEqual(t, float64(wet), float64(s.Temperature())+1e-4)
		require.GreaterOrEqual(t, float64(wet), float64(s.DewPoint())-1e-4)
	})
}

func TestDewPointInvertsSaturation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		dew := quantity.Celsius(rapid.Float64Range(-60, 90).Draw(t, "dew"))
		require.InDelta(t, float64(dew), float64(air.DewPoint(air.SaturationPressure(dew))), 2e-4)
	})
	assert.InDelta(t, 173.15, float64(air.DewPoint(0)), 0)
}

func ordinary() sun.Day {
	at := func(h int) time.Time { return time.Date(2026, 6, 12, h, 0, 0, 0, time.UTC) }
	return sun.Day{Kind: sun.RisesAndSets, Rise: quantity.Some(at(6)), Transit: at(13), Set: quantity.Some(at(20))}
}

// Parton and Logan: the top comes 1.86 h after noon, counted from a day that
// starts 0.17 h before sunrise.
func TestSwingMeetsLowAndHigh(t *testing.T) {
	day := ordinary()
	s := air.NewSwing(quantity.Celsius(12), quantity.Celsius(30), day)
	top := day.Transit.Add(101 * time.Minute)
	assert.InDelta(t, 30, s.At(top).Celsius(), 0.01)
	assert.InDelta(t, 12, s.At(day.Rise.Or(top).Add(-10*time.Minute)).Celsius(), 0.05)
	assert.InDelta(t, s.At(day.Set.Or(top)).Celsius(), s.At(day.Set.Or(top).Add(time.Second)).Celsius(), 0.01)
}

func TestSwingStaysWithinLowAndHigh(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := time.Date(2026, 1, rapid.IntRange(1, 365).Draw(t, "day"), 0, 0, 0, 0, time.UTC)
		place := sun.Place{Latitude: quantity.Angle(rapid.Float64Range(-90, 90).Draw(t, "lat")) * quantity.Degree}
		s := air.NewSwing(quantity.Celsius(3), quantity.Celsius(21), place.Day(from, from.AddDate(0, 0, 1)))
		at := from.Add(time.Duration(rapid.IntRange(0, 86400).Draw(t, "second")) * time.Second)
		got := s.At(at).Celsius()
		require.True(t, got >= 3-1e-9 && got <= 21+1e-9, got)
	})
}

func BenchmarkWetBulb(b *testing.B) {
	s := air.OfHumidity(quantity.Celsius(25), 0.5, 101325)
	for b.Loop() {
		s.WetBulb()
	}
}
