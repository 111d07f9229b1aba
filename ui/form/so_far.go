package form

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// SoFarTold is what the gallons that a rig states of a bed or a softener are where the log
// has counted on, and what it has given by now; "" of any other field, and where past, which
// may be nil, knows nothing of the thing. The section is the thing's in the rig.
func SoFarTold(f model.Field, section, name string, past *planner.Past, sys quantity.System) string {
	if f.Key != "gallons_so_far" || !f.Given() {
		return ""
	}
	switch section {
	case "bed":
		return bedTold(past.Bed(name), sys)
	case "softener":
		if salted, known := past.Softener(name); known {
			return softenerTold(salted, sys)
		}
	}
	return ""
}

func bedTold(past *planner.BedPast, sys quantity.System) string {
	if past == nil {
		return ""
	}
	fill := past.Present()
	given := quantity.Show(fill.Gallons, sys)
	if fill.Began.Given() {
		return "of the fill before " + fill.Began.Date().String() + ", counts no more; this one has given " + given
	}
	return "what the fill had given before the log began; by now it has given " + given
}

func softenerTold(s planner.Salted, sys quantity.System) string {
	through := quantity.Show(s.Through, sys)
	if s.Last.Given() {
		return "of before the salt of " + s.Last.Date().String() + ", counts no more; since then " + through + " went through"
	}
	return "what had gone through before the log began; with the washes of the log it is " + through
}
