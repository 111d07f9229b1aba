package washday

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

func TestABedWithNothingLeftSaysSo(t *testing.T) {
	m := fresh(t, "").m
	assert.Contains(t, m.leftWords(), "8 in 10: ")
	m.u.Outlook.Low, m.u.Outlook.Mid, m.u.Outlook.High = quantity.Some(quantity.Volume(0)), quantity.Some(quantity.Volume(0)), quantity.Some(quantity.Volume(0))
	assert.Equal(t, "most likely nothing", m.leftWords())
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
	assert.Equal(t, "the whole wash again (43.6 gal of DI water): chance 91 %.", m.againWords(little))
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
