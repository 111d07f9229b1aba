package report

import (
	"maps"

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
	doc := map[string]any{"format": 1, "ways": ways, "skipped": skipped}
	if trip := t.Ways[0].Figures.Trip; trip != nil {
		doc["trip"], doc["bed"] = trip.Name, trip.Bed
	} else {
		doc["wash"] = t.Ways[0].Figures.Plan.Wash
	}
	return doc
}

func wayJSON(t compare.Table, at int, w compare.Way) map[string]any {
	out := commonJSON(t, at, w)
	if w.Figures.Trip != nil {
		addTrip(out, w.Figures)
	} else {
		addWash(out, w.Figures)
	}
	return out
}

// commonJSON is what a way of a wash and one of a trip have alike.
func commonJSON(t compare.Table, at int, w compare.Way) map[string]any {
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
		"key": w.Key, "name": w.Name, "changes": w.Changes, "tells": append([]string{}, w.Tells...), "buys": w.Buys, "only": w.Only, "instead": w.Instead,
		"di_gallons": number(f.DI.Gallons()), "di_with_flush_gallons": number(f.Through.Gallons()), "water_gallons": number(f.Water.Gallons()),
		"softened_gallons": number(f.Softened.Gallons()), "raw_gallons": number(f.Raw.Gallons()),
		"minutes": number(f.Time.Minutes()), "carried_lb": nil,
		"best": best, "unknown": unknown, "warnings": append([]string{}, t.Warns(at, quantity.US)...),
	}
	if m, known := f.Weight.Get(); known {
		out["carried_lb"] = number(m.Pounds())
	}
	return out
}

// addWash adds what a wash alone has.
func addWash(out map[string]any, f compare.Figures) {
	maps.Copy(out, map[string]any{
		"chance_lasts": number(float64(f.Chance)), "verdict": f.Plan.Verdict,
		"film_ppm": number(f.Film), "spots": f.Spots, "resin_cost": bill(f.Resin), "salt_cost": bill(f.Salt), "cost": bill(f.Together()),
		"fill_gallons": number(f.Fill.Gallons()), "left_gallons": number(f.Plan.Bed.Remaining.P50.Gallons()), "fills_a_year": nil, "resin_a_year_ft3": nil, "soft_left_gallons": nil,
	})
	if n, known := f.Year.Get(); known {
		out["fills_a_year"], out["resin_a_year_ft3"] = number(n), number(n*f.Plan.Bed.Resin.CubicFeet())
	}
	if left, known := f.SoftLeft.Get(); known {
		out["soft_left_gallons"] = number(left.Gallons())
	}
}

// addTrip adds what a trip alone has.
func addTrip(out map[string]any, f compare.Figures) {
	p, advised, firstAtRisk := f.Trip, 0, (*string)(nil)
	for _, c := range p.Changes {
		if c.Advised {
			advised++
		}
	}
	if p.FirstAtRisk >= 0 {
		firstAtRisk = text(p.Washes[p.FirstAtRisk].Date.String())
	}
	maps.Copy(out, map[string]any{
		"chance_all_on_spec": number(p.AllOnSpec), "chance_all_on_spec_advised": number(p.AllAdvised), "first_at_risk": firstAtRisk,
		"changes_planned": len(p.Changes) - advised, "changes_advised": advised,
		"resin_used": sum(p.Used), "salt_used": sum(p.Salt), "resin_to_buy": sum(p.Buy),
		"order_by": dayText(p.OrderBy), "needed_by": dayText(p.NeededBy), "late": p.Late,
	})
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
