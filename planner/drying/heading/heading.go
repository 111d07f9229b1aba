// Package heading is the direction a vehicle stands in, and how the sun meets
// its faces.
package heading

import (
	"fmt"
	"math"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// Heading is where the nose points, clockwise from true north, 0 up to a full
// turn. A magnetic compass differs by the local declination.
type Heading quantity.Angle

// Example shows how a heading is written.
const Example = `"north-east", "NE", "45 deg" or "nose to the north-east"`

// points are the sixteen points of the compass, clockwise from north.
func points() []string {
	return []string{"n", "nne", "ne", "ene", "e", "ese", "se", "sse", "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw"}
}

const point = 22.5 * quantity.Degree

// Of makes a heading of any angle.
func Of(a quantity.Angle) Heading {
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
	n := int(math.Round(float64(quantity.Angle(h)/point))) % 16
	return strings.ToUpper(points()[n])
}

// String writes the heading so that [Parse] gives it back.
func (h Heading) String() string { return quantity.Exact(quantity.Angle(h), quantity.US) }

// Parse reads a compass word, degrees, or either after words such as "nose to
// the". A bare number is degrees. Errors are of type [*quantity.ParseError].
func Parse(text string) (Heading, error) {
	fail := func(reason string) (Heading, error) {
		return 0, &quantity.ParseError{What: "heading", Text: text, Reason: reason, Example: Example}
	}
	rest := cutLead(strings.ToLower(strings.Join(strings.Fields(text), " ")))
	if rest == "" {
		return fail("names no direction")
	}
	if letters, ok := compassLetters(rest); ok {
		for i, p := range points() {
			if p == letters {
				return Heading(quantity.Angle(i) * point), nil
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
	return Of(angle), nil
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

// CosIncidence is the cosine of the angle between a face's outward normal and
// the sun: 1 with the sun square on, 0 and below with the face turned away.
// Sides are upright, the roof is level. A side of no name never meets the sun.
func (h Heading) CosIncidence(side model.Side, altitude, azimuth quantity.Angle) quantity.Fraction {
	if side == model.Roof {
		return quantity.Fraction(math.Sin(float64(altitude)))
	}
	turn, ok := turnOf(side)
	if !ok {
		return -1
	}
	return quantity.Fraction(math.Cos(float64(altitude)) * math.Cos(float64(azimuth-quantity.Angle(h)-turn)))
}

// Incidence is the angle between a face's outward normal and the sun.
func (h Heading) Incidence(side model.Side, altitude, azimuth quantity.Angle) quantity.Angle {
	cosine := float64(h.CosIncidence(side, altitude, azimuth))
	return quantity.Angle(math.Acos(max(-1, min(1, cosine))))
}

// Facing is where an upright side looks, as an angle from true north.
func (h Heading) Facing(side model.Side) (quantity.Angle, error) {
	turn, ok := turnOf(side)
	if !ok {
		return 0, fmt.Errorf("the %s looks in no direction of the compass", side)
	}
	return Of(quantity.Angle(h) + turn).Angle(), nil
}

func turnOf(side model.Side) (quantity.Angle, bool) {
	switch side {
	case model.Front:
		return 0, true
	case model.Right:
		return 90 * quantity.Degree, true
	case model.Rear:
		return 180 * quantity.Degree, true
	case model.Left:
		return -90 * quantity.Degree, true
	}
	return 0, false
}
