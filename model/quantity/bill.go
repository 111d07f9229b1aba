package quantity

import (
	"cmp"
	"fmt"
	"math"
)

// Bill adds up shares of prices to a millionth of a hundredth: however many shares
// there are, and in whatever order, the sum is the same, and it is rounded to money once,
// when it is read. The zero value is an empty bill.
type Bill struct {
	sum      int64 // in billParts of a hundredth
	given    bool  // something is on it
	currency string
	unknown  string // why the sum cannot be told; "" where it can
}

const (
	billParts = 1_000_000
	mostBill  = 1 << 61 // billions of money: no larger sum is told

	tooLarge = "the sum is too large to be told"
)

// Add puts a part of a price on the bill. A price that is not stated makes the
// sum unknown, not zero, unless none of it is taken; what names the price in the
// words for that. Prices in two currencies do not add up.
func (b Bill) Add(what string, price Opt[Money], part float64) Bill {
	money, known := price.Get()
	switch {
	case b.unknown != "" || part == 0:
		return b
	case !known:
		b.unknown = "the price of " + what + " is not stated"
		return b
	case math.IsNaN(part) || math.IsInf(part, 0) || part < 0:
		b.unknown = "how much of " + what + " is taken is not known"
		return b
	case b.currency != "" && b.currency != money.Currency:
		b.unknown = fmt.Sprintf("prices in %s and in %s do not add up", b.currency, money.Currency)
		return b
	}
	share := math.Round(part * float64(money.Hundredths) * billParts)
	if share > mostBill-float64(b.sum) {
		return Bill{unknown: tooLarge}
	}
	return Bill{sum: b.sum + int64(share), given: true, currency: money.Currency}
}

// Plus is both bills in one.
func (b Bill) Plus(other Bill) Bill {
	switch {
	case b.unknown != "" || !other.given && other.unknown == "":
		return b
	case other.unknown != "" || !b.given:
		return other
	case b.currency != other.currency:
		b.unknown = fmt.Sprintf("prices in %s and in %s do not add up", b.currency, other.currency)
		return b
	}
	if b.sum > mostBill-other.sum {
		return Bill{unknown: tooLarge}
	}
	return Bill{sum: b.sum + other.sum, given: true, currency: b.currency}
}

// Total is the sum to the nearest hundredth, halves up, and whether it can be
// told. An empty bill is nothing, of no currency.
func (b Bill) Total() (Money, bool) {
	if b.unknown != "" {
		return Money{}, false
	}
	return Money{Hundredths: (b.sum + billParts/2) / billParts, Currency: b.currency}, true
}

// Unknown tells why the sum cannot be told; "" where it can.
func (b Bill) Unknown() string { return b.unknown }

// Compare tells which of two known sums of one currency is the lower: -1, 0 or 1,
// before any rounding. It is false where they cannot be compared.
func (b Bill) Compare(other Bill) (int, bool) {
	if b.unknown != "" || other.unknown != "" || b.currency != "" && other.currency != "" && b.currency != other.currency {
		return 0, false
	}
	return cmp.Compare(b.sum, other.sum), true
}
