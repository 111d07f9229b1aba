package washday

import (
	"slices"

	"washeve/model"
	"washeve/model/stock"
)

// calledAnew is a wash under way that calls its things as they are called now. What nothing
// has as its name any more was renamed, on the plan or in a file, and is called as the plan
// of the same wash calls it: by the old name there would be no plan, and the log would tell
// of what the rig does not have.
func calledAnew(o *Options, u model.Underway) model.Underway {
	all := stock.Stock{Rig: &o.Rig, Places: &o.Places, Wash: &o.Wash}
	gone := func(section, name string) bool {
		return name != "" && name != model.NoSoftener && model.Find(all.Names(section), name) < 0
	}
	was := u.Plan
	lost := gone("vehicle", was.Vehicle) || gone("place", was.Place) || gone("bed", was.Bed) || gone("softener", was.Softener) || gone("sprayer", was.Sprayer)
	if !lost || was.Plan != o.Wash.Name {
		return u
	}
	plan, err := o.Make(o.Rig, o.Places, o.Wash)
	if err != nil {
		return u
	}
	now := &u.Plan
	called := func(section string, name *string, by string) {
		if gone(section, *name) {
			*name = by
		}
	}
	called("vehicle", &now.Vehicle, plan.Vehicle)
	called("place", &now.Place, plan.Place)
	called("bed", &now.Bed, plan.BedName)
	called("sprayer", &now.Sprayer, plan.Sprayer.Name)
	if plan.Softener != nil {
		called("softener", &now.Softener, plan.Softener.Name)
	}
	u.Steps = slices.Clone(u.Steps)
	for i := range u.Steps {
		if u.Steps[i].Sprayer == was.Sprayer {
			u.Steps[i].Sprayer = now.Sprayer
		}
	}
	return u
}
