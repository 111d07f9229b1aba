// Package stock is all that a person has stated, as one thing to be changed:
// items are found, named, added, copied and taken out, and whatever names one
// follows when its name changes. It reads and writes no file.
package stock

import (
	"slices"

	"washeve/model"
)

// Stock is the rig, the places and the washes. It holds them by reference: a
// change goes to the nouns themselves, so [Stock.Clone] first what may be undone.
type Stock struct {
	Rig    *model.Rig
	Places *model.Places
	Wash   *model.Wash // the one in hand
	Others *[]*Kept    // the others that are kept, none of them changed in place
}

// Kept is a wash in a file. It is not changed: a wash that changes is another
// Kept, so that two stocks tell by their pointers what differs.
type Kept struct {
	File string // in the folder of the washes, such as friday.toml
	Wash model.Wash
}

// Ref points at one field. It stays valid from clone to clone.
type Ref struct {
	Section string // "wash" for the one in hand, "defaults", or a section of [Sections]
	Index   int
	Key     string
}

// Sections lists the sections whose items have names, in the order of the water's
// way, the vehicle first.
func Sections() []string {
	return []string{vehicle, bed, softener, sprayer, hose, pen, place}
}

const (
	vehicle  = "vehicle"
	bed      = "bed"
	softener = "softener"
	sprayer  = "sprayer"
	hose     = "hose"
	pen      = "pen"
	place    = "place"

	nameKey = "name"
)

// Clone shares nothing with the original that either could change.
func (s Stock) Clone() Stock {
	r := *s.Rig
	r.Vehicles = slices.Clone(r.Vehicles)
	for i := range r.Vehicles {
		r.Vehicles[i].Faces = cloneFaces(r.Vehicles[i].Faces)
	}
	r.Beds, r.Softeners, r.Sprayers = slices.Clone(r.Beds), slices.Clone(r.Softeners), slices.Clone(r.Sprayers)
	r.Hoses, r.Pens = slices.Clone(r.Hoses), slices.Clone(r.Pens)
	places, wash, others := slices.Clone(*s.Places), cloneWash(*s.Wash), slices.Clone(*s.Others)
	return Stock{Rig: &r, Places: &places, Wash: &wash, Others: &others}
}

func cloneFaces(faces []model.Face) []model.Face {
	faces = slices.Clone(faces)
	for i := range faces {
		faces[i].Shares = slices.Clone(faces[i].Shares)
	}
	return faces
}

func cloneWash(w model.Wash) model.Wash {
	w.DIFaces, w.TowelFaces, w.DISurfaces = slices.Clone(w.DIFaces), slices.Clone(w.TowelFaces), slices.Clone(w.DISurfaces)
	w.Stages, w.Shades = slices.Clone(w.Stages), slices.Clone(w.Shades)
	for i := range w.Stages {
		w.Stages[i].Faces = slices.Clone(w.Stages[i].Faces)
	}
	return w
}

// Item finds the noun at a place; nil where there is none.
func (s Stock) Item(section string, index int) model.Item {
	switch section {
	case "wash":
		return s.Wash
	case "defaults":
		return &s.Rig.Defaults
	case vehicle:
		return at(s.Rig.Vehicles, index, func(v *model.Vehicle) model.Item { return v })
	case bed:
		return at(s.Rig.Beds, index, func(b *model.Bed) model.Item { return b })
	case softener:
		return at(s.Rig.Softeners, index, func(s *model.Softener) model.Item { return s })
	case sprayer:
		return at(s.Rig.Sprayers, index, func(s *model.Sprayer) model.Item { return s })
	case hose:
		return at(s.Rig.Hoses, index, func(h *model.Hose) model.Item { return h })
	case pen:
		return at(s.Rig.Pens, index, func(p *model.Pen) model.Item { return p })
	case place:
		return at(*s.Places, index, func(p *model.Place) model.Item { return p })
	case Face:
		if v, j := s.faceAt(index); v != nil {
			return &v.Faces[j]
		}
	}
	return nil
}

func at[T any](all []T, index int, as func(*T) model.Item) model.Item {
	if index < 0 || index >= len(all) {
		return nil
	}
	return as(&all[index])
}

// Field finds the field that a ref points at.
func (s Stock) Field(r Ref) (model.Field, bool) {
	item := s.Item(r.Section, r.Index)
	if item == nil {
		return model.Field{}, false
	}
	for _, f := range item.Fields() {
		if f.Key == r.Key {
			return f, true
		}
	}
	return model.Field{}, false
}

// Names lists what a section of [Sections] holds.
func (s Stock) Names(section string) []string {
	switch section {
	case vehicle:
		return namesOf(s.Rig.Vehicles, func(v *model.Vehicle) string { return v.Name })
	case bed:
		return namesOf(s.Rig.Beds, func(b *model.Bed) string { return b.Name })
	case softener:
		return namesOf(s.Rig.Softeners, func(s *model.Softener) string { return s.Name })
	case sprayer:
		return namesOf(s.Rig.Sprayers, func(s *model.Sprayer) string { return s.Name })
	case hose:
		return namesOf(s.Rig.Hoses, func(h *model.Hose) string { return h.Name })
	case pen:
		return namesOf(s.Rig.Pens, func(p *model.Pen) string { return p.Name })
	case place:
		return s.Places.Names()
	}
	return nil
}

func namesOf[T any](all []T, name func(*T) string) []string {
	names := make([]string, len(all))
	for i := range all {
		names[i] = name(&all[i])
	}
	return names
}

// Chosen is which item of a section the wash in hand uses, -1 for none: the one
// that it names, else the one of the defaults, else the first.
func (s Stock) Chosen(section string) int {
	names := s.Names(section)
	for _, stated := range []string{namedBy(s.Wash, section), *nothingIfNil(defaultOf(&s.Rig.Defaults, section))} {
		if stated != "" {
			return model.Find(names, stated)
		}
	}
	if len(names) == 0 {
		return -1
	}
	return 0
}

// Faults tells the fields that contradict others or lack what is needed.
func (s Stock) Faults() map[Ref]string {
	faults := append(s.Rig.Faults(s.Places.Names()), s.Places.Faults()...)
	out := make(map[Ref]string, len(faults))
	for _, f := range faults {
		out[Ref{f.Section, f.Index, f.Key}] = f.Problem
	}
	return out
}
