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
	return sentence("Undone", difference(now, back, goingBack{" again", ", as before"}))
}

// RedoneWords say what was done again; now and next are what that went between.
func RedoneWords(now, next []Part) string {
	return sentence("Done again", difference(now, next, goingBack{}))
}

func sentence(head, what string) string {
	if what == "" {
		return head + "."
	}
	return head + ": " + what + "."
}

// goingBack is what is said of what is as it was: of a value, and of none.
type goingBack struct{ value, none string }

// oneLine is how much is told of two changes without counting them.
const oneLine = 70

// difference is what differs: an item that came or went, else the first line that changed, and
// of others as much as there is room for.
func difference(from, to []Part, b goingBack) string {
	was, is := byKind(from), byKind(to)
	for _, p := range append(from[:len(from):len(from)], to...) {
		if one := cameOrWent(was[p.Kind], is[p.Kind]); one != "" {
			return one
		}
	}
	var changed []change
	for _, l := range lines(from) {
		if c, differs := l.in(is); differs {
			changed = append(changed, c)
		}
	}
	if len(changed) == 0 {
		return ""
	}
	return changed[0].words(b) + others(changed, b)
}

// others tells of what changed beside the first of it.
func others(changed []change, b goingBack) string {
	first, rest := changed[0], changed[1:]
	if len(rest) == 0 {
		return ""
	}
	ofIt, naming := true, true
	for _, c := range rest {
		ofIt = ofIt && c.part == first.part
		naming = naming && c.to.Refers != ""
	}
	if first.renames() && naming {
		return ", also in the " + counted(len(rest), "line that names", "lines that name") + " it"
	}
	if both := "; " + rest[0].words(b); len(rest) == 1 && len(first.words(b)+both) <= oneLine {
		return both
	}
	if ofIt {
		return "; " + counted(len(rest), "more line of it", "more lines of it") + " changed"
	}
	return "; " + counted(len(rest), "other line", "other lines") + " changed"
}

func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// change is a line that is something else now.
type change struct {
	part Part
	to   model.Field
}

func (c change) renames() bool { return c.to.Key == "name" && c.to.Given() }

// words say what the line is, by the label that the screens have for it.
func (c change) words(b goingBack) string {
	switch {
	case c.renames():
		return c.part.Name + " is called " + c.to.Text() + b.value
	case !c.to.Given():
		return fmt.Sprintf("%q of %s is not stated", c.to.Label, c.part.Name) + b.none
	}
	return fmt.Sprintf("%q of %s is %s", c.to.Label, c.part.Name, c.to.Brief()) + b.value
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

// in is what a line is in other parts, and whether it differs there.
func (l line) in(kinds map[string][]Part) (c change, differs bool) {
	if l.index >= len(kinds[l.part.Kind]) {
		return change{}, false
	}
	for _, f := range kinds[l.part.Kind][l.index].Item.Fields() {
		if f.Key == l.field.Key && f.Exact() != l.field.Exact() {
			return change{l.part, f}, true
		}
	}
	return change{}, false
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
			parts = append(parts, Part{fmt.Sprintf("face of vehicle %d", i), "the " + string(v.Faces[j].Side) + " of " + v.Name, &v.Faces[j]})
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
