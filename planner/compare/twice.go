package compare

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// twice is a bed of twice the resin in the same proportions, freshly filled, at
// twice the price. What its maker would state as most is not known.
func twice(b model.Bed, p planner.Plan) model.Bed {
	big := b
	big.Resin = quantity.Some(2 * p.Bed.Resin)
	big.Diameter = times(math.Cbrt(2), b.Diameter)
	big.GoodFor, big.RatedFlow, big.FreeSpace = times(2, b.GoodFor), times(2, b.RatedFlow), times(2, b.FreeSpace)
	if rating, given := b.Rating.Get(); given && rating.Total > 0 {
		big.Rating = quantity.Some(model.Rating{Total: 2 * rating.Total})
	}
	price := p.Cost.Fill
	if !price.Given() {
		price = b.Price
	}
	if money, given := price.Get(); given {
		money.Hundredths *= 2
		big.Price = quantity.Some(money)
	}
	big.MaxFlow, big.MaxPressure = quantity.Opt[quantity.Flow]{}, quantity.Opt[quantity.Pressure]{}
	big.SoFar = quantity.Some(quantity.Volume(0))
	big.LastReading, big.LastFlow, big.Flushed = quantity.Opt[quantity.Reading]{}, quantity.Opt[quantity.Flow]{}, ""
	return big
}
