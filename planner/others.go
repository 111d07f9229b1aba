package planner

import (
	"cmp"
	"reflect"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// The codes of the warnings that other washes are planned on the bed, and at the same hours.
const (
	PlannedBefore = "planned-before"
	SameHours     = "same-hours"
)

// WarnOfOthers warns of the other washes that are planned from today up to and including
// the day of the plan's wash: of those on the same bed, with how much they send through
// it, the flush included, which the chance of the plan does not count; and of those that
// run while this one does, on whatever bed. One of a day on which the log has water of
// its bed, or of a day before, is taken as done, as is one that [Past.Did] knows. The rig, the places and the past are those that
// the plan was made from, since the bed is taken to stand before the others as it does
// before the wash.
func (p *Plan) WarnOfOthers(rig model.Rig, places model.Places, wash model.Wash, others []model.Wash, past *Past, today model.Date) {
	var onBed, atOnce []string
	var through quantity.Volume
	mine := p.Hours(wash)
	for _, o := range upTo(wash, others, today) {
		c, err := choose(rig, places, o)
		on := o.Date.Or(today)
		if _, done := past.Did(o.Name, on); err != nil || done || past.Gave(c.bed.Name, on) {
			continue
		}
		c.past = past
		m := undated(c)
		name := strings.ReplaceAll(cmp.Or(o.Name, "a wash"), "%", "%%")
		if on == wash.Date.Or(today) && mine != (Hours{}) {
			if theirs := m.hoursOn(o); mine.Overlap(theirs) {
				atOnce = append(atOnce, name+", "+theirs.String())
			}
		}
		if !strings.EqualFold(m.bed.Name, p.BedName) {
			continue
		}
		if m.rinseFrom(p.stood); m.ask.volume > 0 {
			through += m.ask.volume
			onBed = append(onBed, name+", "+on.String())
		}
	}
	if len(onBed) > 0 {
		p.Warn(Note{Code: PlannedBefore, Format: "Not counted in the chance: " + strings.Join(onBed, "; ") + ". Up to this wash's day the same bed is to give %s there as well.", Values: []quantity.Value{quantity.ValueOf(through)}})
	}
	if len(atOnce) > 0 {
		p.Warn(Note{Code: SameHours, Format: "At the same hours as this wash, " + mine.String() + ": " + strings.Join(atOnce, "; ") + ". Another start, or another day, keeps them apart."})
	}
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
