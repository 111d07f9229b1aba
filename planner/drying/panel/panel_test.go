package panel_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/reference"
	"washeve/planner/drying/air"
	"washeve/planner/drying/panel"
	"washeve/planner/drying/sky"
)

const sea = quantity.Pressure(101325)

func evaporationRows(t *testing.T, kind string) [][]string {
	t.Helper()
	var out [][]string
	for _, row := range reference.Lines(t, "evaporation.csv") {
		if row[0] == kind && strings.ContainsAny(row[3][:1], "0123456789") {
			out = append(out, row)
		}
	}
	require.NotEmpty(t, out)
	return out
}

// fromWater is our evaporation from water held at a temperature, kg/(m2 h).
func fromWater(water, airTemp, rh, wind float64) float64 {
	a := air.OfHumidity(quantity.Celsius(airTemp), quantity.Fraction(rh), sea)
	h := float64(panel.Convection(quantity.Speed(wind)))
	drive := float64(air.Saturated(quantity.Celsius(water), sea) - a.HumidityRatio())
	return 3600 * h / float64(a.SpecificHeat()) * drive
}

// ASHRAE's pool formula (evaporation.csv, kind "pool"): another, empirical way
// to the same rate. A wall of 2 m is not a pool: 20 % is what to expect.
func TestEvaporationAgainstPools(t *testing.T) {
	for _, row := range evaporationRows(t, "pool") {
		var water, dry, rh, wind, activity float64
		n, _ := fmt.Sscanf(row[1], "water %g C; air %g C %g%%; V %g m/s; activity %g", &water, &dry, &rh, &wind, &activity)
		if n == 5 {
			assert.InEpsilon(t, reference.Number(t, row[3]), fromWater(water, dry, rh/100, wind), 0.2, row[1])
		}
	}
}

// Shah's still indoor pools (evaporation.csv, "still air"): ours is the faster,
// at most 2.2 times.
func TestStillAirAgainstShah(t *testing.T) {
	for _, row := range evaporationRows(t, "still air") {
		var water, dry, rh float64
		if n, _ := fmt.Sscanf(row[1], "water %g C; air %g C %g%%", &water, &dry, &rh); n == 3 {
			ratio := fromWater(water, dry, rh/100, 0) / reference.Number(t, row[3])
			assert.True(t, ratio > 1 && ratio < 2.2, "%s: %g", row[1], ratio)
		}
	}
}

// Outdoor film coefficients of ASHRAE Fundamentals (evaporation.csv, "film
// coefficient"), which hold radiation too: 4 x 0.9 x sigma x T3, 5.1 at 20 C.
func TestConvectionAgainstFilmCoefficients(t *testing.T) {
	for _, row := range evaporationRows(t, "film coefficient") {
		var wind, mph float64
		if n, _ := fmt.Sscanf(row[1], "outdoor surface, wind %g m/s (%g mph)", &wind, &mph); n == 2 {
			assert.InEpsilon(t, reference.Number(t, row[3]), float64(panel.Convection(quantity.Speed(wind)))+5.1, 0.1, row[1])
		}
	}
}

// The sol-air temperatures (evaporation.csv, "sol-air") of upright surfaces
// rest on a film coefficient of 17 W/(m2 K) with radiation in it: the wind at
// which we have the same at 20 C gives the same dry panel within 3 K, and cooler,
// since a hot panel radiates more than that.
func TestDryPanelAgainstSolAir(t *testing.T) {
	still := quantity.Speed((17.0 - 6.0 - 5.621) / 3.912)
	for _, row := range evaporationRows(t, "sol-air") {
		var dry, sunlight, ratio float64
		if n, _ := fmt.Sscanf(row[1], "to %g C; It %g W/m2; alpha/ho %g; vertical", &dry, &sunlight, &ratio); n != 3 || !strings.HasSuffix(row[1], "vertical") {
			continue
		}
		a := air.OfHumidity(quantity.Celsius(dry), 0.5, sea)
		got := panel.Around(a, still, 1).Dry(panel.Load{Absorbed: quantity.Irradiance(ratio * 17.03 * sunlight)})
		assert.InDelta(t, reference.Number(t, row[3]), got.Celsius(), 3, row[1])
	}
}

// The continuity of McAdams' two branches at 4.88 m/s.
func TestConvectionHasNoStep(t *testing.T) {
	assert.InEpsilon(t, float64(panel.Convection(4.876)), float64(panel.Convection(4.878)), 0.01)
}

