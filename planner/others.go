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
// included. The chance of the wash does not count them. One of a day on which the log has
// water of that bed, or of a day before, is taken as done. False where there are none.
func OthersOnBed(rig model.Rig, places model.Places, wash model.Wash, others []model.Wash, past *Past, today model.Date) (Note, bool) {
	others = upTo(wash, others, today)
	if len(others) == 0 {
		return Note{}, false
	}
	season, err := Seasoned(rig, places, wash, past)
	if err != nil {
		return Note{}, false
	}
	var names []string
	var through quantity.Volume
	for i := range others {
		o, on := &others[i], others[i].Date.Or(today)
		m, err := season.making(rig, places, *o)
		if err != nil || !strings.EqualFold(m.bed.Name, season.Bed.Name) || m.ask.volume <= 0 || past.Gave(m.bed.Name, on) {
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

// upTo are the other washes with a day from today up to and including that of a wash.
func upTo(wash model.Wash, others []model.Wash, today model.Date) []model.Wash {
	day, given := wash.Date.Get()
	if !given {
		return nil
	}
	var out []model.Wash
	for i := range others {
		on, dated := others[i].Date.Get()
		if dated && on.Compare(today) >= 0 && on.Compare(day) <= 0 && !reflect.DeepEqual(others[i], wash) {
			out = append(out, others[i])
		}
	}
	return out
}

// Gave tells that the log has water of a bed on a day or later.
func (p *Past) Gave(bed string, day model.Date) bool {
	past := p.Bed(bed)
	return past != nil && len(past.Draws) > 0 && past.Draws[len(past.Draws)-1].At.Date().Compare(day) >= 0
}
