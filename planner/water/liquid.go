package water

import (
	"math"

	"washeve/model/quantity"
)

// Density of water at 1 atm, for 0 to 60 C.
//
// G. S. Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16: a polynomial of the
// fifth degree in degrees C over a linear one. MEMORY: the coefficients stand in
// several public programs; the paper was not opened. Within 0.0004 % of
// IAPWS-95 over the range.
func Density(t quantity.Temperature) quantity.Density {
	c := t.Celsius()
	above := 999.83952 + c*(16.945176+c*(-7.9870401e-3+c*(-46.170461e-6+c*(105.56302e-9-280.54253e-12*c))))
	return quantity.Density(above / (1 + 16.879850e-3*c))
}

// Viscosity of water (dynamic) at 1 atm, for 0 to 60 C.
//
// Four powers of T/300 K: J. Patek and others, J. Phys. Chem. Ref. Data 38
// (2009) 21, equation for 0.1 MPa, given for 253 to 383 K and taken over by
// IAPWS. MEMORY: not opened. Within 0.003 % of the IAPWS R12-08 formulation,
// which itself is good to 1 %.
func Viscosity(t quantity.Temperature) quantity.Viscosity {
	r := float64(t) / 300
	micro := 280.68*math.Pow(r, -1.9) + 511.45*math.Pow(r, -7.7) + 61.131*math.Pow(r, -19.6) + 0.45903*math.Pow(r, -40)
	return quantity.Viscosity(micro * 1e-6)
}

// KinematicViscosity of water at 1 atm, for 0 to 60 C: viscosity over density.
func KinematicViscosity(t quantity.Temperature) quantity.KinematicViscosity {
	return quantity.KinematicViscosity(float64(Viscosity(t)) / float64(Density(t)))
}
