package plan

import (
	"strconv"

	"washeve/model"
	"washeve/planner"
)

// empty is the work of a person who starts from nothing: one of each that a
// plan needs, with all that can be assumed left out.
func empty() work {
	return work{
		rig: model.Rig{
			Vehicles: []model.Vehicle{{Name: "my coach"}},
			Beds:     []model.Bed{{Name: "my tank"}},
		},
		places: model.Places{{Name: "home"}},
		wash:   model.Wash{Name: "my wash"},
	}
}

// add makes a new item in a section, lets the wash use it, and tells where its
// name is.
func (w *work) add(section string, plan planner.Plan) (ref, error) {
	switch section {
	case "stage":
		name := w.freeName(section)
		w.spellOut(plan)
		w.wash.Stages = append(w.wash.Stages, model.Stage{Name: name, Water: model.Softened})
		return ref{section, len(w.wash.Stages) - 1, "name"}, nil
	case "shade":
		w.wash.Shades = append(w.wash.Shades, model.Shade{Side: model.Left})
		return ref{section, len(w.wash.Shades) - 1, "side"}, nil
	}
	all := w.stock()
	at, err := all.Add(section)
	if err == nil && section != "hose" {
		err = all.Use(section, at)
	}
	return ref{section, at, "name"}, err
}

// spellOut writes the usual stages into a wash that states none, so that they
// can be changed.
func (w *work) spellOut(plan planner.Plan) {
	if len(w.wash.Stages) > 0 {
		return
	}
	for _, s := range plan.Stages {
		w.wash.Stages = append(w.wash.Stages, model.Stage{
			Name: s.Name, Faces: append([]model.Side(nil), s.Faces...), Water: s.Water, Final: s.Final,
		})
	}
}

// remove takes an item away. What referred to it falls back to the default.
func (w *work) remove(section string, index int) error {
	switch section {
	case "stage":
		w.wash.Stages = without(w.wash.Stages, index)
		return nil
	case "shade":
		w.wash.Shades = without(w.wash.Shades, index)
		return nil
	}
	return w.stock().Remove(section, index)
}

func without[T any](all []T, index int) []T {
	return append(append([]T(nil), all[:index]...), all[index+1:]...)
}

// freeName is a name that no other stage has.
func (w *work) freeName(section string) string {
	names := w.names(section)
	for n := len(names) + 1; ; n++ {
		if name := section + " " + strconv.Itoa(n); model.Find(names, name) < 0 {
			return name
		}
	}
}
