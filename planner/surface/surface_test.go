package surface

import (
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/reference"
	"washeve/planner/water"
)

// Source: testdata/reference/dragout.csv, Metal Finishing Guide Book 2012-2013
// Table II, and Jeffreys' film computed with IAPWS-95 viscosities. Within 1 %.
func TestFilmsAgainstTheReference(t *testing.T) {
	table := map[string]quantity.Film{
		"vertical parts, well drained": WellDrained, "vertical parts, poorly drained": PoorlyDrained,
		"vertical parts, very poorly drained": VeryPoorlyDrained, "horizontal parts, well drained": WellDrainedFlat,
		"horizontal parts, very poorly drained": VeryPoorlyDrainedFlat,
	}
	drained := regexp.MustCompile(`water (\d+) C; height ([\d.]+) m; (\d+) s; mean`)
	checked := 0
	for _, row := range reference.Lines(t, "dragout.csv") {
		want, err := strconv.ParseFloat(row[4], 64)
		if err != nil {
			continue
		}
		if film, known := table[row[1]]; known && row[0] == "film" {
			assert.InEpsilon(t, want, film.MillilitresPerSquareMetre(), 1e-5, row[1])
			checked++
		}
		if m := drained.FindStringSubmatch(row[1]); m != nil && row[0] == "drain" {
			nu := water.KinematicViscosity(quantity.Celsius(reference.Number(t, m[1])))
			got := Drained(quantity.Length(reference.Number(t, m[2])), nu, quantity.Duration(reference.Number(t, m[3])))
			assert.InEpsilon(t, want, got.MillilitresPerSquareMetre(), 0.01, row[1])
			checked++
		}
	}
	assert.Greater(t, checked, 8)
}

// Source: the project's method, section 6: 2.5 m after 30 s at 20 C is about 61
// mL/m2 (Jeffreys, MEMORY).
func TestATallSideKeepsMore(t *testing.T) {
	film := Film(model.Left, 2.5, water.KinematicViscosity(quantity.Celsius(20)), 30)
	assert.InDelta(t, 61, film.MillilitresPerSquareMetre(), 1)
}

func TestFilmKeepsToTheTable(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tall := quantity.Length(rapid.Float64Range(0.01, 5).Draw(t, "height"))
		drip := quantity.Duration(rapid.Float64Range(1, 3600).Draw(t, "drip"))
		nu := water.KinematicViscosity(quantity.Celsius(rapid.Float64Range(1, 50).Draw(t, "C")))
		for _, side := range model.Sides() {
			film := Film(side, tall, nu, drip)
			assert.GreaterOrEqual(t, film, WellDrained)
			assert.LessOrEqual(t, film, VeryPoorlyDrainedFlat)
			assert.LessOrEqual(t, Film(side, tall, nu, 2*drip), film, "a longer drip never leaves more")
			assert.GreaterOrEqual(t, Film(side, 2*tall, nu, drip), film, "a taller side never keeps less")
		}
	})
}

func TestAreasOfABox(t *testing.T) {
	b := Body{Shape: model.Coach, Length: 40 * quantity.Foot, Width: 8 * quantity.Foot, Height: 12 * quantity.Foot, Clearance: 2 * quantity.Foot}
	assert.InDelta(t, 40*10*0.96, b.Area(model.Left).SquareFeet(), 1e-6)
	assert.Equal(t, b.Area(model.Left), b.Area(model.Right))
	assert.InDelta(t, 80, b.Area(model.Front).SquareFeet(), 1e-6)
	assert.InDelta(t, 320, b.Area(model.Roof).SquareFeet(), 1e-6)
	b.Slides = 3
	assert.InDelta(t, 40*10*0.96+2*36, b.Area(model.Left).SquareFeet(), 1e-6, "two of three are on the left")
	assert.InDelta(t, 320+3*36, b.Area(model.Roof).SquareFeet(), 1e-6)
}

func TestEveryFaceIsMadeOfOneWhole(t *testing.T) {
	for _, shape := range []model.Shape{model.Coach, model.Trailer, model.Van, model.Pickup, model.Car} {
		for _, side := range model.Sides() {
			whole := quantity.Fraction(0)
			for _, s := range Shares(shape, side, UsualSkin, UsualRoof(shape, UsualSkin)) {
				assert.Positive(t, float64(s.Part))
				whole += s.Part
			}
			assert.InDelta(t, 1, float64(whole), 1e-12, "%s %s", shape, side)
		}
	}
}
