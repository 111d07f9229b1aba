package form

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// SoFarTold is what the stated gallons of a bed are where the log has counted on, and what
// the fill has given by now; "" of any other field, and where past, which may be nil, knows
// nothing of the bed.
func SoFarTold(f model.Field, bed string, past *planner.Past, sys quantity.System) string {
	if f.Key != "gallons_so_far" || !f.Given() || past == nil || past.Bed(bed) == nil {
		return ""
	}
	fill := past.Bed(bed).Present()
	given := quantity.Show(fill.Gallons, sys)
	if fill.Began.Given() {
		return "of the fill before " + fill.Began.Date().String() + ", counts no more; this one has given " + given
	}
	return "what the fill had given before the log began; by now it has given " + given
}
