package report

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/trip"
	"washeve/ui/cells"
)

// TripHeading names the trip, its days and its bed.
func TripHeading(p trip.Plan) string {
	words := p.Name
	if words == "" {
		words = "Trip"
	}
	if p.First != (model.Date{}) {
		words += ", " + p.First.String() + " to " + p.Last.String()
	}
	return words + ": " + p.Bed
}

// TripVerdict says whether the resin lasts the trip as it is planned. What is said of a
// trip that is over is what was planned, and asks for nothing.
func TripVerdict(p trip.Plan) string {
	if len(p.Washes) == 0 {
		return "No wash has a day and a stop yet."
	}
	switch {
	case p.FirstAtRisk < 0 && p.Over:
		return "As planned, the resin lasted this trip: " + Chance(p.AllOnSpec) + " (" + Odds(p.AllOnSpec) + ") that every wash ended on spec."
	case p.FirstAtRisk < 0:
		words := "The resin lasts this trip: " + Chance(p.AllOnSpec) + " (" + Odds(p.AllOnSpec) + ") that every wash ends on spec."
		if before := TripBefore(p); before != "" {
			words += " Not counted: " + before + " planned before it."
		}
		return words
	}
	w := p.Washes[p.FirstAtRisk]
	first := "First at risk"
	if p.Over {
		first = "First at risk, as planned"
	}
	return fmt.Sprintf("%s: %s, %s, with a chance of %s of ending on spec. All of them: %s.", first, w.Date, w.Name, under(w.Chance), Odds(p.AllOnSpec))
}

// under is a chance that is under nine in ten, and not rounded up to it.
func under(f quantity.Fraction) string {
	if text := Odds(f); text != "90 %" {
		return text
	}
	return "just under 90 %"
}

// What there is to do where a wash is at risk and no day is worth a change: a fill that
// is changed for certain throws out more than the risk is worth.
const (
	spareWhole = "No day is worth a change of resin beforehand: it would throw out more than the risk is worth. Have a fill along as a spare, and change when the pen shows the limit."
	spareBrief = "No change on a set day: carry a spare fill, and change when the pen says so."
)

// TripChanges says where to change the resin, a line for each change; none where there
// is nothing to change.
func TripChanges(p trip.Plan) []string {
	var lines []string
	advised := false
	for _, c := range p.Changes {
		what, before := "Planned: change of resin", "after the last wash"
		if c.Advised {
			what, advised = "Change the resin", true
		}
		if c.Before < len(p.Washes) {
			before = "before " + p.Washes[c.Before].Name
		}
		lines = append(lines, fmt.Sprintf("%s on %s, %s; it throws out %s of a fill.", what, c.Date, before, Percent(c.Wasted)))
	}
	if len(p.Changes) == 0 && p.Carry.Spare {
		return []string{spareWhole}
	}
	if advised {
		lines = append(lines, "With that, every wash ends on spec with a chance of "+Odds(p.AllAdvised)+".")
	}
	return lines
}

// TripOrder says when to order, and why then.
func TripOrder(p trip.Plan, sys quantity.System) string {
	order, given := p.OrderBy.Get()
	switch {
	case p.Over:
		return "This trip is over: nothing is to be ordered for it."
	case !given:
		return "No resin needs to be ordered for this trip."
	}
	needed := p.NeededBy.Or(order)
	why := "it is needed on " + needed.String()
	if needed == p.First {
		why = "you leave on " + needed.String()
	}
	when := "by " + order.String()
	if p.Late {
		when = "now: the day for it was " + order.String()
	}
	return fmt.Sprintf("Order resin %s. It takes %s to come, and %s.", when, Days(p.Lead, sys), why)
}

// Days writes a stretch of whole days as such.
func Days(d quantity.Duration, sys quantity.System) string {
	days := float64(d / quantity.Day)
	if days == float64(int(days)) {
		return strconv.Itoa(int(days)) + " d"
	}
	return quantity.Show(d, sys)
}

// TripCarry says what to take along, or what was to be taken.
func TripCarry(p trip.Plan, sys quantity.System) string {
	c := p.Carry
	var parts []string
	if c.Fills > 0 {
		fills := strconv.Itoa(c.Fills) + " fill"
		if c.Fills > 1 {
			fills += "s"
		}
		text := fmt.Sprintf("%s of resin (%s, %s)", fills, Resin(c.Resin, sys), quantity.Show((c.Low+c.High)/2, sys))
		if c.Spare {
			text += " as a spare"
		}
		parts = append(parts, text)
	}
	if c.Regens > 0 {
		times := "one regeneration"
		if c.Regens > 1 {
			times = strconv.Itoa(c.Regens) + " regenerations"
		}
		parts = append(parts, fmt.Sprintf("%s for %s of the softener", saltWords(c.Salt, sys), times))
	}
	switch {
	case p.Over && len(parts) == 0:
		return "As planned, it took neither a fill of resin nor salt along."
	case p.Over:
		return "As planned, it took " + strings.Join(parts, ", and ") + "."
	case len(parts) == 0:
		return "Carry neither resin nor salt."
	}
	return "Carry " + strings.Join(parts, ", and ") + "."
}

