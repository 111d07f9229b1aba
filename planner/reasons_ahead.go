package planner

import (
	"fmt"

	"washeve/planner/bed"
)

// reason writes down where the numbers come from.
func (a *Ahead) reason(plan Plan) {
	l := &ledger{}
	if a.Pace.Known() {
		l.explain(quantityReason("pace", a.Pace.Month(), "DI water in 30 days: that of the washes of the last 90 days, or of the last four, over the time that they stand for", practice("a pause slows it"),
			input("water", a.Pace.Volume), input("in", a.Pace.Over), plain("washes", float64(a.Pace.Washes))))
	}
	if ends, known := a.Ends.Get(); known {
		l.explain(wordsReason("end of the fill", ends.P50.String(), "today, and what is left at that pace", practice("as you have washed of late"),
			input("left", plan.Bed.Remaining.P50), Assumption{Name: "one in ten before", Words: ends.P10.String()}, Assumption{Name: "one in ten after", Words: ends.P90.String()}))
	}
	if day, known := a.OrderBy.Get(); known {
		how := "the day on which one such bed in ten has ended, less the lead time"
		if a.Overdue {
			how += "; today, since that is not to come any more"
		}
		l.explain(wordsReason("order by", day.String(), how, practice("10 days until resin is there"), input("lead time", a.Lead)))
	}
	if run := a.Running; run.Known {
		l.explain(wordsReason("cost so far", fmt.Sprintf("%s%.2f a gallon", run.Currency, run.PerGallon), "price of this fill / gallons it has given", yours, input("gallons", a.Given)))
		l.explain(wordsReason("cost at its end", fmt.Sprintf("%s%.2f a gallon", run.Currency, run.AtEnd), "price / (gallons so far + the middle of what is left)", yours, input("left", plan.Bed.Remaining.P50)))
	}
	a.reasonRefill(l)
	a.Reasons = l.reasons
}

func (a *Ahead) reasonRefill(l *ledger) {
	f := a.Refill
	l.explain(quantityReason("resin depth", f.Depth, "resin volume / cross section of the tank", practice("arithmetic"), Assumption{Name: "resin", Value: f.Resin.AsResin()}))
	l.explain(quantityReason("free space left", f.Freeboard, "free space / cross section", practice("half of the resin's volume where you do not state the free space: a tank filled to two thirds")))
	l.explain(quantityReason("water in the tank", f.Water, "(voids x resin + free space) x density: the most that draining saves", practice("some of it clings to the beads"), input("voids", bed.Voids)))
	low, high := bed.BagsFor(f.Resin, bed.UsualBag).FillLow, bed.BagsFor(f.Resin, bed.UsualBag).FillHigh
	l.explain(quantityReason("weight of the resin", low, "43 to 45 lb/ft3 as shipped, moist", practice("of mixed-bed resin in its bag"), input("at the most", high)))
	l.explain(quantityReason("first fill", f.FirstFlow, "1 gpm/ft3, until the water stands at the outlet", practice("slow, so that the air gets out and no channel forms"), input("takes", f.FirstTime)))
	l.explain(wordsReason("first reading of a fill", fmt.Sprintf("%.1f ppm or less", f.Fresh), "feed x exp(-N) of a fresh bed, in nine of ten, and no finer than a pen shows; its own error apart", memory("Wicke; Perry's, constant patterns")))
}
