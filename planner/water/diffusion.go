package water

import "washeve/model/quantity"

// Cation is an ion that the cation resin takes up.
type Cation string

// The cations that matter for how fast a bed exchanges.
const (
	Sodium  Cation = "sodium"
	Calcium Cation = "calcium"
)

// Constants of nature. PUBLISHED: CODATA 2018.
const (
	gasConstant     = 8.314462618 // J/(mol K)
	faradayConstant = 96485.33212 // C/mol
)

// slowShare is the part of the cations from which calcium counts as the slowest
// cation of the feed. PRACTICE: below 5 %, all of it could come through and the
// outlet would still be under the usual end point.
const slowShare = 0.05

// Diffusivity of a cation in water at infinite dilution.
//
// D = R T L/(F2 z) at 25 C with the limiting conductance L an equivalent
// (Nernst; CRC Handbook, section 5: sodium 1.334e-9, calcium 0.792e-9 m2/s),
// scaled by T over the viscosity (Stokes and Einstein; within some 3 % for
// 0 to 60 C).
func Diffusivity(c Cation, t quantity.Temperature) quantity.Diffusivity {
	conductance, charge := conductanceSodium, 1.0
	if c == Calcium {
		conductance, charge = conductanceCalcium, 2
	}
	const squareCentimetre = 1e-4
	at := quantity.Celsius(25)
	d := gasConstant * float64(at) * conductance * squareCentimetre / (faradayConstant * faradayConstant * charge)
	warmer := float64(t) / float64(at) * float64(Viscosity(at)) / float64(Viscosity(t))
	return quantity.Diffusivity(d * warmer)
}
