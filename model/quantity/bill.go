package quantity

import (
	"fmt"
	"math"
	"math/big"
)

// Bill adds up shares of prices without rounding on the way: however many shares
// there are, and in whatever order, the sum is the same, and it is rounded once,
// when it is read. The zero value is an empty bill.
type Bill struct {
	sum      *big.Rat // hundredths
	currency string
	unknown  string // why the sum cannot be told; "" where it can
}

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
	share := new(big.Rat).SetFloat64(part)
	share.Mul(share, new(big.Rat).SetInt64(money.Hundredths))
	if b.sum != nil {
		share.Add(share, b.sum)
	}
	return Bill{sum: share, currency: money.Currency}
}

// Plus is both bills in one.
func (b Bill) Plus(other Bill) Bill {
	switch {
	case b.unknown != "" || other.sum == nil && other.unknown == "":
		return b
	case other.unknown != "" || b.sum == nil:
		return other
	case b.currency != other.currency:
		b.unknown = fmt.Sprintf("prices in %s and in %s do not add up", b.currency, other.currency)
		return b
	}
	return Bill{sum: new(big.Rat).Add(b.sum, other.sum), currency: b.currency}
}

// Total is the sum to the nearest hundredth, halves up, and whether it can be
// told. An empty bill is nothing, of no currency.
func (b Bill) Total() (Money, bool) {
	if b.unknown != "" {
		return Money{}, false
	}
	if b.sum == nil {
		return Money{}, true
	}
	doubled := new(big.Int).Mul(b.sum.Num(), big.NewInt(2))
	doubled.Add(doubled, b.sum.Denom())
	hundredths := doubled.Quo(doubled, new(big.Int).Mul(b.sum.Denom(), big.NewInt(2)))
	if !hundredths.IsInt64() {
		return Money{}, false
	}
	return Money{Hundredths: hundredths.Int64(), Currency: b.currency}, true
}

// Unknown tells why the sum cannot be told; "" where it can.
func (b Bill) Unknown() string { return b.unknown }

// Compare tells which of two known sums of one currency is the lower: -1, 0 or 1,
// before any rounding. It is false where they cannot be compared.
func (b Bill) Compare(other Bill) (int, bool) {
	if b.unknown != "" || other.unknown != "" || b.currency != "" && other.currency != "" && b.currency != other.currency {
		return 0, false
	}
	return b.exact().Cmp(other.exact()), true
}

func (b Bill) exact() *big.Rat {
	if b.sum == nil {
		return new(big.Rat)
	}
	return b.sum
}
