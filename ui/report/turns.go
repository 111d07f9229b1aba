package report

import (
	"math"
	"strings"
	"time"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/drying"
	"washeve/planner/drying/sun"
	"washeve/ui/cells"
)

// Clock is an instant as the clock of its zone shows it.
func Clock(at time.Time) string { return clock(at) }

// ClockAfter is [Clock], with the zone's letters where the clock was changed
// since an instant.
func ClockAfter(at, since time.Time) string {
	name, offset := at.Zone()
	if _, before := since.Zone(); before != offset {
		return clock(at) + " " + name
	}
	return clock(at)
}

// SunHours says from when to when the sun is up.
func SunHours(d sun.Day) string {
	rise, rises := d.Rise.Get()
	set, sets := d.Set.Get()
	switch {
	case rises && sets:
		return "sun " + clock(rise) + " to " + clock(set)
	case rises:
		return "sun from " + clock(rise)
	case sets:
		return "sun to " + clock(set)
	case d.Kind == sun.PolarDay:
		return "sun all day"
	}
	return "no sun all day"
}

// Dries says, in at most seven letters, when a film dries.
func Dries(lasts quantity.Duration) string {
	switch {
	case math.IsInf(float64(lasts), 1):
		return "never"
	case lasts >= 100*quantity.Minute:
		return quantity.Round(math.Floor(float64(lasts/quantity.Hour))) + " h"
	}
	return Time(lasts)
}

// DriesIn says when a film dries, as the end of a sentence.
func DriesIn(lasts quantity.Duration) string {
	if math.IsInf(float64(lasts), 1) {
		return "does not dry"
	}
	return "dries in " + Dries(lasts)
}

// Foreseen tells whether it is known of every face how long it stays wet.
func Foreseen(d *planner.DayPlan) bool {
	for _, f := range d.Steps[0].Faces {
		if !f.Section.Given() {
			return false
		}
	}
	return true
}

// TurnReason is why a face has its place, in so many cells if that can be.
func TurnReason(t drying.Turn, width int) string {
	switch {
	case cells.Width(t.Why) <= width:
		return t.Why
	case strings.HasPrefix(t.Why, "in the "):
		return strings.Replace(strings.TrimPrefix(t.Why, "in the "), "for the rest of the day", "to the end", 1)
	}
	return "it drips on the sides"
}
