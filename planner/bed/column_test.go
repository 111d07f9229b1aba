package bed

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model/store/reference"
)

// Source: testdata/reference/bed-breakthrough.csv, solved on 600 and 1200 cells
// by scipy 1.10.1 (LSODA), extrapolated. Tolerance: 2 % or 1e-5 of the feed.
func TestColumnAgreesWithSolvedHistories(t *testing.T) {
	for _, row := range referenceRows(t, "bed-breakthrough.csv") {
		throughput, units, want := row.number(t, 3), row.number(t, 2), row.number(t, 1)
		state := row.column(throughput, units)
		got := state.Outlet(units)
		assert.LessOrEqual(t, math.Abs(got-want), math.Max(0.02*want, 1e-5),
			"%s at T=%g: got %g, want %g", row.fields[0], throughput, got, want)
	}
}

func TestColumnAtOneFlowIsTheClosedForm(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.Float64Range(1.5, 60).Draw(t, "units")
		end := rapid.Float64Range(0.001, 1.3).Draw(t, "throughput")
		parts := rapid.IntRange(1, 9).Draw(t, "parts")
		var c Column
		for range parts {
			c = c.Feed(n, end/float64(parts))
		}
		assert.InEpsilon(t, ClosedForm(n, end), c.Outlet(n), 1e-6)
	})
}

// What does not leave has stayed: the leakage over a whole run adds up to what
// was fed less the capacity, for every N above 1.
func TestTheIntegralOfWhatIsHeldIsOneCapacity(t *testing.T) {
	for _, n := range []float64{1.1, 2, 5.6, 11.6, 27.1, 60} {
		const steps = 200000
		end := 1 + 1/n
		held := 0.0
		for i := range steps {
			held += (1 - ClosedForm(n, (float64(i)+0.5)*end/steps)) * end / steps
		}
		assert.InDelta(t, 1, held, 1e-5, "N=%g", n)
	}
}

func TestUsedIsWhatWasFedLessWhatLeaked(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var c Column
		leaked, fed := 0.0, 0.0
		for range rapid.IntRange(1, 6).Draw(t, "segments") {
			n := rapid.Float64Range(3, 40).Draw(t, "n")
			amount := rapid.Float64Range(0.01, 0.3).Draw(t, "t")
			const steps = 400
			for range steps {
				before := c.Outlet(n)
				c = c.Feed(n, amount/steps)
				leaked += (before + c.Outlet(n)) / 2 * amount / steps
			}
			fed += amount
		}
		assert.InDelta(t, math.Min(fed-leaked, 1), c.Used(), 2e-3)
	})
}

func TestUntilIsTheFeedThatReachesTheFraction(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := Column{}.Feed(rapid.Float64Range(4, 40).Draw(t, "n0"), rapid.Float64Range(0, 0.7).Draw(t, "t0"))
		n := rapid.Float64Range(4, 40).Draw(t, "n")
		fraction := rapid.Float64Range(0.001, 0.9).Draw(t, "fraction")
		left := c.Until(n, fraction)
		if left == 0 {
			assert.GreaterOrEqual(t, c.Outlet(n)*(1+1e-9), fraction)
			return
		}
		assert.InEpsilon(t, fraction, c.Feed(n, left).Outlet(n), 1e-6)
	})
}

// Up to about the capacity a faster flow leaks more at every moment. Beyond it
// the curves cross, and what still holds is that the faster flow has leaked
// more in all.
func TestMoreFlowNeverLeaksLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		before := rapid.Float64Range(0, 0.6).Draw(t, "before")
		c := Column{}.Feed(rapid.Float64Range(4, 40).Draw(t, "n0"), before)
		slow := rapid.Float64Range(3, 60).Draw(t, "slow")
		fast := slow * rapid.Float64Range(0.2, 1).Draw(t, "ratio")
		amount := rapid.Float64Range(0, 0.8).Draw(t, "amount")
		if before+amount < 0.95 {
			assert.GreaterOrEqual(t, c.Feed(fast, amount).Outlet(fast), c.Feed(slow, amount).Outlet(slow)*(1-1e-9))
		}
		assert.LessOrEqual(t, c.Feed(fast, amount).Used(), c.Feed(slow, amount).Used()+1e-12)
	})
}

func TestLongHistoriesStayBounded(t *testing.T) {
	var c Column
	for i := range 500 {
		c = c.Feed(10+float64(i%97)/7, 0.0015)
	}
	assert.LessOrEqual(t, len(c.tails), mostTails)
	assert.InDelta(t, 0.75, c.Used(), 0.02)
}

func TestASpentBedStaysSpent(t *testing.T) {
	c := Column{}.Feed(27, 2)
	for _, n := range []float64{2, 5, 27, 60} {
		assert.Equal(t, 1.0, c.Outlet(n))
		assert.Zero(t, c.Until(n, 0.5))
	}
	assert.Equal(t, 1.0, c.Used())
	assert.Equal(t, 1.0, c.Feed(5, 1).Spent())
}

type referenceRow struct {
	fields  []string
	earlier [][2]float64 // throughput and units of the segments before
}

// number reads a column counted from the right: names of cases hold commas.
func (r referenceRow) number(t *testing.T, i int) float64 {
	return reference.Number(t, r.fields[len(r.fields)-i])
}

func (r referenceRow) column(throughput, units float64) Column {
	var c Column
	done := 0.0
	for _, e := range append(r.earlier, [2]float64{throughput, units}) {
		c = c.Feed(e[1], e[0]-done)
		done = e[0]
	}
	return c
}

func referenceRows(t *testing.T, name string) []referenceRow {
	var rows []referenceRow
	for _, fields := range reference.Lines(t, name) {
		row := referenceRow{fields: fields}
		if n := len(rows); n > 0 && rows[n-1].fields[0] == fields[0] {
			last := rows[n-1]
			row.earlier = append(append([][2]float64{}, last.earlier...), [2]float64{last.number(t, 3), last.number(t, 2)})
		}
		rows = append(rows, row)
	}
	require.NotEmpty(t, rows)
	return rows
}

func BenchmarkColumnFeed(b *testing.B) {
	c := Column{}.Feed(20, 0.3).Feed(12, 0.1).Feed(25, 0.1)
	for b.Loop() {
		_ = c.Feed(18, 0.1)
	}
}
