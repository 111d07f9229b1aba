package planner_test

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/model/store/journal"
	"washeve/planner"
)

func onDay(month time.Month, day int) model.Moment {
	return model.MomentOf(time.Date(2026, month, day, 20, 0, 0, 0, time.UTC))
}

func draws(volume quantity.Volume, days ...int) []planner.Draw {
	var out []planner.Draw
	for _, d := range days {
		out = append(out, planner.Draw{At: onDay(time.June, d), Volume: volume})
	}
	return out
}

// Worked by hand: 30 gal every 10 days is 90 gal in 30 days, whichever day it is
// asked before the next is due; a pause slows it.
func TestPace(t *testing.T) {
	steady := draws(30*quantity.Gallon, 1, 11, 21)
	assert.InDelta(t, 90, planner.PaceOf(steady, onDay(time.June, 22)).Month().Gallons(), 1e-9)
	assert.InDelta(t, 90, planner.PaceOf(steady, onDay(time.July, 1)).Month().Gallons(), 1e-9)
	assert.InDelta(t, 45, planner.PaceOf(steady, onDay(time.July, 31)).Month().Gallons(), 1e-9)
	two := draws(30*quantity.Gallon, 4, 5)
	assert.True(t, planner.PaceOf(two, onDay(time.June, 18)).Known(), "two weeks on")
	for _, few := range [][]planner.Draw{nil, draws(30*quantity.Gallon, 5), draws(30*quantity.Gallon, 5, 5), two} {
		assert.False(t, planner.PaceOf(few, onDay(time.June, 5)).Known())
	}
	old := append(draws(300*quantity.Gallon, -400, -390, -380), steady...)
	assert.InDelta(t, 90, planner.PaceOf(append(old, draws(30*quantity.Gallon, 31)...), onDay(time.July, 2)).Month().Gallons(), 4, "what is long past does not count")
}

func TestEndAndOrder(t *testing.T) {
	p := planner.Pace{Volume: 90 * quantity.Gallon, Over: 30 * quantity.Day}
	end, known := p.Until(75*quantity.Gallon, model.Date{Year: 2026, Month: time.June, Day: 20})
	require.True(t, known)
	assert.Equal(t, "2026-07-15", end.String())
	assert.Equal(t, "2026-07-05", planner.OrderBy(end, planner.LeadTime).String())
	for _, left := range []quantity.Volume{-1, quantity.Volume(math.NaN()), quantity.Volume(math.Inf(1)), 1e6 * quantity.Gallon} {
		_, known = p.Until(left, model.Date{Year: 2026, Month: time.June, Day: 20})
		assert.False(t, known)
	}
	_, known = planner.Pace{}.Until(quantity.Gallon, model.Date{Year: 2026, Month: time.June, Day: 20})
	assert.False(t, known)
}

func season(t testing.TB) (model.Rig, model.Places, model.Wash, model.Log) {
	lib := store.Example()
	log, faults := journal.Open("../testdata/season/log.toml").Load()
	require.Empty(t, faults)
	return lib.Rig, lib.Places, lib.Washes[0].Wash, log
}

func ahead(t testing.TB, rig model.Rig, places model.Places, wash model.Wash, past *planner.Past, today model.Moment) planner.Ahead {
	plan, err := planner.Make(rig, places, wash)
	require.NoError(t, err)
	a, err := planner.LookAhead(rig, places, wash, plan, past, today)
	require.NoError(t, err)
	return a
}

func TestTheSeasonAhead(t *testing.T) {
	rig, places, wash, log := season(t)
	a := ahead(t, rig, places, wash, planner.Recall(log, rig, places), onDay(time.September, 1))
	assert.True(t, a.Pace.Known())
	ends, known := a.Ends.Get()
	require.True(t, known)
	assert.LessOrEqual(t, ends.P10.String(), ends.P50.String())
	assert.LessOrEqual(t, ends.P50.String(), ends.P90.String())
	order, known := a.OrderBy.Get()
	require.True(t, known)
	assert.Less(t, order.String(), ends.P10.String())
	assert.True(t, a.Running.Known)
	assert.InDelta(t, 189.5, a.Running.PerGallon*a.Given.Gallons(), 1e-9, "the price of the second fill")
	assert.Less(t, a.Running.AtEnd, a.Running.PerGallon)
	plan := mustMake(t, rig, places, wash) // which is the one that it looks ahead from
	assert.InEpsilon(t, 189.5*float64(plan.Through()/plan.Bed.Fill), a.Running.PerWash, 1e-9, "a wash has the price of the plan, however few were logged")
	require.NotEmpty(t, a.Advice.Options)
	assert.InDelta(t, 5, a.Faster.GPM(), 0.3)
	assert.Positive(t, a.Used)
	for i, p := range a.Curve {
		assert.LessOrEqual(t, p.Outlet.P10, p.Outlet.P50)
		assert.LessOrEqual(t, p.Outlet.P50, p.Outlet.P90)
		if i > 0 {
			assert.Greater(t, p.Volume, a.Curve[i-1].Volume)
			assert.GreaterOrEqual(t, p.Outlet.P50, 0.95*a.Curve[i-1].Outlet.P50, "an outlet at one flow and water does not fall")
		}
	}
	for _, r := range a.Reasons {
		assert.NotEmpty(t, r.Formula, r.Number)
		assert.NotEmpty(t, r.Source.Tag, r.Number)
	}
}

