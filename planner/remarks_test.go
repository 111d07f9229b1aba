package planner_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// remarks are the codes of what the log says beside what is stated of the example, its water
// as it is changed.
func remarks(t testing.TB, hardness string, tds float64, gallonsApart bool) []string {
	lib := store.Example()
	lib.Places[0].TDS = quantity.Some(quantity.PPM(tds, quantity.ScaleNaCl))
	lib.Places[0].Hardness = quantity.Opt[quantity.Hardness]{}
	if hardness != "" {
		lib.Places[0].Hardness = quantity.Some(quantity.Must[quantity.Hardness](hardness))
	}
	wash := lib.Washes[0].Wash
	if !gallonsApart {
		wash.Stages[len(wash.Stages)-1].Passes = quantity.Some(9.0)
	}
	memory := planner.Memory{Past: planner.Recall(generous(lib.Rig.Beds[0].Name), lib.Rig, lib.Places)}
	p, err := memory.Make(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	var codes []string
	for _, n := range p.Remarks() {
		codes = append(codes, n.Code)
	}
	return codes
}

// A pen that shows more than the water holds makes any resin look good.
func TestAPenThatTheHardnessContradictsIsDoubted(t *testing.T) {
	assert.Contains(t, remarks(t, "10 gr/gal", 320, true), planner.LoadInDoubt)
	assert.NotContains(t, remarks(t, "", 320, true), planner.LoadInDoubt, "nobody measured the hardness")
	assert.NotContains(t, remarks(t, "18 gr/gal", 320, true), planner.LoadInDoubt, "the hardness is the load: it explains nothing")
	assert.NotContains(t, remarks(t, "10 gr/gal", 180, true), planner.LoadInDoubt, "the fill holds what is stated")
}

// The logged washes took 240 gal each; the plan takes some 30, or with nine passes about as
// much.
func TestWashesUnlikeThePlanAreTold(t *testing.T) {
	assert.Contains(t, remarks(t, "18 gr/gal", 320, true), planner.OtherGallons)
	assert.NotContains(t, remarks(t, "18 gr/gal", 320, false), planner.OtherGallons)
}
