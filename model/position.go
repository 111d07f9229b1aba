package model

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"washeve/model/pattern"
	"washeve/model/quantity"
)

// Keys of a position in a place.
const (
	LatitudeKey  = "latitude"
	LongitudeKey = "longitude"
)

// An axis is one of the two numbers of a position.
type axis struct {
	what, example string
	sides         string // the letters, the positive one first
	most          quantity.Angle
}

var (
	latitude  = axis{"latitude", "38.6 N or 38.6", "ns", 90 * quantity.Degree}
	longitude = axis{"longitude", "109.5 W or -109.5", "ew", 180 * quantity.Degree}
)

// ParseLatitude reads "38.6 N", "38° 34' N", "-38.6" or "-38.6 deg": degrees with a side
// of the equator, or signed, north positive. Errors are of type [*quantity.ParseError].
func ParseLatitude(text string) (quantity.Angle, error) { return latitude.read(text) }

// ParseLongitude is [ParseLatitude] for "109.5 W" or "-109.5", east positive.
func ParseLongitude(text string) (quantity.Angle, error) { return longitude.read(text) }

func (a axis) read(text string) (quantity.Angle, error) {
	angle, reason := a.parse(text)
	if reason == "" {
		return angle, nil
	}
	if _, _, both := SplitPosition(text); both {
		reason = "is latitude and longitude in one; each has a line of its own"
	}
	return 0, &quantity.ParseError{What: a.what, Text: text, Reason: reason, Example: a.example}
}

// parse gives the angle, or the reason why there is none.
func (a axis) parse(text string) (angle quantity.Angle, reason string) {
	text, _ = quantity.Pointed(hyphened(text))
	positive, negative := a.sides[:1], a.sides[1:]
	switch rest, letter := cutLetter(strings.ToLower(strings.TrimSpace(text)), a.sides); letter {
	case "":
		number, plain := plainDegrees(text)
		if !plain {
			return 0, fmt.Sprintf("is no number of degrees, with a sign or with %s or %s", strings.ToUpper(positive), strings.ToUpper(negative))
		}
		v, _ := strconv.ParseFloat(number, 64)
		angle = quantity.Angle(v) * quantity.Degree
	default:
		parts, ok := sexagesimal(rest)
		if !ok {
			return 0, "is no number of degrees"
		}
		angle = parts
		if letter == negative {
			angle = -parts
		}
	}
	if !(angle >= -a.most && angle <= a.most) {
		return 0, fmt.Sprintf("is past %g degrees", a.most.Degrees())
	}
	return angle, ""
}

// LatitudeWords is a latitude in degrees with N or S.
func LatitudeWords(a quantity.Angle) string { return latitude.words(a) }

// LongitudeWords is a longitude in degrees with E or W.
func LongitudeWords(a quantity.Angle) string { return longitude.words(a) }

// words are the degrees to the fifth decimal, a metre on the ground, with their letter.
func (a axis) words(angle quantity.Angle) string {
	const metre = 1e5
	degrees := math.Round(angle.Degrees()*metre)/metre + 0 // no zero with a minus
	return WithSide(strconv.FormatFloat(degrees, 'f', -1, 64), strings.ToUpper(a.sides))
}

// hyphened writes the minus of pages and maps as that of a keyboard.
func hyphened(text string) string { return strings.ReplaceAll(text, "\u2212", "-") }

// plainNumber is a number with or without its sign.
var plainNumber = pattern.Of(`^[-+]?(\d+\.?\d*|\.\d+)$`)

// plainDegrees gives the number of degrees without a letter, such as "-38.6" or "-38.6 deg".
func plainDegrees(text string) (string, bool) {
	pointed, _ := quantity.Pointed(hyphened(text))
	number := strings.ToLower(strings.TrimSpace(pointed))
	for _, unit := range []string{"°", "degrees", "degree", "deg"} {
		if cut, found := strings.CutSuffix(number, unit); found {
			number = strings.TrimSpace(cut)
			break
		}
	}
	return number, plainNumber().MatchString(number)
}

// WithSide writes degrees without a letter with the letter that their sign means, of sides
// such as "NS", the positive one first: "-38.6" is "38.6 S". Any other text is as it was.
func WithSide(text, sides string) string {
	number, plain := plainDegrees(text)
	if !plain || len(sides) != len("NS") {
		return text
	}
	side := sides[:1]
	if number[0] == '-' {
		side = sides[1:]
	}
	return strings.TrimLeft(number, "+-") + " " + side
}