// A day to order by is never past: it is today then, and overdue.
func TestAnOverdueOrderIsForToday(t *testing.T) {
	rig, places, wash, log := season(t)
	past := planner.Recall(log, rig, places)
	soon := ahead(t, rig, places, wash, past, onDay(time.September, 13))
	order, known := soon.OrderBy.Get()
	require.True(t, known)
	assert.False(t, soon.Overdue)
	assert.Greater(t, order.String(), "2026-09-13")
	struck := append(model.Log{}, log...)
	struck = append(struck, model.Entry{ID: "zz", At: onDay(time.September, 12), Body: &model.WashDone{Place: "Juniper Flats", Bed: "half-foot tank", DI: quantity.Some(150 * quantity.Gallon)}})
	late := ahead(t, rig, places, wash, planner.Recall(model.NewLog(struck), rig, places), onDay(time.September, 13))
	order, known = late.OrderBy.Get()
	require.True(t, known)
	assert.True(t, late.Overdue)
	assert.Equal(t, "2026-09-13", order.String())
}

func TestAheadWithoutALog(t *testing.T) {
	rig, places, wash, _ := season(t)
	a := ahead(t, rig, places, wash, planner.Recall(nil, rig, places), onDay(time.September, 1))
	assert.False(t, a.Pace.Known())
	assert.False(t, a.Ends.Given())
	assert.NotEmpty(t, a.Curve)
	assert.NotEmpty(t, a.Advice.Options)
	assert.InDelta(t, 185.0/120, a.Running.PerGallon, 1e-9, "the rig states price and gallons so far")
}

// A bed that is at its end needs resin now, whatever the pace.
func TestResinForASpentBedIsOrderedNow(t *testing.T) {
	rig, places, wash, _ := season(t)
	rig.Beds[0].SoFar = quantity.Some(5000 * quantity.Gallon)
	a := ahead(t, rig, places, wash, nil, onDay(time.September, 1))
	assert.False(t, a.Pace.Known())
	assert.True(t, a.Overdue)
	assert.Equal(t, "2026-09-01", a.OrderBy.Or(model.Date{}).String())
}

// The half cubic foot: 18 in of resin, half of its volume free over it.
func TestRefillFigures(t *testing.T) {
	rig, places, wash, _ := season(t)
	f := ahead(t, rig, places, wash, nil, onDay(time.September, 1)).Refill
	assert.InDelta(t, 17.2, f.Depth.Inches(), 0.1)
	assert.InDelta(t, 8.6, f.Freeboard.Inches(), 0.1)
	assert.InDelta(t, 27.4, f.Water.Pounds(), 0.3)
	assert.InDelta(t, 0.5, f.FirstFlow.GPM(), 1e-9)
	assert.Less(t, f.Fresh, 3.0)
	assert.GreaterOrEqual(t, f.FreshFast, f.Fresh)
}

func BenchmarkLookAhead(b *testing.B) {
	rig, places, wash, log := season(b)
	past := planner.Recall(log, rig, places)
	plan, err := planner.Make(rig, places, wash)
	require.NoError(b, err)
	for b.Loop() {
		if _, err := planner.LookAhead(rig, places, wash, plan, past, onDay(time.September, 1)); err != nil {
			b.Fatal(err)
		}
	}
}

func TestLessResinStandsLowerInTheSameTank(t *testing.T) {
	rig, places, wash, _ := season(t)
	full, err := planner.Refilling(rig, places, wash, 0.5*quantity.CubicFoot)
	require.NoError(t, err)
	less, err := planner.Refilling(rig, places, wash, 0.4*quantity.CubicFoot)
	require.NoError(t, err)
	assert.InDelta(t, 0.8, float64(less.Depth/full.Depth), 1e-9)
	assert.GreaterOrEqual(t, less.Fresh, full.Fresh)
}
