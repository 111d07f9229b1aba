package report

import (
	"strings"

	"washeve/planner/trip"
)

// orderJSON is what one fill does of several washes. Its chances are of one; washes_done
// are on average, before the first that is over its limit. What was not tried is null.
type orderJSON struct {
	Fill        int        `json:"fill"`
	Chance      number     `json:"chance_all"`
	Safe        int        `json:"washes_safe"`
	Likely      int        `json:"washes_likely"`
	Stated      []turnJSON `json:"stated"`
	Best        []turnJSON `json:"best"`
	Tried       int        `json:"orders_tried"`
	ByRule      bool       `json:"by_rule"`
	ChanceBest  *number    `json:"chance_all_best"`
	ChanceWorst *number    `json:"chance_all_worst"`
	DoneStated  number     `json:"washes_done_stated"`
	DoneBest    *number    `json:"washes_done_best"`
	DoneLeast   *number    `json:"washes_done_least"`
	Any         bool       `json:"any_order"`
	Advised     bool       `json:"advised"`
	Text        string     `json:"text"`
}

type turnJSON struct {
	Wash  string `json:"wash"`
	Date  string `json:"date"`
	SoFar number `json:"chance_so_far"`
}

func orders(p trip.Plan) []orderJSON {
	out := []orderJSON{}
	for _, o := range p.Orders {
		one := orderJSON{
			Fill: o.Fill, Chance: number(trip.All(o.Stated)), Safe: trip.Until(o.Stated, 0.9), Likely: trip.Until(o.Stated, 0.5),
			Stated: turns(p, o.Stated), Tried: o.Tried, ByRule: o.ByRule, DoneStated: number(trip.Done(o.Stated)), Any: o.Any(), Advised: o.Advised(),
			Text: strings.Join(OneFill(p, o), " "),
		}
		if o.Tried > 0 {
			one.Best = turns(p, o.Best)
			one.ChanceBest, one.ChanceWorst = known(float64(trip.All(o.Best))), known(float64(o.Worst))
			one.DoneBest, one.DoneLeast = known(trip.Done(o.Best)), known(o.Least)
		}
		out = append(out, one)
	}
	return out
}

func known(v float64) *number {
	n := number(v)
	return &n
}

func turns(p trip.Plan, all []trip.Turn) []turnJSON {
	var out []turnJSON
	for _, at := range all {
		w := p.Washes[at.Wash]
		out = append(out, turnJSON{w.Name, w.Date.String(), number(at.SoFar)})
	}
	return out
}
