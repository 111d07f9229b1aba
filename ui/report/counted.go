package report

import (
	"cmp"
	"fmt"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// CountedBefore says of the first entry that a log holds of a bed that the gallons which the
// rig states of it count as given before: a person who typed them today has most likely
// counted the water of an earlier day among them, and it would count twice. It is "" where
// the entry gave no DI water, is of today, or the rig states none.
func CountedBefore(rig *model.Rig, e *model.Entry, today model.Date, sys quantity.System) string {
	name, what, gave := givenBy(e.Body)
	if gave <= 0 || e.At.Date().Compare(today) >= 0 {
		return ""
	}
	stated := statedOf(rig, name)
	if stated <= 0 {
		return ""
	}
	return fmt.Sprintf("The %s so far that the rig states of the bed count as before it; if %s is among them, state %s there.",
		quantity.Show(stated, sys), what, quantity.Show(max(stated-gave, 0), sys))
}

// givenBy is the DI water that an entry adds to a bed, with the bed as it names it.
func givenBy(body model.Body) (bed, what string, gave quantity.Volume) {
	switch b := body.(type) {
	case *model.WashDone:
		return b.Bed, "this wash", b.DI.Or(0)
	case *model.Sample:
		if b.Point == model.AfterBed && !b.SoFar.Given() {
			return b.Bed, "its flush", b.FlushWater.Or(0)
		}
	}
	return "", "", 0
}

// statedOf are the gallons so far that a rig states of a bed; "" is the usual one.
func statedOf(rig *model.Rig, bed string) quantity.Volume {
	bed = cmp.Or(bed, rig.Defaults.Bed)
	for i := range rig.Beds {
		if bed == "" || strings.EqualFold(rig.Beds[i].Name, bed) {
			return rig.Beds[i].SoFar.Or(0)
		}
	}
	return 0
}
