package stock

import (
	"fmt"
	"strings"

	"washeve/model"
)

// A Namer is something that names an item.
type Namer struct {
	Defaults bool   // the defaults
	File     string // the wash in this file; "" for the wash in hand
}

// Namers lists what names an item of a section: the defaults, the wash in hand,
// then the other washes.
func (s Stock) Namers(section, name string) []Namer {
	var found []Namer
	if name == "" {
		return nil
	}
	if d := defaultOf(&s.Rig.Defaults, section); d != nil && strings.EqualFold(*d, name) {
		found = append(found, Namer{Defaults: true})
	}
	if names(s.Wash, section, name) {
		found = append(found, Namer{})
	}
	for _, k := range *s.Others {
		if names(&k.Wash, section, name) {
			found = append(found, Namer{File: k.File})
		}
	}
	return found
}

// follow lets everything that names an item by one name do it by another; by
// none where now is "". The other washes that do are replaced, not changed.
func (s Stock) follow(section, was, now string) {
	if was == "" {
		return
	}
	if d := defaultOf(&s.Rig.Defaults, section); d != nil && strings.EqualFold(*d, was) {
		*d = now
	}
	rename(s.Wash, section, was, now)
	for i, k := range *s.Others {
		if names(&k.Wash, section, was) {
			next := &Kept{File: k.File, Wash: cloneWash(k.Wash)}
			rename(&next.Wash, section, was, now)
			(*s.Others)[i] = next
		}
	}
}

func names(w *model.Wash, section, name string) bool {
	if strings.EqualFold(namedBy(w, section), name) {
		return true
	}
	for i := range w.Stages {
		if section == sprayer && strings.EqualFold(w.Stages[i].Sprayer, name) {
			return true
		}
	}
	return false
}

func rename(w *model.Wash, section, was, now string) {
	if at := holderIn(w, section); at != nil && strings.EqualFold(*at, was) {
		*at = now
	}
	for i := range w.Stages {
		if at := &w.Stages[i].Sprayer; section == sprayer && strings.EqualFold(*at, was) {
			*at = now
		}
	}
}

func namedBy(w *model.Wash, section string) string { return *nothingIfNil(holderIn(w, section)) }

// holderIn is where a wash names an item of a section; nil where it names none.
func holderIn(w *model.Wash, section string) *string {
	switch section {
	case vehicle:
		return &w.Vehicle
	case bed:
		return &w.Bed
	case softener:
		return &w.Softener
	case sprayer:
		return &w.Sprayer
	case place:
		return &w.Place
	}
	return nil
}

// defaultOf is where the defaults name an item of a section.
func defaultOf(d *model.Defaults, section string) *string {
	switch section {
	case vehicle:
		return &d.Vehicle
	case bed:
		return &d.Bed
	case softener:
		return &d.Softener
	case sprayer:
		return &d.Sprayer
	case pen:
		return &d.Pen
	case place:
		return &d.Place
	}
	return nil
}

func nothingIfNil(at *string) *string {
	if at == nil {
		return new(string)
	}
	return at
}

// taken tells why a name cannot be given to an item; nil where it can.
func (s Stock) taken(section string, index int, name string) error {
	for i, other := range s.Names(section) {
		if i != index && strings.EqualFold(other, name) {
			return fmt.Errorf("%q is the name of another %s already; give each its own", name, section)
		}
	}
	if section == softener && strings.EqualFold(name, model.NoSoftener) || section == sprayer && strings.EqualFold(name, model.ByHand) {
		return fmt.Errorf("%q stands for no %s at all; give this one another name", name, section)
	}
	return nil
}

// Telling is the key of the field that tells one item of a section from others of its
// kind, "" where a section has none.
func Telling(section string) string {
	switch section {
	case vehicle, hose:
		return "length"
	case bed, softener:
		return "resin"
	case sprayer:
		return "flow"
	case pen:
		return "scale"
	case place:
		return "tds"
	}
	return ""
}
