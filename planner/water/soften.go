package water

import (
	"slices"

	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Soften is the water behind a softener: calcium and magnesium swapped for
// sodium, equivalent for equivalent. The load stays the same to the last bit;
// the conductivity moves by the difference of the ions' conductances, some
// per cent; the slowest cation becomes sodium. The hardness that slips through
// a working softener is not counted.
func Soften(raw Analysis) Analysis {
	soft := raw
	soft.Ions.Sodium = raw.Ions.Total()
	soft.Ions.Hardness = 0
	if before := raw.Ions.Conductivity(); before > 0 {
		soft.Conductivity = raw.Conductivity * (soft.Ions.Conductivity() / before)
	}
	soft.Slowest = Sodium
	soft.HardnessSaid = true
	soft.Assumed = slices.DeleteFunc(slices.Clone(raw.Assumed), func(a tag.Assumption) bool {
		return a.Name == "hardness" || a.Name == "slowest cation"
	})
	return soft
}

// SofteningNote tells what softening does for a DI bed: nothing.
func SofteningNote(raw Analysis) tag.Note {
	return tag.Note{
		Code: "softening-spares-nothing",
		Format: "softening does not spare the DI bed: it swaps calcium and magnesium for sodium, so that the load stays %s " +
			"and the pen reads about the same. What spares the bed is to keep DI for the last rinse. A bed fed with it may still give " +
			"some gallons more: sodium is quicker to the beads than calcium, so that the outlet passes the limit a little later",
		Values: []quantity.Value{quantity.ValueOf(raw.Load)},
	}
}
