package report

import (
	"washeve/model/quantity"
	"washeve/planner/compare"
)

// CompareJSON is the comparison with its numbers in the unit that each name ends
// in; what is not known, and what JSON cannot hold, is null.
func CompareJSON(t compare.Table) map[string]any {
	ways := []map[string]any{}
	for i, w := range t.Ways {
		ways = append(ways, wayJSON(t, i, w))
	}
	skipped := []map[string]any{}
	for _, s := range t.Skipped {
		skipped = append(skipped, map[string]any{"key": s.Key, "name": s.Name, "why": s.Why})
	}
	return map[string]any{"format": 1, "wash": t.Ways[0].Figures.Plan.Wash, "ways": ways, "skipped": skipped}
}

func wayJSON(t compare.Table, at int, w compare.Way) map[string]any {
	f := w.Figures
	best, unknown := []string{}, map[string]string{}
	for _, r := range t.Rows {
		if c := r.Cells[at]; c.Best {
			best = append(best, r.Key)
		} else if !c.Known {
			unknown[r.Key] = c.Why
		}
	}
	out := map[string]any{
		"key": w.Key, "name": w.Name, "changes": w.Changes, "tells": append([]string{}, w.Tells...), "buys": w.Buys, "only": w.Only,
		"di_gallons": number(f.DI.Gallons()), "di_with_flush_gallons": number(f.Through.Gallons()), "water_gallons": number(f.Water.Gallons()),
		"minutes": number(f.Time.Minutes()), "chance_lasts": number(float64(f.Chance)), "verdict": f.Plan.Verdict,
		"film_ppm": number(f.Film), "spots": f.Spots, "resin_cost": bill(f.Resin), "salt_cost": bill(f.Salt), "cost": bill(f.Together()),
		"fill_gallons": number(f.Fill.Gallons()), "fills_a_year": nil, "resin_a_year_ft3": nil, "carried_lb": nil, "soft_left_gallons": nil,
		"best": best, "unknown": unknown, "warnings": append([]string{}, t.Warns(at, quantity.US)...),
	}
	if n, known := f.Year.Get(); known {
		out["fills_a_year"], out["resin_a_year_ft3"] = number(n), number(n*f.Plan.Bed.Resin.CubicFeet())
	}
	if m, known := f.Weight.Get(); known {
		out["carried_lb"] = number(m.Pounds())
	}
	if left, known := f.SoftLeft.Get(); known {
		out["soft_left_gallons"] = number(left.Gallons())
	}
	return out
}

// bill is a sum as JSON: amount and currency, the amount with its hundredths as
// they are.
func bill(b quantity.Bill) any {
	total, known := b.Total()
	if !known {
		return nil
	}
	return map[string]any{"hundredths": total.Hundredths, "currency": total.Currency, "text": total.String()}
}
