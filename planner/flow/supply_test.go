package flow

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
)

func psi(p float64) quantity.Opt[quantity.Pressure] {
	return quantity.Some(quantity.Pressure(p) * quantity.PSI)
}

func gpm(q float64) quantity.Opt[quantity.Flow] {
	return quantity.Some(quantity.Flow(q) * quantity.GPM)
}

func TestATapGoesThroughWhatWasMeasured(t *testing.T) {
	s := SupplyOf(&model.Place{Pressure: psi(55), FlowingAt: psi(45), Flowing: gpm(6)})
	assert.InDelta(t, 55, s.Pressure(0).PSI(), 1e-9)
	assert.InDelta(t, 45, s.Pressure(6*quantity.GPM).PSI(), 1e-9)
	assert.Empty(t, s.Assumed)
	// NFPA 291: the flow at another pressure is Q (drop/drop measured)^0.54.
	assert.InEpsilon(t, 6*math.Pow(55.0/10, 0.54), s.Most().GPM(), 1e-3)
}

func TestABucketGivesTheFlowOfTheOpenTap(t *testing.T) {
	s := SupplyOf(&model.Place{
		Pressure: psi(55), Bucket: quantity.Some(5 * quantity.Gallon), BucketTime: quantity.Some(30 * quantity.Second),
	})
	assert.InEpsilon(t, 10, s.Most().GPM(), 1e-9)
	assert.Empty(t, s.Assumed)
}

func TestWhatWasNotMeasuredIsToldAsAssumed(t *testing.T) {
	assert.Len(t, SupplyOf(&model.Place{}).Assumed, 2)
	assert.Len(t, SupplyOf(&model.Place{Pressure: psi(60)}).Assumed, 1)
	assert.Len(t, SupplyOf(&model.Place{Supply: model.Pump}).Assumed, 2)
	unknownStatic := SupplyOf(&model.Place{FlowingAt: psi(45), Flowing: gpm(6)})
	assert.Len(t, unknownStatic.Assumed, 1)
	assert.InDelta(t, 45, unknownStatic.Pressure(6*quantity.GPM).PSI(), 1e-9)
}

func TestAFlowingPressureNotBelowTheStaticIsTold(t *testing.T) {
	s := SupplyOf(&model.Place{Pressure: psi(45), FlowingAt: psi(55), Flowing: gpm(6)})
	assert.Len(t, s.Contradictions, 1)
	assert.NotContains(t, s.Contradictions[0].Text(quantity.US), "%!")
	assert.Equal(t, UsualTap(45*quantity.PSI).Pressure(3*quantity.GPM), s.Pressure(3*quantity.GPM))
}

func TestAPumpFallsInAStraightLine(t *testing.T) {
	s := SupplyOf(&model.Place{Supply: model.Pump, PumpPressure: psi(50), PumpFlow: gpm(4)})
	assert.InEpsilon(t, 25, s.Pressure(2*quantity.GPM).PSI(), 1e-9)
	assert.InEpsilon(t, 4, s.Most().GPM(), 1e-9)
	assert.Empty(t, s.Assumed)
}

func TestSprayersOfARig(t *testing.T) {
	assert.InEpsilon(t, 1.2, SprayerOf(&model.Sprayer{Tool: model.PressureWasher, Flow: gpm(1.2)}).Rated.GPM(), 1e-9)
	byNozzle := SprayerOf(&model.Sprayer{Tool: model.PressureWasher, Number: quantity.Some(3.0), Pressure: psi(1000)})
	assert.InEpsilon(t, 1.5, byNozzle.Rated.GPM(), 1e-9)
	assert.InEpsilon(t, 3, SprayerOf(&model.Sprayer{Tool: model.Nozzle, Number: quantity.Some(3.0)}).Number, 1e-9)
	assert.InEpsilon(t, 25, SprayerOf(&model.Sprayer{Tool: model.Nozzle, Flow: gpm(2.5), Pressure: psi(40)}).Number, 1e-9)
	assert.Len(t, SprayerOf(&model.Sprayer{Tool: model.Nozzle}).Assumed, 2)
	assert.Zero(t, SprayerOf(&model.Sprayer{Tool: model.OpenHose}).Need)
}

func TestHosesByRun(t *testing.T) {
	bore, length := quantity.Some(0.5*quantity.Inch), quantity.Some(10*quantity.Foot)
	all := []model.Hose{
		{Name: "a", Bore: bore, Length: length},
		{Name: "b", Bore: bore, Length: length, Run: model.SprayRun},
		{Name: "c", Bore: bore, Length: length, Run: model.SupplyRun},
		{Name: "no size", Run: model.SupplyRun},
	}
	names := func(run model.Run) (list []string) {
		for _, e := range HosesIn(run, all) {
			list = append(list, e.Name)
		}
		return list
	}
	assert.Equal(t, []string{"a", "c"}, names(model.SupplyRun))
	assert.Equal(t, []string{"b"}, names(model.SprayRun))
	assert.Empty(t, names(model.MiddleRun))
}

func TestEveryConstantNamesItsSource(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range Constants() {
		assert.False(t, seen[c.Name], c.Name)
		seen[c.Name] = true
		assert.NotEmpty(t, c.Source.Tag, c.Name)
		assert.NotEmpty(t, c.Source.Text, c.Name)
		assert.True(t, (c.Words == "") != (c.Value.Kind == nil), c.Name)
	}
}
