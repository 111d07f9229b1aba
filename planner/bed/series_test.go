package bed

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

// history is a draw of stretches at changing flows.
func history(t *rapid.T) (units, fed []float64) {
	n := rapid.IntRange(1, 16).Draw(t, "stretches")
	for range n {
		units = append(units, rapid.Float64Range(1, 40).Draw(t, "units"))
		fed = append(fed, rapid.Float64Range(0.001, 0.4).Draw(t, "fed"))
	}
	return units, fed
}

// Two like beds that are never swapped are one bed of their depth together,
// whatever flows they have seen.
func TestSeriesUnswappedIsOneLongBed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		units, fed := history(t)
		pair, long := Series{Ratio: 1}, Column{}
		for i, n := range units {
			pair, long = pair.Feed(n, n, fed[i]), long.Feed(2*n, fed[i]/2)
			for _, now := range []float64{1.5, n, 30} {
				want := long.Outlet(2 * now)
				if got := pair.Outlet(now, now); math.Abs(got-want) > 1e-7 {
					t.Fatalf("outlet %g of the pair, %g of the long bed", got, want)
				}
			}
			if got, want := (pair.Lead.Used()+pair.Lag.Used())/2, long.Used(); math.Abs(got-want) > 1e-8 {
				t.Fatalf("used %g of the pair, %g of the long bed", got, want)
			}
		}
		n := rapid.Float64Range(1, 40).Draw(t, "units at the end")
		limit := rapid.Float64Range(0.002, 0.9).Draw(t, "limit")
		if got, want := pair.Until(n, n, limit), 2*long.Until(2*n, limit); math.Abs(got-want) > 1e-6 {
			t.Fatalf("%g until the limit for the pair, %g for the long bed", got, want)
		}
	})
}

// What is fed is taken up by one of the two or has left, and feeding in pieces
// changes nothing.
func TestSeriesLosesNothingAndPiecesDoNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lead, lag := rapid.Float64Range(1, 40).Draw(t, "lead"), rapid.Float64Range(1, 40).Draw(t, "lag")
		ratio := rapid.Float64Range(0.3, 3).Draw(t, "ratio")
		fed := rapid.Float64Range(0.01, 3).Draw(t, "fed")
		whole := Series{Ratio: ratio}.Feed(lead, lag, fed)
		pieces, left := Series{Ratio: ratio}, 0.0
		const n = 400
		for range n {
			before := pieces.Outlet(lead, lag)
			pieces = pieces.Feed(lead, lag, fed/n)
			left += (before + pieces.Outlet(lead, lag)) / 2 * fed / n
		}
		if math.Abs(whole.Outlet(lead, lag)-pieces.Outlet(lead, lag)) > 1e-7 {
			t.Fatalf("outlet %g at once, %g in pieces", whole.Outlet(lead, lag), pieces.Outlet(lead, lag))
		}
		if taken := whole.Lead.Used() + ratio*whole.Lag.Used(); math.Abs(taken+left-fed) > 2e-3*fed {
			t.Fatalf("%g fed, %g taken up and %g left", fed, taken, left)
		}
	})
}

// marched is the outlet of two beds by brute force: both as rows of cells, the
// water going through cell by cell, in small steps.
func marched(lead, lag, ratio, fed float64, cells int) float64 {
	steps := 40 * cells
	beds := [2]struct {
		q        []float64
		n, scale float64
	}{{make([]float64, cells), lead, 1}, {make([]float64, cells), lag, ratio}}
	out := 0.0
	for range steps {
		c := 1.0
		for k := range beds {
			b := &beds[k]
			for i := range b.q {
				taken := c * -math.Expm1(-b.n/float64(cells))
				room := (1 - b.q[i]) * b.scale / float64(cells)
				taken = math.Min(taken, room/(fed/float64(steps)))
				b.q[i] += taken * fed / float64(steps) * float64(cells) / b.scale
				c -= taken
			}
		}
		out = c
	}
	return out
}

