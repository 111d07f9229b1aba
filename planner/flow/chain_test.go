package flow

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
)

func halfFoot() Packing {
	return Packing{Resin: 0.5 * quantity.CubicFoot, Diameter: 8 * quantity.Inch, Bead: 0.6 * quantity.Millimetre, Voids: 0.38}
}

func usualChain(s Sprayer) Chain {
	return Chain{
		Supply: UsualTap(55 * quantity.PSI),
		Elements: []Element{
			Hose("supply hose", 0.625*quantity.Inch, 50*quantity.Foot),
			Tank("DI bed", halfFoot(), quantity.Fahrenheit(60)),
			Hose("spray hose", 0.625*quantity.Inch, 25*quantity.Foot),
		},
		Sprayer: s,
	}
}

// Common practice, no source: 15 gpm or more from an open 5/8 in hose.
func TestAnOpenHoseOnAUsualTap(t *testing.T) {
	c := Chain{Supply: UsualTap(55 * quantity.PSI), Elements: []Element{Hose("hose", 0.625*quantity.Inch, 50*quantity.Foot)}, Sprayer: OpenEnd("hose")}
	flow := OpenHose(c)
	assert.GreaterOrEqual(t, flow.GPM(), 15.0)
	assert.Less(t, flow.GPM(), 25.0)
	o := Operate(c)
	assert.Equal(t, flow, o.Flow)
	assert.True(t, o.Enough)
}

// Common practice, no source: a small pressure washer takes 1.2 to 1.4 gpm, and a
// usual tap feeds it through a bed.
func TestASmallPressureWasherOnAUsualTap(t *testing.T) {
	o := Operate(usualChain(SprayerOf(&model.Sprayer{Name: "small washer"})))
	assert.InDelta(t, 1.3, o.Flow.GPM(), 0.1001)
	assert.True(t, o.Enough)
	assert.Greater(t, o.Pressure.PSI(), 45.0)
	require.Len(t, o.Drops, 3)
	assert.Equal(t, "DI bed", o.Drops[1].Name)
	assert.NotContains(t, o.Why.Text(quantity.US), "%!")
}

func TestPushAndLossesBalance(t *testing.T) {
	c := usualChain(Nozzle("wand", NozzleNumber(2.5*quantity.GPM, 40*quantity.PSI)))
	o := Operate(c)
	left := c.Supply.Pressure(o.Flow)
	for _, d := range o.Drops {
		left -= d.Pressure
	}
	assert.InEpsilon(t, float64(left), float64(o.Pressure), 1e-9)
	assert.InEpsilon(t, float64(NozzleFlow(c.Sprayer.Number, left)), float64(o.Flow), 1e-9)
	assert.True(t, o.Enough)
}

func TestAStarvedSprayerIsTold(t *testing.T) {
	weak := usualChain(Washer("large washer", 5*quantity.GPM))
	weak.Supply = Bucket(30*quantity.PSI, 5*quantity.Gallon, quantity.Minute)
	o := Operate(weak)
	assert.False(t, o.Enough)
	assert.Equal(t, "sprayer-starved", o.Why.Code)
	assert.Contains(t, o.Why.Text(quantity.US), "10 % more")
	assert.Less(t, o.Flow.GPM(), 5.0)
	assert.InDelta(t, 0, o.Pressure.PSI(), 1e-6)

	weak.Sprayer = Nozzle("wand", 40)
	o = Operate(weak)
	assert.False(t, o.Enough)
	assert.Less(t, o.Pressure.PSI(), 20.0)
	assert.NotContains(t, o.Why.Text(quantity.US), "%!")
}

func TestThePressureLimit(t *testing.T) {
	c, bed, at := usualChain(Washer("washer", 1.4*quantity.GPM)), halfFoot(), quantity.Fahrenheit(60)
	limit := LimitOf(c, bed, at)
	assert.InEpsilon(t, 20, bed.Drop(limit.Resin, at).PSI(), 1e-9)
	velocity := quantity.Speed(float64(limit.Resin) / float64(bed.Area()))
	assert.InEpsilon(t, 20, Ergun(velocity, bed.Depth(), bed.Bead, bed.Voids, at).PSI(), 1e-9)
	assert.InEpsilon(t, 20, c.Left(limit.Sprayer).PSI(), 1e-9)
	assert.Equal(t, min(limit.Resin, limit.Sprayer), limit.Flow())
}

