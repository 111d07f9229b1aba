package learning

import (
	"strconv"

	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Constants lists the numbers that this package rests on, each with where it
// comes from.
func Constants() []tag.Assumption {
	practice := tag.FromPractice
	spread := func(v float64) string { return "spread " + strconv.FormatFloat(v, 'g', -1, 64) }
	return []tag.Assumption{
		tag.Text("true capacity over stated", "lognormal about 1, "+spread(CapacitySpread), practice("before any reading")),
		tag.Text("the same, from fill to fill of one user", "lognormal about the user's own, "+spread(FillSpread), practice("the same tank, seller and hand; the last "+strconv.Itoa(MostPast)+" fills count")),
		tag.Quantity("poorest contact", quantity.Fraction(LeastEfficiency), practice("channelling; most beds are near 100 %")),
		tag.Quantity("gallons so far may be off by", quantity.Fraction(ThroughputSpread), practice("nobody has a meter; one factor for all of a fill")),
		tag.Text("a pen errs by", "a quarter of its reading and 5 ppm, as a spread", practice("pens are sold as good to 2 ppm or 2 %; nine in ten are near zero within 2 ppm")),
		tag.Quantity("readings with a cause that no bed explains", quantity.Fraction(OddShare), practice("a bypass, a first cup, a slip")),
		tag.Text("your coverage rate over the usual one", "lognormal about 1, "+spread(PaceSpread), practice("before any logged wash")),
		tag.Text("coverage rate from wash to wash", "lognormal about your own, "+spread(HandSpread), practice("a hand is no machine")),
	}
}
