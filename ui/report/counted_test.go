package report_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/report"
)

func TestGallonsOfTheRigThatMayCountTwice(t *testing.T) {
	rig := model.Rig{Beds: []model.Bed{{Name: "tank", SoFar: quantity.Some(26 * quantity.Gallon)}, {Name: "other"}}}
	today := model.Date{Year: 2026, Month: 6, Day: 12}
	at := func(day int) model.Moment { return model.MomentOf(time.Date(2026, 6, day, 9, 0, 0, 0, time.UTC)) }
	told := func(day int, body model.Body) string {
		return report.CountedBefore(&rig, &model.Entry{At: at(day), Body: body}, today, quantity.US)
	}
	gallons := func(n quantity.Volume) quantity.Opt[quantity.Volume] { return quantity.Some(n * quantity.Gallon) }
	assert.Equal(t, "The 26 gal so far that the rig states of the bed count as before it; if this wash is among them, state 6 gal there.", told(5, &model.WashDone{DI: gallons(20)}))
	assert.Contains(t, told(5, &model.WashDone{Bed: "TANK", DI: gallons(30)}), "state 0 gal there")
	assert.Contains(t, told(11, &model.Sample{Point: model.AfterBed, FlushWater: gallons(6)}), "if its flush is among them, state 20 gal there")
	for name, nothing := range map[string]string{
		"today":         told(12, &model.WashDone{DI: gallons(20)}),
		"another bed":   told(5, &model.WashDone{Bed: "other", DI: gallons(20)}),
		"no DI water":   told(5, &model.WashDone{Softened: gallons(20)}),
		"it says so":    told(5, &model.Sample{Point: model.AfterBed, FlushWater: gallons(6), SoFar: gallons(30)}),
		"at the tap":    told(5, &model.Sample{Point: model.AtTap, FlushWater: gallons(6)}),
		"of the filter": told(5, &model.Refill{Bed: "tank"}),
	} {
		assert.Empty(t, nothing, name)
	}
}

// So with the gallons since salt of the softener that a wash ran through.
func TestGallonsSinceSaltThatMayCountTwice(t *testing.T) {
	rig := model.Rig{Softeners: []model.Softener{{Name: "soft", SoFar: quantity.Some(95 * quantity.Gallon)}}}
	today := model.Date{Year: 2026, Month: 6, Day: 12}
	told := func(body model.Body) string {
		at := model.MomentOf(time.Date(2026, 6, 5, 9, 0, 0, 0, time.UTC))
		return report.CountedBefore(&rig, &model.Entry{At: at, Body: body}, today, quantity.US)
	}
	di := quantity.Some(40 * quantity.Gallon)
	assert.Equal(t, "The 95 gal since salt that the rig states of the softener count as before it; if this wash is among them, state 45 gal there.",
		told(&model.WashDone{DI: di, Softened: quantity.Some(10 * quantity.Gallon)}))
	assert.Contains(t, told(&model.WashDone{Softener: "SOFT", DI: di}), "state 55 gal there")
	assert.Empty(t, told(&model.WashDone{Softener: model.NoSoftener, DI: di}))
	assert.Empty(t, told(&model.WashDone{DI: di, Feed: model.No}), "the bed was fed past it")
}