// The exact pair is what finer and finer cells come to.
func TestSeriesIsWhatMarchingComesTo(t *testing.T) {
	for _, c := range []struct{ lead, lag, ratio, fed float64 }{
		{6, 6, 1, 1.4}, {3, 9, 1, 1.2}, {8, 4, 0.6, 1.1}, {5, 5, 2, 2.4},
	} {
		exact := Series{Ratio: c.ratio}.Feed(c.lead, c.lag, c.fed).Outlet(c.lead, c.lag)
		coarse := math.Abs(marched(c.lead, c.lag, c.ratio, c.fed, 20) - exact)
		fine := math.Abs(marched(c.lead, c.lag, c.ratio, c.fed, 160) - exact)
		assert.Less(t, fine, 0.02*exact+1e-4, "%+v: exact %g", c, exact)
		assert.Less(t, fine, coarse+1e-4, "%+v: finer cells come nearer", c)
	}
}

// Two in series give at least what one tank of the same volume gives: against
// one as deep as both, and against one in the usual proportions, which is wider.
func TestSeriesIsNeverWorseThanOneOfTheSameVolume(t *testing.T) {
	wider := math.Pow(2, -2.0/9) // N goes with volume / (flow^2/3 area^1/3)
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.Float64Range(0.5, 40).Draw(t, "units of one")
		limit := rapid.Float64Range(0.002, 0.36).Draw(t, "limit")
		pair := Series{Ratio: 1}.Until(n, n, limit)
		for name, units := range map[string]float64{"as deep as both": 2 * n, "wider": 2 * n * wider} {
			if one := 2 * UsedFraction(units, quantity.Fraction(limit)); pair < one-1e-6 {
				t.Fatalf("%s: the pair gives %g, one tank %g", name, pair, one)
			}
		}
		// Swapped, each tank of resin gives at least what it gives in the large one.
		if round, one := Rounds(n, limit), UsedFraction(2*n, quantity.Fraction(limit)); round.Fed < one-1e-6 {
			t.Fatalf("swapped, a tank gives %g; in one large tank %g", round.Fed, one)
		}
	})
}

// The textbook result of beds in series that are taken round ("merry-go-round"):
// the lead stays until it is exhausted, while the lag takes what it lets through,
// so that nearly all of its capacity is used.
//
// PUBLISHED: Davis, Water and Wastewater Engineering: Design Principles and
// Practice, McGraw-Hill 2010, figure 8-4 and its text. It holds as long as the
// working layer fits into one bed (Seader and Henley, Separation Process
// Principles, exercise on two carbon beds in series that asks for that width):
// here when ln(1/limit) is below the transfer units of one bed.
func TestSwappedLeadUsesNearlyAllOfItsCapacity(t *testing.T) {
	for _, c := range []struct{ units, limit float64 }{
		{27.1, 0.04}, {18.4, 0.04}, {11.6, 0.04}, {5.58, 0.04}, {18.4, 0.005}, {8, 0.01},
	} {
		require.Less(t, math.Log(1/c.limit), c.units)
		round, alone := Rounds(c.units, c.limit), UsedFraction(c.units, quantity.Fraction(c.limit))
		assert.Greater(t, round.Used, 0.99, "%+v", c)
		assert.InDelta(t, 1, round.Fed, 0.02, "%+v: in the long run a turn feeds what one bed holds", c)
		assert.Greater(t, round.Used, alone, "%+v: more than one tank on its own", c)
	}
	short := Rounds(2, 0.02)
	assert.Less(t, short.Used, 0.99, "a working layer longer than a bed leaves some of the lead unused")
}

func TestSeriesOfNothingStaysAsItIs(t *testing.T) {
	s := Series{Ratio: 1}
	for _, bad := range []float64{0, -1, math.NaN()} {
		assert.Equal(t, s, s.Feed(bad, 5, 1))
		assert.Equal(t, s, s.Feed(5, bad, 1))
		assert.Equal(t, s, s.Feed(5, 5, bad))
		assert.Equal(t, Series{Ratio: bad}.Lead, Series{Ratio: bad}.Feed(5, 5, 1).Lead)
	}
	spent := Series{Ratio: 1}.Feed(5, 5, 9)
	assert.Equal(t, 1.0, spent.Outlet(5, 5))
	assert.Zero(t, spent.Until(5, 5, 0.5))
}

func BenchmarkSeriesUntil(b *testing.B) {
	s := Series{Ratio: 1.1}.Feed(20, 18, 0.5)
	for b.Loop() {
		s.Until(20, 18, 0.03)
	}
}
