package planner_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// A coach's roof is of rubber and seen by nobody. That of a car, a pickup or a van is
// painted as the sides are, and gets the final rinse; unless rubber is stated.
func TestARoofThatShowsIsPaintedAndRinsed(t *testing.T) {
	for _, c := range []struct {
		shape, stated, takes string
		rinsed               bool
	}{
		{"coach", "", "rubber roof", false},
		{"trailer", "", "rubber roof", false},
		{"coach", "paint", "paint", false},
		{"van", "", "paint", true},
		{"pickup", "", "paint", true},
		{"car", "", "paint", true},
		{"van", "rubber roof", "rubber roof", false},
	} {
		rig, places, wash := threeFacts()
		rig.Vehicles[0].Shape, rig.Vehicles[0].RoofSkin = model.Shape(c.shape), model.Surface(c.stated)
		p := mustMake(t, rig, places, wash)
		assert.Equal(t, c.takes, taken(t, p, "vehicle roof skin").Words, c.shape)
		roof := p.Faces[0]
		require.Equal(t, model.Roof, roof.Name)
		assert.Equal(t, c.rinsed, roof.DI > 0, "%s, roof %q", c.shape, c.stated)
		assert.Equal(t, model.Surface(c.takes), roof.Surfaces[0].Surface, c.shape)
		assert.Equal(t, len(planner.UsualStages(rig, wash)), len(p.Stages))
	}
}

// Where the usual stages leave a roof with spots out of the DI rinse it is said why, and
// what changes it; where a person has said what becomes of the roof nothing is.
func TestWhyTheRoofGetsNoDI(t *testing.T) {
	for _, c := range []struct {
		name, shape, skin string
		state             func(*model.Wash)
		told              string
	}{
		{"a coach that nobody described", "", "", nil, "nobody sees the roof of a coach from the ground"},
		{"a painted roof, as far up", "trailer", "paint", nil, "nobody sees the roof of a trailer from the ground"},
		{"rubber over a van", "van", "rubber roof", nil, "it is of rubber, as you stated"},
		{"a van", "van", "", nil, ""},
		{"what is said to change it", "", "", func(w *model.Wash) { w.DIFaces = []model.Side{model.Roof} }, ""},
		{"a towel by choice", "", "", func(w *model.Wash) { w.TowelFaces = []model.Side{model.Roof} }, ""},
		{"glass alone", "", "", func(w *model.Wash) { w.DISurfaces = []model.Surface{model.Glass} }, ""},
		{"stages of one's own", "", "", func(w *model.Wash) {
			w.Stages = []model.Stage{{Name: "rinse", Water: model.Raw}, {Name: "end", Water: model.DI, Faces: []model.Side{model.Left}, Final: true}}
		}, ""},
	} {
		rig, places, wash := threeFacts()
		rig.Vehicles[0].Shape, rig.Vehicles[0].RoofSkin = model.Shape(c.shape), model.Surface(c.skin)
		if c.state != nil {
			c.state(&wash)
		}
		p := mustMake(t, rig, places, wash)
		told := ""
		for _, n := range p.Warnings {
			if text := n.Text(quantity.US); strings.Contains(text, "The roof gets no DI rinse") {
				told += text
			}
		}
		if c.told == "" {
			assert.Empty(t, told, c.name)
			continue
		}
		assert.Contains(t, told, c.told, c.name)
		assert.Contains(t, told, `name it under "DI first on" (di_faces).`, c.name)
	}
	rig, places, wash := threeFacts()
	wash.DIFaces = []model.Side{model.Roof}
	assert.Positive(t, mustMake(t, rig, places, wash).Faces[0].DI, "what the note says is so")
	rig, places, wash = threeFacts()
	places[0].TDS = quantity.Some(quantity.PPM(8, quantity.ScaleNaCl))
	for _, n := range mustMake(t, rig, places, wash).Warnings {
		assert.NotContains(t, n.Format, "The roof", "water that leaves no spots")
	}
}
