package quantity

import (
	"math"
	"strconv"
	"strings"
)

// Exact writes q in a unit of sys so that [Parse] gives back the very same
// number, with the fewest digits that do.
func Exact[Q Quantity](q Q, sys System) string {
	k := q.Kind()
	unit := k.Shown(sys)
	number := unit.FromSI(float64(q))
	for digits := 1; digits <= 17; digits++ {
		text := strconv.FormatFloat(number, 'g', digits, 64)
		if v, _ := strconv.ParseFloat(text, 64); unit.ToSI(v) == float64(q) {
			return plainNumber(text) + " " + unit.Symbol
		}
	}
	return plainNumber(strconv.FormatFloat(float64(q), 'g', -1, 64)) + " " + k.Units[0].Symbol
}

// plainNumber turns 1e+04 into 10000 where that is short enough to read.
func plainNumber(text string) string {
	if !strings.ContainsRune(text, 'e') {
		return text
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil || math.Abs(v) >= 1e12 || (v != 0 && math.Abs(v) < 1e-4) {
		return text
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}

// Show writes q for a person: three significant digits or whole numbers,
// feet and inches for long lengths.
func Show[Q Quantity](q Q, sys System) string { return ValueOf(q).Show(sys) }

// Show writes the value for a person.
func (v Value) Show(sys System) string {
	if v.Kind == &lengthKind && sys == US {
		return feetAndInches(Length(v.SI))
	}
	unit := v.unit(sys)
	if v.Kind == &durationKind {
		unit = durationUnit(Duration(v.SI))
		if v.bound == least && Duration(v.SI) < 10*Minute {
			v.SI, unit = float64(watched(Duration(v.SI))), v.Kind.Units[0]
		}
	}
	number := Round(v.bound.within(unit.FromSI(v.SI)))
	if v.Kind == &fractionKind {
		return number + unit.Symbol
	}
	return number + " " + unit.Symbol
}

// unit is the one in which sys shows the value: of what is small, a smaller one.
func (v Value) unit(sys System) Unit {
	unit, size := v.Kind.Shown(sys), math.Abs(v.SI)
	switch {
	case sys != Metric || size == 0:
	case v.Kind == &lengthKind && size < 0.1:
		unit, _ = lengthKind.unit("mm")
	case v.Kind == &lengthKind && size < 1:
		unit, _ = lengthKind.unit("cm")
	case v.Kind == &speedKind && size < 0.1:
		unit, _ = speedKind.unit("m/h")
	}
	return unit
}

// Number is the value in the unit that sys shows, with that unit's symbol.
func (v Value) Number(sys System) (number float64, unit string) {
	u := v.Kind.Shown(sys)
	return u.FromSI(v.SI), u.Symbol
}

// durationUnit is the unit in which a length of time is easy to grasp.
func durationUnit(d Duration) Unit {
	symbol := "min"
	switch {
	case d < 90*Second:
		symbol = "s"
	case d >= 2*Day:
		symbol = "d"
	case d >= 3*Hour:
		symbol = "h"
	}
	unit, _ := durationKind.unit(symbol)
	return unit
}

func feetAndInches(l Length) string {
	if l != 0 && math.Abs(float64(l)) < float64(Foot) {
		return Round(l.Inches()) + " in"
	}
	inches := math.Round(l.Inches())
	feet := math.Trunc(inches / 12)
	text := strconv.FormatFloat(feet, 'f', 0, 64) + " ft"
	if rest := inches - 12*feet; rest != 0 {
		text += " " + strconv.FormatFloat(math.Abs(rest), 'f', 0, 64) + " in"
	}
	return text
}

// decimals are those of a number with about three significant digits.
func decimals(v float64) int {
	switch a := math.Abs(v); {
	case a == 0 || a >= 99.5:
		return 0
	case a >= 9.95:
		return 1
	case a >= 0.995:
		return 2
	default:
		return min(2-int(math.Floor(math.Log10(a))), 12)
	}
}

// Round writes a number with about three significant digits, for people.
func Round(v float64) string {
	if math.IsNaN(v) {
		return "unknown"
	}
	if math.IsInf(v, 0) {
		return "no end"
	}
	text := strconv.FormatFloat(v, 'f', decimals(v), 64)
	if strings.ContainsRune(text, '.') {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" {
		return "0"
	}
	return text
}
