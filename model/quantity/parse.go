package quantity

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// ParseError tells what was read and what would be right.
type ParseError struct {
	What    string   // the kind of thing expected, such as "flow"
	Text    string   // what was read
	Reason  string   // what is wrong with it
	Example string   // what would be right
	Choices []string // the words that are right, where there are no others; then there is no example
	Units   []string // the units that would be read, where that helps
	Next    string   // the unit that a bare number at the end would take, as in "40 ft 6"

	kind   *Kind // of what was expected; nil where that has no units
	within Range // that the value is out of; zero where that is not what is wrong
}

// NoUnit is the reason of a [ParseError] for a bare number.
const NoUnit = "has no unit"

func (e *ParseError) Error() string {
	if len(e.Choices) > 0 {
		return fmt.Sprintf("%q %s; %s: %s", clip(e.Text), e.Reason, e.What, OneOf(e.Choices))
	}
	msg := fmt.Sprintf("%q %s; write the %s like %s", clip(e.Text), e.Reason, e.What, e.Example)
	if len(e.Units) > 0 {
		msg += " (units: " + strings.Join(e.Units, ", ") + ")"
	}
	return msg
}

// Says is what is wrong and how it is written right, where the text and the kind of
// thing stand beside it.
func (e *ParseError) Says() string {
	if len(e.Choices) > 0 {
		return e.Reason + "; write " + OneOf(e.Choices)
	}
	return e.Reason + "; write it like " + e.Example
}

// OneOf lists words to choose from: "raw, softened or di".
func OneOf(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " or " + words[last]
}

// clip keeps a message readable whatever was read.
func clip(text string) string {
	const most = 60
	runes := []rune(text)
	if len(runes) <= most {
		return text
	}
	return string(runes[:most]) + "..."
}

// Parse reads a number with its unit, such as "40 ft 6 in" or "5/8 in", into
// SI. Decimals stand behind a point, or behind a comma that reads in one way
// only (see [Pointed]). Errors are of type [*ParseError].
func Parse[Q Quantity](text string) (Q, error) {
	var zero Q
	si, err := parse(zero.Kind(), text)
	return Q(si), err
}

// Must is [Parse] for text that is part of the program.
func Must[Q Quantity](text string) Q {
	q, err := Parse[Q](text)
	if err != nil {
		panic(err)
	}
	return q
}

func parse(k *Kind, text string) (float64, error) {
	fail := func(reason string) (float64, error) {
		return 0, &ParseError{What: k.Name, Text: text, Reason: reason, Example: k.Example, kind: k}
	}
	pointed, reason := points(text)
	if reason != "" {
		return fail(reason)
	}
	rest := strings.TrimSpace(pointed)
	if rest == "" {
		return fail("is empty")
	}
	total, negative, last := 0.0, false, Unit{Factor: math.Inf(1)}
	for first := true; rest != ""; first = false {
		number, n, reason := scanNumber(rest)
		if reason != "" {
			return fail(reason)
		}
		rest = strings.TrimSpace(rest[n:])
		if strings.HasPrefix(rest, ".") {
			return fail("has two decimal points")
		}
		name := rest
		if k.compound {
			name = wordBeforeDigit(rest)
		}
		if name == "" {
			return 0, &ParseError{What: k.Name, Text: text, Reason: NoUnit, Example: k.Example, Units: k.Symbols(), Next: last.Then, kind: k}
		}
		unit, ok := k.unit(name)
		if !ok {
			reason := fmt.Sprintf("has the unit %q, which is no unit of %s", clip(strings.TrimSpace(name)), k.Name)
			return 0, &ParseError{What: k.Name, Text: text, Reason: reason, Example: k.Example, Units: k.Symbols(), kind: k}
		}
		rest = strings.TrimSpace(rest[len(name):])
		if unit.Factor >= last.Factor {
			return fail(fmt.Sprintf("has %s behind %s", unit.Symbol, last.Symbol))
		}
		last = unit
		if !first && math.Signbit(number) {
			return fail("has a sign in the middle")
		}
		switch {
		case first:
			negative = math.Signbit(number)
			total = unit.ToSI(number)
		case negative:
			total -= unit.ToSI(number)
		default:
			total += unit.ToSI(number)
		}
	}
	switch {
	case math.IsInf(total, 0):
		return fail("is too large to be real")
	case total < 0 && k.signed && k.Units[0].Symbol == "K":
		return fail("is below absolute zero")
	case negative && !k.signed:
		return fail("is below zero")
	}
	return total, nil
}

