package bed

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
)

// Capacities of mixed-bed resin by volume where nothing is stated. PRACTICE.
const (
	NewResin         = 10000 * quantity.GrainPerCubicFoot
	RegeneratedResin = 9000 * quantity.GrainPerCubicFoot
)

// Rated is the condition at which a stated capacity holds.
type Rated struct {
	Flow     quantity.Flow
	EndPoint quantity.Fraction
	Units    float64 // transfer units at that flow and 25 C
}

// PerVolume is the capacity by volume of resin that nobody stated.
func PerVolume(state model.ResinState) quantity.CapacityDensity {
	if state == model.RegeneratedResin {
		return RegeneratedResin
	}
	return NewResin
}

// UsedFraction is the part of the stoichiometric capacity that a bed of n
// transfer units gives up to the end point, from fresh, at one flow: the
// closed form of [Column] solved for T.
func UsedFraction(n float64, end quantity.Fraction) float64 {
	return Column{}.Until(n, float64(end))
}

// leastUsed keeps a bed that leaks past its end point from the first drop from
// standing for an endless capacity.
const leastUsed = 0.05

// Stoichiometric turns a stated, operating capacity into the whole exchange
// capacity, so that use at the rated condition gives the stated one back.
func (r Rated) Stoichiometric(stated quantity.Capacity) quantity.Capacity {
	return stated / quantity.Capacity(math.Max(UsedFraction(r.Units, r.EndPoint), leastUsed))
}

// Operating is the inverse of [Rated.Stoichiometric].
func (r Rated) Operating(whole quantity.Capacity) quantity.Capacity {
	return whole * quantity.Capacity(math.Max(UsedFraction(r.Units, r.EndPoint), leastUsed))
}

// ResinData is what a data sheet states of the two resins of a mixed bed.
type ResinData struct {
	Cation, Anion                       quantity.CapacityDensity // total, of each resin
	CationRegenerated, AnionRegenerated quantity.Fraction
	CationShare                         quantity.Fraction
}

// Whole is the exchange capacity of v of mixed resin. The scarcer side limits.
func (d ResinData) Whole(v quantity.Volume) (whole quantity.Capacity, anionLimits bool) {
	cation := d.Cation.Of(v) * quantity.Capacity(d.CationShare*d.CationRegenerated)
	anion := d.Anion.Of(v) * quantity.Capacity((1-d.CationShare)*d.AnionRegenerated)
	if anion < cation {
		return anion, true
	}
	return cation, false
}

// ImpliedFeed is the water that "good for so many gallons" means for a bed of
// a capacity: half a cubic foot at the usual capacity, sold as good for 1500
// gallons, means 57 mg/L as CaCO3.
func ImpliedFeed(capacity quantity.Capacity, goodFor quantity.Volume) quantity.Hardness {
	return quantity.Hardness(float64(capacity) / float64(goodFor))
}
