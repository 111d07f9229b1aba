package compare

import (
	"strconv"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
)

// Reasons tells where the figures of a way come from, a row each. What stands
// behind them is in the reasons of the way's plan.
func (t Table) Reasons(way int, washes Yearly) []planner.Reason {
	w := t.Ways[way]
	var out []planner.Reason
	for _, r := range t.Rows {
		var why planner.Reason
		if w.Figures.Trip != nil {
			why = explainTrip(r.Key, w.Figures, w.Case)
		} else {
			why = explain(r.Key, w, washes)
		}
		why.Number = r.Label
		c := r.Cells[way]
		switch {
		case !c.Known && c.Words != "":
			why.Result = c.Words + ": " + c.Why
		case !c.Known:
			why.Result = "unknown: " + c.Why
		case c.Value.Kind != nil:
			why.Value = c.Value
		default:
			why.Result = c.Words
		}
		out = append(out, why)
	}
	return out
}

func explain(row string, w Way, washes Yearly) planner.Reason {
	switch row {
	case "di", "water", "time":
		return explainWater(row, w.Figures)
	case "chance", "left", "film", "spots":
		return explainEnd(row, w.Figures)
	case "resin", "salt", "cost":
		return explainMoney(row, w.Figures)
	case "fill", "year", "resin-year":
		return explainFill(row, w, washes)
	}
	return explainLoad(row, w)
}

func from[Q quantity.Quantity](name string, q Q) planner.Assumption {
	return planner.Assumption{Name: name, Value: quantity.ValueOf(q)}
}

func worded(name, words string) planner.Assumption {
	return planner.Assumption{Name: name, Words: words}
}

func priced(name string, price quantity.Opt[quantity.Money]) planner.Assumption {
	if money, given := price.Get(); given {
		return worded(name, money.String())
	}
	return worded(name, "not stated")
}

func reason(formula string, source tag.Source, inputs ...planner.Assumption) planner.Reason {
	return planner.Reason{Formula: formula, Inputs: inputs, Source: source}
}

var arithmetic = tag.FromPractice("arithmetic")

func explainWater(row string, f Figures) planner.Reason {
	p := f.Plan
	switch row {
	case "di":
		return reason("the DI stages of this way's own plan, on the vehicle: area x passes x flow / coverage rate, or more where the film asks for it", arithmetic,
			from("flow", p.Sprayer.Flow), from("cap", p.Cap.Flow))
	case "water":
		return reason("DI, softened and raw water and the flush", arithmetic,
			from("DI", p.DI.Volume), from("softened", p.Soft.Volume), from("raw", p.Untreated.Volume), from("flush", p.Flush.Volume))
	}
	return reason("the time of all stages and of the flush, by hand too; walking, setting up and the drip are not counted", arithmetic,
		from("DI", p.DI.Duration), from("softened", p.Soft.Duration), from("raw", p.Untreated.Duration), from("flush", p.Flush.Duration))
}

func explainEnd(row string, f Figures) planner.Reason {
	p := f.Plan
	limit := worded("outlet limit", p.Limit.String())
	switch row {
	case "chance":
		return reason("how many of the beds that may be in the tank keep the outlet under the limit to the end of the wash", tag.Source{Tag: tag.Practice, Text: "what is believed of a bed: spread 0.35 in capacity, and what its readings teach"},
			limit, from("through the bed", f.Through), from("left, in the middle", p.Bed.Remaining.P50), worded("outlet at the end, in the middle", atLeastShown(f.AtEnd)))
	case "left":
		return reason("what the tank of this way can still take before the outlet passes the limit at this way's flow, before the wash: half of such beds have less. A fill gives that and what it has given already", tag.Source{Tag: tag.Practice, Text: "what is believed of a bed: spread 0.35 in capacity, and what its readings teach"},
			limit, from("nine in ten have more than", p.Bed.Remaining.P10), from("one in ten has more than", p.Bed.Remaining.P90), from("flow", p.Sprayer.Flow))
	case "film":
		return reason("what the film of the worst face holds that gets the last rinse, with the bed's outlet at the end of the job", tag.Source{Tag: tag.Memory, Text: "rinsing of a stirred film, plating trade"},
			worded("target", p.Target.String()))
	}
	return reason("the outlook of that face when it has dried", tag.FromPractice("bands: under 10 ppm none, to 25 faint, to 50 seen, over 50 towel"), worded("ppm in the film", quantity.Round(f.Film)))
}