// TripCost says what the trip costs.
func TripCost(p trip.Plan) string {
	text := "Resin that the washes use up: " + p.Used.String() + "."
	if p.Over {
		text = "Resin that the washes used up, as planned: " + p.Used.String() + "."
	}
	if !p.Buy.Nothing() && !p.Over {
		text += " To buy: " + p.Buy.String() + "."
	}
	if !p.Used.Known() || !p.Buy.Known() {
		text += " State the price of a fill, and it is known."
	}
	return text
}

// The widest that names are in a table.
const (
	mostName = 14
	mostStop = 13
)

// monthAndDay is a day without its year, as a trip has few.
func monthAndDay(d model.Date) string { return fmt.Sprintf("%02d-%02d", d.Month, d.Day) }

// TripChances lists the washes with their chances, names cut to fit a table or whole.
func TripChances(p trip.Plan, whole bool) Table {
	t := Table{
		Head:    []string{"date", "wash", "at", "chance", "then", "left", "end ppm"},
		Numeric: []bool{false, false, false, true, true, true, true},
	}
	for _, w := range p.Washes {
		row := []string{monthAndDay(w.Date), named(w.Name, mostName, whole), named(p.Stops[w.Stop].Name, mostStop, whole)}
		if w.Barred {
			t.Rows = append(t.Rows, append(row, "forbidden", "", "", ""))
			continue
		}
		end := "-" // no DI water
		if !math.IsNaN(w.Outlet.P50) {
			end = strings.TrimSuffix(PPM(w.Outlet.P50), " ppm")
		}
		t.Rows = append(t.Rows, append(row, Odds(w.Chance), Then(w), Percent(w.Life.P50), end))
	}
	return t
}

// named is a name as wide as a table has room for, or whole.
func named(name string, width int, whole bool) string {
	if whole {
		return cells.Safe(name)
	}
	return short(name, width)
}

func short(name string, width int) string { return cells.Clip(cells.Safe(name), width, "..") }

// TripWater lists what the washes take, and what it costs; names as in [TripChances].
func TripWater(p trip.Plan, sys quantity.System, whole bool) Table {
	t := Table{
		Head:    []string{"date", "wash", "DI", "softened", "raw", "softener left", "resin"},
		Numeric: []bool{false, false, true, true, true, true, true},
	}
	for _, w := range p.Washes {
		if w.Barred {
			continue
		}
		left := ""
		if w.Softener != nil {
			left = quantity.Show(w.Softener.Left, sys)
		}
		t.Rows = append(t.Rows, []string{
			monthAndDay(w.Date), named(w.Name, mostName, whole), quantity.Show(w.DI.P50, sys), quantity.Show(w.Soft.P50, sys),
			quantity.Show(w.Untreated.P50, sys), left, w.Cost.String(),
		})
	}
	return t
}

// Then is the chance with the advised changes, where it is another.
func Then(w trip.WashPlan) string {
	if Odds(w.Advised) == Odds(w.Chance) {
		return ""
	}
	return Odds(w.Advised)
}

// TripSoftener says when to regenerate; "" where there is no softener.
func TripSoftener(p trip.Plan, sys quantity.System) string {
	var days []string
	last := quantity.Capacity(0)
	any := false
	for _, w := range p.Washes {
		if w.Softener == nil {
			continue
		}
		any, last = true, w.Softener.Left
		if w.Softener.Regenerate {
			days = append(days, w.Date.String())
		}
	}
	switch {
	case !any:
		return ""
	case len(days) == 0:
		return "The softener lasts the trip, with " + quantity.Show(last, sys) + " left."
	}
	return "Regenerate the softener before " + strings.Join(days, ", ") + "; " + quantity.Show(last, sys) + " are left in the end."
}

// TripText is the trip as it is printed: what to do first, then wash by wash.
func TripText(p trip.Plan, sys quantity.System, plain bool, width int) string {
	return (&page{width: max(width, 40), plain: plain}).trip(p, sys)
}

// TripTold is the trip as it is read out; see [Told].
func TripTold(p trip.Plan, sys quantity.System, width int) string {
	return (&page{width: max(width, 40), plain: true, told: true}).trip(p, sys)
}

func (w *page) trip(p trip.Plan, sys quantity.System) string {
	w.line(TripHeading(p))
	if p.Over {
		w.line("This trip is over: its last day was " + p.Last.String() + ".")
	}
	w.WriteByte('\n')
	w.wrapped("", "", TripVerdict(p))
	for _, line := range TripChanges(p) {
		w.wrapped("", "", line)
	}
	w.wrapped("", "", TripOrder(p, sys))
	w.wrapped("", "", TripCarry(p, sys))
	if text := TripSoftener(p, sys); text != "" {
		w.wrapped("", "", text)
	}
	w.wrapped("", "", TripCost(p))
	w.oneFill(p)
	w.table("Chances", TripChances(p, w.plain))
	w.table("Water and resin", TripWater(p, sys, w.plain))
	w.notes("To heed", p.Notes, sys)
	if len(p.Washes) > 0 {
		w.prose("The columns", "chance: that the wash ends on spec, with the changes that are planned. then: with those that are advised too. left: of the bed's life after it, for the hardest water of the trip, in the middle of what is believed. end ppm: at the outlet, at the end of the wash. DI: the flush not counted. resin: what the wash and its flush use up of the fill, by its price.")
	}
	return w.String()
}
