package trip

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
)

// A target that covering the faces betters already changes no figure, and that is told; one
// that asks for more water is not told of.
func TestATargetThatChangesNothingIsTold(t *testing.T) {
	gallons := func(ppm float64) (sum quantity.Volume, p Plan) {
		in := example()
		if ppm > 0 {
			in.Trip.Target = quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl))
		}
		p = mustMake(t, in)
		for _, w := range p.Washes {
			sum += w.DI.P50
		}
		return sum, p
	}
	told := func(p Plan) (text string) {
		for _, n := range p.Notes {
			if n.Code == IdleTarget {
				text = n.Text(quantity.US)
			}
		}
		return text
	}
	usual, p := gallons(0)
	assert.Empty(t, told(p))
	same, p := gallons(100)
	assert.Equal(t, usual, same)
	assert.Equal(t, "The target of 100 ppm NaCl changes no gallons: going over each face once with DI water does better than that already.", told(p))
	why := ""
	for _, a := range p.Assumptions {
		why += a.Name + ": " + a.Words + "\n"
	}
	assert.True(t, strings.Contains(why, "target in the film: 100 ppm NaCl, which sets no gallons"), why)
	more, p := gallons(0.5)
	assert.Greater(t, more, usual)
	assert.Empty(t, told(p))
}

// Where no wash takes DI water nothing is said of what going over a face with it does.
func TestATargetOfATripWithoutDIWaterIsNotTold(t *testing.T) {
	in := example()
	in.Trip.Target = quantity.Some(quantity.PPM(100, quantity.ScaleNaCl))
	for i := range in.Trip.Washes {
		in.Trip.Washes[i].Stages = []model.Stage{{Name: "rinse", Water: model.Raw, Final: true}}
	}
	for _, n := range mustMake(t, in).Notes {
		assert.NotEqual(t, IdleTarget, n.Code)
	}
}
