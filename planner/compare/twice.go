package compare

import (
	"math"
	"strconv"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// twice is a bed of twice the resin in the same proportions, freshly filled, at
// twice the price. What its maker would state as most is not known.
func twice(b model.Bed, p planner.Plan) model.Bed {
	big := b
	big.Resin = written[quantity.Volume](2*p.Bed.Resin.CubicFeet(), "ft3")
	if across, given := b.Diameter.Get(); given {
		big.Diameter = written[quantity.Length](math.Cbrt(2)*across.Inches(), "in")
	}
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

// written is a quantity as a person would write it into a file, to five digits.
func written[Q quantity.Quantity](number float64, unit string) quantity.Opt[Q] {
	text := strconv.FormatFloat(number, 'g', 5, 64) + " " + unit
	q, err := quantity.Parse[Q](text)
	if err != nil {
		return quantity.Opt[Q]{}
	}
	return quantity.Typed(q, text)
}
