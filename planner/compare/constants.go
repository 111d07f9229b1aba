package compare

import (
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/bed"
	"washeve/planner/tag"
	"washeve/planner/water"
)

// Constants lists what the comparison rests on beside the plans behind it.
func Constants() []planner.Assumption {
	trade := tag.FromPractice
	return []planner.Assumption{
		tag.Text("two beds in series", "what leaves the first is the feed of the second; exact for any history", tag.Source{Tag: tag.Memory, Text: "film diffusion, one-way isotherm (Wicke; Perry's), derived for two beds"}),
		tag.Text("beds taken round", "the first one is used to its end", tag.Source{Tag: tag.Published, Text: "Davis, Water and Wastewater Engineering, 2010, fig. 8-4"}),
		tag.Quantity("ions held back by a membrane, where nobody says", water.UsualRejection, trade("90 to 98 % when new")),
		tag.Text("mixed-bed resin as shipped", perVolume((bed.ShippedLow+bed.ShippedHigh)/2), trade("about 43 to 45 lb/ft3")),
		tag.Text("softening resin as shipped", perVolume(SofteningWeight), trade("about 50 lb/ft3")),
		tag.Text("as good as equal", "within half a per cent", trade("no wash is that exact")),
		tag.Text("a year", "365.2425 days", tag.Source{Tag: tag.Published, Text: "the Gregorian calendar"}),
	}
}

func perVolume(d quantity.Density) string {
	return quantity.Round(float64(d/quantity.Density(quantity.PoundPerCubicFoot))) + " lb/ft3"
}
