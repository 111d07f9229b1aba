package report

import (
	"strings"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/trip"
)

// BesideText is what one fill does of the washes that are planned by themselves and wait
// for it, as a page to read: the answer, the washes as they stand and, where another order
// is worth it, in that; and how it is worked out. p is the plan of [trip.Beside].
func BesideText(p trip.Plan, sys quantity.System, plain bool, width int) string {
	return (&page{width: max(width, 40), plain: plain}).beside(p, sys)
}

// BesideTold is the same as it is read out; see [Told].
func BesideTold(p trip.Plan, sys quantity.System, width int) string {
	return (&page{width: max(width, 40), plain: true, told: true}).beside(p, sys)
}

func (w *page) beside(p trip.Plan, sys quantity.System) string {
	w.line("Washes that wait for " + p.Bed)
	w.WriteByte('\n')
	for _, line := range OneFills(p) {
		w.wrapped("", "", line)
	}
	for _, o := range p.Orders {
		w.table("As they stand", besideTable(p, o.Stated, sys, w.plain))
		if o.Advised() {
			w.table("In the best order", besideTable(p, o.Best, sys, w.plain))
		}
	}
	if hours := besideHours(p); hours != "" {
		w.prose("The hours", hours)
	}
	w.prose("The columns", "DI: with the flush, which each wash counts for itself. all so far: the chance that this wash and those before it end within their limits.")
	w.prose("How", OrderWhy)
	return w.String()
}

func besideTable(p trip.Plan, turns []trip.Turn, sys quantity.System, whole bool) Table {
	t := Table{Head: []string{"date", "wash", "at", "DI", "all so far"}, Numeric: []bool{false, false, false, true, true}}
	for _, at := range turns {
		w := p.Washes[at.Wash]
		t.Rows = append(t.Rows, []string{
			w.Date.String(), named(w.Name, mostName, whole), named(p.Stops[w.Stop].Name, mostStop, whole), quantity.Show(w.DI.P50+w.Flush, sys), Odds(at.SoFar),
		})
	}
	return t
}

// besideHours are from when to when each of the washes is at work, and which of them at one
// time; "" where no start is known.
func besideHours(p trip.Plan) string {
	var each, both []string
	for i := range p.Washes {
		w := &p.Washes[i]
		if w.Hours == (planner.Hours{}) {
			continue
		}
		each = append(each, w.Name+", "+w.Date.String()+", "+w.Hours.String())
		for j := range i {
			if o := &p.Washes[j]; o.Date == w.Date && o.Hours.Overlap(w.Hours) {
				both = append(both, o.Name+" and "+w.Name)
			}
		}
	}
	if len(each) == 0 {
		return ""
	}
	words := strings.Join(each, "; ") + "."
	if len(both) > 0 {
		words += " At the same hours: " + strings.Join(both, "; ") + ". Another start, or another day, keeps them apart."
	}
	return words
}
