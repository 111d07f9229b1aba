package compare

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
)

// anyCase is a wash of any size on any water.
func anyCase(t *rapid.T) Case {
	bed := model.Bed{
		Name: "tank", Resin: quantity.Some(quantity.Volume(rapid.Float64Range(0.05, 8).Draw(t, "ft3")) * quantity.CubicFoot),
		SoFar: quantity.Some(quantity.Volume(rapid.Float64Range(0, 900).Draw(t, "gallons so far")) * quantity.Gallon),
	}
	if rapid.Bool().Draw(t, "priced") {
		bed.Price = quantity.Some(quantity.Money{Hundredths: rapid.Int64Range(0, 100000).Draw(t, "price"), Currency: "$"})
	}
	c := Case{
		Rig: model.Rig{
			Vehicles: []model.Vehicle{{Name: "coach", Length: quantity.Some(quantity.Length(rapid.Float64Range(12, 45).Draw(t, "ft")) * quantity.Foot), Height: quantity.Some(11 * quantity.Foot)}},
			Beds:     []model.Bed{bed},
		},
		Places: model.Places{{Name: "home", TDS: quantity.Some(quantity.PPM(rapid.Float64Range(1, 1500).Draw(t, "ppm"), quantity.ScaleNaCl))}},
	}
	if rapid.Bool().Draw(t, "softener") {
		c.Rig.Softeners = []model.Softener{{Name: "softener", Resin: quantity.Some(0.5 * quantity.CubicFoot)}}
	}
	if rapid.Bool().Draw(t, "pace") {
		c.Rig.Defaults.Washes = quantity.Some(rapid.Float64Range(0.1, 400).Draw(t, "washes"))
	}
	if limit := rapid.Float64Range(0.5, 60).Draw(t, "limit"); rapid.Bool().Draw(t, "limited") {
		c.Wash.Limit = quantity.Some(quantity.PPM(limit, quantity.ScaleNaCl))
	}
	return c
}

// Whatever the wash: every known figure is a number, one of a row is best or
// none, and a fresh tank behind the worn one makes nothing worse.
func TestAnyWashCompares(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		base := anyCase(rt)
		table := compared(rt, base, Options{})
		for _, r := range table.Rows {
			best := math.Inf(1)
			for i, c := range r.Cells {
				switch {
				case c.Known && math.IsNaN(c.order):
					rt.Fatalf("%s of %s is no number", r.Key, table.Ways[i].Key)
				case !c.Known && (c.Best || c.Why == ""):
					rt.Fatalf("%s of %s is unknown without a reason, or best", r.Key, table.Ways[i].Key)
				}
				if c.Best {
					best = min(best, math.Abs(c.order))
				}
			}
			if n := slices.IndexFunc(r.Cells, func(c Cell) bool { return !c.Best }); n < 0 {
				rt.Fatalf("all of %s are best", r.Key)
			}
		}
		plan, series := table.Ways[0].Figures, table.way("series").Figures
		if series.Chance < plan.Chance-0.005 || series.AtEnd > plan.AtEnd*1.001+1e-9 {
			rt.Fatalf("two in series: %v and %g ppm; one: %v and %g ppm", series.Chance, series.AtEnd, plan.Chance, plan.AtEnd)
		}
		if plan.Plan.Limit.Number < 0.36*plan.Plan.Softened.TDS.Number && series.Fill < plan.Fill*(1-1e-9) {
			rt.Fatalf("a fill gives %v in series and %v alone", series.Fill, plan.Fill)
		}
	})
}

// A wash without DI water asks nothing of the bed, and still compares.
func TestAWashWithoutDIWater(t *testing.T) {
	base := example()
	base.Wash.Stages = []model.Stage{{Name: "rinse", Water: model.Raw}}
	table := compared(t, base, Options{})
	for _, key := range []string{"di", "resin", "chance"} {
		if c := table.row(key).Cells[0]; !c.Known {
			t.Fatalf("%s is unknown: %s", key, c.Why)
		}
	}
	if table.way("di-last").Figures.DI <= 0 {
		t.Fatal("the last rinse gets DI water")
	}
}
