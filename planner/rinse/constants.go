package rinse

import (
	"strconv"

	"washeve/planner/tag"
)

// Constants lists the numbers that this package rests on, each with where it
// comes from.
func Constants() []tag.Assumption {
	practice := func(text string) tag.Source { return tag.Source{Tag: tag.Practice, Text: text} }
	return []tag.Assumption{
		tag.Text("mixing efficiency of a rinse", strconv.FormatFloat(MixingEfficiency, 'g', -1, 64), practice("no figure in print for sprays")),
		tag.Text("spots", "under 10 ppm none, to 25 faint, to 50 seen, over 50 towel", practice("of detailers")),
		tag.Text("film on flat and upright faces", "16 to 163 mL/m2 upright, 33 to 407 flat", tag.Source{Tag: tag.Published, Text: "Metal Finishing Guide Book 2012-2013, Table II (small parts)"}),
		tag.Text("contact wash", "the bucket's water is not counted", practice("a few gallons")),
	}
}
