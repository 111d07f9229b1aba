package surface

import (
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Constants lists the numbers that this package rests on, each with where it
// comes from.
func Constants() []tag.Assumption {
	practice := func(text string) tag.Source { return tag.Source{Tag: tag.Practice, Text: text} }
	return []tag.Assumption{
		tag.Quantity("side over its box, coach", factor("", "left"), practice("wheel openings taken out")),
		tag.Quantity("side over its box, car and pickup", factor("car", "left"), practice("rounded body")),
		tag.Quantity("front, rear and roof over the box, car and pickup", factor("car", "front"), practice("rounded body")),
		tag.Quantity("slide-out, length", slideLength, practice("a usual room")),
		tag.Quantity("slide-out, height", slideHeight, practice("a usual room")),
		tag.Quantity("slide-out, depth", slideDepth, practice("a usual room")),
		tag.Text("glass, metal and wheels in a side of a coach", "18 %, 3 %, 3 %", practice("other faces and shapes likewise; state the shares of a face to replace them")),
		tag.Text("how much a spot shows, 0 to 1", "glass 1, paint 0.9, bright metal 0.8, wheels 0.5, gel coat and bare aluminium 0.45, vinyl 0.3, awning and rubber roof 0.05", practice("of detailers")),
		tag.Text("film on upright faces", "(2/3) sqrt(viscosity x height/(g x drip))", tag.Source{Tag: tag.Memory, Text: "Jeffreys, Proc. Camb. Phil. Soc. 26 (1930) 204"}),
		tag.Quantity("least film", WellDrained, tag.Source{Tag: tag.Published, Text: "Metal Finishing Guide Book 2012-2013, Table II (vertical, well drained; small parts)"}),
		tag.Quantity("most film upright", VeryPoorlyDrained, tag.Source{Tag: tag.Published, Text: "Metal Finishing Guide Book 2012-2013, Table II (vertical, very poorly drained)"}),
		tag.Quantity("film on a roof", Film("roof", quantity.Metre, 1e-6, quantity.Minute), practice("between well and very poorly drained flat parts of that table")),
	}
}
