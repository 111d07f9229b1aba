package report

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"washeve/planner"
	"washeve/planner/trip"
)

// OneFill says of a fill which of its washes it does, and in which order they are best
// done: whole sentences, the answer first.
func OneFill(p trip.Plan, o trip.Order) []string {
	lines := []string{fillDoes(p, o)}
	if text := bestOrder(p, o); text != "" {
		lines = append(lines, text)
	}
	if o.ByRule {
		lines = append(lines, fmt.Sprintf("Of more than four washes not every order is tried: the neediest of a worn bed first, the lightest first, and both the other way round, %d in all.", o.Tried))
	}
	if o.Advised() {
		lines = append(lines, "That is advice: days stay as they are stated. Take it where those washes can change places.")
	}
	return lines
}

// fillOf names a fill of a trip: by the last change that is planned before its washes.
func fillOf(p trip.Plan, o trip.Order) string {
	name := "The fill in the tank"
	for _, c := range p.Changes {
		if o.Fill > 0 && !c.Advised && c.Before <= o.Stated[0].Wash {
			name = "The fill of " + c.Date.String()
		}
	}
	return name
}

// fillDoes says whether the fill does all of its washes as they stand; else how many, and
// which is the first that it does not.
func fillDoes(p trip.Plan, o trip.Order) string {
	n, all := len(o.Stated), trip.All(o.Stated)
	sure, likely := trip.Until(o.Stated, 0.9), trip.Until(o.Stated, 0.5)
	head := fillOf(p, o)
	switch o.Verdict() {
	case planner.Lasts:
		return fmt.Sprintf("%s does all %d washes: %s (%s).", head, n, Chance(all), Odds(all))
	case planner.Tight:
		return fmt.Sprintf("%s may do all %d washes: %s (%s). As they stand %s; %s is the first at risk.", head, n, Chance(all), Odds(all), sureOf(sure), turnName(p, o, o.Stated[sure].Wash))
	}
	will := "does not do"
	if all >= some {
		will = "will likely not do"
	}
	return fmt.Sprintf("%s %s all %d washes: %s (%s). As they stand it most likely does %s; %s is the first that it most likely does not.",
		head, will, n, Chance(all), Odds(all), countOf(likely), turnName(p, o, o.Stated[likely].Wash))
}

func sureOf(n int) string {
	switch n {
	case 0:
		return "none is safe"
	case 1:
		return "the first is safe"
	}
	return fmt.Sprintf("the first %d are safe", n)
}

func countOf(n int) string {
	if n == 0 {
		return "none"
	}
	return fmt.Sprintf("the first %d", n)
}

// bestOrder says in which order the washes are best done, and how much that matters; ""
// where none of them could change places.
func bestOrder(p trip.Plan, o trip.Order) string {
	switch {
	case o.Tried == 0:
		return ""
	case o.Any():
		return "Any order will do: " + matters(o) + lastCarries(o)
	case o.Advised() && o.Whole:
		return fmt.Sprintf("Best order: %s. All of them then: %s, and %s as they stand; %s.", inOrder(p, o), Odds(trip.All(o.Best)), Odds(trip.All(o.Stated)), worstOf(o))
	case o.Advised():
		return fmt.Sprintf("Most are done in the order %s: %.1f of %d on average before the first that is over its limit, and %.1f as they stand.", inOrder(p, o), trip.Done(o.Best), len(o.Best), trip.Done(o.Stated))
	case o.Whole:
		return fmt.Sprintf("Keep their order: no other is notably better; %s.", worstOf(o))
	}
	return fmt.Sprintf("Keep their order: no other does notably more; the one that does fewest does %.1f on average, and this one %.1f.", o.Least, trip.Done(o.Stated))
}

// matters says how little the order does.
func matters(o trip.Order) string {
	if o.Whole {
		return fmt.Sprintf("from the worst to the best it is %s.", points(o.Points()))
	}
	return fmt.Sprintf("from the worst to the best it is %.1f of a wash on average.", o.Points())
}

// points are whole ones, so that none is rounded up to what would matter.
func points(difference float64) string {
	switch n := math.Floor(100*difference + 1e-9); n {
	case 0:
		return "under one point"
	case 1:
		return "1 point"
	default:
		return fmt.Sprintf("%.0f points", n)
	}
}

// lastCarries says what an order decides all the same.
func lastCarries(o trip.Order) string {
	if Odds(trip.All(o.Stated)) == Odds(1) {
		return ""
	}
	return " The last carries the risk: let that be the one on which spots show least."
}

func worstOf(o trip.Order) string {
	if o.ByRule {
		return "the worst of those that were tried has " + Odds(o.Worst)
	}
	return fmt.Sprintf("the worst of all %d orders has %s", o.Tried, Odds(o.Worst))
}

// inOrder names the washes that could change places, in the best order.
func inOrder(p trip.Plan, o trip.Order) string {
	var names []string
	for _, at := range o.Best {
		if slices.Contains(o.Free, at.Wash) {
			names = append(names, turnName(p, o, at.Wash))
		}
	}
	return strings.Join(names, ", then ")
}

// turnName is the name of a wash, with its day where another has the same name.
func turnName(p trip.Plan, o trip.Order, wash int) string {
	w := p.Washes[wash]
	for _, at := range o.Stated {
		if other := p.Washes[at.Wash]; at.Wash != wash && other.Name == w.Name {
			return w.Name + " of " + w.Date.String()
		}
	}
	return w.Name
}

// OneFills are the sentences of all fills of a trip that serve several washes.
func OneFills(p trip.Plan) []string {
	var lines []string
	for _, o := range p.Orders {
		lines = append(lines, OneFill(p, o)...)
	}
	return lines
}

// oneFill writes what each fill does of its washes.
func (w *page) oneFill(p trip.Plan) {
	lines := OneFills(p)
	if len(lines) == 0 {
		return
	}
	w.heading("One fill, several washes")
	for _, line := range lines {
		w.wrapped("  ", "  ", line)
	}
}

// OneFillBrief is what is to be said unasked, in one line: the answer of the first fill
// whose order is worth a change, or that serves several washes on one day; "" where there
// is none.
func OneFillBrief(p trip.Plan) string {
	for _, o := range p.Orders {
		switch {
		case o.Advised():
			return bestOrder(p, o)
		case o.Tried > 0 && sameDay(p, o):
			return fillDoes(p, o) + " " + bestOrder(p, o)
		}
	}
	return ""
}

func sameDay(p trip.Plan, o trip.Order) bool {
	for i, wash := range o.Free[1:] {
		if p.Washes[wash].Date == p.Washes[o.Free[i]].Date {
			return true
		}
	}
	return false
}

// OrderWhy says how the answer of [OneFill] is worked out.
const OrderWhy = "One fill, several washes: together they take the same of the bed in any order, so the order decides which of them carries the risk, the last. The chance of all is the share of the thousand ways in which the bed may be that keep every wash within its limit. Of up to four washes every order is tried on them; of more the neediest first (the tightest limit for its flow and water; Jackson's rule, 1955, MEMORY), the lightest first (Smith's rule, 1956, MEMORY), and both the other way round. Best is the most chance of all; where no order does all more likely than not, the most washes on average before the first that is over. Under 5 points, or a quarter of a wash, any order will do (PRACTICE). On a trip only those at one stop change places."
