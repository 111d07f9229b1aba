package planner

import (
	"fmt"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// A usual hose, for one that the rig does not state or states in part. PRACTICE.
const (
	usualBore   = 0.625 * quantity.Inch
	usualLength = 50 * quantity.Foot
)

func usualHose(run model.Run) model.Hose {
	names := map[model.Run]string{model.SupplyRun: "hose to the tanks", model.SprayRun: "hose to the sprayer"}
	return model.Hose{Name: names[run], Bore: quantity.Some(usualBore), Length: quantity.Some(usualLength), Run: run}
}

// layHoses are the hoses of a rig. One that is stated in part has the rest of a usual one,
// and until all are stated in full a run that has none has a usual one: a hose whose name
// alone is typed changes no flow. What is taken is written down.
func layHoses(l *ledger, stated []model.Hose) []model.Hose {
	if len(stated) == 0 {
		l.assume(Assumption{Name: "hoses", Words: "5/8 in x 50 ft before and after the tanks", Source: practice("a usual set")})
		return []model.Hose{usualHose(model.SupplyRun), usualHose(model.SprayRun)}
	}
	hoses := make([]model.Hose, 0, len(stated)+1)
	var noBore, noLength []string
	runs := map[model.Run]bool{}
	for _, h := range stated {
		if !h.Bore.Given() {
			h.Bore, noBore = quantity.Some(usualBore), append(noBore, h.Name)
		}
		if !h.Length.Given() {
			h.Length, noLength = quantity.Some(usualLength), append(noLength, h.Name)
		}
		if h.Run == "" {
			h.Run = model.SupplyRun
		}
		runs[h.Run] = true
		hoses = append(hoses, h)
	}
	assumeHose(l, "hose bore", usualBore, noBore)
	assumeHose(l, "hose length", usualLength, noLength)
	if len(noBore)+len(noLength) == 0 {
		return hoses
	}
	for _, run := range []model.Run{model.SupplyRun, model.SprayRun} {
		if !runs[run] {
			usual := usualHose(run)
			l.assume(Assumption{Name: usual.Name, Words: "5/8 in x 50 ft", Source: practice("as long as the hoses are not stated in full")})
			hoses = append(hoses, usual)
		}
	}
	return hoses
}

// assumeHose writes down a size that some hoses do not state.
func assumeHose(l *ledger, name string, usual quantity.Length, of []string) {
	if len(of) > 0 {
		why := fmt.Sprintf("a usual hose; not stated of %s", strings.Join(of, ", "))
		l.assume(Assumption{Name: name, Value: quantity.ValueOf(usual), Source: practice(why)})
	}
}
