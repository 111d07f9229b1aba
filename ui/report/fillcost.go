package report

import (
	"washeve/model/quantity"
	"washeve/planner"
)

// FillCost is what the DI water of the fill in the tank costs, in the words of every place
// that tells it. All of it is "" where no price is stated, or the fill gave less than a tenth of what it will.
type FillCost struct {
	SoFar    string // a gallon or a litre: the price over what it has given
	ByEnd    string // the same over what it will have given, in the middle of what is believed
	NextWash string // with its flush, by what the fill gives in all, as the plan prices it
	Left     string // what the water that is left is worth, of the price
	Unit     string // "a gallon" or "a litre"
}

// CostOfFill is what the fill that runs on costs.
func CostOfFill(run planner.RunningOn, sys quantity.System) FillCost {
	const early = 10 // times what it will be: of the first gallons it says nothing
	if !run.Known || run.AtEnd > 0 && run.PerGallon > early*run.AtEnd {
		return FillCost{}
	}
	share, unit := 1.0, "a gallon"
	if sys == quantity.Metric {
		share, unit = float64(quantity.Litre/quantity.Gallon), "a litre"
	}
	money := func(v float64) string {
		if v <= 0 {
			return ""
		}
		return Money(v, run.Currency)
	}
	return FillCost{SoFar: money(run.PerGallon * share), ByEnd: money(run.AtEnd * share), NextWash: money(run.PerWash), Left: money(run.Left), Unit: unit}
}

// Words tell it, the end and the next wash only where the fill has not reached its end.
func (c FillCost) Words(spent bool) string {
	if c.SoFar == "" {
		return ""
	}
	return c.SoFar + " " + c.Beside(spent)
}

// Beside is what stands behind the figure so far.
func (c FillCost) Beside(spent bool) string {
	words := c.Unit + " so far"
	if spent {
		return words
	}
	if c.ByEnd != "" {
		words += ", " + c.ByEnd + " by its end"
	}
	if c.NextWash != "" {
		words += "; next wash " + c.NextWash
	}
	return words
}
