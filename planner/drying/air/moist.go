// Package air is moist air: its humidity, its wet bulb, and its temperature
// through a day.
package air

import (
	"math"

	"washeve/model/quantity"
)

// ratio of the molar masses of water and dry air. PUBLISHED: 0.621945, ASHRAE
// Handbook - Fundamentals (2017), chapter 1, as used by testdata/reference.
const molarRatio = 0.621945

// State is moist air at rest. Its pressures are absolute.
type State struct {
	temperature, dew quantity.Temperature
	vapour, pressure quantity.Pressure
}

// OfHumidity is air of a relative humidity (0 to 1; over ice below 0.01 C) and
// pressure.
func OfHumidity(t quantity.Temperature, rh quantity.Fraction, p quantity.Pressure) State {
	vapour := SaturationPressure(t) * quantity.Pressure(rh)
	return State{temperature: t, dew: DewPoint(vapour), vapour: vapour, pressure: p}
}

// OfDew is air of a dew point and pressure. Air colder than the dew point is
// saturated.
func OfDew(t, dew quantity.Temperature, p quantity.Pressure) State {
	dew = min(t, dew)
	return State{temperature: t, dew: dew, vapour: SaturationPressure(dew), pressure: p}
}

// Temperature of the air.
func (s State) Temperature() quantity.Temperature { return s.temperature }

// Pressure of the air, absolute.
func (s State) Pressure() quantity.Pressure { return s.pressure }

// Vapour is the partial pressure of the water.
func (s State) Vapour() quantity.Pressure { return s.vapour }

// triplePoint of water in K, where the two curves below meet.
const triplePoint = 273.16

// SaturationPressure of water vapour over water, or over ice below 0.01 C, by R.
// Hyland and A. Wexler, ASHRAE Trans. 89(2A) (1983) 500: the equations of
// ASHRAE Fundamentals (2017), chapter 1, eq. 5 and 6. MEMORY, checked to
// 1 part in 100 000 against testdata/reference/psychrometrics.csv, -5 to 45 C.
// Range -100 to 200 C.
func SaturationPressure(t quantity.Temperature) quantity.Pressure {
	k := float64(t)
	if k < triplePoint {
		return quantity.Pressure(math.Exp(-5.6745359e3/k + 6.3925247 +
			k*(-9.677843e-3+k*(6.2215701e-7+k*(2.0747825e-9+k*-9.484024e-13))) + 4.1635019*math.Log(k)))
	}
	return quantity.Pressure(math.Exp(-5.8002206e3/k + 1.3914993 +
		k*(-4.8640239e-2+k*(4.1764768e-5+k*-1.4452093e-8)) + 6.5459673*math.Log(k)))
}

// slope of ln(saturation pressure) per kelvin, by Clausius and Clapeyron; an
// aid to root finding only.
func slope(t quantity.Temperature) float64 { return 5420 / (float64(t) * float64(t)) }

// DewPoint is the temperature at which this vapour pressure saturates (frost
// point below 0 C). It inverts [SaturationPressure] by Newton's method in ln p,
// to 1e-6 K. Without vapour it is 173.15 K, the lower end of the range.
func DewPoint(vapour quantity.Pressure) quantity.Temperature {
	const lowest = quantity.Temperature(173.15)
	if !(vapour > SaturationPressure(lowest)) {
		return lowest
	}
	wanted, t := math.Log(float64(vapour)), quantity.Temperature(283.15)
	for range 30 {
		step := (wanted - math.Log(float64(SaturationPressure(t)))) / slope(t)
		t = max(lowest, t+quantity.Temperature(step))
		if math.Abs(step) < 1e-6 {
			break
		}
	}
	return t
}

// DewPoint of the air.
func (s State) DewPoint() quantity.Temperature { return s.dew }

// RelativeHumidity over water, or over ice below 0 C.
func (s State) RelativeHumidity() quantity.Fraction {
	return quantity.Fraction(s.vapour / SaturationPressure(s.temperature))
}

// HumidityRatio of the air.
func (s State) HumidityRatio() quantity.HumidityRatio { return humidityRatio(s.vapour, s.pressure) }

