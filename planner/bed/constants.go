package bed

import (
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Constants lists the numbers that this package rests on, each with where it
// comes from.
func Constants() []tag.Assumption {
	practice := func(text string) tag.Source { return tag.Source{Tag: tag.Practice, Text: text} }
	return []tag.Assumption{
		tag.Quantity("voids between the beads", Voids, practice("a settled bed of round beads")),
		tag.Quantity("bead diameter", Bead, practice("usual mixed-bed resin")),
		tag.Text("film around the beads", "Sh = (1.09/voids) (Re Sc)^(1/3)", tag.Source{Tag: tag.Published, Text: "Wilson and Geankoplis, Ind. Eng. Chem. Fundam. 5 (1966) 9; 0.0016 < Re < 55"}),
		tag.Text("exchange", "limited by that film, one way", tag.Source{Tag: tag.Published, Text: "Frisch and Kunin, AIChE J. 6 (1960) 640; NaCl 0.0002-0.01 N, 3-70 gpm/ft2, 0.25-3.2 ft deep"}),
		tag.Quantity("capacity of new resin", NewResin, practice("usual mixed bed")),
		tag.Quantity("capacity of regenerated resin", RegeneratedResin, practice("usual mixed bed")),
		tag.Quantity("rated flow over resin", RatedService, practice("where the maker does not say")),
		tag.Text("flush", "1.5 times the standing water", practice("so that the mixed water is out as well")),
		tag.Text("softening resin by salt", "20000 gr/ft3 at 6 lb/ft3, 24000 at 8, 27000 at 10, 30000 at 15", practice("the trade's table")),
		tag.Quantity("one grain as CaCO3", quantity.Grain, tag.Source{Tag: tag.Published, Text: "64.79891 mg over 50.04 mg/meq"}),
	}
}
