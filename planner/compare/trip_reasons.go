package compare

import (
	"math"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
)

// explainTrip tells where a figure of a whole trip comes from.
func explainTrip(row string, f Figures, c Case) planner.Reason {
	p := f.Trip
	switch row {
	case "di", "soft", "raw", "water", "time":
		return explainSum(row, f)
	case "chance", "advised", "risk":
		return reason("how many of the thousand beds that may be in the tank, each taken through all washes, keep the outlet under the limit; the chance of all is no product. At risk: under nine in ten", tag.Source{Tag: tag.Practice, Text: "what is believed of a bed: spread 0.35 in capacity, and what its readings teach"},
			worded("all on spec, as the changes stand", percent(p.AllOnSpec)), worded("with the changes that are advised", percent(p.AllAdvised)))
	case "changes":
		return reason("the changes that are planned, and those that the plan advises", tag.FromPractice("a wash off spec is as dear as a fill of resin"))
	case "resin", "salt", "buy":
		return explainTripMoney(row, f)
	case "order":
		return reason("the day on which resin must be at hand, less the lead time; with nothing to order, or when the trip is over, there is no such day", tag.FromPractice("stated otherwise by lead_time"), from("lead time", p.Lead))
	}
	salt := from("salt of all regenerations", p.Carry.Salt)
	if math.IsNaN(float64(p.Carry.Salt)) {
		salt = worded("salt of all regenerations", planner.NeedsVolume)
	}
	inputs := []planner.Assumption{{Name: "new resin along, in all", Value: p.Carry.Resin.AsResin()}, salt}
	why := explainLoad("weight", Way{Figures: f, Case: c})
	why.Formula += "; and the fills that are carried from the start, and the salt of every regeneration but the first"
	why.Inputs = append(why.Inputs, inputs...)
	return why
}

func explainSum(row string, f Figures) planner.Reason {
	switch row {
	case "water":
		return reason("DI, softened and raw water and the flushes", arithmetic,
			from("DI", f.DI), from("softened", f.Softened), from("raw", f.Raw), from("flushes", f.Through-f.DI))
	case "time":
		return reason("the time of all stages of all washes and of the flushes, by hand too; walking, setting up and the drip are not counted", arithmetic, from("in all", f.Time))
	}
	return reason("the sum over the washes that are counted; of an unknown water, in the middle of its band", arithmetic)
}

func explainTripMoney(row string, f Figures) planner.Reason {
	yours := tag.Source{Tag: tag.Yours, Text: "the prices that you stated, in your currency"}
	switch row {
	case "resin":
		return reason("each wash's share of the fill that it uses, by the price of that fill", yours, priced("price of a fill", f.Plan.Cost.Fill))
	case "salt":
		price := quantity.Opt[quantity.Money]{}
		if s := f.Plan.Softener; s != nil {
			price = s.Price
		}
		return reason("each wash's share of a regeneration, by its price", yours, priced("price of a regeneration", price))
	}
	return reason("the fills for all changes, and the first fill of a tank that the way buys; the tank itself is not counted", yours, priced("price of a fill", f.Plan.Cost.Fill))
}

func percent(f quantity.Fraction) string { return quantity.Show(f, quantity.US) }
