package quantity

import (
	"errors"
	"slices"
	"strconv"
	"strings"
)

// customary are the symbols of the units that belong to the US family.
var customary = []string{
	"ft", "in", "ft2", "gal", "qt", "fl oz", "ft3", "gpm", "gph", "ft3/s", "psi", "ft H2O", "F", "lb", "oz", "gr/gal", "gr", "kgr",
	"gr/ft3", "kgr/ft3", "lb/ft3", "mph", "ft/s", "gpm/ft2", "gpm/ft3", "ft2/min", "gal/1000 ft2", "Btu/(h ft2)",
}

// everywhere are the symbols of units that people of both families write, as water reports
// and data sheets do.
var everywhere = []string{"mg/L as CaCO3", "eq/m3", "eq/L", "eq", "meq/L", "kn", "m/h"}

// SystemOf is the family of the unit that stands first in a text; ok only where the text is
// a right one of this kind, in a unit that the other family does not write.
func (k *Kind) SystemOf(text string) (sys System, ok bool) {
	if k.us == k.metric {
		return US, false
	}
	if _, err := parse(k, text); err != nil {
		return US, false
	}
	pointed, _ := points(text)
	rest := strings.TrimSpace(pointed)
	_, n, _ := scanNumber(rest)
	name := strings.TrimSpace(rest[n:])
	if k.compound {
		name = strings.TrimSpace(wordBeforeDigit(name))
	}
	unit, _ := k.unit(name)
	switch {
	case slices.Contains(customary, unit.Symbol):
		return US, true
	case slices.Contains(everywhere, unit.Symbol):
		return US, false
	}
	return Metric, true
}

// Like writes a text for example in the units of sys: about as much, as a person would
// write it. What is in no customary unit stays.
func (k *Kind) Like(text string, sys System) string {
	if in, ok := k.SystemOf(text); !ok || in != US || sys == US {
		return text
	}
	si, _ := parse(k, text) // the family is known of what is right only
	unit := Value{Kind: k, SI: si}.unit(sys)
	digits := 2
	if k.compound && len(strings.Fields(text)) > 2 { // such as 40 ft 6 in
		digits = 3
	}
	number, _ := strconv.ParseFloat(strconv.FormatFloat(unit.FromSI(si), 'g', digits, 64), 64)
	return strconv.FormatFloat(number, 'f', -1, 64) + " " + unit.Symbol
}

// Range is what a quantity must lie in: the texts of its ends, such as "5 ft" and "75 ft".
type Range struct{ Low, High string }

// outside says of a value that it lies in no such range; in sys, no end is loosened by
// rounding.
func (r Range) outside(k *Kind, sys System) string {
	return "is outside " + k.end(r.Low, sys, least) + " to " + k.end(r.High, sys, most)
}

func (k *Kind) end(text string, sys System, side bound) string {
	if in, ok := k.SystemOf(text); !ok || in != US || sys == US {
		return text
	}
	si, _ := parse(k, text) // right, since its family is known
	return Value{Kind: k, SI: si, bound: side}.Show(sys)
}

// Outside is the error of a value out of its range.
func Outside(k *Kind, r Range, what, text, example string) *ParseError {
	return &ParseError{What: what, Text: text, Reason: r.outside(k, US), Example: example, kind: k, within: r}
}

// InUnits makes the [ParseError] in err, where there is one, name what would be right in the
// units of sys.
func InUnits(err error, sys System) error {
	wrong := new(ParseError)
	if !errors.As(err, &wrong) || wrong.kind == nil {
		return err
	}
	wrong.Example = wrong.kind.Like(wrong.Example, sys)
	if wrong.within != (Range{}) {
		wrong.Reason = wrong.within.outside(wrong.kind, sys)
	}
	return err
}
