package learning

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

const usualRate = 40 * quantity.SquareFootPerMinute

func TestPaceMovesToTheUsersOwn(t *testing.T) {
	p := LearnPace(usualRate, nil)
	assert.InEpsilon(t, 40, p.P50.SquareFeetPerMinute(), 1e-9)
	done := []Covered{}
	last := p
	for range 6 {
		done = append(done, CoveredBy(800*quantity.SquareFoot, 1, 40*quantity.Gallon, 1.4*quantity.GPM)) // 28 ft2/min
		p = LearnPace(usualRate, done)
		assert.Less(t, p.P50, last.P50)
		assert.Less(t, float64(p.P90/p.P10), float64(last.P90/last.P10))
		last = p
	}
	assert.Equal(t, 6, p.Count)
	assert.InDelta(t, 28, p.P50.SquareFeetPerMinute(), 1.2)
}

func TestAWashFarOffIsSetAside(t *testing.T) {
	done := []Covered{{Area: 800 * quantity.SquareFoot, Duration: 20 * quantity.Minute}, {Area: 800 * quantity.SquareFoot, Duration: 20 * quantity.Hour}, {}}
	p := LearnPace(usualRate, done)
	assert.Equal(t, 1, p.Count)
	assert.Equal(t, 2, p.SetAside)
	assert.InEpsilon(t, 40, p.P50.SquareFeetPerMinute(), 1e-9)
	assert.Zero(t, LearnPace(0, done))
}

func TestPaceIsSoundWhateverIsLogged(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var done []Covered
		for range rapid.IntRange(0, 20).Draw(t, "n") {
			done = append(done, Covered{
				Area:   quantity.Area(rapid.Float64().Draw(t, "area")),
				Passes: rapid.Float64().Draw(t, "passes"), Duration: quantity.Duration(rapid.Float64().Draw(t, "time")),
			})
		}
		p := LearnPace(usualRate, done)
		assert.Equal(t, len(done), p.Count+p.SetAside)
		assert.True(t, 0 < p.P10 && p.P10 < p.P50 && p.P50 < p.P90 && !math.IsInf(float64(p.P90), 0))
	})
}

// The band of the next wash holds what it says.
func TestPaceIsCalibrated(t *testing.T) {
	const users = 2000
	r := rand.New(rand.NewPCG(8, 8))
	held := 0
	for range users {
		own := float64(usualRate) * math.Exp(PaceSpread*r.NormFloat64())
		wash := func() quantity.Coverage { return quantity.Coverage(own * math.Exp(HandSpread*r.NormFloat64())) }
		var done []Covered
		for range r.IntN(6) {
			done = append(done, Covered{Area: 70, Duration: quantity.Duration(70 / float64(wash()))})
		}
		p, next := LearnPace(usualRate, done), wash()
		if p.P10 <= next && next <= p.P90 {
			held++
		}
	}
	assert.InDelta(t, 0.8, float64(held)/users, 0.03)
}