// atLeastShown keeps to what a pen can tell.
func atLeastShown(ppm float64) string {
	if ppm < 0.1 {
		return "under 0.1 ppm"
	}
	return quantity.Round(ppm) + " ppm"
}

func explainMoney(row string, f Figures) planner.Reason {
	yours := tag.Source{Tag: tag.Yours, Text: "the prices that you stated, in your currency; shares add up exactly and are rounded once"}
	share, price := quantity.Fraction(0), quantity.Opt[quantity.Money]{}
	if s := f.Plan.Softener; s != nil {
		share, price = s.Share, s.Price
	}
	resin := []planner.Assumption{priced("price of a fill", f.Plan.Cost.Fill), from("through the bed", f.Through), from("a fill gives", f.Fill)}
	salt := []planner.Assumption{priced("price of a regeneration", price), from("of a regeneration", share)}
	switch row {
	case "resin":
		return reason("price of a fill x water through the bed / what a fill gives", yours, resin...)
	case "salt":
		return reason("price of a regeneration x water through the softener x hardness / its capacity", yours, salt...)
	}
	return reason("the wash's share of a fill of resin and of a regeneration; a price that is not stated leaves it unknown", yours, append(resin, salt...)...)
}

func explainFill(row string, w Way, washes Yearly) planner.Reason {
	f := w.Figures
	if row != "fill" {
		number := "not known"
		if n, known := washes.Number.Get(); known {
			number = quantity.Round(n)
		}
		source := washes.Source
		if source.Tag == "" {
			source = tag.Source{Tag: tag.Yours, Text: "to be stated"}
		}
		return reason("washes a year x water through the bed / what a fill gives; the resin is that many tanks full", source,
			worded("washes a year", number), from("through the bed", f.Through), from("a fill gives", f.Fill), planner.Assumption{Name: "a fill", Value: f.Plan.Bed.Resin.AsResin()})
	}
	inputs := []planner.Assumption{
		from("capacity in all", f.Plan.Bed.Whole), worded("transfer units", quantity.Round(f.Plan.Bed.Units)), worded("outlet limit", f.Plan.Limit.String()), worded("feed", f.feed(w.Case)),
	}
	film := tag.Source{Tag: tag.Memory, Text: "film diffusion, one-way isotherm (Wicke; Perry's)"}
	if w.Case.Setting.Behind {
		film.Text += "; beds taken round: Davis, Water and Wastewater Engineering, 2010, fig. 8-4"
		return reason("what the first tank gives until the outlet of the second passes the limit, when it has become the same from swap to swap, over the load of the feed", film, inputs...)
	}
	return reason("what the fill in the tank of this way gave, as so much of this feed, and what is left of it until the outlet passes the limit at this flow. Of new resin the fills before it and their readings teach a part, so that it is not what the fill in the tank gives", film, append(inputs, from("fresh resin that is as stated would give", f.Plan.Bed.StatedFill))...)
}

// feed is in words what the bed is fed with.
func (f *Figures) feed(c Case) string {
	if c.Setting.Rejected > 0 {
		return "partly purified, " + quantity.Show(c.Setting.Rejected, quantity.US) + " held back"
	}
	tds := f.Plan.FeedTDS("")
	return quantity.Round(tds.Number) + " ppm " + tds.Scale.String()
}

func explainLoad(row string, w Way) planner.Reason {
	p := w.Figures.Plan
	if row == "soft" {
		if p.Softener == nil {
			return reason("no softener, no soft water", arithmetic)
		}
		return reason("the soft water that is left in the softener after the wash: what it had before, less what the wash sends through it", arithmetic,
			from("before the wash", p.Softener.Remaining), from("the wash takes", p.Softener.Takes))
	}
	tanks := 1
	if w.Case.Setting.Behind {
		tanks = 2
	}
	inputs := []planner.Assumption{{Name: "DI resin, each tank", Value: p.Bed.Resin.AsResin()}, worded("tanks", strconv.Itoa(tanks))}
	if p.Softener != nil {
		if resin, known := p.Softener.Resin.Get(); known {
			inputs = append(inputs, planner.Assumption{Name: "softening resin", Value: resin.AsResin()})
		} else {
			inputs = append(inputs, worded("softening resin", planner.NeedsVolume))
		}
		if salt, known := p.Softener.Salt.Get(); known {
			inputs = append(inputs, from("salt of one regeneration", salt))
		}
	}
	return reason("resin as shipped (44 lb/ft3), softening resin (50 lb/ft3) and the salt of one regeneration; tanks and the water in them are not counted", tag.FromPractice("weights as shipped"), inputs...)
}
