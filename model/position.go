package model

import (
	"fmt"
	"strconv"
	"strings"
	"time"
	_ "time/tzdata" // so that a zone is known on a machine that has no zone files

	"washeve/model/quantity"
)

// ParseLatitude reads "38.6 N", "38° 34' N" or "-38.6 deg": degrees with a side
// of the equator, or signed with their unit, north positive. Errors are of type
// [*quantity.ParseError].
func ParseLatitude(text string) (quantity.Angle, error) {
	return parseDegrees("latitude", "38.6 N", text, "n", "s", 90*quantity.Degree)
}

// ParseLongitude is [ParseLatitude] for "109.5 W" or "-109.5 deg", east
// positive.
func ParseLongitude(text string) (quantity.Angle, error) {
	return parseDegrees("longitude", "109.5 W", text, "e", "w", 180*quantity.Degree)
}

func parseDegrees(what, example, text, positive, negative string, most quantity.Angle) (quantity.Angle, error) {
	fail := func(reason string) (quantity.Angle, error) {
		return 0, &quantity.ParseError{What: what, Text: text, Reason: reason, Example: example}
	}
	var angle quantity.Angle
	text, _ = quantity.Pointed(text)
	switch rest, letter := cutLetter(strings.ToLower(strings.TrimSpace(text)), positive+negative); letter {
	case "":
		signed, err := quantity.Parse[quantity.Angle](text)
		if err != nil {
			return fail(fmt.Sprintf("has neither %s nor %s behind the degrees, nor deg for signed ones", strings.ToUpper(positive), strings.ToUpper(negative)))
		}
		angle = signed
	default:
		parts, ok := sexagesimal(rest)
		if !ok {
			return fail("is no number of degrees")
		}
		angle = parts
		if letter == negative {
			angle = -parts
		}
	}
	if !(angle >= -most && angle <= most) {
		return fail(fmt.Sprintf("is past %g degrees", most.Degrees()))
	}
	return angle, nil
}

// cutLetter takes one of the letters from the end of text.
func cutLetter(text, letters string) (rest, letter string) {
	for _, l := range strings.Split(letters, "") {
		if cut, ok := strings.CutSuffix(text, l); ok {
			return cut, l
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

// ParseZone finds a time zone by its name in the zone data, such as
// America/Denver; small letters and spaces do too. Errors are of type
// [*quantity.ParseError].
func ParseZone(text string) (*time.Location, error) {
	name := strings.ReplaceAll(tidy(text), " ", "_")
	for _, spelling := range []string{name, capitals(name)} {
		// "Local" is this machine's zone, which is not always the place's.
		if zone, err := time.LoadLocation(spelling); err == nil && spelling != "" && !strings.EqualFold(spelling, "Local") {
			return zone, nil
		}
	}
	return nil, &quantity.ParseError{What: "time zone", Text: text, Reason: "is no zone of the time zone data", Example: "America/Denver or Europe/Oslo"}
}

// capitals writes "america/new_york" as the zone data does.
func capitals(name string) string {
	letters := []byte(strings.ToLower(name))
	for i := range letters {
		if (i == 0 || strings.IndexByte("/_-", letters[i-1]) >= 0) && letters[i] >= 'a' && letters[i] <= 'z' {
			letters[i] -= 'a' - 'A'
		}
	}
	return string(letters)
}
