package water

import (
	"math"

	"washeve/model/quantity"
)

// Limiting conductances of ions at 25 C, in S cm2/eq. PUBLISHED: CRC Handbook
// of Chemistry and Physics, section 5, ionic conductivity and diffusion at
// infinite dilution.
const (
	conductanceSodium      = 50.08
	conductanceCalcium     = 59.47
	conductanceMagnesium   = 53.0
	conductanceChloride    = 76.31
	conductanceBicarbonate = 44.5

	// PRACTICE: of three equivalents of hardness two are calcium.
	calciumShare = 2.0 / 3

	conductanceHardness = calciumShare*conductanceCalcium + (1-calciumShare)*conductanceMagnesium
)

// Onsager's limiting law in water at 25 C. MEMORY: Onsager, Phys. Z. 28 (1927)
// 277, with the constants as in Robinson and Stokes, Electrolyte Solutions,
// 1959, chapter 7.
const (
	braking    = 30.1  // S cm2/eq for each charge of an ion, times sqrt(I)
	relaxation = 0.229 // part of the conductance, times sqrt(I), 1:1
	// The relaxation of a salt of a doubly charged cation over that of a 1:1
	// salt, from Onsager's general expression: 1.76 with chloride, 1.89 with
	// bicarbonate.
	doubleCharge = 1.8
)

// Ions is the load of a water by ion, cations and anions each adding up to the
// whole. What was not measured is counted as sodium and chloride.
type Ions struct {
	Hardness, Sodium      quantity.Load
	Bicarbonate, Chloride quantity.Load
}

// Total is the load of the cations, which is that of the anions.
func (i Ions) Total() quantity.Load { return i.Hardness + i.Sodium }

// Conductivity of the ions at 25 C.
//
// Sum over the ions of load x conductance, where the limiting conductance is
// lowered by (30.1 z + 0.229 r L0) s, s = sqrt(I)/(1 + sqrt(I)), I the ionic
// strength in mol/L, z the charge and r 1 in a 1:1 salt (so that for sodium
// chloride the lowering is (60.2 + 0.229 L0) s) and 1.8 for a salt of calcium
// or magnesium. The denominator is the size of the ions (Falkenhagen, about
// 0.3 nm, MEMORY); without it the law is good to 0.005 eq/L only. Within 0.5 % of the
// CRC's table for NaCl up to 0.02 and 1 % up to 0.05 eq/L, and within 1 % for
// CaCl2 up to 0.01 eq/L.
func (i Ions) Conductivity() quantity.Conductivity {
	total := i.Total()
	if !(total > 0) {
		return 0
	}
	strength := (total + i.Hardness/2).MilliEqPerLitre() / 1000
	s := math.Sqrt(strength) / (1 + math.Sqrt(strength))
	drag := 1 + (doubleCharge-1)*float64(i.Hardness/total)
	sum := float64(i.Hardness)*lowered(conductanceHardness, 2, doubleCharge, s) +
		float64(i.Sodium)*lowered(conductanceSodium, 1, 1, s) +
		float64(i.Bicarbonate)*lowered(conductanceBicarbonate, 1, drag, s) +
		float64(i.Chloride)*lowered(conductanceChloride, 1, drag, s)
	const squareCentimetre = 1e-4
	return quantity.Conductivity(sum * squareCentimetre)
}

func lowered(limiting, charge, drag, s float64) float64 {
	return limiting - (braking*charge+relaxation*drag*limiting)*s
}

// NaClConductivity is that of sodium chloride alone, at 25 C. See
// [Ions.Conductivity] for the formula and its accuracy.
func NaClConductivity(c quantity.Load) quantity.Conductivity {
	return Ions{Sodium: c, Chloride: c}.Conductivity()
}

// fill makes the ions of a water: hardness and bicarbonate as far as the total
// goes, sodium and chloride the rest.
func fill(total, hardness, bicarbonate quantity.Load) Ions {
	return Ions{
		Hardness: hardness, Sodium: total - hardness,
		Bicarbonate: bicarbonate, Chloride: total - bicarbonate,
	}
}

// solveTotal finds the load whose ions conduct as much as the pen read. Where
// hardness and bicarbonate alone conduct that much or more, it is the larger of
// the two.
func solveTotal(ec quantity.Conductivity, hardness, bicarbonate quantity.Load) quantity.Load {
	low := max(hardness, bicarbonate)
	// No ion conducts less than 25 S cm2/eq in water that a pen can read.
	high := low + quantity.Load(float64(ec)/25e-4)
	for range 60 {
		middle := (low + high) / 2
		if fill(middle, hardness, bicarbonate).Conductivity() < ec {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}
