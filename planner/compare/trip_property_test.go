package compare

import (
	"errors"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// anyTrip is a trip of a few stops, with any rig on any waters.
func anyTrip(t *rapid.T) Case {
	c := anyCase(t)
	trip := &model.Trip{
		DIFor: rapid.SampledFrom([]model.DIFor{"", model.DIForAll, model.DIForLast}).Draw(t, "di for"),
		Carry: rapid.SampledFrom([]model.Answer{"", model.Yes, model.No}).Draw(t, "carry"),
	}
	day := func(most int, name string) quantity.Opt[model.Date] {
		n := rapid.IntRange(0, most).Draw(t, name)
		return quantity.Some(planner.OrderBy(today, -quantity.Duration(n)*quantity.Day))
	}
	for range rapid.IntRange(1, 4).Draw(t, "stops") {
		s := model.Stop{Date: day(9, "from"), Limits: rapid.SampledFrom([]model.Limits{model.NoLimits, model.RinseOnly, model.NotAllowed}).Draw(t, "limits")}
		if rapid.Bool().Draw(t, "known water") {
			s.Place = "home"
		}
		trip.Stops = append(trip.Stops, s)
	}
	for range rapid.IntRange(1, 5).Draw(t, "washes") {
		w := model.TripWash{Date: day(30, "day"), Dirt: rapid.SampledFrom([]model.Dirt{model.LightDirt, model.UsualDirt, model.HeavyDirt}).Draw(t, "dirt")}
		if rapid.IntRange(0, 3).Draw(t, "other use") == 0 {
			w.DI = quantity.Some(quantity.Volume(rapid.Float64Range(1, 90).Draw(t, "gallons")) * quantity.Gallon)
		}
		trip.Washes = append(trip.Washes, w)
	}
	for range rapid.IntRange(0, 2).Draw(t, "changes") {
		trip.Changes = append(trip.Changes, model.ResinChange{Date: day(30, "change")})
	}
	c.Wash, c.Trip = model.Wash{}, trip
	return c
}

// Whatever the trip: every known figure is a number, one of a row is best or none, the
// base is left as it is, and a fresh tank behind the worn one makes nothing worse.
func TestAnyTripCompares(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		base := anyTrip(rt)
		table, err := Compare(base, NewOneTrip(nil, nil, today), Options{})
		if err != nil {
			if !errors.Is(err, errNothing) {
				rt.Fatal(err)
			}
			return
		}
		for _, r := range table.Rows {
			for i, c := range r.Cells {
				switch {
				case c.Known && math.IsNaN(c.order):
					rt.Fatalf("%s of %s is no number", r.Key, table.Ways[i].Key)
				case !c.Known && (c.Best || c.Why == ""):
					rt.Fatalf("%s of %s is unknown without a reason, or best", r.Key, table.Ways[i].Key)
				}
			}
			if !slices.ContainsFunc(r.Cells, func(c Cell) bool { return !c.Best }) {
				rt.Fatalf("all of %s are best", r.Key)
			}
		}
		if plan, series := table.Ways[0].Figures, table.way("series").Figures; series.Chance < plan.Chance-0.02 {
			rt.Fatalf("two in series: %v; one: %v", series.Chance, plan.Chance)
		}
	})
}
