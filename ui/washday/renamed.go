package washday

import (
	"slices"

	"washeve/model"
	"washeve/model/stock"
)

// CalledAnew is a wash under way that calls its things as they are called now. The only
// vehicle, place, bed, softener or pen that there is was renamed, on the plan or in a file, where
// the wash calls it otherwise: by the old name there would be no plan, and the log would tell
// of what the rig does not have. Where there are more of a kind, nobody can tell a new name
// from one that was taken out, and the old one stays.
func CalledAnew(all stock.Stock, u model.Underway) model.Underway {
	called := func(section string, name *string) {
		if names := all.Names(section); *name != "" && *name != model.NoSoftener && len(names) == 1 {
			*name = names[0]
		}
	}
	called("vehicle", &u.Plan.Vehicle)
	called("place", &u.Plan.Place)
	called("bed", &u.Plan.Bed)
	called("softener", &u.Plan.Softener)
	u.Deeds = slices.Clone(u.Deeds)
	for i := range u.Deeds {
		called("pen", &u.Deeds[i].Pen)
	}
	return u
}
