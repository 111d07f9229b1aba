package learning

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
)

// chiSquare19 is the 99th percentile of chi-square with 19 degrees of freedom
// (any table of the distribution; the interval is that of 20 bins).
const chiSquare19 = 36.19

// chiSquare9 is the same for 9 degrees of freedom, 10 bins.
const chiSquare9 = 21.67

// Simulation-based calibration (Talts, Betancourt, Simpson, Vehtari, Gelman 2018,
// arXiv:1804.06788): over fills drawn from the outset, the truth's rank among the
// posterior's draws is uniform.
func TestTheTruthRanksEvenly(t *testing.T) {
	const fills = 600
	r := rand.New(rand.NewPCG(2018, 1804))
	var factor, contact, remaining []float64
	flagged := 0
	for range fills {
		s := simulate(r, Start())
		p := Start().Learn(s.fill)
		factor = append(factor, rank(r, p.States, s.factor, func(x State) float64 { return x.Factor }))
		contact = append(contact, rank(r, p.States, s.e, func(x State) float64 { return x.Efficiency }))
		remaining = append(remaining, rank(r, p.States, s.remaining, s.job.remainingOf))
		flagged += len(p.Unexplained)
	}
	for name, ranks := range map[string][]float64{"capacity": factor, "contact": contact, "remaining": remaining} {
		chi, band := chiSquare(ranks, 20), within(ranks, 0.1, 0.9)
		t.Logf("%-9s: chi-square %.1f (1 %% at %.2f), 80 %% band holds %.1f %%", name, chi, chiSquare19, 100*band)
		assert.Less(t, chi, chiSquare19, name)
		assert.InDelta(t, 0.8, band, 0.05, name)
	}
	t.Logf("%d fills, %d readings unexplained", fills, flagged)
}

// Ten washes with a reading at each, at two thirds of the life of the bed: the
// readings must at least halve the error of the prior alone. Every other reading
// is taken at the flow of a bucket fill, as [Job.Advise] would have it; at the
// sprayer's flow alone a bed in good contact shows little before its last third.
func TestReadingsHalveTheErrorAtTwoThirdsOfLife(t *testing.T) {
	const fills = 120
	for _, flows := range []struct {
		name         string
		every        int
		mustBeHalved bool
	}{{"every other reading at 5 gpm", 2, true}, {"all readings at the sprayer's flow", 99, false}} {
		r := rand.New(rand.NewPCG(10, 23))
		var alone, taught []float64
		for range fills {
			s := twoThirds(r, flows.every)
			miss := func(states []State) float64 {
				return math.Abs(s.job.Outlook(states).Remaining[1] - s.remaining)
			}
			told := s.fill
			told.Readings = nil
			alone = append(alone, miss(Start().Learn(told).States))
			taught = append(taught, miss(Start().Learn(s.fill).States))
		}
		slices.Sort(alone)
		slices.Sort(taught)
		ratio := taught[fills/2] / alone[fills/2]
		t.Logf("%s: median error of remaining gallons %.1f by the prior alone, %.1f with readings (%.2f of it)",
			flows.name, alone[fills/2], taught[fills/2], ratio)
		assert.Less(t, ratio, 0.9)
		if flows.mustBeHalved {
			assert.LessOrEqual(t, ratio, 0.5)
		}
	}
}

// A user's fills drawn about a median of the user's own: the next outset holds
// the next fill as often as it says, and is narrower than none at all.
func TestPastFillsForetellTheNext(t *testing.T) {
	const users = 150
	r := rand.New(rand.NewPCG(5, 9))
	var ranks []float64
	narrower := 0.0
	for range users {
		own := math.Sqrt(CapacitySpread*CapacitySpread-FillSpread*FillSpread) * r.NormFloat64()
		var past []Lesson
		for range 3 {
			s := simulate(r, Outset{median: own, spread: FillSpread})
			past = append(past, Recall(s.fill))
		}
		next := After(past)
		truth := own + FillSpread*r.NormFloat64()
		ranks = append(ranks, normalBelow((truth-next.median)/next.spread))
		narrower += next.spread / CapacitySpread / users
	}
	t.Logf("80 %% band of the next factor holds %.1f %%, at %.2f of the width", 100*within(ranks, 0.1, 0.9), narrower)
	assert.Less(t, chiSquare(ranks, 10), chiSquare9)
	assert.Less(t, narrower, 0.85)
}