// WestNote says how the west is written, where a longitude has neither sign nor letter: it
// is read as east, and most who leave both out mean the west. "" where it has one.
func WestNote(text string) string {
	number, plain := plainDegrees(text)
	if !plain || strings.ContainsAny(number[:1], "+-") {
		return ""
	}
	return "for the west write " + number + " W"
}

// SplitPosition parts a position such as "33.45, -112.07" or "33° 27' N 112° 4' W" into
// the texts of its latitude and its longitude; false where it is none, or could be parted
// in two ways. Decimal commas read where they read in any number.
func SplitPosition(text string) (north, east string, ok bool) {
	if _, reason := latitude.parse(text); reason == "" || len(text) > mostPosition {
		return "", "", false
	}
	if text = unwrapped(text); text == "" {
		return "", "", false
	}
	for i, r := range text {
		_, size := utf8.DecodeRuneInString(text[i:])
		if !parts(r, text[:i], text[i+size:]) {
			continue
		}
		left, right := strings.TrimSpace(text[:i]), strings.TrimSpace(text[i+size:])
		_, noLatitude := latitude.parse(left)
		_, noLongitude := longitude.parse(right)
		if noLatitude != "" || noLongitude != "" || (ok && left == north && right == east) {
			continue
		}
		if ok {
			return "", "", false
		}
		north, east, ok = left, right, true
	}
	return north, east, ok
}

// geoURI is a position of RFC 5870, section 3.3, in the only reference system that it names,
// with its height and its parameters left out: a latitude, a comma, a longitude, in degrees
// with decimal points.
var geoURI = pattern.Of(`(?i)^geo:(-?\d+(?:\.\d+)?),(-?\d+(?:\.\d+)?)(?:,-?\d+(?:\.\d+)?)?((?:;[^;]*)*)$`)

// unwrapped is a position without the brackets around it, and one of a geo URI as it is
// typed; "" where the URI is none, or counts its degrees by another system.
func unwrapped(text string) string {
	text = strings.TrimSpace(text)
	for _, pair := range []string{"()", "[]"} {
		if inner, ok := strings.CutPrefix(text, pair[:1]); ok {
			if inner, ok = strings.CutSuffix(inner, pair[1:]); ok {
				text = strings.TrimSpace(inner)
			}
		}
	}
	if !strings.HasPrefix(strings.ToLower(text), "geo:") {
		return text
	}
	parts := geoURI().FindStringSubmatch(text)
	crs := strings.ToLower(text)
	if parts == nil || strings.Contains(crs, ";crs=") && !strings.Contains(crs+";", ";crs=wgs84;") {
		return ""
	}
	return parts[1] + "; " + parts[2]
}

// mostPosition is far over the length of a position, in bytes.
const mostPosition = 80

// parts tells that a rune may stand between two numbers: a comma from digit to digit only
// where the first number has its decimals, a space only where both are seen to be whole, by
// a letter or by their decimals.
func parts(r rune, left, right string) bool {
	const decimal, digits = ".,", "0123456789"
	switch {
	case r == ';':
		return true
	case r == ',':
		between := strings.ContainsAny(left[max(len(left)-1, 0):], digits) && strings.ContainsAny(right[:min(1, len(right))], digits)
		return !between || strings.ContainsAny(left, decimal)
	case unicode.IsSpace(r):
		whole := decimal + latitude.sides + longitude.sides
		return strings.ContainsAny(strings.ToLower(left), whole) && strings.ContainsAny(strings.ToLower(right), whole)
	}
	return false
}

// cutLetter takes one of the letters from the end of text, or from its start.
func cutLetter(text, letters string) (rest, letter string) {
	for _, cut := range []func(string, string) (string, bool){strings.CutSuffix, strings.CutPrefix} {
		for _, l := range strings.Split(letters, "") {
			if rest, ok := cut(text, l); ok {
				return rest, l
			}
		}
	}
	return text, ""
}

// sexagesimal reads degrees, or degrees and minutes, or these and seconds.
func sexagesimal(text string) (quantity.Angle, bool) {
	text = strings.NewReplacer("degrees", "°", "deg", "°", "min", "'", "sec", `"`).Replace(text)
	parts := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune("°'\"′″ ", r) })
	if len(parts) == 0 || len(parts) > 3 {
		return 0, false
	}
	total, unit := 0.0, 1.0
	for i, p := range parts {
		v, err := strconv.ParseFloat(p, 64)
		if err != nil || strings.Trim(p, "0123456789.") != "" || (i > 0 && v >= 60) {
			return 0, false
		}
		total += v * unit
		unit /= 60
	}
	return quantity.Angle(total) * quantity.Degree, true
}
