// Package panel is the heat balance of a dry or wet panel outdoors: how warm it
// is, and how fast its film dries.
//
// The panel is thin and insulated behind, as a coach's side is, so it has no
// store of heat and loses none inward; ground and trees are as warm as the air;
// the wind is the same on all faces, since nobody knows the lee.
// A metal skin follows the sun within some minutes.
package panel

import (
	"math"

	"washeve/model/quantity"
	"washeve/planner/drying/air"
)

const (
	// Emissivity of a painted or wet panel for long waves. MEMORY: paint 0.90
	// to 0.95, water 0.96 (any table of emissivities).
	Emissivity = 0.95

	// stefanBoltzmann in W/(m2 K4). PUBLISHED: CODATA 2018, 5.670374419e-8.
	stefanBoltzmann = 5.670374419e-8

	// lastStep in kelvins ends a search: the step after it is under a
	// thousandth of a kelvin, since Newton's steps shrink fifty times or more.
	lastStep = 0.02

	// waterDensity in kg/m3 at 20 C; 0.7 % less at 40 C is neglected.
	waterDensity = 998.2
)

// Convection is the heat transfer between a panel and the wind along it, by W.
// McAdams, Heat Transmission, 3rd ed. (1954), after Nusselt and Juerges (1922),
// smooth surface, in W/(m2 K) with V in m/s:
//
//	5.678 (0.99 + 0.21 V/0.3048)      V < 4.88
//	5.678 (0.50 (V/0.3048)^0.78)      4.88 to 30
//
// MEMORY. With 5 W/(m2 K) of radiation it gives the handbook's outdoor film
// coefficients (testdata/reference/evaporation.csv) within 10 %, and with the
// Lewis relation the pool evaporation there within 20 %. In dead calm it dries up
// to 2.2 times as fast as Shah's indoor pools; outdoors the air is seldom so still.
func Convection(wind quantity.Speed) quantity.HeatTransfer {
	v := max(0, wind.MetresPerSecond()) / 0.3048
	if v < 16 {
		return quantity.HeatTransfer(5.678 * (0.99 + 0.21*v))
	}
	return quantity.HeatTransfer(5.678 * 0.5 * math.Pow(v, 0.78))
}

// Surroundings is what all panels of a moment share.
type Surroundings struct {
	air      air.State
	transfer float64              // W/(m2 K)
	vapour   float64              // kg/(m2 s) per unit of humidity ratio
	ratio    float64              // humidity ratio of the air
	black    float64              // W/m2 from a black body as warm as the air
	sky      float64              // emissivity of the sky
	wetBulb  quantity.Temperature // near it the wet panel is looked for
}

// Around makes the surroundings from the air, the wind along the panels, and
// the sky's emissivity ([sky.Emissivity]; 1 is a sky as warm as the air).
//
// The Lewis relation gives the mass transfer from the heat transfer: h/(cpa + W
// cpv) a unit of humidity ratio, with Lewis number to the 2/3 taken as 1 (W.
// Lewis, Trans. ASME 44 (1922) 325. MEMORY; 0.9 would be nearer for water in
// air). So a panel without sun and sky loss is at the thermodynamic wet bulb.
//
// [sky.Emissivity]: washeve/planner/drying/sky#Emissivity
func Around(a air.State, wind quantity.Speed, sky quantity.Fraction) Surroundings {
	h := float64(Convection(wind))
	return Surroundings{
		air:      a,
		transfer: h,
		vapour:   h / float64(a.SpecificHeat()),
		ratio:    float64(a.HumidityRatio()),
		black:    stefanBoltzmann * math.Pow(float64(a.Temperature()), 4),
		sky:      float64(sky),
		wetBulb:  a.WetBulb(),
	}
}

// WetBulb is that of the air.
func (s Surroundings) WetBulb() quantity.Temperature { return s.wetBulb }

// Load is what one panel gets.
type Load struct {
	Absorbed quantity.Irradiance // sunlight turned into heat
	SkyView  quantity.Fraction   // share of the half-space before it that is open sky
}

// net is the heat into a panel of temperature t that holds no water, in W/m2,
// and its fall per kelvin.
func (s Surroundings) net(l Load, t float64) (heat, fall float64) {
	cube := stefanBoltzmann * t * t * t
	incoming := s.black * (1 - float64(l.SkyView)*(1-s.sky))
	heat = float64(l.Absorbed) + Emissivity*(incoming-cube*t) + s.transfer*(float64(s.air.Temperature())-t)
	return heat, 4*Emissivity*cube + s.transfer
}

// Dry is the temperature of the dry panel, to 1e-3 K.
func (s Surroundings) Dry(l Load) quantity.Temperature {
	t := float64(s.air.Temperature())
	for range 20 {
		heat, fall := s.net(l, t)
		t += heat / fall
		if math.Abs(heat/fall) < lastStep {
			break
		}
	}
	return quantity.Temperature(t)
}

// Wet is a wet panel in balance.
type Wet struct {
	Temperature quantity.Temperature
	Evaporation quantity.Evaporation // below zero dew falls on it
	Dry         quantity.Temperature // what the panel would be without water
}

// Wet finds the panel's temperature where sun, sky, air and evaporation
// balance, to 1e-3 K. The root lies between the dew point, where nothing
// evaporates, and the dry panel's temperature; Newton's steps are kept in there.
//
// More sun and a darker colour always dry faster, and so does warmer air of the
// same dew point. More wind dries faster where the wet panel is no warmer than
// the air, or the air is dry; a panel that the sun holds above the air is cooled
// by wind, and in cool damp air it then dries slower (5 C, saturated, 800 W/m2:
// by a twentieth from 3 to 10 m/s).
// Without sky loss the panel is never below the wet bulb; a clear sky takes a
// face in the shade below it, and in a calm night below the dew point.
func (s Surroundings) Wet(l Load) Wet {
	dry := s.Dry(l)
	low, high := float64(min(dry, s.air.DewPoint())), float64(max(dry, s.air.DewPoint()))
	t := max(low, min(high, float64(s.wetBulb)))
	for range 60 {
		w := s.wetAt(l, t)
		if w.heat > 0 {
			low = t
		} else {
			high = t
		}
		next := t + w.heat/w.fall
		if !(next >= low && next <= high) {
			next = (low + high) / 2
		}
		step := next - t
		t = next
		if math.Abs(step) < lastStep {
			return Wet{quantity.Temperature(t), quantity.Evaporation(w.evaporation + w.rise*step), dry}
		}
	}
	return Wet{quantity.Temperature(t), quantity.Evaporation(s.wetAt(l, t).evaporation), dry}
}

// trial is a wet panel held at a temperature.
type trial struct {
	heat, fall        float64 // W/m2 into it, and its fall per kelvin
	evaporation, rise float64 // kg/(m2 s), and its rise per kelvin
}

func (s Surroundings) wetAt(l Load, t float64) trial {
	heat, fall := s.net(l, t)
	saturated := float64(air.Saturated(quantity.Temperature(t), s.air.Pressure()))
	latent := float64(air.LatentHeat(quantity.Temperature(t)))
	evaporation := s.vapour * (saturated - s.ratio)
	// 5420 K/T2 is Clausius and Clapeyron's, good enough for a step.
	rise := s.vapour * saturated * (1 + saturated/0.622) * 5420 / (t * t)
	return trial{heat - latent*evaporation, fall + latent*rise, evaporation, rise}
}