func TestNothingPanicsOnAbsurdParts(t *testing.T) {
	chains := []Chain{
		{}, {Supply: Tap(50, 60, 0)}, {Supply: Pump(0, 0), Sprayer: Nozzle("", 0)},
		{Supply: UsualTap(50 * quantity.PSI), Elements: []Element{Hose("", 0, 0), Tank("", Packing{}, 0)}},
	}
	for _, c := range chains {
		assert.NotPanics(t, func() { Operate(c) })
		assert.GreaterOrEqual(t, float64(OpenHose(c)), 0.0)
	}
}

func drawHose(t *rapid.T, label string) (bore, length quantity.Length) {
	bore = quantity.Length(rapid.Float64Range(0.25, 1.5).Draw(t, label+" bore")) * quantity.Inch
	length = quantity.Length(rapid.Float64Range(1, 300).Draw(t, label+" length")) * quantity.Foot
	return bore, length
}

func drawChain(t *rapid.T, bore, length quantity.Length) Chain {
	c := Chain{Supply: UsualTap(quantity.Pressure(rapid.Float64Range(15, 120).Draw(t, "psi")) * quantity.PSI)}
	if rapid.Bool().Draw(t, "pumped") {
		c.Supply = Pump(50*quantity.PSI, quantity.Flow(rapid.Float64Range(1, 10).Draw(t, "pump"))*quantity.GPM)
	}
	c.Elements = []Element{
		Hose("supply", bore, length),
		Tank("bed", halfFoot(), quantity.Celsius(rapid.Float64Range(1, 40).Draw(t, "C"))),
	}
	switch rapid.IntRange(0, 2).Draw(t, "tool") {
	case 0:
		c.Sprayer = Washer("washer", quantity.Flow(rapid.Float64Range(0.5, 8).Draw(t, "rated"))*quantity.GPM)
	case 1:
		c.Sprayer = Nozzle("nozzle", rapid.Float64Range(0.5, 100).Draw(t, "number"))
	default:
		c.Sprayer = OpenEnd("end")
	}
	return c
}

func TestMoreFlowNeverLessDrop(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bore, length := drawHose(t, "supply")
		flow := quantity.Flow(rapid.Float64Range(0, 20).Draw(t, "gpm")) * quantity.GPM
		for _, e := range drawChain(t, bore, length).Elements {
			if e.Drop(flow*1.01) < e.Drop(flow) {
				t.Fatalf("%s takes less at more flow", e.Name)
			}
		}
	})
}

func TestLongerHosesAndSmallerBoresNeverGiveMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bore, length := drawHose(t, "supply")
		c := drawChain(t, bore, length)
		for _, worse := range []Element{Hose("longer", bore, length*1.2), Hose("narrower", bore*0.9, length)} {
			d := c
			d.Elements = append([]Element{worse}, c.Elements[1:]...)
			const rounding = 1 + 1e-12
			if Operate(d).Flow > Operate(c).Flow*rounding || OpenHose(d) > OpenHose(c)*rounding || d.FlowAt(d.Sprayer.Need) > c.FlowAt(c.Sprayer.Need)*rounding {
				t.Fatalf("a %s hose gives more", worse.Name)
			}
		}
	})
}

func TestTheOperatingPointIsARoot(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bore, length := drawHose(t, "supply")
		c := drawChain(t, bore, length)
		o := Operate(c)
		if c.Sprayer.Tool == model.Nozzle && o.Flow > 0 {
			if back := NozzleFlow(c.Sprayer.Number, o.Pressure); math.Abs(float64(back/o.Flow)-1) > 1e-6 {
				t.Fatalf("the nozzle passes %g at the pressure left, not %g", back, o.Flow)
			}
		}
		if o.Flow > c.Supply.Most() || o.Flow < 0 {
			t.Fatalf("flow %g", o.Flow)
		}
		if o.Enough && o.Pressure < o.Need*(1-1e-9) {
			t.Fatalf("enough, with %g left and %g needed", o.Pressure, o.Need)
		}
	})
}

func BenchmarkOperate(b *testing.B) {
	c := usualChain(Nozzle("wand", 20))
	for b.Loop() {
		Operate(c)
	}
}
