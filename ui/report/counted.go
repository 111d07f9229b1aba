package report

import (
	"cmp"
	"fmt"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// CountedBefore says of the first entry that a log holds of a bed that the gallons which the
// rig states of it and of its softener count as given before: a person who typed them today
// has most likely counted the water of an earlier day among them, and it would count twice. It
// is "" where the entry took no water of either, is of today, or the rig states none.
func CountedBefore(rig *model.Rig, e *model.Entry, today model.Date, sys quantity.System) string {
	if e.At.Date().Compare(today) >= 0 {
		return ""
	}
	var told []string
	name, what, gave := givenBy(e.Body)
	if stated := statedOf(rig, name); gave > 0 && stated > 0 {
		told = append(told, countedBefore(stated, gave, "so far that the rig states of the bed", what, sys))
	}
	if w, is := e.Body.(*model.WashDone); is {
		softener, through := planner.ThroughSoftener(w, rig)
		if stated := saltedOf(rig, softener); through > 0 && stated > 0 {
			told = append(told, countedBefore(stated, through, "since salt that the rig states of the softener", "this wash", sys))
		}
	}
	return strings.Join(told, " ")
}

func countedBefore(stated, took quantity.Volume, which, what string, sys quantity.System) string {
	return fmt.Sprintf("The %s %s count as before it; if %s is among them, state %s there.",
		quantity.Show(stated, sys), which, what, quantity.Show(max(stated-took, 0), sys))
}

// saltedOf are the gallons since salt that a rig states of a softener.
func saltedOf(rig *model.Rig, softener string) quantity.Volume {
	for i := range rig.Softeners {
		if strings.EqualFold(rig.Softeners[i].Name, softener) {
			return rig.Softeners[i].SoFar.Or(0)
		}
	}
	return 0
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