// wordBeforeDigit cuts "ft 6 in" to "ft": in a compound quantity no unit has a
// digit in its name.
func wordBeforeDigit(text string) string {
	if i := strings.IndexAny(text, "0123456789"); i >= 0 {
		return strings.TrimRight(text[:i], " \t.-+")
	}
	return text
}

// scanNumber reads "12", "1.4", "5/8", "1 1/2" or "2e-3" at the start of text
// and gives the bytes it took, or the reason why there is no number.
func scanNumber(text string) (value float64, n int, reason string) {
	if notFinite(text) {
		return 0, 0, "is not a finite number"
	}
	sign := 1.0
	if text[0] == '-' || text[0] == '+' {
		if text[0] == '-' {
			sign = math.Copysign(1, -1)
		}
		n = 1
	}
	whole, used := scanDecimal(text[n:])
	if used == 0 {
		return 0, 0, "does not start with a number"
	}
	n += used
	if top, bottom, used := scanFraction(text[n:], whole); used > 0 {
		if bottom == 0 {
			return 0, 0, "divides by zero"
		}
		whole, n = top/bottom, n+used
	}
	if math.IsInf(whole, 0) {
		return 0, 0, "is too large to be real"
	}
	return sign * whole, n, ""
}

func notFinite(text string) bool {
	word := strings.TrimLeft(text, "+-")
	return len(word) >= 3 && (strings.EqualFold(word[:3], "nan") || strings.EqualFold(word[:3], "inf"))
}

// scanFraction goes on after a number: "/8" makes it a numerator, " 5/8" adds
// to it. Zero bytes used means that there is no fraction.
func scanFraction(text string, whole float64) (top, bottom float64, used int) {
	if strings.HasPrefix(text, "/") {
		bottom, n := scanDecimal(text[1:])
		if n == 0 {
			return 0, 0, 0
		}
		return whole, bottom, 1 + n
	}
	trimmed := strings.TrimLeft(text, " -")
	gap := len(text) - len(trimmed)
	if gap == 0 {
		return 0, 0, 0
	}
	over, n := scanDecimal(trimmed)
	if n == 0 || !strings.HasPrefix(trimmed[n:], "/") {
		return 0, 0, 0
	}
	bottom, m := scanDecimal(trimmed[n+1:])
	if m == 0 {
		return 0, 0, 0
	}
	return whole*bottom + over, bottom, gap + n + 1 + m
}

// scanDecimal reads digits, a point and an exponent.
func scanDecimal(text string) (float64, int) {
	n, digits := 0, 0
	for seenPoint := false; n < len(text); n++ {
		switch c := text[n]; {
		case c >= '0' && c <= '9':
			digits++
			continue
		case c == '.' && !seenPoint:
			seenPoint = true
			continue
		}
		break
	}
	if digits == 0 {
		return 0, 0
	}
	n += scanExponent(text[n:])
	v, err := strconv.ParseFloat(text[:n], 64)
	if err != nil && !math.IsInf(v, 0) {
		return 0, 0
	}
	return v, n
}

func scanExponent(text string) int {
	if len(text) < 2 || (text[0] != 'e' && text[0] != 'E') {
		return 0
	}
	n := 1
	if text[n] == '-' || text[n] == '+' {
		n++
	}
	start := n
	for n < len(text) && text[n] >= '0' && text[n] <= '9' {
		n++
	}
	if n == start {
		return 0
	}
	return n
}
