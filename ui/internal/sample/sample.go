// Package sample is one made-up plan with something of everything in it. Only
// tests import it.
package sample

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
)

// Plan is tight: all waters, all outlooks, warnings and cautions.
func Plan() planner.Plan {
	ppm := func(v float64) quantity.Reading { return quantity.PPM(v, quantity.ScaleNaCl) }
	return planner.Plan{
		Wash: "Friday wash", Vehicle: "Old Goose", Place: "Willow Bend", BedName: "half-foot tank",
		Date:    quantity.Some(model.Date{Year: 2026, Month: 6, Day: 12}),
		Verdict: planner.Tight,
		Raw: planner.Water{
			Conductivity: 500 * quantity.MicroSiemensPerCm, TDS: ppm(240), Hardness: quantity.HardnessOf(171.18),
			HardnessSaid: true, Load: 5, Temperature: quantity.Fahrenheit(68),
		},
		Softened: planner.Water{Conductivity: 510 * quantity.MicroSiemensPerCm, TDS: ppm(245), Load: 5, Temperature: quantity.Fahrenheit(68)},
		DI:       use(60, 43), DIBand: gallons(52, 60, 71), Soft: use(120, 86), Untreated: use(30, 10),
		Cap: planner.FlowCap{
			Flow: 2.5 * quantity.GPM, BoundBy: planner.ByContactTime, JugSeconds: 24,
			Caps: []planner.Cap{
				{Name: planner.ByRating, Flow: 4 * quantity.GPM}, {Name: planner.ByContactTime, Flow: 2.5 * quantity.GPM},
				{Name: planner.ByFaceVelocity, Flow: 5.2 * quantity.GPM}, {Name: planner.ByExchange, Flow: 3 * quantity.GPM},
				{Name: planner.ByPressure, Flow: 6 * quantity.GPM},
			},
		},
		Sprayer: planner.SprayerCheck{
			Name: "small pressure washer", Flow: 1.4 * quantity.GPM, WithinCap: true, OpenHose: 9 * quantity.GPM,
			PressureLeft: 30 * quantity.PSI, PressureNeed: 15 * quantity.PSI, Enough: true,
		},
		Bed:      bed(),
		Softener: &planner.SoftenerOutlook{Name: "bay softener", Remaining: 500 * quantity.Gallon, Takes: 180 * quantity.Gallon, Lasts: true},
		Stages:   stages(), Faces: faces(),
		Flush: use(4, 3), Cost: planner.Cost{Known: true, Currency: "$", Wash: 22.2, PerGallon: 0.37},
		Claim: &planner.Claim{Stated: 1500 * quantity.Gallon, Implied: quantity.HardnessOf(57), Here: 285 * quantity.Gallon},
		Limit: ppm(10), Target: ppm(10), Drip: planner.Drip{Pause: 60, Longer: 120, Saves: 5 * quantity.Gallon},
		Warnings: []planner.Note{
			{Code: "open-hose", Format: "Over the cap of %s: an open hose pushes %s through the bed. Never fill buckets so.", Values: []quantity.Value{quantity.ValueOf(2.5 * quantity.GPM), quantity.ValueOf(9 * quantity.GPM)}},
			{Code: "silica", Format: "Silica bites glass."},
		},
		Cautions:    []planner.Note{{Code: "estimate", Format: "The pen in the stream decides."}, {Code: "frost", Format: "Drain before frost."}},
		Assumptions: assumptions(), Constants: assumptions()[2:], Reasons: reasons(),
	}
}

func use(gallons, minutes float64) planner.Use {
	return planner.Use{Volume: quantity.Volume(gallons) * quantity.Gallon, Duration: quantity.Duration(minutes) * quantity.Minute}
}

func gallons(a, b, c float64) planner.Band[quantity.Volume] {
	g := quantity.Gallon
	return planner.Band[quantity.Volume]{P10: quantity.Volume(a) * g, P50: quantity.Volume(b) * g, P90: quantity.Volume(c) * g}
}

