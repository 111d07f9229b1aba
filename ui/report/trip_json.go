package report

import (
	"encoding/json"
	"fmt"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/trip"
)

type tripJSON struct {
	Format      int              `json:"format"`
	Trip        string           `json:"trip"`
	Bed         string           `json:"bed"`
	From        *string          `json:"from"`
	To          *string          `json:"to"`
	Scale       string           `json:"ppm_scale"`
	Chance      number           `json:"chance_all_on_spec"`
	Advised     number           `json:"chance_all_on_spec_advised"`
	FirstAtRisk *string          `json:"first_at_risk"`
	OrderBy     *string          `json:"order_by"`
	NeededBy    *string          `json:"needed_by"`
	Late        bool             `json:"late"`
	Over        bool             `json:"over"`
	ToFill      bool             `json:"to_fill"`
	Lead        number           `json:"lead_days"`
	Life        bandJSON         `json:"life_at_start"`
	Stops       []stopJSON       `json:"stops"`
	Washes      []tripWashJSON   `json:"washes"`
	Changes     []changeJSON     `json:"changes"`
	Orders      []orderJSON      `json:"orders"`
	Carry       carryJSON        `json:"carry"`
	Used        sumJSON          `json:"resin_used"`
	Salt        sumJSON          `json:"salt_used"`
	Buy         sumJSON          `json:"resin_to_buy"`
	Notes       []noteJSON       `json:"notes"`
	Assumptions []assumptionJSON `json:"assumptions"`
}

type stopJSON struct {
	Name    string   `json:"name"`
	From    string   `json:"from"`
	Unknown bool     `json:"water_unknown"`
	TDS     bandJSON `json:"tds_ppm"`
	Limits  string   `json:"washing"`
	Needs   number   `json:"needs_gallons"`
	OnHand  *number  `json:"on_hand_gallons"`
}

type tripWashJSON struct {
	Date      string            `json:"date"`
	Name      string            `json:"name"`
	Stop      string            `json:"stop"`
	Assumed   bool              `json:"stop_assumed"`
	OtherUse  bool              `json:"other_use"`
	Counted   bool              `json:"counted"`
	RinseOnly bool              `json:"rinse_only"`
	Fill      int               `json:"fill"`
	Verdict   *planner.Verdict  `json:"verdict"`
	Chance    number            `json:"chance"`
	SoFar     number            `json:"chance_so_far"`
	Advised   number            `json:"chance_advised"`
	DI        bandJSON          `json:"di_gallons"`
	Soft      bandJSON          `json:"soft_gallons"`
	Raw       bandJSON          `json:"raw_gallons"`
	Flush     number            `json:"flush_gallons"`
	Minutes   number            `json:"minutes"`
	Outlet    bandJSON          `json:"outlet_ppm_at_end"`
	Life      bandJSON          `json:"life_left"`
	Softener  *tripSoftenerJSON `json:"softener"`
	Cost      sumJSON           `json:"resin_cost"`
}

type tripSoftenerJSON struct {
	Left       number `json:"left_gr"`
	Regenerate bool   `json:"regenerate_before"`
	Salt       number `json:"salt_lb"`
}

type changeJSON struct {
	Date    string  `json:"date"`
	Before  *string `json:"before"`
	Advised bool    `json:"advised"`
	Wasted  number  `json:"wasted_fills"`
}

type carryJSON struct {
	Fills int    `json:"fills"`
	Spare bool   `json:"spare"`
	Resin number `json:"resin_ft3"`
	Low   number `json:"resin_low_lb"`
	High  number `json:"resin_high_lb"`
	Times int    `json:"regenerations"`
	Salt  number `json:"salt_lb"`
}

// sumJSON has its amounts as they are, to the hundredth; what is not known is not
// zero.
type sumJSON struct {
	Known   bool         `json:"known"`
	Amounts []amountJSON `json:"amounts"`
	Text    string       `json:"text"`
}

type amountJSON struct {
	Currency   string `json:"currency"`
	Hundredths int64  `json:"hundredths"`
}

// TripJSON writes a trip as one object, every number in the unit that its name ends
// in. What is not known is null.
func TripJSON(p trip.Plan) ([]byte, error) {
	data, err := json.MarshalIndent(tripDocument(p), "", "  ")
	if err != nil {
		return nil, fmt.Errorf("write the trip as JSON: %w", err)
	}
	return append(data, '\n'), nil
}

