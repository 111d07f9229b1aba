package compare

import (
	"slices"

	"washeve/model/quantity"
	"washeve/planner"
)

// Table is the ways side by side: the first is the base, as planned. Row i's cell
// k is of way k.
type Table struct {
	Ways    []Way
	Rows    []Row
	Skipped []Skipped
}

// Compare works every way out against a base. It fails only where the base itself
// cannot be planned; a way that cannot is skipped, with the reason.
func Compare(base Case, by Answerer, o Options) (Table, error) {
	figures, err := by.Answer(base)
	if err != nil {
		return Table{}, err
	}
	var t Table
	for _, w := range waysOf(base, figures, o) {
		if w.same != "" {
			t.Skipped = append(t.Skipped, Skipped{w.Key, w.Name, w.same})
			continue
		}
		w.Case, w.Figures = base, figures
		if w.change != nil {
			w.Case = w.Apply(base)
			w.Case.Setting.As = &figures.Plan
			if w.Figures, err = by.Answer(w.Case); err != nil {
				t.Skipped = append(t.Skipped, Skipped{w.Key, w.Name, err.Error()})
				continue
			}
		}
		if w.idle != "" && sameWork(figures, w.Figures) {
			t.Skipped = append(t.Skipped, Skipped{w.Key, w.Name, w.idle})
			continue
		}
		if (w.knob == Drip || w.knob == Target) && w.Figures.DI == figures.DI {
			w.Tells = append(w.Tells, "It takes as much DI water as the plan: going over every face once takes more than replacing the film does.")
		}
		t.Ways = append(t.Ways, w)
	}
	t.Rows = rows()
	if base.Trip != nil {
		t.Rows = tripRows()
	}
	for i := range t.Rows {
		r := &t.Rows[i]
		for _, w := range t.Ways {
			r.Cells = append(r.Cells, r.of(w.Figures))
		}
		r.mark()
	}
	return t, nil
}

// Warns lists what to heed with a way that the base does not call for already.
func (t Table) Warns(way int, sys quantity.System) []string {
	if way <= 0 || way >= len(t.Ways) {
		return nil
	}
	told := func(of []planner.Note, code string) bool {
		return slices.ContainsFunc(of, func(n planner.Note) bool { return n.Code == code })
	}
	var words []string
	var heeded []planner.Note
	heed := func(before string, base, here []planner.Note) {
		for _, n := range here {
			if !told(base, n.Code) && !told(heeded, n.Code) {
				words, heeded = append(words, before+n.Text(sys)), append(heeded, n)
			}
		}
	}
	base, here := t.Ways[0].Figures, t.Ways[way].Figures
	first := ""
	if here.Trip != nil {
		heed("", base.Trip.Notes, here.Trip.Notes)
		first = "The first wash: "
	}
	heed(first, base.Plan.Warnings, here.Plan.Warnings)
	return words
}
