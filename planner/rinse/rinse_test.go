package rinse

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
)

// The arithmetic of the method, section 7: area x passes x flow / coverage rate.
func TestCoverByHand(t *testing.T) {
	volume, time := Cover(1200*quantity.SquareFoot, 2, 60*quantity.SquareFootPerMinute, 1.5*quantity.GPM)
	assert.InDelta(t, 60, volume.Gallons(), 1e-9)
	assert.InDelta(t, 40, time.Minutes(), 1e-9)
}

// Source: the continuous rinse of the plating trade (MEMORY): one volume of film
// with perfect mixing leaves 1/e of what was over the rinse water's own.
func TestOneFilmOfWaterLeavesOneOverE(t *testing.T) {
	film := 60 * quantity.MillilitrePerSquareMetre
	got := PPMAfter(300, 0, quantity.Volume(float64(film)*10), 10*quantity.SquareMetre, film, 1)
	assert.InEpsilon(t, 300/math.E, got, 1e-12)
}

func TestToReachIsTheInverseOfPPMAfter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		area := quantity.Area(rapid.Float64Range(1, 200).Draw(t, "m2"))
		film := quantity.Film(rapid.Float64Range(16e-6, 400e-6).Draw(t, "film"))
		clean := rapid.Float64Range(0, 9).Draw(t, "clean")
		target := clean + rapid.Float64Range(0.5, 20).Draw(t, "over")
		dirty := target + rapid.Float64Range(1, 900).Draw(t, "dirty")
		v, possible := ToReach(target, dirty, clean, area, film, MixingEfficiency)
		assert.True(t, possible)
		assert.InEpsilon(t, target, PPMAfter(dirty, clean, v, area, film, MixingEfficiency), 1e-9)
		more, _ := ToReach(target, dirty*1.5, clean, area, film, MixingEfficiency)
		assert.GreaterOrEqual(t, more, v, "a dirtier film never takes less")
	})
}

func TestWaterThatCarriesTheTargetNeverReachesIt(t *testing.T) {
	_, possible := ToReach(10, 300, 10, quantity.SquareMetre, 6e-5, MixingEfficiency)
	assert.False(t, possible)
	v, possible := ToReach(10, 8, 20, quantity.SquareMetre, 6e-5, MixingEfficiency)
	assert.True(t, possible, "the film is clean enough already")
	assert.Zero(t, float64(v))
}

func TestResidue(t *testing.T) {
	assert.InDelta(t, 0.6, Residue(60*quantity.MillilitrePerSquareMetre, 10).MilligramsPerSquareMetre(), 1e-12)
}

func TestTheUsualWashEndsWithDIOnAllButTheRoof(t *testing.T) {
	stages := UsualStages(true, false)
	last := stages[len(stages)-1]
	assert.True(t, last.Final)
	assert.Equal(t, model.DI, last.Water)
	assert.NotContains(t, last.Faces, model.Roof)
	low := UsualStages(true, true)
	assert.Equal(t, model.Sides(), low[len(low)-1].Faces, "a roof that shows gets it as well")
	for _, s := range UsualStages(false, false) {
		assert.NotEqual(t, model.Softened, s.Water)
	}
}
