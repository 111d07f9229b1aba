package quantity

import (
	"fmt"
	"math"
	"strings"
	"unicode"
)

// Money is a whole number of hundredths of a currency, as typed: nothing
// drifts by rounding. The zero value is nothing of no currency.
type Money struct {
	Hundredths int64
	Currency   string // as typed: "$", "USD", "EUR"
}

// MoneyExample shows how money is written.
const MoneyExample = `"$185" or "185.50 EUR"`

// NoCurrency is the reason of a price that is a bare number.
const NoCurrency = "has no currency"

// InCurrency is a bare number as a price in a currency, such as "$" or "EUR".
func InCurrency(number, currency string) string {
	if len([]rune(currency)) == 1 {
		return currency + number
	}
	return number + " " + currency
}

// InAnyCurrency shows how a bare number is written as a price.
func InAnyCurrency(number string) string {
	return fmt.Sprintf("%q or %q", InCurrency(number, "$"), InCurrency(number, "EUR"))
}

// ParseMoney reads "$185", "185 USD" or "185.50 EUR".
func ParseMoney(text string) (Money, error) {
	fail := func(reason string) (Money, error) {
		return Money{}, &ParseError{What: "price", Text: text, Reason: reason, Example: MoneyExample}
	}
	pointed, reason := points(text)
	if reason != "" {
		return fail(reason)
	}
	trimmed := strings.TrimSpace(pointed)
	start := strings.IndexAny(trimmed, "0123456789.-+")
	if start < 0 {
		return fail("has no number")
	}
	sign, rest := strings.TrimSpace(trimmed[:start]), trimmed[start:]
	number, n, reason := scanNumber(rest)
	if reason != "" {
		return fail(reason)
	}
	code := strings.TrimSpace(rest[n:])
	switch {
	case sign == "" && code == "":
		return Money{}, &ParseError{What: "price", Text: text, Reason: NoCurrency, Example: InAnyCurrency(strings.TrimSpace(trimmed))}
	case sign != "" && code != "":
		return fail("has two currencies")
	case math.Signbit(number):
		return fail("is below zero")
	case number > 1e9:
		return fail("is too large to be a price")
	case len([]rune(sign+code)) > 3 || strings.ContainsFunc(sign+code, notOfCurrency):
		return fail("has no known form of currency")
	}
	hundredths := math.Round(number * 100)
	if math.Abs(number*100-hundredths) > 1e-6 {
		return fail("has more than two decimals")
	}
	return Money{Hundredths: int64(hundredths), Currency: sign + code}, nil
}

func notOfCurrency(r rune) bool { return !unicode.IsLetter(r) && !unicode.Is(unicode.Sc, r) }

// String writes the money so that [ParseMoney] gives it back.
func (m Money) String() string {
	number := fmt.Sprintf("%d.%02d", m.Hundredths/100, m.Hundredths%100)
	if len([]rune(m.Currency)) == 1 {
		return m.Currency + number
	}
	return strings.TrimSpace(number + " " + m.Currency)
}

// Amount is the money as a plain number of its currency.
func (m Money) Amount() float64 { return float64(m.Hundredths) / 100 }
