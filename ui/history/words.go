package history

import (
	"fmt"

	"washeve/model"
	"washeve/model/stock"
)

// Part is a noun of what is edited, under what it is called, such as "the wash" or
// "half-foot tank". Parts of a kind stand in the order of their list.
type Part struct {
	Kind, Name string
	Item       model.Item
}

// UndoneWords say what an undo took back; now and back are what it went between.
func UndoneWords(now, back []Part) string {
	if what := difference(now, back, " again"); what != "" {
		return "Undone: " + what + "."
	}
	return "Undone."
}

// RedoneWords say what was done again; now and next are what that went between.
func RedoneWords(now, next []Part) string {
	if what := difference(now, next, ""); what != "" {
		return "Done again: " + what + "."
	}
	return "Done again."
}

// difference is what differs first, and how many lines more do: an item that came or
// went, else a line with its value in to and what is said of such a value.
func difference(from, to []Part, ofValue string) string {
	was, is := byKind(from), byKind(to)
	for _, p := range append(from[:len(from):len(from)], to...) {
		if one := cameOrWent(was[p.Kind], is[p.Kind]); one != "" {
			return one
		}
	}
	what, more := "", -1
	for _, p := range lines(from) {
		text, differs := p.in(is)
		if !differs {
			continue
		}
		if more++; more == 0 {
			what = text + ofValue
		}
	}
	if more > 0 {
		what += fmt.Sprintf(", and %d more", more)
	}
	return what
}

func byKind(parts []Part) map[string][]Part {
	kinds := map[string][]Part{}
	for _, p := range parts {
		kinds[p.Kind] = append(kinds[p.Kind], p)
	}
	return kinds
}

// cameOrWent is the item that only one of two lists of a kind has; "" where both have as
// many.
func cameOrWent(was, is []Part) string {
	less, long, words := was, is, " is back"
	if len(was) == len(is) {
		return ""
	}
	if len(was) > len(is) {
		less, long, words = is, was, " is gone"
	}
	for i, p := range long {
		if i >= len(less) || less[i].Name != p.Name {
			return p.Name + words
		}
	}
	return ""
}

// line is a field of a part, the index-th of its kind.
type line struct {
	part  Part
	index int
	field model.Field
}

// lines are all fields, what an item is called first: what names it follows.
func lines(parts []Part) []line {
	var names, others []line
	count := map[string]int{}
	for _, p := range parts {
		for _, f := range p.Item.Fields() {
			at := line{p, count[p.Kind], f}
			if f.Key == "name" {
				names = append(names, at)
				continue
			}
			others = append(others, at)
		}
		count[p.Kind]++
	}
	return append(names, others...)
}

// in says what a line is in other parts, and whether it differs there.
func (l line) in(kinds map[string][]Part) (words string, differs bool) {
	if l.index >= len(kinds[l.part.Kind]) {
		return "", false
	}
	for _, f := range kinds[l.part.Kind][l.index].Item.Fields() {
		if f.Key != l.field.Key || f.Exact() == l.field.Exact() {
			continue
		}
		text := f.Brief()
		if !f.Given() {
			text = "not stated"
		}
		return fmt.Sprintf("the %s of %s, %s", f.Label, l.part.Name, text), true
	}
	return "", false
}

// PartsOf lists the nouns of a stock, what is owned first.
func PartsOf(s stock.Stock) []Part {
	var parts []Part
	for _, section := range stock.Sections() {
		for i, name := range s.Names(section) {
			parts = append(parts, Part{section, name, s.Item(section, i)})
		}
	}
	for i := range s.Rig.Vehicles {
		v := &s.Rig.Vehicles[i]
		for j := range v.Faces {
			parts = append(parts, Part{"face of " + v.Name, "the " + string(v.Faces[j].Side) + " of " + v.Name, &v.Faces[j]})
		}
	}
	parts = append(parts, Part{"defaults", "the defaults", &s.Rig.Defaults})
	for _, kept := range *s.Others {
		parts = append(parts, Part{"another wash", "the wash " + kept.Wash.Name, &kept.Wash})
	}
	return append(parts, PartsOfWash(s.Wash)...)
}

// PartsOfWash lists a wash and its steps.
func PartsOfWash(w *model.Wash) []Part {
	parts := []Part{{"wash", "the wash", w}}
	for i := range w.Stages {
		parts = append(parts, Part{"stage", "the step " + w.Stages[i].Name, &w.Stages[i]})
	}
	for i := range w.Shades {
		parts = append(parts, Part{"shade", "the shade on the " + string(w.Shades[i].Side), &w.Shades[i]})
	}
	return parts
}

// PartsOfTrip lists a trip, its stops, washes and changes of resin.
func PartsOfTrip(t *model.Trip) []Part {
	parts := []Part{{"trip", "the trip", t}}
	for i := range t.Stops {
		parts = append(parts, Part{"stop", fmt.Sprintf("stop %d", i+1), &t.Stops[i]})
	}
	for i := range t.Washes {
		parts = append(parts, Part{"wash", "the wash of " + t.Washes[i].Date.Or(model.Date{}).String(), &t.Washes[i]})
	}
	for i := range t.Changes {
		parts = append(parts, Part{"change", "the change of resin of " + t.Changes[i].Date.Or(model.Date{}).String(), &t.Changes[i]})
	}
	return parts
}