func bed() planner.BedOutlook {
	b := planner.BedOutlook{
		Resin: 0.5 * quantity.CubicFoot, Capacity: 5000 * quantity.Grain, Used: 3100 * quantity.Grain, ContactTime: 160, Units: 27.1,
		SoFar: 200 * quantity.Gallon, Fill: 285 * quantity.Gallon, StatedFill: 285 * quantity.Gallon,
		Remaining: gallons(40, 85, 150), ChanceLasts: 0.71,
		OutletNow: planner.Band[float64]{P10: 0.2, P50: 1, P90: 2}, OutletAtEnd: planner.Band[float64]{P10: 2, P50: 6, P90: 31},
		Before: planner.Layers{Spent: 0.4, Working: 0.25, Fresh: 0.35}, After: planner.Layers{Spent: 0.62, Working: 0.25, Fresh: 0.13},
		DropAcross: 2 * quantity.PSI,
	}
	median := []float64{0.1, 0.1, 0.2, 0.5, 1, 3, 9, 40, 150, 240, 240}
	for i, v := range median {
		b.Curve = append(b.Curve, planner.CurvePoint{
			Volume: quantity.Volume(40*i) * quantity.Gallon,
			Outlet: planner.Band[float64]{P10: v / 4, P50: v, P90: min(4*v, 240)},
		})
	}
	return b
}

func stages() []planner.StagePlan {
	chain := func(soft, di bool) []planner.Valve {
		return []planner.Valve{{Unit: "softener", Through: soft}, {Unit: "DI bed", Through: di}}
	}
	return []planner.StagePlan{
		{Name: "pre-rinse", Water: model.Raw, Faces: model.Sides(), Sprayer: "garden nozzle", Flow: 3 * quantity.GPM, Passes: 1, Use: use(30, 10), Valves: chain(false, false)},
		{Name: "contact wash", Water: model.Softened, Faces: model.Sides(), Sprayer: "small pressure washer", Flow: 1.4 * quantity.GPM, Passes: 1, Use: use(120, 86), Valves: chain(true, false)},
		{Name: "final rinse", Water: model.DI, Faces: []model.Side{model.Left, model.Front}, Sprayer: "small pressure washer", Flow: 1.4 * quantity.GPM, Passes: 1, Use: use(60, 43), Valves: chain(true, true), Final: true},
	}
}

func faces() []planner.FacePlan {
	one := func(side model.Side, ft2, di, ppm, mg float64, water model.Water, spots planner.Spots) planner.FacePlan {
		return planner.FacePlan{
			Name: side, Area: quantity.Area(ft2) * quantity.SquareFoot, Water: water, DI: quantity.Volume(di) * quantity.Gallon,
			PPMLeft: ppm, Residue: quantity.Residue(mg) * quantity.MilligramPerSquareMetre, Spots: spots,
		}
	}
	return []planner.FacePlan{
		one(model.Roof, 344, 0, 240, 14.4, model.Raw, planner.Towel),
		one(model.Left, 400, 30, 6, 0.4, model.DI, planner.NoSpots),
		one(model.Right, 400, 30, 18, 1.1, model.DI, planner.Faint),
		one(model.Front, 84, 8, 31, 1.9, model.DI, planner.Seen),
		one(model.Rear, 84, 0, 245, 15, model.Softened, planner.Towel),
	}
}

func assumptions() []planner.Assumption {
	return []planner.Assumption{
		{Name: "vehicle length", Value: quantity.ValueOf(40.5 * quantity.Foot), Source: tag.Source{Tag: tag.Yours, Text: "you stated it"}},
		{Name: "vehicle width", Value: quantity.ValueOf(8.5 * quantity.Foot), Source: tag.Source{Tag: tag.Practice, Text: "the widest that roads allow"}},
		{Name: "bed rated flow", Value: quantity.ValueOf(1.5 * quantity.GPM), Source: tag.Source{Tag: tag.Practice, Text: "3 gpm/ft3"}},
		{Name: "pen's scale", Words: "NaCl", Source: tag.Source{Tag: tag.Practice}},
	}
}

func reasons() []planner.Reason {
	return []planner.Reason{{
		Number: "DI gallons", Value: quantity.ValueOf(60 * quantity.Gallon), Formula: "area x passes x flow / coverage rate",
		Inputs: []planner.Assumption{{Name: "area", Value: quantity.ValueOf(484 * quantity.SquareFoot)}},
		Source: tag.Source{Tag: tag.Practice, Text: "a steady hand"},
	}, {
		Number: "contact time", Result: "long enough", Formula: "resin volume / flow",
		Source: tag.Source{Tag: tag.Published, Text: "a handbook"},
	}}
}
