package bed

import (
	"math"

	"washeve/model/quantity"
)

// What a change of resin rests on.
const (
	// ShippedLow and ShippedHigh bound the weight of moist mixed-bed resin by
	// volume, as it comes in the bag. PRACTICE: about 43 to 45 lb/ft3.
	ShippedLow  = 43 * quantity.Density(quantity.PoundPerCubicFoot)
	ShippedHigh = 45 * quantity.Density(quantity.PoundPerCubicFoot)
	// UsualBag is the bag where nobody says. PRACTICE.
	UsualBag = 0.5 * quantity.CubicFoot
	// FirstFill is the flow over the resin at which a fresh tank is filled, so
	// that the air gets out and the beads lie close. PRACTICE.
	FirstFill = 1 * quantity.GPMPerCubicFoot
)

// Bags is the resin to buy for a fill.
type Bags struct {
	Count  int
	Bought quantity.Volume
	Left   quantity.Volume // over after the fill
	// Low and High bound the weight of what is bought, FillLow and FillHigh that
	// of what goes into the tank.
	Low, High         quantity.Mass
	FillLow, FillHigh quantity.Mass
}

// BagsFor is how many bags of a size a fill takes: whole bags, and what is left
// over. The weights are those of the resin as shipped. Without a size there are
// none.
func BagsFor(resin, bag quantity.Volume) Bags {
	const slack = 1e-6 // two bags of half a cubic foot are one cubic foot
	if !(resin > 0) || !(bag > 0) || math.IsInf(float64(resin/bag), 0) {
		return Bags{}
	}
	count := math.Ceil(float64(resin/bag) - slack)
	b := Bags{Count: int(count), Bought: quantity.Volume(count) * bag}
	b.Left = max(b.Bought-resin, 0)
	b.Low, b.High = weighed(b.Bought)
	b.FillLow, b.FillHigh = weighed(resin)
	return b
}

func weighed(resin quantity.Volume) (low, high quantity.Mass) {
	return quantity.Mass(float64(ShippedLow) * float64(resin)), quantity.Mass(float64(ShippedHigh) * float64(resin))
}

// WaterWeight is the weight of the water in the tank, between the beads and over
// and under them: the most that draining saves before it is lifted. Part of it
// clings to the beads.
func (t Tank) WaterWeight(free quantity.Volume, water quantity.Density) quantity.Mass {
	return quantity.Mass(float64(t.Standing(free, 0)) * float64(water))
}

// Freeboard is the height that a free space takes over the resin.
func (t Tank) Freeboard(free quantity.Volume) quantity.Length {
	return quantity.Length(float64(free) / float64(t.Area()))
}

// FirstFlow is the slow flow of the first fill.
func (t Tank) FirstFlow() quantity.Flow {
	return quantity.Flow(float64(FirstFill) * float64(t.Resin))
}
