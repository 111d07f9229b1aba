package learning

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/planner/bed"
)

func wornStates(capacities float64) []State { return after(Use{Capacities: capacities, Units: 20}) }

func washJob(capacities float64) Job {
	return Job{
		Uses: []Use{{Capacities: capacities, Units: 20}}, Main: Use{Capacities: 0.004, Units: 20},
		Limit: 0.03, LoadSpread: LoadSpread,
	}
}

// A fresh tank behind a worn one helps, and more than the worn one alone ever
// could.
func TestASecondBedNeverMakesItWorse(t *testing.T) {
	for _, worn := range []float64{0.05, 0.5, 0.8, 1, 1.6} {
		states, j := wornStates(worn), washJob(0.12)
		alone, both := j.Outlook(states), j.InSeries(states)
		assert.GreaterOrEqual(t, both.ChanceLasts, alone.ChanceLasts-1e-12)
		for k := range both.Remaining {
			assert.GreaterOrEqual(t, both.Remaining[k], alone.Remaining[k], "%g worn", worn)
			assert.LessOrEqual(t, both.AtEnd[k], alone.AtEnd[k], "%g worn", worn)
		}
		assert.Greater(t, both.ChanceLasts, 0.99, "a fresh tank takes a wash of an eighth of it")
	}
}

// Behind a dead lead the second bed is a fresh bed.
func TestBehindADeadLeadTheSecondBedIsAFreshOne(t *testing.T) {
	j := washJob(0.1)
	dead := wornStates(9)
	fresh := j.Outlook(after())
	both := j.InSeries(dead)
	for k := range fresh.Remaining {
		assert.InEpsilon(t, fresh.Remaining[k], both.Remaining[k], 0.08)
	}
	assert.Equal(t, 1.0, dead[0].Column.Spent())
}

// The second bed's capacity and contact are spread as believed.
func TestTheSecondBedIsBelievedLikeAnyFill(t *testing.T) {
	states := wornStates(0.4)
	contacts := Start().efficiencies(lagContacts)
	sum, square, contact, product, lead := 0.0, 0.0, 0.0, 0.0, 0.0
	n := float64(len(states))
	for i, s := range states {
		p := s.before(i, contacts)
		ln := math.Log(p.lag.Factor)
		sum, square, contact = sum+ln/n, square+ln*ln/n, contact+p.lag.Efficiency/n
		product, lead = product+ln*math.Log(s.Factor)/n, lead+math.Log(s.Factor)/n
	}
	assert.InDelta(t, 0, sum, 0.02)
	assert.InDelta(t, CapacitySpread, math.Sqrt(square-sum*sum), 0.02)
	assert.InDelta(t, 0.3+0.7*0.8, contact, 0.01)
	assert.InDelta(t, 0, product-sum*lead, 0.01, "lead and lag have nothing to do with each other")
}

// The plain sum over states agrees with feeding the two columns by hand.
func TestInSeriesRunsTheColumns(t *testing.T) {
	s := State{Hypothesis: Hypothesis{Factor: 1, Efficiency: 1, Weight: 1}, Column: bed.Column{}.Feed(20, 0.7)}
	p := s.before(0, []float64{0.8})
	j := washJob(0.2)
	last, held := p.run(j, 1)
	want := p.series.Feed(20, 16, 0.2).Outlet(20, 16)
	assert.InDelta(t, want, last, 1e-12)
	assert.True(t, held)
}

func BenchmarkInSeries(b *testing.B) {
	states, j := wornStates(0.5), washJob(0.1)
	for b.Loop() {
		j.InSeries(states)
	}
}
