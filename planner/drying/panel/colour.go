package panel

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Absorptance is the share of sunlight that the colour turns into heat; of no
// word, that of mid. Coated metal and gel coat vary by 0.1 about these, and
// colours made to stay cool by more. The sources are in [Source].
func Absorptance(c model.Colour) quantity.Fraction {
	switch c {
	case model.White:
		return 0.25
	case model.LightColour:
		return 0.45
	case model.DarkColour:
		return 0.90
	case model.Black:
		return 0.95
	}
	return 0.65
}

// Source tells where the absorptance of a colour comes from.
func Source(c model.Colour) tag.Source {
	switch c {
	case model.White:
		return tag.Source{Tag: tag.Memory, Text: "ASHRAE Fundamentals: solar absorptance of white paint 0.2 to 0.3"}
	case model.LightColour, model.DarkColour:
		return tag.Source{Tag: tag.Published, Text: "ASHRAE sol-air surfaces: 0.15 and 0.30 h ft2 F/Btu at a film coefficient of 3.0, as quoted in an encyclopaedia"}
	case model.Black:
		return tag.Source{Tag: tag.Memory, Text: "R. Levinson and others, Applied Energy 88 (2011) 4343: black car paint reflects 0.05"}
	}
	return tag.FromPractice("midway between light and dark")
}
