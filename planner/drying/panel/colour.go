package panel

import (
	"strings"

	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Colour is how dark a panel is, in a word.
type Colour string

// The colours, from cool to hot in the sun.
const (
	White Colour = "white"
	Light Colour = "light"
	Mid   Colour = "mid"
	Dark  Colour = "dark"
	Black Colour = "black"
)

// Colours lists the words from white to black.
func Colours() []Colour { return []Colour{White, Light, Mid, Dark, Black} }

// ParseColour reads one of the words. Errors are of type [*quantity.ParseError].
func ParseColour(text string) (Colour, error) {
	words := make([]string, 0, len(Colours()))
	for _, c := range Colours() {
		if strings.EqualFold(strings.TrimSpace(text), string(c)) {
			return c, nil
		}
		words = append(words, string(c))
	}
	return "", &quantity.ParseError{What: "colour", Text: text, Reason: "is no word for a colour", Example: strings.Join(words, ", ")}
}

// Absorptance is the share of sunlight that the colour turns into heat; of no
// word, that of mid. Coated metal and gel coat vary by 0.1 about these, and
// colours made to stay cool by more. The sources are in [Colour.Source].
func (c Colour) Absorptance() quantity.Fraction {
	switch c {
	case White:
		return 0.25
	case Light:
		return 0.45
	case Dark:
		return 0.90
	case Black:
		return 0.95
	}
	return 0.65
}

// Source tells where the absorptance comes from.
func (c Colour) Source() tag.Source {
	switch c {
	case White:
		return tag.Source{Tag: tag.Memory, Text: "ASHRAE Fundamentals: solar absorptance of white paint 0.2 to 0.3"}
	case Light, Dark:
		return tag.Source{Tag: tag.Published, Text: "ASHRAE sol-air surfaces: 0.15 and 0.30 h ft2 F/Btu at a film coefficient of 3.0, as quoted in an encyclopaedia"}
	case Black:
		return tag.Source{Tag: tag.Memory, Text: "R. Levinson and others, Applied Energy 88 (2011) 4343: black car paint reflects 0.05"}
	}
	return tag.FromPractice("midway between light and dark")
}