// Sizes to expect (own computation of the method): 50 mL/m2 at 25 C, 50 %, wind
// 2 m/s: about 22 min in the shade, about 4 min in 800 W/m2 on a dark panel.
func TestSizesToExpect(t *testing.T) {
	a := air.OfHumidity(quantity.Celsius(25), 0.5, sea)
	around := panel.Around(a, 2, sky.Emissivity(a.DewPoint(), model.ClearSky))
	film := 50 * quantity.MillilitrePerSquareMetre
	shade := panel.DryTime(film, around.Wet(panel.Load{SkyView: 0.5}).Evaporation)
	assert.InDelta(t, 22, shade.Minutes(), 3)
	sunny := quantity.Irradiance(800 * panel.Absorptance(model.DarkColour))
	dark := panel.DryTime(film, around.Wet(panel.Load{Absorbed: sunny, SkyView: 0.5}).Evaporation)
	assert.InDelta(t, 4, dark.Minutes(), 0.8)
}

type scene struct {
	air  air.State
	wind quantity.Speed
	load panel.Load
	sky  quantity.Fraction
}

func draw(t *rapid.T) scene {
	return scene{
		air: air.OfHumidity(
			quantity.Celsius(rapid.Float64Range(-10, 48).Draw(t, "air")),
			quantity.Fraction(rapid.Float64Range(0.03, 1).Draw(t, "rh")),
			quantity.Pressure(rapid.Float64Range(70e3, 105e3).Draw(t, "pressure"))),
		wind: quantity.Speed(rapid.Float64Range(0, 20).Draw(t, "wind")),
		sky:  quantity.Fraction(rapid.Float64Range(0.6, 1).Draw(t, "sky")),
		load: panel.Load{
			Absorbed: quantity.Irradiance(rapid.Float64Range(0, 1000).Draw(t, "sun")),
			SkyView:  quantity.Fraction(rapid.Float64Range(0, 1).Draw(t, "view")),
		},
	}
}

func (s scene) wet() panel.Wet { return panel.Around(s.air, s.wind, s.sky).Wet(s.load) }

// The balance closes by an independent sum.
func TestBalanceCloses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := draw(t)
		got := s.wet()
		kelvin, about := float64(got.Temperature), float64(s.air.Temperature())
		black := func(k float64) float64 { return 5.670374419e-8 * math.Pow(k, 4) }
		incoming := black(about) * (1 - float64(s.load.SkyView) + float64(s.load.SkyView*s.sky))
		gain := float64(s.load.Absorbed) + 0.95*(incoming-black(kelvin)) + float64(panel.Convection(s.wind))*(about-kelvin)
		spent := float64(got.Evaporation) * float64(air.LatentHeat(got.Temperature))
		require.InDelta(t, gain, spent, 0.5+1e-3*math.Abs(spent))
	})
}

// Limit: no sun and no sky loss, little radiation against the wind: the wet bulb.
// Above freezing, since below it the wet bulb is over ice.
func TestShadedPanelIsAtTheWetBulb(t *testing.T) {
	for _, c := range []struct{ t, rh float64 }{{25, 0.5}, {35, 0.1}, {10, 0.9}, {20, 0.2}, {45, 0.05}} {
		a := air.OfHumidity(quantity.Celsius(c.t), quantity.Fraction(c.rh), sea)
		got := panel.Around(a, 30, 1).Wet(panel.Load{}).Temperature
		assert.InDelta(t, a.WetBulb().Celsius(), got.Celsius(), 1, c)
	}
}

func TestPanelIsNeverBelowTheWetBulbWithoutSkyLoss(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := draw(t)
		s.sky = 1
		if wet := s.air.WetBulb(); wet > 273.2 {
			require.GreaterOrEqual(t, float64(s.wet().Temperature), float64(wet)-2e-3)
		}
	})
}

func TestSaturatedAirDriesNothing(t *testing.T) {
	for _, wind := range []quantity.Speed{0, 2, 10} {
		a := air.OfHumidity(quantity.Celsius(20), 1, sea)
		got := panel.Around(a, wind, 1).Wet(panel.Load{SkyView: 1})
		assert.InDelta(t, 20, got.Temperature.Celsius(), 2e-3)
		assert.InDelta(t, 0, got.Evaporation.MillimetresPerHour(), 1e-4)
	}
}

func TestDewFallsInAClearCalmNight(t *testing.T) {
	a := air.OfHumidity(quantity.Celsius(15), 0.95, sea)
	got := panel.Around(a, 0, sky.Emissivity(a.DewPoint(), model.ClearSky)).Wet(panel.Load{SkyView: 1})
	assert.Negative(t, got.Evaporation)
	assert.True(t, math.IsInf(float64(panel.DryTime(1e-6, got.Evaporation)), 1))
}

func TestMoreSunNeverDriesSlower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := draw(t)
		less := s.wet()
		s.load.Absorbed += quantity.Irradiance(rapid.Float64Range(1, 300).Draw(t, "more"))
		require.Greater(t, s.wet().Evaporation, less.Evaporation)
	})
}

