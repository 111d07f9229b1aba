package drying

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying/panel"
	"washeve/planner/drying/sky"
	"washeve/planner/tag"
)

// Constants lists what the forecast takes for granted, for the list that a user
// can open.
func Constants() []tag.Assumption {
	memory := func(text string) tag.Source { return tag.Source{Tag: tag.Memory, Text: text} }
	published := func(text string) tag.Source { return tag.Source{Tag: tag.Published, Text: text} }
	out := []tag.Assumption{
		tag.Text("sun's place", "low-accuracy theory, 0.01 deg", memory("J. Meeus, Astronomical Algorithms, 2nd ed. 1998, chapter 25")),
		tag.Text("light of a clear sky", "two parts, by air mass and turbidity", published("P. Ineichen and R. Perez, Solar Energy 73 (2002) 151, as quoted in the pvlib documentation")),
		tag.Text("Linke turbidity", quantity.Round(sky.Turbidity), memory("F. Kasten, Solar Energy 56 (1996) 239: warm and clean")),
		tag.Text("light under cloud", "1 - 0.75 cover^3.4", published("F. Kasten and G. Czeplak, Solar Energy 24 (1980) 177, as quoted in public programs")),
		tag.Quantity("light thrown back by the ground", quantity.Fraction(sky.Albedo), memory("B. Liu and R. Jordan, Solar Energy 7 (1963) 53")),
		tag.Quantity("open sky left to a face in the shade", quantity.Fraction(sky.ShadeSky), tag.FromPractice("tree, awning or building")),
		tag.Text("cold of the sky", "from dew point and cloud", published("G. Walton, NBSIR 83-2655 (1983), after Clark and Allen (1978), as quoted in a support list")),
		tag.Text("air through the day", "sine by day, fall by night", published("W. Parton and J. Logan, Agric. Meteorol. 23 (1981) 205, as quoted in a package's documentation")),
		tag.Text("water in the air", "dew point held through the day", tag.FromPractice("holds while the same air stays")),
		tag.Text("heat from wind", "McAdams, smooth plate", memory("W. McAdams, Heat Transmission, 3rd ed. 1954")),
		tag.Text("water from wind", "Lewis relation, Lewis number 1", memory("W. Lewis, Trans. ASME 44 (1922) 325")),
		tag.Quantity("emissivity of a panel", quantity.Fraction(panel.Emissivity), memory("tables of emissivities: paint 0.90 to 0.95, water 0.96")),
		tag.Quantity("panel too hot to wash", hotPanel, tag.FromPractice("too hot to touch")),
		tag.Text("humidity without its hour", "at the mean of low and high", tag.FromPractice("a day's humidity is its mean")),
		tag.Text("one face after the other", "each is finished before the next is begun", tag.FromPractice("so that no film waits")),
		tag.Text("roof first", "before the sides", tag.FromPractice("what runs off it wets the sides again")),
	}
	for _, c := range model.Colours() {
		out = append(out, tag.Quantity("sunlight absorbed by a "+string(c)+" panel", panel.Absorptance(c), panel.Source(c)))
	}
	return out
}
