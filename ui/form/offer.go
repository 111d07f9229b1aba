package form

import (
	"cmp"
	"errors"
	"strings"

	"washeve/model/quantity"
)

// Offered is the edit with the unit that is offered behind a bare number, where one is.
func (e Edit) Offered(try Try) Edit {
	if e.Offer == "" {
		return e
	}
	e = e.With(e.Offer, try)
	e.lent = true
	return e
}

// Told is said of a right text once it is taken: of a bare number what it was read as, and
// what [Edit.Taken] says; "" where the text says all of it.
func (e *Edit) Told() string {
	taken := e.Taken()
	if !e.lent || !e.Replaced {
		return taken
	}
	pointed, _ := quantity.Pointed(strings.TrimSpace(e.Good))
	if taken != "" {
		taken = "; " + taken
	}
	return "Read as " + pointed + taken
}

// withUnit puts a unit behind a bare number: the example's, or the one that goes on
// after the unit before it, as inches do after feet.
func (e *Edit) withUnit(text string) string {
	var wrong *quantity.ParseError
	unit := unitOf(e.example)
	if errors.As(e.Problem, &wrong) && wrong.Reason == quantity.NoCurrency && e.currency != "" {
		return quantity.InCurrency(strings.TrimSpace(text), e.currency)
	}
	if unit == "" || !errors.As(e.Problem, &wrong) || wrong.Reason != quantity.NoUnit {
		return ""
	}
	unit = cmp.Or(wrong.Next, unit)
	return strings.TrimSpace(text) + " " + unit
}

// unitOf is the unit of an example such as "40 ft 6 in", "240 ppm NaCl" or
// "240 ppm 442": the words behind its first number, up to one that has a unit of
// its own.
func unitOf(example string) string {
	words := strings.Fields(example)
	if len(words) < 2 || !strings.ContainsAny(words[0][:1], "0123456789") {
		return ""
	}
	for i, w := range words[1 : len(words)-1] {
		if w[0] >= '0' && w[0] <= '9' {
			return strings.Join(words[1:1+i], " ")
		}
	}
	return strings.Join(words[1:], " ")
}

// lacks is what a bare number is offered.
func (e *Edit) lacks() string {
	var wrong *quantity.ParseError
	if errors.As(e.Problem, &wrong) && wrong.Reason == quantity.NoCurrency {
		return "currency"
	}
	return "unit"
}

// afterOffer is what the text that is offered would be read as, behind it.
func (e *Edit) afterOffer() string {
	if e.taken == nil || e.taken(e.Offer) == "" {
		return ""
	}
	return "; " + e.taken(e.Offer)
}