func TestWarmerAirOfTheSameDewPointNeverDriesSlower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := draw(t)
		less := s.wet()
		warmer := s.air.Temperature() + quantity.Temperature(rapid.Float64Range(0.1, 10).Draw(t, "warmer"))
		s.air = air.OfDew(warmer, s.air.DewPoint(), s.air.Pressure())
		require.Greater(t, s.wet().Evaporation, less.Evaporation)
	})
}

func TestMoreWindNeverDriesSlowerWhereThePanelIsNoWarmerThanTheAir(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := draw(t)
		less := s.wet()
		s.wind += quantity.Speed(rapid.Float64Range(0.1, 10).Draw(t, "more"))
		if less.Temperature <= s.air.Temperature() && less.Evaporation > 0 {
			require.GreaterOrEqual(t, float64(s.wet().Evaporation), float64(less.Evaporation)-1e-8)
		}
	})
}

// Where physics does not say so: in cool saturated air wind cools a sunny
// panel, and it dries slower.
func TestWindMaySlowTheDryingOfASunnyPanel(t *testing.T) {
	a := air.OfHumidity(quantity.Celsius(5), 1, sea)
	load := panel.Load{Absorbed: 800}
	assert.Greater(t, panel.Around(a, 3, 1).Wet(load).Evaporation, 1.05*panel.Around(a, 10, 1).Wet(load).Evaporation)
}

func TestADarkerColourIsNeverCooler(t *testing.T) {
	for i, colour := range model.Colours()[1:] {
		assert.Greater(t, panel.Absorptance(colour), panel.Absorptance(model.Colours()[i]))
	}
}

func TestNoFilmIsDry(t *testing.T) {
	assert.Zero(t, panel.DryTime(0, 0))
}

// At an even rate all that is wetted lasts as long; a rate that rises in a straight line
// from nothing leaves rate t2 / 2 behind it, so 1 kg/m2 at 2e-6 kg/(m2 s2) lasts 1000 s
// (Galileo's law of even acceleration; any book of mechanics).
func TestTheFilmDriesAsTheDayGoesOn(t *testing.T) {
	const film, step = quantity.Film(1 / 998.2), quantity.Duration(100)
	even := []quantity.Evaporation{1e-3, 1e-3, 1e-3}
	for _, lasts := range panel.DryTimes(film, even, step) {
		assert.InDelta(t, float64(panel.DryTime(film, 1e-3)), float64(lasts), 1e-9)
	}
	rising := make([]quantity.Evaporation, 30)
	for i := range rising {
		rising[i] = quantity.Evaporation(2e-6 * 100 * float64(i))
	}
	assert.InDelta(t, 1000, float64(panel.DryTimes(film, rising, step)[0]), 1e-6)
	assert.InDelta(t, 500, float64(panel.DryTimes(film, rising, 50)[5]), 1e-6, "1e-3 t + 2e-6 t2 = 1")
	dew := []quantity.Evaporation{-1, -1, 1e-3, 1e-3}
	assert.InDelta(t, 150+1000, float64(panel.DryTimes(film, dew, step)[0]), 1e-6)
	assert.True(t, math.IsInf(float64(panel.DryTimes(film, []quantity.Evaporation{1e-3, -1}, step)[0]), 1))
}

// What is wetted later is never dry sooner, and the water that went by then is the film's.
func TestWhatIsWettedLaterIsDryLater(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var rates []quantity.Evaporation
		for range rapid.IntRange(1, 40).Draw(t, "moments") {
			rates = append(rates, quantity.Evaporation(rapid.IntRange(-100, 1000).Draw(t, "rate"))*1e-6)
		}
		film := quantity.Film(rapid.Float64Range(0, 2e-3).Draw(t, "film"))
		dry := 0.0
		for i, lasts := range panel.DryTimes(film, rates, 900) {
			at := 900*float64(i) + float64(lasts)
			require.GreaterOrEqual(t, at, dry-1e-6)
			dry = at
			if !math.IsInf(at, 1) {
				require.InEpsilon(t, 1+998.2*float64(film), 1+evaporated(rates, float64(i), at/900)*900, 1e-3)
			}
		}
	})
}

// evaporated sums rates from one moment to another, in steps of their distance, by the
// midpoint rule.
func evaporated(rates []quantity.Evaporation, from, to float64) float64 {
	const parts = 20000
	sum, width := 0.0, (to-from)/parts
	for n := range parts {
		at := from + (float64(n)+0.5)*width
		i := min(int(at), len(rates)-1)
		a, b := float64(max(0, rates[i])), float64(max(0, rates[min(i+1, len(rates)-1)]))
		sum += (a + (b-a)*(min(at, float64(len(rates)-1))-float64(i))) * width
	}
	return sum
}

func BenchmarkWet(b *testing.B) {
	a := air.OfHumidity(quantity.Celsius(25), 0.5, sea)
	around := panel.Around(a, 2, 0.83)
	for b.Loop() {
		around.Wet(panel.Load{Absorbed: 600, SkyView: 0.5})
	}
}
