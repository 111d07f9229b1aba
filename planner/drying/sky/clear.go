// Package sky is the light that falls on a face, and the cold of the sky.
package sky

import (
	"math"

	"washeve/model/quantity"
	"washeve/planner/drying/sun"
)

// Light is the sunlight near the ground.
type Light struct {
	Beam    quantity.Irradiance // on a surface square to the sun
	Diffuse quantity.Irradiance // from the sky on a level surface
	height  float64             // sine of the sun's altitude
}

// Global is all that falls on a level surface.
func (l Light) Global() quantity.Irradiance {
	return l.Diffuse + l.Beam*quantity.Irradiance(l.height)
}

// Turbidity is the Linke turbidity taken for a clear sky: how many clean, dry
// airs would dim the beam as much. MEMORY: 2 cold and clean, 3 warm and clean,
// 4 to 6 moist or stale (F. Kasten, Solar Energy 56 (1996) 239). 3 leans to
// more sun and so to quicker drying.
const Turbidity = 3

// FromClear is the light of a clear sky, by P. Ineichen and R. Perez, Solar
// Energy 73 (2002) 151, eq. 8 and 11, with the air mass of F. Kasten and A.
// Young, Applied Optics 28 (1989) 4735. PUBLISHED, as quoted in the pvlib
// documentation, whose check values the tests use. For turbidity 2 to 7,
// elevation 0 to 7000 m and the sun above the horizon; hourly sums within
// about 5 % where the turbidity is right. Below the horizon it is dark.
func FromClear(p sun.Position, elevation quantity.Length) Light {
	seen := p.Apparent()
	if seen <= 0 {
		return Light{}
	}
	z := max(0, elevation.Metres())
	mass := AirMass(seen) * math.Pow(1-2.25577e-5*z, 5.25588)
	return fromTurbid(float64(p.Space), math.Sin(float64(seen)), mass, z, Turbidity)
}

// fromTurbid takes W/m2, the sine of the altitude, the absolute air mass,
// metres and the turbidity.
func fromTurbid(space, height, mass, z, turbidity float64) Light {
	low, near := math.Exp(-z/8000), math.Exp(-z/1250)
	global := (5.09e-5*z + 0.868) * space * height *
		math.Exp(-(3.92e-5*z+0.0387)*mass*(low+near*(turbidity-1)))
	beam := (0.664 + 0.163/low) * space * math.Exp(-0.09*mass*(turbidity-1))
	most := global / height * (1 - (0.1-0.2*math.Exp(-turbidity))/(0.1+0.882/low))
	beam = min(beam, most)
	return Light{
		Beam:    quantity.Irradiance(beam),
		Diffuse: quantity.Irradiance(global - beam*height),
		height:  height,
	}
}

// AirMass is how many times the air overhead the beam passes: 1 with the sun
// overhead, 38 at the horizon. Kasten and Young (1989). PUBLISHED, as quoted in
// the pvlib documentation.
func AirMass(apparent quantity.Angle) float64 {
	h := max(0, apparent.Degrees())
	return 1 / (math.Sin(h*math.Pi/180) + 0.50572*math.Pow(h+6.07995, -1.6364))
}

// Albedo is the share of light that the ground throws back. MEMORY: 0.2, the
// usual value for ground without snow (B. Liu and R. Jordan, Solar Energy 7
// (1963) 53). Concrete is nearer 0.3, fresh asphalt 0.1.
const Albedo = 0.2

// ShadeSky is the part of the sky that stays open to a face in the shade of a
// tree, an awning or a building. PRACTICE: half.
const ShadeSky = 0.5

// View is how a face looks at sky and ground.
type View struct {
	Sky    quantity.Fraction // share of the half-space before it that is open sky
	Ground quantity.Fraction
}

// ViewOf gives the view of a level or an upright face, in the open or in the
// shade. A sky evenly bright, as in Liu and Jordan (1963).
func ViewOf(level, shaded bool) View {
	v := View{Sky: 0.5, Ground: 0.5}
	if level {
		v = View{Sky: 1}
	}
	if shaded {
		v.Sky *= ShadeSky
	}
	return v
}

// Share is what falls on a face, by where it comes from.
type Share struct {
	Beam    quantity.Irradiance
	Diffuse quantity.Irradiance
	Ground  quantity.Irradiance
}

// Total is the irradiance of the face.
func (s Share) Total() quantity.Irradiance { return s.Beam + s.Diffuse + s.Ground }

// On splits the light on a face that meets the sun at a cosine of incidence.
// Shade takes away the beam and part of the diffuse light.
func (l Light) On(cosIncidence quantity.Fraction, view View, shaded bool) Share {
	s := Share{
		Diffuse: l.Diffuse * quantity.Irradiance(view.Sky),
		Ground:  l.Global() * Albedo * quantity.Irradiance(view.Ground),
	}
	if !shaded && cosIncidence > 0 {
		s.Beam = l.Beam * quantity.Irradiance(cosIncidence)
	}
	return s
}
