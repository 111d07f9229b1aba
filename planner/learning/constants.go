package learning

import (
	"strconv"

	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Constants lists the numbers that this package rests on, each with where it
// comes from.
func Constants() []tag.Assumption {
	practice := func(text string) tag.Source { return tag.Source{Tag: tag.Practice, Text: text} }
	return []tag.Assumption{
		tag.Text("true capacity over stated", "lognormal about 1, spread "+strconv.FormatFloat(CapacitySpread, 'g', -1, 64), practice("before any reading")),
		tag.Quantity("poorest contact", quantity.Fraction(LeastEfficiency), practice("channelling; most beds are near 100 %")),
		tag.Quantity("gallons so far may be off by", quantity.Fraction(ThroughputSpread), practice("nobody has a meter")),
		tag.Text("a pen errs by", "2 ppm and a quarter", practice("pens are sold as good to 2 ppm or 2 %; a quarter stands for the rest")),
	}
}
