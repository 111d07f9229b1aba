package plan

import (
	"fmt"

	"washeve/model"
	"washeve/model/stock"
)

// work is what the hands are on: all that a plan is made from.
type work struct {
	rig     model.Rig
	places  model.Places
	wash    model.Wash
	others  []*stock.Kept // the other washes, whose names follow
	example bool          // the built-in example, which nobody has made theirs
}

// clone shares nothing with the original, so that it can be kept for undo.
func (w work) clone() work {
	c := w.stock().Clone()
	return work{rig: *c.Rig, places: *c.Places, wash: *c.Wash, others: *c.Others, example: w.example}
}

// stock is the work as one thing to be changed.
func (w *work) stock() stock.Stock {
	return stock.Stock{Rig: &w.rig, Places: &w.places, Wash: &w.wash, Others: &w.others}
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
	case "stage":
		return at(w.wash.Stages, index, func(s *model.Stage) model.Item { return s })
	case "shade":
		return at(w.wash.Shades, index, func(s *model.Shade) model.Item { return s })
	}
	return w.stock().Item(section, index)
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
	if r.key == "name" && r.section != "wash" && r.section != "stage" {
		return w.stock().Renamed(r.section, r.index, was, f.Text())
	}
	return nil
}

// names lists what a section holds.
func (w *work) names(section string) []string {
	switch section {
	case "stage":
		return namesOf(w.wash.Stages, func(s *model.Stage) string { return s.Name })
	case "shade":
		return namesOf(w.wash.Shades, func(s *model.Shade) string { return string(s.Side) })
	}
	return w.stock().Names(section)
}

func namesOf[T any](all []T, name func(*T) string) []string {
	names := make([]string, len(all))
	for i := range all {
		names[i] = name(&all[i])
	}
	return names
}

// chosen is which item of a section the wash uses, -1 for none: the one that
// the wash names, else the one of the defaults, else the first.
func (w *work) chosen(section string) int { return w.stock().Chosen(section) }
