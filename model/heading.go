package model

import (
	"math"
	"strings"

	"washeve/model/quantity"
)

// Heading is where the nose points, clockwise from true north, 0 up to a full
// turn. A magnetic compass differs by the local declination.
type Heading quantity.Angle

// headingExample shows how a heading is written.
const headingExample = `"north-east", "NE", "45 deg" or "nose to the north-east"`

// compassPoints are the sixteen points of the compass, clockwise from north.
func compassPoints() []string {
	return []string{"n", "nne", "ne", "ene", "e", "ese", "se", "sse", "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw"}
}

// compassPoint is the angle from one of them to the next.
const compassPoint = 22.5 * quantity.Degree

// HeadingOf makes a heading of any angle.
func HeadingOf(a quantity.Angle) Heading {
	turned := math.Mod(float64(a), 2*math.Pi)
	if turned < 0 {
		turned += 2 * math.Pi
	}
	if turned >= 2*math.Pi {
		turned = 0
	}
	return Heading(turned)
}

// Angle is the heading as an angle from true north.
func (h Heading) Angle() quantity.Angle { return quantity.Angle(h) }

// Word is the nearest of the sixteen compass points, such as "NE".
func (h Heading) Word() string {
	n := int(math.Round(float64(quantity.Angle(h)/compassPoint))) % 16
	return strings.ToUpper(compassPoints()[n])
}

// String writes the heading so that [ParseHeading] gives it back.
func (h Heading) String() string { return quantity.Exact(quantity.Angle(h), quantity.US) }

// ParseHeading reads a compass word, degrees, or either after words such as "nose to
// the". A bare number is degrees. Errors are of type [*quantity.ParseError].
func ParseHeading(text string) (Heading, error) {
	fail := func(reason string) (Heading, error) {
		return 0, &quantity.ParseError{What: "heading", Text: text, Reason: reason, Example: headingExample}
	}
	rest := cutLead(strings.ToLower(strings.Join(strings.Fields(text), " ")))
	if rest == "" {
		return fail("names no direction")
	}
	if letters, ok := compassLetters(rest); ok {
		for i, p := range compassPoints() {
			if p == letters {
				return Heading(quantity.Angle(i) * compassPoint), nil
			}
		}
		return fail("is none of the sixteen points of the compass")
	}
	if strings.Trim(rest, "0123456789.") == "" {
		rest += " deg"
	}
	angle, err := quantity.Parse[quantity.Angle](rest)
	if err != nil {
		return fail("is neither a compass word nor degrees")
	}
	if !(angle >= 0 && angle <= 360*quantity.Degree) {
		return fail("is outside 0 to 360 deg")
	}
	return HeadingOf(angle), nil
}

// cutLead takes away the words that people put before a direction.
func cutLead(text string) string {
	for _, word := range []string{"nose", "heading", "facing", "pointing", "points", "is", "to", "towards", "toward", "due", "the"} {
		text = strings.TrimPrefix(text+" ", word+" ")
		text = strings.TrimSpace(text)
	}
	return text
}

// compassLetters turns "north-north-east" into "nne".
func compassLetters(text string) (string, bool) {
	letters := ""
	for rest := text; rest != ""; {
		cut := ""
		for _, word := range []string{"north", "east", "south", "west"} {
			if strings.HasPrefix(rest, word) {
				cut = word
			}
		}
		switch {
		case cut != "":
			letters += cut[:1]
		case strings.ContainsRune("nesw", rune(rest[0])):
			cut = rest[:1]
			letters += cut
		case rest[0] == '-' || rest[0] == ' ':
			cut = rest[:1]
		default:
			return "", false
		}
		rest = rest[len(cut):]
	}
	return letters, letters != ""
}
