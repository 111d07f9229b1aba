package washday

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/washday"
)

func TestABedWithNothingLeftSaysSo(t *testing.T) {
	m := fresh(t, "").m
	assert.Contains(t, m.leftWords(), "8 in 10: ")
	m.u.Outlook.Low, m.u.Outlook.Mid, m.u.Outlook.High = quantity.Some(quantity.Volume(0)), quantity.Some(quantity.Volume(0)), quantity.Some(quantity.Volume(0))
	assert.Equal(t, "most likely nothing at 1.3 gpm", m.leftWords())
	var p planner.Plan
	p.Bed.ChanceLasts, p.DI.Volume = 0.05, 30*quantity.Gallon
	assert.Equal(t, "Left in the bed: most likely nothing; the whole wash again (30 gal of DI water): chance 5 %.", Model{}.bedLeftWords(p))
	p.Bed.Remaining.P90 = 40 * quantity.Gallon
	assert.Equal(t, "Left in the bed: as likely as not nothing, one time in ten 40 gal or more; the whole wash again (30 gal of DI water): chance 5 %.", Model{}.bedLeftWords(p))
}

// "Again" is the wash as it was planned, however little of it was done.
func TestTheWashAgainIsTheWholeOne(t *testing.T) {
	m := fresh(t, "").m
	m.u.Plan.PlannedDI, m.u.Plan.PlannedFlow = quantity.Some(43.6*quantity.Gallon), quantity.Some(1.3*quantity.GPM)
	asked := quantity.Volume(0)
	m.o.Rest = func(_ model.Rig, _ model.Places, _ model.Wash, ran, left quantity.Volume, _ quantity.Flow) (planner.Plan, error) {
		asked = ran + left
		var p planner.Plan
		p.Bed.ChanceLasts = 0.91
		return p, nil
	}
	var little planner.Plan
	little.Bed.ChanceLasts, little.DI.Volume, little.Flush.Volume = 0.999, 3*quantity.Gallon, 6*quantity.Gallon
	assert.Equal(t, "the whole wash again (43.6 gal of DI water at 1.3 gpm): chance 91 %.", m.againWords(little))
	assert.InDelta(t, 43.6, asked.Gallons(), 1e-9, "which holds its flush")
}

// Where the day to order is past, or today, it is told so and not as a day that is to come.
func TestResinThatIsOverdueIsOrderedNow(t *testing.T) {
	b := &bay{}
	var washes []model.Entry
	for i, days := range []int{28, 14, 2} {
		washes = append(washes, model.Entry{
			ID: fmt.Sprintf("before%02d", i), At: model.MomentOf(b.instant().Wall.AddDate(0, 0, -days)),
			Body: &model.WashDone{Bed: "half-foot tank", Place: "Juniper Flats", DI: quantity.Some(90 * quantity.Gallon)},
		})
	}
	b.log = model.NewLog(washes)
	assert.Contains(t, play(t, b, b.options(), "x y").seen(), "Order resin now.")
}

// What is left depends on the flow, so it is told at one, and the summary goes on with that
// of the last step.
func TestWhatIsLeftIsToldAtTheFlowThatRan(t *testing.T) {
	p := fresh(t, "").to(model.Read).keys("r '5 ppm NaCl' enter w")
	way := p.offered(planner.WaySlower)
	at := " at " + quantity.Show(washday.DIFlow(&way.plan), quantity.US)
	next, _ := p.m.takeWay(way.code)
	p.m = next.(Model)
	p.keys("r '5 ppm NaCl' enter n enter").to(model.LetDry).keys("enter space 60s enter").to(model.PackUp)
	before, _ := p.m.state.Left(&p.m.u)
	require.Positive(t, before.P50)
	assert.Contains(t, p.seen(), "Left in the bed: about "+quantity.Show(before.P50, quantity.US)+at+" (8 in 10: ")
	p.keys("enter")
	require.True(t, p.m.state.Over)
	after, _ := p.m.wholeWash(planner.Plan{}, p.m.flowToCome())
	assert.InDelta(t, before.P50.Gallons(), after.Bed.Remaining.P50.Gallons(), 0.1*before.P50.Gallons())
	assert.Contains(t, oneLine(p.seen()), "Left in the bed: about "+quantity.Show(after.Bed.Remaining.P50, quantity.US)+at+" (8 in 10: ")
	assert.Contains(t, oneLine(p.seen()), "gal of DI water at 1.3 gpm): chance ")
}
