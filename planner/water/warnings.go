package water

import (
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Levels from which a water is warned of. PRACTICE, all of them.
const (
	leastChlorine = 0.05 * quantity.MilligramPerLitre // the first colour of a strip
	leastIron     = 0.1 * quantity.MilligramPerLitre  // what makers of resin ask of a feed
	heavyLoad     = 10 * quantity.EqPerCubicMetre     // 500 mg/L as CaCO3
)

func warnings(f Facts, a Analysis) []tag.Note {
	var notes []tag.Note
	warn := func(code, format string, values ...quantity.Value) {
		notes = append(notes, tag.Note{Code: code, Format: format, Values: values})
	}
	if silica := f.Silica.Or(0); silica > 0 {
		warn("silica", "silica of %s: near the end of a bed it comes through before the pen moves, and it bites glass; end the bed sooner than the pen says", quantity.ValueOf(silica))
	}
	if chlorine := f.Chlorine.Or(0); chlorine >= leastChlorine {
		warn("chlorine", "free chlorine of %s attacks resin; common practice is a carbon filter ahead of softener and bed", quantity.ValueOf(chlorine))
	}
	if iron := f.Iron.Or(0); iron >= leastIron {
		warn("iron", "iron of %s fouls resin, and what it covers does not come back with salt or acid alone; take it out ahead of softener and bed", quantity.ValueOf(iron))
	}
	if a.Effective() > heavyLoad {
		warn("high-tds", "this water carries %s, which uses a bed up quickly; keep DI for the last rinse, or use partly purified water ahead of the bed", quantity.ValueOf(a.Effective()))
	}
	if a.Conductivity > lastStandard {
		warn("beyond-scale", "a conductivity of %s is beyond the published scales of TDS pens; its ppm is carried on in proportion", quantity.ValueOf(a.Conductivity))
	}
	return notes
}

// assumed lists what was taken where the person said nothing.
func assumed(f Facts, a Analysis) []tag.Assumption {
	var list []tag.Assumption
	if f.TDS.WithScale(f.Pen).Scale == quantity.ScaleUnsaid {
		list = append(list, tag.Text("scale of the TDS reading", DefaultScale().String(),
			tag.FromPractice("nobody said the scale; most cheap pens are on it")))
	}
	if !f.Temperature.Given() {
		list = append(list, tag.Quantity("water temperature", a.Temperature,
			tag.FromPractice("not measured; a mains in the mild season")))
	}
	if !a.HardnessSaid {
		list = append(list, tag.Quantity("hardness", a.Hardness(),
			tag.FromPractice("not measured; 75 % of the cations, as in a usual hard tap water")))
		list = append(list, tag.Text("slowest cation", string(a.Slowest),
			tag.FromPractice("hardness was not measured, and calcium is in most tap water; sodium would exchange faster")))
	}
	if !a.AlkalinitySaid {
		list = append(list, tag.Quantity("alkalinity", quantity.Hardness(a.Ions.Bicarbonate),
			tag.FromPractice("not measured; 70 % of the anions, as in a usual tap water")))
	}
	return list
}
