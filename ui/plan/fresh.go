package plan

import (
	"fmt"
	"strconv"

	"washeve/model"
	"washeve/planner"
)

// empty is the work of a person who starts from nothing: one of each that a
// plan needs, with all that can be assumed left out.
func empty() work {
	return work{
		rig: model.Rig{
			Vehicles: []model.Vehicle{{Name: "my coach", Shape: model.Coach}},
			Beds:     []model.Bed{{Name: "my tank"}},
		},
		places: model.Places{{Name: "home"}},
		wash:   model.Wash{Name: "my wash"},
	}
}

// add makes a new item in a section, lets the wash use it, and tells where its
// name is.
func (w *work) add(section string, plan planner.Plan) (ref, error) {
	name := w.freeName(section)
	switch section {
	case "vehicle":
		w.rig.Vehicles = append(w.rig.Vehicles, model.Vehicle{Name: name})
	case "bed":
		w.rig.Beds = append(w.rig.Beds, model.Bed{Name: name})
	case "softener":
		w.rig.Softeners = append(w.rig.Softeners, model.Softener{Name: name})
	case "sprayer":
		w.rig.Sprayers = append(w.rig.Sprayers, model.Sprayer{Name: name})
	case "hose":
		w.rig.Hoses = append(w.rig.Hoses, model.Hose{Name: name})
	case "pen":
		w.rig.Pens = append(w.rig.Pens, model.Pen{Name: name})
	case "place":
		w.places = append(w.places, model.Place{Name: name})
	case "stage":
		w.spellOut(plan)
		w.wash.Stages = append(w.wash.Stages, model.Stage{Name: name, Water: model.Softened})
	case "shade":
		w.wash.Shades = append(w.wash.Shades, model.Shade{Side: model.Left})
		return ref{section, len(w.wash.Shades) - 1, "side"}, nil
	default:
		return ref{}, fmt.Errorf("nothing new can be made here")
	}
	return ref{section, len(w.names(section)) - 1, "name"}, w.use(section, name)
}

// use lets the wash use an item, where a wash names one of its kind.
func (w *work) use(section, name string) error {
	for _, holder := range []string{"wash", "defaults"} {
		if f, ok := w.field(ref{section: holder, key: section}); ok {
			return f.Set(name)
		}
	}
	return nil
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
	names := w.names(section)
	if index < 0 || index >= len(names) {
		return fmt.Errorf("there is no %s to take away", section)
	}
	switch section {
	case "vehicle":
		w.rig.Vehicles = without(w.rig.Vehicles, index)
	case "bed":
		w.rig.Beds = without(w.rig.Beds, index)
	case "softener":
		w.rig.Softeners = without(w.rig.Softeners, index)
	case "sprayer":
		w.rig.Sprayers = without(w.rig.Sprayers, index)
	case "hose":
		w.rig.Hoses = without(w.rig.Hoses, index)
	case "pen":
		w.rig.Pens = without(w.rig.Pens, index)
	case "place":
		w.places = without(w.places, index)
	case "stage":
		w.wash.Stages = without(w.wash.Stages, index)
		return nil
	case "shade":
		w.wash.Shades = without(w.wash.Shades, index)
		return nil
	}
	return w.renamed(ref{section, -1, "name"}, names[index], "")
}

func without[T any](all []T, index int) []T {
	return append(append([]T(nil), all[:index]...), all[index+1:]...)
}

// freeName is a name that no other item of the section has.
func (w *work) freeName(section string) string {
	names := w.names(section)
	for n := len(names) + 1; ; n++ {
		if name := section + " " + strconv.Itoa(n); model.Find(names, name) < 0 {
			return name
		}
	}
}
