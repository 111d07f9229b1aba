package planner_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// drawn is a random but plausible situation.
func drawn(t *rapid.T) (model.Rig, model.Places, model.Wash) {
	rig, places, wash := threeFacts()
	v, b, p := &rig.Vehicles[0], &rig.Beds[0], &places[0]
	v.Shape = rapid.SampledFrom([]model.Shape{model.Coach, model.Trailer, model.Van, model.Pickup, model.Car}).Draw(t, "shape")
	v.Length = quantity.Some(quantity.Length(rapid.Float64Range(12, 45).Draw(t, "length")) * quantity.Foot)
	v.Height = quantity.Some(quantity.Length(rapid.Float64Range(5, 13).Draw(t, "height")) * quantity.Foot)
	b.Resin = quantity.Some(quantity.Volume(rapid.Float64Range(0.1, 2).Draw(t, "resin")) * quantity.CubicFoot)
	if rapid.Bool().Draw(t, "used") {
		b.SoFar = quantity.Some(quantity.Volume(rapid.Float64Range(0, 400).Draw(t, "so far")) * quantity.Gallon)
	}
	p.TDS = quantity.Some(quantity.PPM(rapid.Float64Range(20, 900).Draw(t, "ppm"), quantity.ScaleNaCl))
	p.Temperature = quantity.Some(quantity.Celsius(rapid.Float64Range(3, 35).Draw(t, "C")))
	if rapid.Bool().Draw(t, "softener") {
		rig.Softeners = []model.Softener{{Name: "softener", Resin: quantity.Some(0.5 * quantity.CubicFoot)}}
	}
	rig.Sprayers = []model.Sprayer{{Name: "washer", Tool: model.PressureWasher, Flow: quantity.Some(quantity.Flow(rapid.Float64Range(0.5, 3).Draw(t, "gpm")) * quantity.GPM)}}
	return rig, places, wash
}

// plenty lets the tap give whatever a sprayer asks, so that a property of the
// bed is not one of the tap.
func plenty(places model.Places) {
	places[0].Pressure = quantity.Some(150 * quantity.PSI)
	places[0].FlowingAt, places[0].Flowing = quantity.Some(149*quantity.PSI), quantity.Some(30*quantity.GPM)
}

const slack = 1 + 1e-9

func TestMoreAreaNeverTakesLessWater(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawn(t)
		small := mustMake(t, rig, places, wash)
		rig.Vehicles[0].Length = quantity.Some(rig.Vehicles[0].Length.Or(0) * quantity.Length(rapid.Float64Range(1, 1.5).Draw(t, "longer")))
		large := mustMake(t, rig, places, wash)
		assert.GreaterOrEqual(t, float64(large.DI.Volume)*slack, float64(small.DI.Volume))
		assert.GreaterOrEqual(t, float64(large.Soft.Volume)*slack, float64(small.Soft.Volume))
		assert.GreaterOrEqual(t, float64(large.Untreated.Volume)*slack, float64(small.Untreated.Volume))
	})
}

func TestMoreTDSNeverLastsLonger(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawn(t)
		light := mustMake(t, rig, places, wash)
		places[0].TDS = quantity.Some(quantity.PPM(places[0].TDS.Or(quantity.Reading{}).Number*rapid.Float64Range(1, 3).Draw(t, "times"), quantity.ScaleNaCl))
		heavy := mustMake(t, rig, places, wash)
		assert.LessOrEqual(t, float64(heavy.Bed.Remaining.P50), float64(light.Bed.Remaining.P50)*slack)
		assert.LessOrEqual(t, float64(heavy.Bed.ChanceLasts), float64(light.Bed.ChanceLasts)+1e-9)
	})
}

// A faster flow leaks more as long as the bed is not yet used up; see the
// column's own test for what happens beyond.
func TestMoreFlowNeverLeaksLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawn(t)
		plenty(places)
		rig.Beds[0].SoFar = quantity.Some(quantity.Volume(0))
		slow := mustMake(t, rig, places, wash)
		flow := rig.Sprayers[0].Flow.Or(0)
		rig.Sprayers[0].Flow = quantity.Some(flow * quantity.Flow(rapid.Float64Range(1, 4).Draw(t, "times")))
		fast := mustMake(t, rig, places, wash)
		if fast.Bed.After.Spent < 0.5 {
			assert.GreaterOrEqual(t, fast.Bed.OutletAtEnd.P50*slack, slow.Bed.OutletAtEnd.P50)
		}
	})
}

func TestSofteningLeavesTheLoadAlone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawn(t)
		p := mustMake(t, rig, places, wash)
		assert.Equal(t, p.Raw.Load, p.Softened.Load)
	})
}

func TestStagesAddUpToTheTotals(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawn(t)
		p := mustMake(t, rig, places, wash)
		var sum planner.Use
		for _, s := range p.Stages {
			sum.Volume += s.Volume
			sum.Duration += s.Duration
		}
		assert.InEpsilon(t, float64(p.DI.Volume+p.Soft.Volume+p.Untreated.Volume), float64(sum.Volume), 1e-9)
		assert.InEpsilon(t, float64(p.DI.Duration+p.Soft.Duration+p.Untreated.Duration), float64(sum.Duration), 1e-9)
		faces := quantity.Volume(0)
		for _, f := range p.Faces {
			faces += f.DI
		}
		assert.InEpsilon(t, float64(p.DI.Volume), float64(faces), 1e-9)
	})
}

// The bed shrinks in the same proportions: less depth in the same tank would
// take less pressure, and the pressure cap alone would rise.
func TestEveryCapFallsAsTheBedShrinks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawn(t)
		large := mustMake(t, rig, places, wash)
		rig.Beds[0].Resin = quantity.Some(rig.Beds[0].Resin.Or(0) * quantity.Volume(rapid.Float64Range(0.3, 1).Draw(t, "shrunk")))
		small := mustMake(t, rig, places, wash)
		before := map[planner.Bound]quantity.Flow{}
		for _, c := range large.Cap.Caps {
			before[c.Name] = c.Flow
		}
		for _, c := range small.Cap.Caps {
			if was, listed := before[c.Name]; listed {
				assert.LessOrEqual(t, float64(c.Flow), float64(was)*slack, string(c.Name))
			}
		}
		assert.LessOrEqual(t, float64(small.Cap.Flow), float64(large.Cap.Flow)*slack)
	})
}

// Every quantity goes out as text in one system of units and comes back.
func TestUnitsInAndOutNeverChangeAPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rig, places, wash := drawn(t)
		want := mustMake(t, rig, places, wash)
		sys := rapid.SampledFrom([]quantity.System{quantity.US, quantity.Metric}).Draw(t, "system")
		v, b, s, p := &rig.Vehicles[0], &rig.Beds[0], &rig.Sprayers[0], &places[0]
		again(&v.Length, sys)
		again(&v.Height, sys)
		again(&b.Resin, sys)
		again(&b.SoFar, sys)
		again(&s.Flow, sys)
		again(&p.Temperature, sys)
		tds, err := quantity.ParseReading(p.TDS.Or(quantity.Reading{}).String())
		assert.NoError(t, err)
		p.TDS = quantity.Some(tds)
		assert.Equal(t, want, mustMake(t, rig, places, wash))
	})
}

func again[Q quantity.Quantity](at *quantity.Opt[Q], sys quantity.System) {
	if v, given := at.Get(); given {
		*at = quantity.Some(quantity.Must[Q](quantity.Exact(v, sys)))
	}
}
