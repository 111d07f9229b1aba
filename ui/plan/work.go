package plan

import (
	"fmt"
	"slices"
	"strings"

	"washeve/model"
)

// work is what the hands are on: all that a plan is made from.
type work struct {
	rig     model.Rig
	places  model.Places
	wash    model.Wash
	example bool // the built-in example, which nobody has made theirs
}

// clone shares nothing with the original, so that it can be kept for undo.
func (w work) clone() work {
	r := w.rig
	r.Vehicles = slices.Clone(r.Vehicles)
	for i := range r.Vehicles {
		r.Vehicles[i].Faces = slices.Clone(r.Vehicles[i].Faces)
		for j := range r.Vehicles[i].Faces {
			r.Vehicles[i].Faces[j].Shares = slices.Clone(r.Vehicles[i].Faces[j].Shares)
		}
	}
	r.Beds, r.Softeners, r.Sprayers = slices.Clone(r.Beds), slices.Clone(r.Softeners), slices.Clone(r.Sprayers)
	r.Hoses, r.Pens = slices.Clone(r.Hoses), slices.Clone(r.Pens)
	w.rig, w.places = r, slices.Clone(w.places)
	w.wash.DIFaces, w.wash.TowelFaces, w.wash.DISurfaces = slices.Clone(w.wash.DIFaces), slices.Clone(w.wash.TowelFaces), slices.Clone(w.wash.DISurfaces)
	w.wash.Stages, w.wash.Shades = slices.Clone(w.wash.Stages), slices.Clone(w.wash.Shades)
	for i := range w.wash.Stages {
		w.wash.Stages[i].Faces = slices.Clone(w.wash.Stages[i].Faces)
	}
	return w
}

// ref points at one field of the work: it stays valid from copy to copy.
type ref struct {
	section string // "wash", "defaults", or a section of the files
	index   int
	key     string
}

// item finds the noun that a ref is about; nil where there is none.
func (w *work) item(section string, index int) model.Item {
	switch section {
	case "wash":
		return &w.wash
	case "defaults":
		return &w.rig.Defaults
	case "vehicle":
		return at(w.rig.Vehicles, index, func(v *model.Vehicle) model.Item { return v })
	case "bed":
		return at(w.rig.Beds, index, func(b *model.Bed) model.Item { return b })
	case "softener":
		return at(w.rig.Softeners, index, func(s *model.Softener) model.Item { return s })
	case "sprayer":
		return at(w.rig.Sprayers, index, func(s *model.Sprayer) model.Item { return s })
	case "hose":
		return at(w.rig.Hoses, index, func(h *model.Hose) model.Item { return h })
	case "pen":
		return at(w.rig.Pens, index, func(p *model.Pen) model.Item { return p })
	case "place":
		return at(w.places, index, func(p *model.Place) model.Item { return p })
	case "stage":
		return at(w.wash.Stages, index, func(s *model.Stage) model.Item { return s })
	case "shade":
		return at(w.wash.Shades, index, func(s *model.Shade) model.Item { return s })
	}
	return nil
}

func at[T any](all []T, index int, as func(*T) model.Item) model.Item {
	if index < 0 || index >= len(all) {
		return nil
	}
	return as(&all[index])
}

// field finds the field that a ref points at.
func (w *work) field(r ref) (model.Field, bool) {
	item := w.item(r.section, r.index)
	if item == nil {
		return model.Field{}, false
	}
	for _, f := range item.Fields() {
		if f.Key == r.key {
			return f, true
		}
	}
	return model.Field{}, false
}

// set states a field. A required one cannot be left out, and what refers to a
// name follows when the name changes.
func (w *work) set(r ref, text string) error {
	f, ok := w.field(r)
	if !ok {
		return fmt.Errorf("there is no %s %d any more", r.section, r.index+1)
	}
	was := f.Text()
	if err := f.Set(text); err != nil {
		return err
	}
	if f.Required && !f.Given() && was != "" {
		return fmt.Errorf("%s cannot be left out; write it like %s", f.Label, f.Example)
	}
	if r.key == "name" {
		return w.renamed(r, was, f.Text())
	}
	return nil
}

// renamed keeps names apart and lets references follow.
func (w *work) renamed(r ref, was, now string) error {
	if r.section == "wash" || r.section == "stage" {
		return nil
	}
	for i, name := range w.names(r.section) {
		if i != r.index && strings.EqualFold(name, now) {
			return fmt.Errorf("%q is the name of another %s already; give each its own", now, r.section)
		}
	}
	items := []model.Item{&w.wash, &w.rig.Defaults}
	for i := range w.wash.Stages {
		items = append(items, &w.wash.Stages[i])
	}
	for _, item := range items {
		for _, f := range item.Fields() {
			if f.Refers == r.section && was != "" && strings.EqualFold(f.Text(), was) {
				if err := f.Set(now); err != nil {
					return err
				}
			}
		}
	}
	return nil
}

// names lists what a section holds.
func (w *work) names(section string) []string {
	switch section {
	case "vehicle":
		return namesOf(w.rig.Vehicles, func(v *model.Vehicle) string { return v.Name })
	case "bed":
		return namesOf(w.rig.Beds, func(b *model.Bed) string { return b.Name })
	case "softener":
		return namesOf(w.rig.Softeners, func(s *model.Softener) string { return s.Name })
	case "sprayer":
		return namesOf(w.rig.Sprayers, func(s *model.Sprayer) string { return s.Name })
	case "hose":
		return namesOf(w.rig.Hoses, func(h *model.Hose) string { return h.Name })
	case "pen":
		return namesOf(w.rig.Pens, func(p *model.Pen) string { return p.Name })
	case "place":
		return w.places.Names()
	case "stage":
		return namesOf(w.wash.Stages, func(s *model.Stage) string { return s.Name })
	case "shade":
		return namesOf(w.wash.Shades, func(s *model.Shade) string { return string(s.Side) })
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

// stated is what the wash names of a section, then what the defaults name.
func (w *work) stated(section string) []string {
	d := &w.rig.Defaults
	switch section {
	case "vehicle":
		return []string{w.wash.Vehicle, d.Vehicle}
	case "bed":
		return []string{w.wash.Bed, d.Bed}
	case "softener":
		return []string{w.wash.Softener, d.Softener}
	case "sprayer":
		return []string{w.wash.Sprayer, d.Sprayer}
	case "place":
		return []string{w.wash.Place, d.Place}
	case "pen":
		return []string{d.Pen}
	}
	return nil
}

// chosen is which item of a section the wash uses, -1 for none: the one that
// the wash names, else the one of the defaults, else the first.
func (w *work) chosen(section string) int {
	names := w.names(section)
	for _, stated := range w.stated(section) {
		if stated != "" {
			return model.Find(names, stated)
		}
	}
	if len(names) == 0 {
		return -1
	}
	return 0
}
