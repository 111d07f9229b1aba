package planner_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// taken is what a plan takes for something that is not stated.
func taken(t *testing.T, p planner.Plan, name string) planner.Assumption {
	t.Helper()
	i := slices.IndexFunc(p.Assumptions, func(a planner.Assumption) bool { return a.Name == name })
	require.GreaterOrEqual(t, i, 0, name)
	return p.Assumptions[i]
}

// A hose whose name alone is there changes no flow, and what stands in for it is told.
func TestAHoseStatedInPartIsAUsualOne(t *testing.T) {
	rig, places, wash := threeFacts()
	none := mustMake(t, rig, places, wash)
	rig.Hoses = []model.Hose{{Name: "blue"}}
	named := mustMake(t, rig, places, wash)
	assert.Equal(t, none.Sprayer, named.Sprayer)
	assert.Equal(t, none.Flush, named.Flush)
	assert.Equal(t, 50*quantity.Foot, quantity.Length(taken(t, named, "hose length").Value.SI))
	bore := taken(t, named, "hose bore")
	assert.Equal(t, 0.625*quantity.Inch, quantity.Length(bore.Value.SI))
	assert.Equal(t, "a usual hose; not stated of blue", bore.Source.Text)
	assert.Equal(t, "5/8 in x 50 ft", taken(t, named, "hose to the sprayer").Words)

	rig.Hoses = []model.Hose{{Name: "blue", Length: quantity.Some(50 * quantity.Foot), Run: model.SprayRun}, {Name: "red", Bore: quantity.Some(0.625 * quantity.Inch), Run: model.SupplyRun}}
	half := mustMake(t, rig, places, wash)
	assert.Equal(t, none.Sprayer, half.Sprayer)
	assert.Equal(t, "a usual hose; not stated of red", taken(t, half, "hose length").Source.Text)

	rig.Hoses[0].Bore, rig.Hoses[1].Length = quantity.Some(0.625*quantity.Inch), quantity.Some(50*quantity.Foot)
	whole := mustMake(t, rig, places, wash)
	assert.Equal(t, none.Sprayer, whole.Sprayer)
	for _, a := range whole.Assumptions {
		assert.NotContains(t, a.Name, "hose")
	}
}
