package stock

import (
	"maps"
	"slices"
	"strings"

	"washeve/model"
)

// Rename is a new name of an item, for who follows it later: the trips, which are no
// part of a [Stock].
type Rename struct{ Section, Was, Now string }

// Named is what everything is called, by section; the wash in hand is one of "wash".
type Named map[string][]string

// Named lists the names.
func (s Stock) Named() Named {
	n := Named{washes: {s.Wash.Name}}
	for _, section := range Sections() {
		n[section] = slices.Clone(s.Names(section))
	}
	return n
}

// InHand is the names with another wash in hand.
func (n Named) InHand(name string) Named {
	n = maps.Clone(n)
	n[washes] = []string{name}
	return n
}

const washes = "wash"

// To lists what has another name later. Where items came or went, or may have moved,
// nothing is said of their section.
func (n Named) To(later Named) []Rename {
	var all []Rename
	for _, section := range append(Sections(), washes) {
		all = append(all, renamed(section, n[section], later[section])...)
	}
	return all
}

func renamed(section string, before, after []string) []Rename {
	if len(before) != len(after) {
		return nil
	}
	var all []Rename
	for i, was := range before {
		now := after[i]
		switch {
		case was == now || was == "" || now == "":
		case !strings.EqualFold(was, now) && model.Find(before, now) >= 0:
			return nil // what had that name before stood elsewhere
		default:
			all = append(all, Rename{section, was, now})
		}
	}
	return all
}

// Follow is a trip that names things by their new names, and whether that is another
// trip. What it is given is not changed.
func Follow(t model.Trip, renames []Rename) (model.Trip, bool) {
	was := t
	t = was.Clone()
	changed := follows(&t, renames)
	for i := range t.Stops {
		changed = follows(&t.Stops[i], renames) || changed
	}
	for i := range t.Washes {
		w := &t.Washes[i]
		stop, named := was.StopOf(w)
		place := w.Place
		changed = follows(w, renames) || changed
		if now, still := t.StopOf(w); named && !(still && now == stop) {
			w.Place = place // it is the stop's own name, and no place's
		}
		for j := range w.Stages {
			changed = follows(&w.Stages[j], renames) || changed
		}
	}
	return t, changed
}

func follows(item model.Item, renames []Rename) bool {
	changed := false
	for _, f := range item.Fields() {
		at := slices.IndexFunc(renames, func(r Rename) bool { return f.Refers == r.Section && strings.EqualFold(f.Text(), r.Was) })
		if at >= 0 && f.Set(renames[at].Now) == nil {
			changed = true
		}
	}
	return changed
}
