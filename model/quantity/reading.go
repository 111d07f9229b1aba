package quantity

import (
	"fmt"
	"math"
	"strings"
)

// Scale is how a pen turns conductivity into ppm. The zero value is "a ppm
// whose scale was not said".
type Scale struct {
	name   string
	factor float64 // ppm per uS/cm, for a plain factor
}

// The scales that a pen may have.
var (
	ScaleUnsaid       = Scale{}
	ScaleNaCl         = Scale{name: "NaCl"}
	ScaleKCl          = Scale{name: "KCl"}
	Scale442          = Scale{name: "442"}
	ScaleConductivity = Scale{name: "uS/cm"}
)

// PlainScale is a pen that multiplies conductivity in uS/cm by factor.
func PlainScale(factor float64) Scale { return Scale{name: "factor", factor: factor} }

// Factor returns the multiplier of a plain scale.
func (s Scale) Factor() (float64, bool) { return s.factor, s.name == "factor" }

func (s Scale) String() string {
	if s.name == "factor" {
		return "x" + plainNumber(fmt.Sprint(s.factor))
	}
	return s.name
}

// ScaleExample shows the scales that [ParseScale] reads.
const ScaleExample = "NaCl, 442, KCl or x0.5"

// ParseScale reads NaCl, 442, KCl, a plain factor as x0.5, or nothing.
func ParseScale(text string) (Scale, error) {
	pointed, _ := points(text)
	word := strings.ToLower(strings.TrimSpace(pointed))
	switch word {
	case "":
		return ScaleUnsaid, nil
	case "nacl":
		return ScaleNaCl, nil
	case "kcl":
		return ScaleKCl, nil
	case "442":
		return Scale442, nil
	}
	if strings.HasPrefix(word, "x") {
		factor, n := scanDecimal(strings.TrimSpace(word[1:]))
		if n > 0 && n == len(strings.TrimSpace(word[1:])) && factor >= 0.3 && factor <= 1 {
			return PlainScale(factor), nil
		}
		return Scale{}, &ParseError{What: "scale", Text: text, Reason: "is no plain factor between x0.3 and x1", Example: ScaleExample}
	}
	return Scale{}, &ParseError{What: "scale", Text: text, Reason: "is no scale of a TDS pen", Example: ScaleExample}
}

// Reading is what a pen shows: ppm on a scale, or conductivity at 25 C.
type Reading struct {
	Number float64 // ppm, or uS/cm where Scale is ScaleConductivity
	Scale  Scale
}

// PPM makes a reading in ppm.
func PPM(ppm float64, scale Scale) Reading { return Reading{Number: ppm, Scale: scale} }

// ReadingExample shows how a reading is written.
const ReadingExample = `"240 ppm NaCl" or "430 uS/cm"`

// ParseReading reads "240 ppm NaCl", "240 ppm 442", "240 ppm x0.5", "240 ppm"
// or a conductivity such as "430 uS/cm".
func ParseReading(text string) (Reading, error) {
	fail := func(reason string) (Reading, error) {
		return Reading{}, &ParseError{What: "TDS", Text: text, Reason: reason, Example: ReadingExample}
	}
	pointed, reason := points(text)
	if reason != "" {
		return fail(reason)
	}
	trimmed := strings.TrimSpace(pointed)
	if trimmed == "" {
		return fail("is empty")
	}
	number, n, reason := scanNumber(trimmed)
	if reason != "" {
		return fail(reason)
	}
	if number < 0 || (number == 0 && trimmed[0] == '-') {
		return fail("is below zero")
	}
	unit := strings.TrimSpace(trimmed[n:])
	if unit == "" {
		return fail(NoUnit)
	}
	if u, ok := conductivityKind.unit(unit); ok {
		number *= u.Factor / float64(MicroSiemensPerCm)
		if math.IsInf(number, 0) {
			return fail("is too large to be real")
		}
		return Reading{Number: number, Scale: ScaleConductivity}, nil
	}
	for _, mark := range []string{"ppm", "mg/l"} {
		if rest, found := strings.CutPrefix(strings.ToLower(unit), mark); found {
			scale, err := ParseScale(strings.TrimPrefix(strings.TrimSpace(rest), "as "))
			return Reading{Number: number, Scale: scale}, err
		}
	}
	if _, hard := hardnessKind.unit(unit); hard {
		return fail("is a hardness: state it on the line hardness")
	}
	return fail(fmt.Sprintf("has the unit %q, which is neither ppm nor uS/cm", clip(unit)))
}

// String writes the reading so that [ParseReading] gives it back.
func (r Reading) String() string {
	number := plainNumber(fmt.Sprint(r.Number))
	if r.Scale == ScaleConductivity {
		return number + " uS/cm"
	}
	return strings.TrimSpace(number + " ppm " + r.Scale.String())
}

// WithScale gives a reading without a scale that of the pen.
func (r Reading) WithScale(s Scale) Reading {
	if r.Scale == ScaleUnsaid {
		r.Scale = s
	}
	return r
}
