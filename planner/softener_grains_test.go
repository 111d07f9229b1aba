package planner_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/planner/tag"
)

// byGrains plans the example with a softener of 12 000 grains, stated as asked for.
func byGrains(t *testing.T, change func(*model.Softener)) planner.Plan {
	t.Helper()
	lib := store.Example()
	s := &lib.Rig.Softeners[0]
	s.Capacity, s.Resin = quantity.Some(12000*quantity.Grain), quantity.Opt[quantity.Volume]{}
	change(s)
	return mustMake(t, lib.Rig, lib.Places, lib.Washes[0].Wash)
}

func assumed(t *testing.T, p planner.Plan, name string) planner.Assumption {
	t.Helper()
	at := slices.IndexFunc(p.Assumptions, func(a planner.Assumption) bool { return a.Name == name })
	require.GreaterOrEqual(t, at, 0, name)
	return p.Assumptions[at]
}

// The grains that are printed on a softener are enough: they, and not its volume, say what
// is left. What hangs on the volume is not known, and says so.
func TestASoftenersGrainsAreEnough(t *testing.T) {
	p := byGrains(t, func(*model.Softener) {})
	sized := byGrains(t, func(s *model.Softener) { s.Resin = quantity.Some(0.5 * quantity.CubicFoot) })
	assert.Equal(t, 12000*quantity.Grain, p.Softener.Capacity)
	assert.Equal(t, sized.Softener.Remaining, p.Softener.Remaining)
	assert.Equal(t, sized.Softener.Share, p.Softener.Share)
	assert.Equal(t, sized.DI, p.DI)
	assert.False(t, p.Softener.Resin.Given())
	assert.False(t, p.Softener.Salt.Given(), "salt is dosed by the volume")
	assert.True(t, sized.Softener.Salt.Given())
	salt := assumed(t, p, "salt of a regeneration")
	assert.Equal(t, "unknown: needs the volume", salt.Words)
}

// The pressure needs a volume: a band of what the trade's softeners hold stands for it,
// listed as such, and the end that takes more of the pressure counts.
func TestTheVolumeBehindGrainsIsABand(t *testing.T) {
	p := byGrains(t, func(*model.Softener) {})
	least, most := assumed(t, p, "softener resin volume, at the least"), assumed(t, p, "softener resin volume, at the most")
	assert.Equal(t, "0.4 ft3", least.Value.Show(quantity.US))
	assert.Equal(t, "0.6 ft3", most.Value.Show(quantity.US))
	for _, a := range []planner.Assumption{least, most} {
		assert.Equal(t, tag.Practice, a.Source.Tag)
		assert.Contains(t, a.Source.Text, "gr/ft3")
	}
	for _, diameter := range []quantity.Opt[quantity.Length]{{}, quantity.Some(8 * quantity.Inch)} {
		unsized := byGrains(t, func(s *model.Softener) { s.Diameter = diameter })
		for _, feet := range []float64{0.4, 0.45, 0.5, 0.55, 0.6} {
			sized := byGrains(t, func(s *model.Softener) {
				s.Diameter, s.Resin = diameter, quantity.Some(quantity.Volume(feet)*quantity.CubicFoot)
			})
			assert.LessOrEqual(t, float64(unsized.Sprayer.PressureLeft), float64(sized.Sprayer.PressureLeft)*(1+1e-9), "%v ft3", feet)
			assert.LessOrEqual(t, float64(unsized.Sprayer.OpenHose), float64(sized.Sprayer.OpenHose)*(1+1e-9), "%v ft3", feet)
		}
	}
}

// With neither there is no plan, and either is asked for.
func TestASoftenerNeedsItsVolumeOrItsGrains(t *testing.T) {
	lib := store.Example()
	lib.Rig.Softeners[0].Resin = quantity.Opt[quantity.Volume]{}
	_, err := planner.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.ErrorContains(t, err, "resin volume or capacity")
	faults := lib.Rig.Faults(lib.Places.Names())
	require.Len(t, faults, 1)
	assert.True(t, faults[0].Lacks)
	assert.Equal(t, `is missing; write for example resin = "0.5 ft3" or, where that is what you know, capacity = "10000 gr"`, faults[0].Problem)
	lib.Rig.Softeners[0].Capacity = quantity.Some(10000 * quantity.Grain)
	assert.Empty(t, lib.Rig.Faults(lib.Places.Names()))
}
