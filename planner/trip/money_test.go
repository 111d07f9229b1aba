package trip

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

func money(t require.TestingT, text string) quantity.Opt[quantity.Money] {
	m, err := quantity.ParseMoney(text)
	require.NoError(t, err)
	return quantity.Some(m)
}

func TestSums(t *testing.T) {
	none := quantity.Opt[quantity.Money]{}
	for _, c := range []struct {
		parts []quantity.Opt[quantity.Money]
		want  string
	}{
		{nil, "nothing"},
		{[]quantity.Opt[quantity.Money]{none, none}, "not known"},
		{[]quantity.Opt[quantity.Money]{money(t, "$0.10"), money(t, "$0.20")}, "$0.30"},
		{[]quantity.Opt[quantity.Money]{money(t, "$1"), none}, "at least $1.00"},
		{[]quantity.Opt[quantity.Money]{money(t, "$1"), money(t, "2.50 EUR"), money(t, "$1")}, "$2.00 and 2.50 EUR"},
		{[]quantity.Opt[quantity.Money]{money(t, "$1"), money(t, "2.50 EUR"), none}, "at least $1.00 and 2.50 EUR"},
	} {
		var s, u Sum
		for _, p := range c.parts {
			s = s.add(p)
			u = Sum{}.add(p).plus(u)
		}
		assert.Equal(t, c.want, s.String())
		assert.Equal(t, s.Unknown, u.Unknown)
	}
}

// However a fill is shared out, the shares add up to the rounded whole.
func TestSharesDoNotDrift(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		price := rapid.Int64Range(1, 1e9).Draw(t, "price")
		parts := rapid.SliceOfN(rapid.Float64Range(0, 0.01), 1, 400).Draw(t, "parts")
		m := meter{price: quantity.Some(quantity.Money{Hundredths: price, Currency: "$"})}
		var total int64
		used := 0.0
		for _, part := range parts {
			used += part
			m, _ := m.share(part).Get()
			require.GreaterOrEqual(t, m.Hundredths, int64(0))
			total += m.Hundredths
		}
		require.InDelta(t, used*float64(price), float64(total), 0.5000001)
	})
}

func TestMoneyOfATrip(t *testing.T) {
	in := example()
	p := mustMake(t, in)
	var sum Sum
	for _, w := range p.Washes {
		sum = sum.plus(w.Cost)
	}
	assert.Equal(t, sum, p.Used)
	assert.True(t, p.Used.Known())

	in.Rig.Beds[0].Price = quantity.Opt[quantity.Money]{}
	p = mustMake(t, in)
	assert.Equal(t, "not known", p.Used.String(), "an unknown price is no price of nothing")
	in.Trip.Changes = []model.ResinChange{{Date: day(12), Price: money(t, "150 EUR")}, {Date: day(20)}}
	p = mustMake(t, in)
	assert.Contains(t, p.Used.String(), "at least")
	assert.Contains(t, p.Used.String(), "EUR")
	assert.Equal(t, "at least 150.00 EUR", p.Buy.String())
}

// A tank that is bought for the trip is ordered for, until the log holds a fill of it.
func TestATankStillToBeFilledIsOrderedFor(t *testing.T) {
	in := example()
	in.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
	in.Trip.Washes = in.Trip.Washes[:2]
	require.False(t, mustMake(t, in).OrderBy.Given())
	in.Trip.Fill = model.Yes
	p := mustMake(t, in)
	assert.True(t, p.ToFill)
	order, given := p.OrderBy.Get()
	require.True(t, given)
	assert.Equal(t, planner.OrderBy(p.First, planner.LeadTime), order, "it must be full when the trip begins")
	assert.Equal(t, Sum{}.add(in.Rig.Beds[0].Price), p.Buy)
	fill := model.Entry{ID: "1", At: model.MomentOf(time.Date(2026, 5, 20, 9, 0, 0, 0, time.UTC)), Body: &model.Refill{Bed: p.Bed}}
	in.Past = planner.Recall(model.NewLog([]model.Entry{fill}), in.Rig, in.Places)
	p = mustMake(t, in)
	assert.False(t, p.ToFill)
	assert.False(t, p.OrderBy.Given())
}

// New resin in the tank and the first fill of a tank that is bought are both one fill,
// also where the trip stays at some risk with either: none of them takes a spare as well.
func TestAFirstFillIsBoughtOnce(t *testing.T) {
	var in Input
	var p Plan
	for n := 5; n < 60 && p.FirstAtRisk <= 0; n++ {
		in = long(n)
		in.Trip.Fill = model.Yes
		in.Rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
		p = mustMake(t, in)
	}
	require.Positive(t, p.FirstAtRisk)
	require.Empty(t, p.Changes, "the last fill is not worth another")
	assert.Equal(t, "$185.00", p.Buy.String())
	assert.False(t, p.Carry.Spare)
}