// humidityRatio stops at nine tenths of the pressure: past it water boils, and
// no panel gets there.
func humidityRatio(vapour, p quantity.Pressure) quantity.HumidityRatio {
	vapour = min(vapour, 0.9*p)
	return quantity.HumidityRatio(molarRatio * vapour / (p - vapour))
}

// Saturated is the humidity ratio of saturated air of t at pressure p.
func Saturated(t quantity.Temperature, p quantity.Pressure) quantity.HumidityRatio {
	return humidityRatio(SaturationPressure(t), p)
}

// Heats of moist air and water in J/(kg K) and J/kg, from ASHRAE Fundamentals
// (2017), chapter 1, eq. 30 to 35, whose enthalpies start at 0 C. MEMORY,
// checked by the enthalpies of testdata/reference/psychrometrics.csv.
const (
	dryAirHeat    = 1006
	vapourHeat    = 1860
	waterHeat     = 4186
	iceHeat       = 2100
	latentAtZero  = 2501e3
	meltingAtZero = 333e3 // rounded as there
)

// LatentHeat of evaporation: 2501 - 2.326 t kJ/kg, t in C, what the enthalpies
// above leave. Within 0.2 % of steam tables from 0 to 50 C.
func LatentHeat(t quantity.Temperature) quantity.SpecificEnergy {
	return quantity.SpecificEnergy(latentAtZero - (waterHeat-vapourHeat)*t.Celsius())
}

// SpecificHeat of the air at constant pressure, a kilogram of dry air.
func (s State) SpecificHeat() quantity.SpecificHeat {
	return quantity.SpecificHeat(dryAirHeat + vapourHeat*float64(s.HumidityRatio()))
}

// Enthalpy of the air a kilogram of dry air, zero at 0 C and dry.
func (s State) Enthalpy() quantity.SpecificEnergy {
	t, w := s.temperature.Celsius(), float64(s.HumidityRatio())
	return quantity.SpecificEnergy(dryAirHeat*t + w*(latentAtZero+vapourHeat*t))
}

// WetBulb is the thermodynamic wet-bulb temperature: what a shaded wet panel
// takes on. It solves ASHRAE Fundamentals (2017), chapter 1, eq. 33 (eq. 35
// over ice), which is the balance
//
//	(cpa + W cpv)(T - T*) = (Ws(T*) - W) L(T*),
//
// by Newton's method kept between dew point and air temperature, to 1e-4 K.
func (s State) WetBulb() quantity.Temperature {
	low, high := min(s.dew, s.temperature), s.temperature
	w, heat := float64(s.HumidityRatio()), float64(s.SpecificHeat())
	t := (low + high) / 2
	for range 60 {
		saturated, latent := float64(Saturated(t, s.pressure)), latentAt(t)
		surplus := heat*float64(s.temperature-t) - (saturated-w)*latent
		if surplus > 0 {
			low = t
		} else {
			high = t
		}
		next := t + quantity.Temperature(surplus/(heat+latent*saturated*(1+saturated/molarRatio)*slope(t)))
		if !(next >= low && next <= high) {
			next = (low + high) / 2
		}
		done := math.Abs(float64(next-t)) < 4e-3 // the next step would be fifty times smaller
		t = next
		if done {
			break
		}
	}
	return t
}

// latentAt is the heat that water, or ice below 0 C, takes to become vapour
// when it is brought to its own temperature t.
func latentAt(t quantity.Temperature) float64 {
	if t < 273.15 {
		return latentAtZero + meltingAtZero + (vapourHeat-iceHeat)*t.Celsius()
	}
	return float64(LatentHeat(t))
}

// StandardPressure of the air at an elevation: 101325 (1 - 2.25577e-5 z)^5.25588
// Pa, z in metres; U.S. Standard Atmosphere (1976), ASHRAE Fundamentals (2017)
// chapter 1, eq. 3. MEMORY. From -500 to 11 000 m; weather moves it by 3 %.
func StandardPressure(elevation quantity.Length) quantity.Pressure {
	z := max(-500, min(11000, elevation.Metres()))
	return quantity.Pressure(101325 * math.Pow(1-2.25577e-5*z, 5.25588))
}
