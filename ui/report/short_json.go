package report

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

type shortageJSON struct {
	Confidence  number          `json:"confidence"`
	Gives       number          `json:"gives_gallons"`
	Needs       number          `json:"needs_gallons"`
	Takes       number          `json:"takes_gallons"`
	Flush       number          `json:"flush_gallons"`
	Flow        number          `json:"flow_gpm"`
	Drawn       number          `json:"drawn_gpm"`
	PinsShort   number          `json:"pins_short_gallons"`
	Spared      number          `json:"spots_spared"`
	Unpinned    number          `json:"spots_spared_without_pins"`
	ChanceLasts number          `json:"chance_lasts"`
	Order       []model.Side    `json:"order"`
	Faces       []faceShareJSON `json:"faces"`
	Ways        []wayOutJSON    `json:"ways"`
}

type faceShareJSON struct {
	Name    model.Side    `json:"name"`
	Water   model.Water   `json:"water"`
	Pin     string        `json:"pin"`
	Asked   bool          `json:"di_asked"`
	Area    number        `json:"area_ft2"`
	Needs   number        `json:"di_needs_gallons"`
	Gallons number        `json:"gallons"`
	Minutes number        `json:"minutes"`
	Towel   number        `json:"towel_minutes"`
	Spots   planner.Spots `json:"spots"`
	Reaches number        `json:"chance_to_here"`
}

type wayOutJSON struct {
	Code        string          `json:"code"`
	Name        string          `json:"name"`
	Applies     bool            `json:"applies"`
	Does        string          `json:"does"`
	Lost        string          `json:"lost"`
	WhyNot      string          `json:"why_not"`
	DI          number          `json:"di_gallons"`
	Minutes     number          `json:"di_minutes"`
	Softened    number          `json:"soft_gallons"`
	Towels      number          `json:"towel_ft2"`
	Towel       number          `json:"towel_minutes"`
	ChanceLasts number          `json:"chance_lasts"`
	Verdict     planner.Verdict `json:"verdict"`
	Buy         *boughtJSON     `json:"buy"`
	Resin       *boughtJSON     `json:"resin_used"`
}

// boughtJSON is money; the amount is null where no price is stated.
type boughtJSON struct {
	Amount   *number `json:"amount"`
	Currency string  `json:"currency"`
}

// shortageDocument is nil where nobody asked for it.
func shortageDocument(s *planner.Shortage) *shortageJSON {
	if s == nil {
		return nil
	}
	h := &s.Share
	g := func(v quantity.Volume) number { return number(v.Gallons()) }
	out := &shortageJSON{
		Confidence: number(h.Confidence), Gives: g(h.Gives), Needs: g(h.Needs), Takes: g(h.Takes), Flush: g(h.Flush),
		Flow: number(h.Flow.GPM()), Drawn: number(h.Drawn.GPM()), PinsShort: g(h.Short), Spared: number(h.Spared),
		Unpinned: number(h.Unpinned), ChanceLasts: number(h.Chance), Order: h.Order(), Faces: []faceShareJSON{}, Ways: []wayOutJSON{},
	}
	for _, f := range h.Faces {
		out.Faces = append(out.Faces, faceShareJSON{
			Name: f.Name, Water: f.Water, Pin: Pin(f.Pin), Asked: f.Asked, Area: number(f.Area.SquareFeet()), Needs: g(f.Needs),
			Gallons: g(f.Volume), Minutes: number(f.Duration.Minutes()), Towel: number(f.Towel.Minutes()), Spots: f.Spots, Reaches: number(f.Reaches),
		})
	}
	for i := range s.Ways {
		out.Ways = append(out.Ways, wayDocument(&s.Ways[i]))
	}
	return out
}

func wayDocument(w *planner.WayOut) wayOutJSON {
	out := wayOutJSON{
		Code: w.Code, Name: w.Name, Applies: w.Not.Code == "", Does: w.Does.Text(quantity.US), Lost: w.Lost.Text(quantity.US), WhyNot: w.Not.Text(quantity.US),
		DI: number(w.DI.Volume.Gallons()), Minutes: number(w.DI.Duration.Minutes()), Softened: number(w.Softened.Volume.Gallons()),
		Towels: number(w.Towels.SquareFeet()), Towel: number(w.Towel.Minutes()), ChanceLasts: number(w.Chance), Verdict: w.Verdict,
		Resin: &boughtJSON{},
	}
	if w.Resin.Known {
		amount := number(w.Resin.Wash)
		out.Resin = &boughtJSON{&amount, w.Resin.Currency}
	}
	if !w.Buy.Needed {
		return out
	}
	out.Buy = &boughtJSON{}
	if price, known := w.Buy.Price.Get(); known {
		amount := number(price.Amount())
		out.Buy = &boughtJSON{&amount, price.Currency}
	}
	return out
}
