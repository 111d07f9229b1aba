package planner

import (
	"cmp"
	"reflect"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// PlannedBefore is the code of the warning that other washes are planned on the bed.
const PlannedBefore = "planned-before"

// OthersOnBed warns of the other washes that are planned from today up to and including
// the day of a wash on the same bed, and tells how much they send through it, the flush
// included. The chance of the wash does not count them. False where there are none.
func OthersOnBed(rig model.Rig, places model.Places, wash model.Wash, others []model.Wash, past *Past, today model.Date) (Note, bool) {
	day, given := wash.Date.Get()
	season, err := Seasoned(rig, places, wash, past)
	if !given || err != nil {
		return Note{}, false
	}
	var names []string
	var through quantity.Volume
	for i := range others {
		o := &others[i]
		on, dated := o.Date.Get()
		if !dated || on.Compare(today) < 0 || on.Compare(day) > 0 || reflect.DeepEqual(*o, wash) {
			continue
		}
		m, err := season.making(rig, places, *o)
		if err != nil || !strings.EqualFold(m.bed.Name, season.Bed.Name) || m.ask.volume <= 0 {
			continue
		}
		through += m.ask.volume
		names = append(names, strings.ReplaceAll(cmp.Or(o.Name, "a wash")+", "+on.String(), "%", "%%"))
	}
	if len(names) == 0 {
		return Note{}, false
	}
	return Note{Code: PlannedBefore, Format: "Not counted in the chance: " + strings.Join(names, "; ") + ". Up to this wash's day the same bed is to give %s there as well.", Values: []quantity.Value{quantity.ValueOf(through)}}, true
}
