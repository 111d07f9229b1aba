package quantity

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func dollars(hundredths int64) Opt[Money] {
	return Some(Money{Hundredths: hundredths, Currency: "$"})
}

func total(t *testing.T, b Bill) Money {
	m, known := b.Total()
	assert.True(t, known, b.Unknown())
	return m
}

// A tenth of a dollar taken ten times is a dollar, and a third of a cent taken
// three hundred times is a dollar too: nothing drifts.
func TestABillDoesNotDrift(t *testing.T) {
	var tenths, thirds Bill
	for range 10 {
		tenths = tenths.Add("resin", dollars(100), 0.1)
	}
	for range 30000 {
		thirds = thirds.Add("resin", dollars(1), 1.0/3)
	}
	assert.Equal(t, "$1.00", total(t, tenths).String())
	assert.Equal(t, "$100.00", total(t, thirds).String())
}

func TestABillIsTheSameSumInAnyOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 40).Draw(t, "shares")
		prices, parts := make([]int64, n), make([]float64, n)
		exact := new(big.Rat)
		for i := range n {
			prices[i] = rapid.Int64Range(0, 1e7).Draw(t, "price")
			parts[i] = rapid.Float64Range(0, 3).Draw(t, "part")
			share := new(big.Rat).SetFloat64(parts[i])
			exact.Add(exact, share.Mul(share, new(big.Rat).SetInt64(prices[i])))
		}
		var there, back, halves Bill
		other := Bill{}
		for i, at := range rand.New(rand.NewPCG(1, uint64(n))).Perm(n) {
			there = there.Add("resin", dollars(prices[at]), parts[at])
			back = back.Add("resin", dollars(prices[i]), parts[i])
			if i%2 == 0 {
				halves = halves.Add("resin", dollars(prices[i]), parts[i])
			} else {
				other = other.Add("resin", dollars(prices[i]), parts[i])
			}
		}
		a, _ := there.Total()
		b, _ := back.Total()
		c, _ := halves.Plus(other).Total()
		if a != b || b != c {
			t.Fatalf("%v, %v and %v by the order", a, b, c)
		}
		off := new(big.Rat).Sub(new(big.Rat).SetInt64(a.Hundredths), exact)
		if off.Abs(off).Cmp(big.NewRat(50_002, 100_000)) > 0 {
			t.Fatalf("%v is over half a hundredth and 40 millionths from %v", a, exact)
		}
	})
}

func TestAnUnknownPriceIsUnknownAndNotZero(t *testing.T) {
	b := Bill{}.Add("resin", dollars(18500), 0.1).Add("salt", Opt[Money]{}, 0.2)
	_, known := b.Total()
	assert.False(t, known)
	assert.Equal(t, "the price of salt is not stated", b.Unknown())
	_, known = b.Add("resin", dollars(100), 1).Total()
	assert.False(t, known, "it stays unknown")
	assert.Equal(t, Money{}, total(t, Bill{}.Add("salt", Opt[Money]{}, 0)), "what is not taken costs nothing, whatever its price")
	assert.Equal(t, "$0.00", total(t, Bill{}.Add("salt", dollars(0), 1)).String(), "a stated price of nothing is known")
	_, known = Bill{}.Add("resin", dollars(math.MaxInt64), 1e6).Total()
	assert.False(t, known, "too large")
	half := Bill{}.Add("resin", dollars(math.MaxInt64/8_000_000), 1.5)
	_, known = half.Plus(half).Total()
	assert.False(t, known, "too large together")
	for _, bad := range []float64{math.NaN(), math.Inf(1), -1} {
		assert.NotEmpty(t, Bill{}.Add("resin", dollars(100), bad).Unknown())
	}
}

func TestCurrenciesStayAsTypedAndDoNotMix(t *testing.T) {
	euro := Some(Money{Hundredths: 550, Currency: "EUR"})
	assert.Equal(t, "5.50 EUR", total(t, Bill{}.Add("salt", euro, 1)).String())
	mixed := Bill{}.Add("resin", dollars(100), 1).Add("salt", euro, 1)
	assert.Equal(t, "prices in $ and in EUR do not add up", mixed.Unknown())
	assert.Equal(t, mixed.Unknown(), Bill{}.Add("resin", dollars(100), 1).Plus(Bill{}.Add("salt", euro, 1)).Unknown())
}

func TestBillsCompareBeforeRounding(t *testing.T) {
	less, more := Bill{}.Add("resin", dollars(1000), 0.1234), Bill{}.Add("resin", dollars(1000), 0.1235)
	assert.Equal(t, total(t, less).Hundredths, int64(123))
	order, ok := less.Compare(more)
	assert.True(t, ok)
	assert.Equal(t, -1, order)
	order, ok = Bill{}.Compare(less)
	assert.True(t, ok)
	assert.Equal(t, -1, order)
	_, ok = less.Compare(Bill{}.Add("salt", Opt[Money]{}, 1))
	assert.False(t, ok)
}
