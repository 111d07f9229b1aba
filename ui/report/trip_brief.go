package report

import (
	"fmt"
	"math"
	"strings"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/trip"
)

// TripBrief says in four short lines what [TripVerdict], [TripChanges], [TripOrder],
// [TripCarry] and [TripCost] say in whole sentences.
func TripBrief(p trip.Plan, sys quantity.System) []string {
	return []string{briefVerdict(p), briefChanges(p), briefOrder(p, sys), briefCarry(p, sys)}
}

func briefVerdict(p trip.Plan) string {
	switch {
	case len(p.Washes) == 0:
		return TripVerdict(p)
	case p.FirstAtRisk < 0 && p.Over:
		return "As planned, the resin lasted this trip. All on spec: " + Odds(p.AllOnSpec) + "."
	case p.FirstAtRisk < 0 && TripBefore(p) != "":
		return "It lasts, not counting " + TripBefore(p) + " planned before it. All on spec: " + Odds(p.AllOnSpec) + "."
	case p.FirstAtRisk < 0:
		return "The resin lasts this trip. All on spec: " + Odds(p.AllOnSpec) + "."
	}
	w := p.Washes[p.FirstAtRisk]
	first := "First at risk"
	if p.Over {
		first = "At risk, as planned"
	}
	return fmt.Sprintf("%s: %s %s, %s. All on spec: %s.", first, monthAndDay(w.Date), short(w.Name, mostName), under(w.Chance), Odds(p.AllOnSpec))
}

func briefChanges(p trip.Plan) string {
	var planned, advised []string
	wasted := quantity.Fraction(0)
	for _, c := range p.Changes {
		wasted += c.Wasted
		if c.Advised {
			advised = append(advised, monthAndDay(c.Date))
		} else {
			planned = append(planned, monthAndDay(c.Date))
		}
	}
	var parts []string
	if len(planned) > 0 {
		parts = append(parts, "Change planned "+strings.Join(planned, ", "))
	}
	if len(advised) > 0 {
		parts = append(parts, "Change advised "+strings.Join(advised, ", "))
	}
	if len(parts) == 0 && p.Carry.Spare {
		return spareBrief
	}
	if len(parts) == 0 {
		return TripUnchanged(p)
	}
	text := strings.Join(parts, "; ")
	if len(advised) > 0 {
		text += "; on spec then: " + Odds(p.AllAdvised)
	}
	text += "; throws out " + Percent(wasted) + " of a fill"
	if len(p.Changes) > 1 {
		text += " in all"
	}
	return text + "."
}

func briefOrder(p trip.Plan, sys quantity.System) string {
	order, given := p.OrderBy.Get()
	if !given || p.Over {
		return TripOrder(p, sys)
	}
	needed := p.NeededBy.Or(order)
	why := "needed " + needed.String()
	if needed == p.First {
		why = "you leave " + needed.String()
	}
	when := "by " + order.String()
	if p.Late {
		when = "NOW (it was due by " + order.String() + ")"
	}
	return fmt.Sprintf("Order resin %s: it takes %s, %s.", when, Days(p.Lead, sys), why)
}

func briefCarry(p trip.Plan, sys quantity.System) string {
	c := p.Carry
	var parts []string
	if c.Fills > 0 {
		what := "fill"
		if c.Spare {
			what = "spare fill"
		}
		if c.Fills > 1 {
			what += "s"
		}
		parts = append(parts, fmt.Sprintf("%d %s x %s, %s", c.Fills, what, Resin(c.Resin/quantity.Volume(c.Fills), sys), quantity.Show((c.Low+c.High)/2, sys)))
	}
	if c.Regens > 0 {
		parts = append(parts, saltWords(c.Salt, sys))
	}
	if len(parts) == 0 {
		parts = append(parts, "nothing")
	}
	if p.Over {
		return "Took, as planned: " + strings.Join(parts, "; ") + ". Used up " + p.Used.String() + "."
	}
	text := "Carry: " + strings.Join(parts, "; ") + ". Uses up " + p.Used.String()
	if !p.Buy.Nothing() {
		text += "; to buy " + p.Buy.String()
	}
	return text + "."
}

// TripDIBrief says the DI water of a wash of a trip, its flush counted.
func TripDIBrief(w trip.WashPlan, sys quantity.System) string {
	if math.IsNaN(w.Outlet.P50) {
		return "no DI water"
	}
	if w.Flush <= 0 {
		return "DI " + quantity.Show(w.DI.P50, sys)
	}
	return "DI " + quantity.Show(w.DI.P50+w.Flush, sys) + " with flush"
}

// TripDI says the DI water of a wash of a trip, and what the outlet shows at its end.
func TripDI(w trip.WashPlan, sys quantity.System) string {
	if math.IsNaN(w.Outlet.P50) {
		return "no DI water"
	}
	return TripDIBrief(w, sys) + ", " + PPM(w.Outlet.P50) + " at its end"
}

// saltWords say how much salt it takes, where that is known.
func saltWords(salt quantity.Mass, sys quantity.System) string {
	if math.IsNaN(float64(salt)) {
		return "salt (how much is " + planner.NeedsVolume + ")"
	}
	return quantity.Show(salt, sys) + " of salt"
}

// TripUnchanged says that there is no change of resin, where [TripChanges] has none.
func TripUnchanged(p trip.Plan) string {
	if p.Over {
		return "No change of resin was planned."
	}
	return "No change of resin is planned, and none is advised."
}
