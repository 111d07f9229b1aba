package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/washday"
	"washeve/ui/report"
)

// shortBed is a wash at its reading by a bed that will likely not last it at the sprayer's
// flow, and may at a slower one.
func shortBed(t *testing.T) *player {
	t.Helper()
	return fresh(t, "").to(model.Read).keys("r '7 ppm NaCl' enter")
}

// offered finds a way out among those that are offered.
func (p *player) offered(code string) *wayOut {
	for i := range p.m.ways {
		if p.m.ways[i].code == code {
			return &p.m.ways[i]
		}
	}
	require.Fail(p.t, "there is no such way", code)
	return nil
}

// Before anything is done the ways are those of the whole wash, so they say what the plan's
// own ways out say.
func TestTheWaysOfTheDayAgreeWithThoseOfThePlan(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Rig.Beds[0].SoFar = quantity.Some(200 * quantity.Gallon)
	p := play(t, b, o, "w")
	short, err := o.Ways(o.Rig, o.Places, o.Wash)
	require.NoError(t, err)
	told := 0
	for _, w := range short.Ways {
		switch w.Code {
		case planner.WaySplit, planner.WaySlower, planner.WayCap, planner.WaySurfaces, planner.WayResin:
			if w.Not.Code != "" {
				continue
			}
			told++
			assert.InDelta(t, float64(w.Chance), float64(p.offered(w.Code).chance), 0.005, w.Code)
		}
	}
	assert.GreaterOrEqual(t, told, 3)
}

// A way's gallons, minutes and chance are those of its own flow: what it says before it is
// taken the screen says afterwards, and after a flow check that measures just that flow.
func TestAWayIsToldAtItsOwnFlow(t *testing.T) {
	p := shortBed(t)
	before, _ := p.m.u.Outlook.Chance.Get()
	p.keys("w")
	slower := p.offered(planner.WaySlower)
	flow := washday.DIFlow(&slower.plan)
	require.Less(t, flow, p.m.u.Plan.PlannedFlow.Or(0))
	assert.Greater(t, slower.chance, before+0.05)
	assert.InDelta(t, float64(flow.Time(slower.left.DI)), float64(slower.minutes), 60)

	next, _ := p.m.takeWay(planner.WaySlower)
	p.m = next.(Model)
	after, _ := p.m.u.Outlook.Chance.Get()
	assert.InDelta(t, float64(slower.chance), float64(after), 0.002)
	assert.Equal(t, flow, p.m.flowToCome(), "the pen is read at it, too")
	assert.InDelta(t, float64(slower.left.DI), float64(p.m.state.ToRun().DI), 1e-9)
	for _, s := range p.m.state.Steps[p.m.state.At:] {
		if s.Water == model.DI {
			assert.Equal(t, flow, s.Flow.Or(0))
		}
	}
}

// In the middle of a face the rest of it runs at the way's flow, and what has run stays.
func TestAWayHoldsTheFaceAtHandToItsFlow(t *testing.T) {
	p := shortBed(t).keys("enter").to(model.LetDry).keys("enter space 60s space w")
	used := p.m.done().Used
	require.Positive(t, used)
	way := p.offered(planner.WaySlower)
	next, _ := p.m.takeWay(planner.WaySlower)
	p.m = next.(Model)
	assert.Equal(t, washday.DIFlow(&way.plan), p.m.step().Flow.Or(0))
	assert.InDelta(t, float64(used), float64(p.m.done().Used), 1e-12)
	assert.InDelta(t, float64(way.left.DI), float64(p.m.state.ToRun().DI), 1e-9)
}

// A flow that is measured while the pen is read is that of the rinse to come.
func TestAFlowMeasuredAtThePenHoldsForTheRinse(t *testing.T) {
	p := shortBed(t).keys("f '0.5 gpm' enter")
	for _, s := range p.m.state.Steps[p.m.state.At:] {
		if s.Water == model.DI {
			assert.InDelta(t, 0.5, s.Flow.Or(0).GPM(), 1e-9, s.Stage)
		}
	}
}

// What is to be done at the hose is told by the way's own flow, not by the cap.
func TestATakenWayTellsItsOwnFlow(t *testing.T) {
	p := fresh(t, "").to(model.Read).keys("r '5 ppm NaCl' enter w")
	flow := washday.DIFlow(&p.offered(planner.WaySlower).plan)
	jug := "a gallon jug takes " + report.Fills(quantity.Gallon, flow) + " or longer"
	next, _ := p.m.takeWay(planner.WaySlower)
	p.m = next.(Model)
	require.Positive(t, p.m.u.Outlook.Cap.Or(0))
	frame := oneLine(p.seen())
	assert.Contains(t, frame, "Throttle to "+quantity.Show(flow, quantity.US)+" now: "+jug)
	assert.Contains(t, frame, "DI water, "+quantity.Show(flow, quantity.US)+", held by a valve: "+jug)
	assert.NotContains(t, frame, "OVER THE CAP")
	p.keys("f '5 gpm' enter")
	frame = oneLine(p.seen())
	assert.Contains(t, frame, "throttle to the "+quantity.Show(flow, quantity.US)+" of this wash, where "+jug)
}