func tripDocument(p trip.Plan) tripJSON {
	doc := tripJSON{
		Format: Format, Trip: p.Name, Bed: p.Bed, Scale: p.Scale.String(),
		Chance: number(p.AllOnSpec), Advised: number(p.AllAdvised), Late: p.Late, Over: p.Over, ToFill: p.ToFill, Lead: number(p.Lead / quantity.Day),
		Life: fractions(p.Start), OrderBy: dayText(p.OrderBy), NeededBy: dayText(p.NeededBy),
		Stops: []stopJSON{}, Washes: []tripWashJSON{}, Changes: []changeJSON{}, Orders: orders(p),
		Carry: carryJSON{
			Fills: p.Carry.Fills, Spare: p.Carry.Spare, Resin: number(p.Carry.Resin.CubicFeet()),
			Low: number(p.Carry.Low.Pounds()), High: number(p.Carry.High.Pounds()), Times: p.Carry.Regens, Salt: number(p.Carry.Salt.Pounds()),
		},
		Used: sum(p.Used), Salt: sum(p.Salt), Buy: sum(p.Buy), Notes: notes(p.Notes), Assumptions: []assumptionJSON{},
	}
	if p.First != (model.Date{}) {
		doc.From, doc.To = text(p.First.String()), text(p.Last.String())
	}
	if p.FirstAtRisk >= 0 {
		doc.FirstAtRisk = text(p.Washes[p.FirstAtRisk].Date.String())
	}
	for _, s := range p.Stops {
		doc.Stops = append(doc.Stops, stopDocument(s))
	}
	for _, w := range p.Washes {
		doc.Washes = append(doc.Washes, washDocument(p, w))
	}
	for _, c := range p.Changes {
		one := changeJSON{Date: c.Date.String(), Advised: c.Advised, Wasted: number(c.Wasted)}
		if c.Before < len(p.Washes) {
			one.Before = text(p.Washes[c.Before].Name)
		}
		doc.Changes = append(doc.Changes, one)
	}
	for _, a := range p.Assumptions {
		doc.Assumptions = append(doc.Assumptions, assumption(a))
	}
	return doc
}

func stopDocument(s trip.StopPlan) stopJSON {
	out := stopJSON{
		Name: s.Name, From: s.From.String(), Unknown: s.Unknown, Needs: number(s.Needs.Gallons()), Limits: string(s.Limits),
		TDS: bandJSON{number(s.TDS.P10), number(s.TDS.P50), number(s.TDS.P90)},
	}
	if out.Limits == "" {
		out.Limits = string(model.NoLimits)
	}
	if onHand, given := s.OnHand.Get(); given {
		v := number(onHand.Gallons())
		out.OnHand = &v
	}
	return out
}

func washDocument(p trip.Plan, w trip.WashPlan) tripWashJSON {
	out := tripWashJSON{
		Date: w.Date.String(), Name: w.Name, Stop: p.Stops[w.Stop].Name, Assumed: w.Assumed, OtherUse: w.Other, Counted: !w.Barred, RinseOnly: w.Rinse,
		Fill: w.Fill, Chance: number(w.Chance), SoFar: number(w.SoFar), Advised: number(w.Advised),
		DI: volumes(w.DI), Soft: volumes(w.Soft), Raw: volumes(w.Untreated), Flush: number(w.Flush.Gallons()), Minutes: number(w.Time.Minutes()),
		Outlet: bandJSON{number(w.Outlet.P10), number(w.Outlet.P50), number(w.Outlet.P90)}, Life: fractions(w.Life), Cost: sum(w.Cost),
	}
	if !w.Barred {
		out.Verdict = &w.Verdict
	}
	if s := w.Softener; s != nil {
		out.Softener = &tripSoftenerJSON{number(s.Left.Grains()), s.Regenerate, number(s.Salt.Pounds())}
	}
	return out
}

func sum(s trip.Sum) sumJSON {
	out := sumJSON{Known: s.Known(), Amounts: []amountJSON{}, Text: s.String()}
	for _, m := range s.Parts {
		out.Amounts = append(out.Amounts, amountJSON{m.Currency, m.Hundredths})
	}
	return out
}

func fractions(b trip.Band[quantity.Fraction]) bandJSON {
	return bandJSON{number(b.P10), number(b.P50), number(b.P90)}
}

func volumes(b trip.Band[quantity.Volume]) bandJSON {
	return bandJSON{number(b.P10.Gallons()), number(b.P50.Gallons()), number(b.P90.Gallons())}
}

func dayText(d quantity.Opt[model.Date]) *string {
	if day, given := d.Get(); given {
		return text(day.String())
	}
	return nil
}

func text(s string) *string { return &s }
