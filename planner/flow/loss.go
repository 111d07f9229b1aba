// Package flow finds what the water does between the tap and the sprayer: the
// pressure that each part takes, and the flow at which the push and the losses
// balance.
package flow

import (
	"math"

	"washeve/model/quantity"
	"washeve/planner/water"
)

const (
	gravity = 9.80665 // m/s2, standard

	// waterDensity is that of water at 15 C, in kg/m3 (IAPWS-95). Hoses, fittings
	// and heights take it at every temperature: it errs by 1 % at 45 C, far below
	// the error of the formulas.
	waterDensity = 999.1026

	hoseExponent = 1.852
	boreExponent = 4.871

	// hazenWilliams is 4.727 in feet and cubic feet a second, turned into metres:
	// times 0.3048^(boreExponent - 3 hoseExponent).
	hazenWilliams = 10.666829488930048
)

// HoseRoughness is the Hazen-Williams C of a smooth hose. MEMORY: 140 for plastic
// and smooth rubber, handbooks of hydraulics.
const HoseRoughness = 140

// HazenWilliams is the friction of a straight hose.
//
// h = 4.727 L q^1.852/(C^1.852 d^4.871), h, L, d in feet, q in ft3/s. PUBLISHED:
// the form that EPANET 2.3.5 computes (Rossman, EPANET 2 Users Manual,
// EPA/600/R-00/057, 2000). For water near 15 C in turbulent flow; against
// smooth-wall Darcy-Weisbach within 15 % for bores of 1/2 to 3/4 in at Reynolds
// numbers from 4000 to 55000. It is not meant for laminar flow, where the loss
// is too small to matter.
func HazenWilliams(flow quantity.Flow, bore, length quantity.Length, roughness float64) quantity.Pressure {
	return quantity.Pressure(hoseLoss(bore, length, roughness) * math.Pow(float64(flow), hoseExponent))
}

// hoseLoss is in Pa for each (m3/s)^1.852.
func hoseLoss(bore, length quantity.Length, roughness float64) float64 {
	head := hazenWilliams * float64(length) / (math.Pow(roughness, hoseExponent) * math.Pow(float64(bore), boreExponent))
	return head * waterDensity * gravity
}

// Ergun is the pressure that a packed bed of beads takes, at a superficial
// velocity (flow over the empty cross-section).
//
// dp/L = 150 mu v (1-e)2/(e3 d2) + 1.75 rho v2 (1-e)/(e3 d). PUBLISHED: Ergun,
// Chem. Eng. Prog. 48 (1952) 89. For beads of one size and rho v d/(mu (1-e)) up
// to about 2500; good to some 25 % in a clean bed, more once fines collect.
func Ergun(velocity quantity.Speed, depth, bead quantity.Length, voids quantity.Fraction, t quantity.Temperature) quantity.Pressure {
	viscous, inertial := ergun(depth, bead, voids, float64(water.Density(t)), float64(water.Viscosity(t)))
	v := float64(velocity)
	return quantity.Pressure(viscous*v + inertial*v*v)
}

// ergun gives the factors of the velocity and of its square.
func ergun(depth, bead quantity.Length, voids quantity.Fraction, density, viscosity float64) (viscous, inertial float64) {
	l, d, e := float64(depth), float64(bead), float64(voids)
	viscous = 150 * viscosity * l * (1 - e) * (1 - e) / (e * e * e * d * d)
	inertial = 1.75 * density * l * (1 - e) / (e * e * e * d)
	return viscous, inertial
}

// fittingLoss is what a coupling or a tank's head takes, in Pa for each (m3/s)2: K rho v2/2,
// v in its bore. PUBLISHED: any text on hydraulics; the K values carry their own tags.
func fittingLoss(bore quantity.Length, k float64) float64 {
	area := math.Pi / 4 * float64(bore) * float64(bore)
	return k * waterDensity / (2 * area * area)
}
