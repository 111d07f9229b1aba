package bed

import (
	"math"

	"washeve/model/quantity"
)

// Constants of a mixed bed.
const (
	// Voids is the part of the resin's volume that is water. PRACTICE.
	Voids quantity.Fraction = 0.38
	// Bead is the diameter of the beads. PRACTICE.
	Bead = 0.6 * quantity.Millimetre
	// CationShare is the cation resin's part of the volume.
	// PUBLISHED: DOE-HDBK-1015/2-93, Chemistry, module 4 (about 2 parts cation
	// to 3 parts anion resin).
	CationShare quantity.Fraction = 0.4
	// RatedService is the flow at which a stated capacity holds where the maker
	// does not say. PRACTICE.
	RatedService = 3 * quantity.GPMPerCubicFoot
	// EndPoint is the outlet over feed at which a stated capacity is counted as
	// used where the maker does not say. PRACTICE.
	EndPoint quantity.Fraction = 0.05
	// FreeShare is the water over and under the resin, as a part of the resin's
	// volume, where it is not stated: a tank filled to two thirds. PRACTICE.
	FreeShare quantity.Fraction = 0.5
	// FlushFactor is how many times the standing water must be replaced before
	// a reading counts. PRACTICE.
	FlushFactor = 1.5

	// LowestReynolds bounds the correlation behind [Tank.Units] from below.
	LowestReynolds = 0.0016
	// HighestReynolds bounds it from above.
	HighestReynolds = 55.0
)

// Tank is the shape of a bed.
type Tank struct {
	Resin    quantity.Volume
	Diameter quantity.Length // inside
}

// UsualDiameter gives the inside diameter of a tank in the proportions of the
// common half cubic foot in 8 in. PRACTICE.
func UsualDiameter(resin quantity.Volume) quantity.Length {
	return 8 * quantity.Inch * quantity.Length(math.Cbrt(float64(resin/(0.5*quantity.CubicFoot))))
}

// Area is the tank's cross section.
func (t Tank) Area() quantity.Area {
	d := float64(t.Diameter)
	return quantity.Area(math.Pi / 4 * d * d)
}

// Depth is how high the resin stands.
func (t Tank) Depth() quantity.Length {
	return quantity.Length(float64(t.Resin) / float64(t.Area()))
}

// Velocity is the superficial velocity at a flow.
func (t Tank) Velocity(f quantity.Flow) quantity.Speed {
	return quantity.Speed(float64(f) / float64(t.Area()))
}

// ContactTime is the empty-bed contact time at a flow.
func (t Tank) ContactTime(f quantity.Flow) quantity.Duration {
	return quantity.Duration(float64(t.Resin) / float64(f))
}

// Units is the number of transfer units N = k a L/u at a flow, for the
// diffusion coefficient of the slowest cation at the water's temperature and
// the cation resin's share of the beads.
//
// k: Wilson and Geankoplis, Ind. Eng. Chem. Fundam. 5 (1966) 9, liquids,
// 0.0016 < Re < 55: Sh = (1.09/eps)(Re Sc)^(1/3). PUBLISHED. Re on superficial
// velocity and bead diameter; the viscosity drops out of Re Sc.
// a = share 6 (1 - eps)/d.
func (t Tank) Units(f quantity.Flow, diffusion quantity.Diffusivity, share quantity.Fraction) float64 {
	u, d, depth := float64(t.Velocity(f)), float64(Bead), float64(t.Depth())
	eps, diff := float64(Voids), float64(diffusion)
	k := 1.09 / eps * math.Cbrt(u*d/diff) * diff / d
	a := float64(share) * 6 * (1 - eps) / d
	return k * a * depth / u
}

// Reynolds is the Reynolds number of the flow around the beads.
func (t Tank) Reynolds(f quantity.Flow, nu quantity.KinematicViscosity) float64 {
	return float64(t.Velocity(f)) * float64(Bead) / float64(nu)
}

// Standing is the water that stands in the tank and in the hose after it.
func (t Tank) Standing(freeSpace, hose quantity.Volume) quantity.Volume {
	return quantity.Volume(Voids)*t.Resin + freeSpace + hose
}
